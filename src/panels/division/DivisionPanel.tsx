/**
 * The division as numbers: where it changes over height; of the one shown its lines, shared band, lasers of the zones; the
 * rule that gives load to lasers.
 */
import { t } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { setAllocation } from '../../commands/operations';
import { plateShown, shownStep } from '../../store/shown';
import { formatField } from '../../units/format';
import { Block } from '../controls/Block';
import { SegmentedField } from '../controls/Segmented';
import { useEdit } from '../useEdit';
import { CrossingFields, SharedBandFields, StripFields } from './LineFields';
import { StepList } from './StepList';
import { ZoneLaserFields } from './ZoneLaserFields';

/** Where several divisions stand over each other, the blocks say whose numbers they hold. */
function useWhere(): { readonly note?: string } {
  const from_mm = useBench(({ layout, view }) =>
    layout.zoning.length === 1 ? null : layout.zoning[shownStep(layout, view.height_mm)]!.from_mm,
  );
  return from_mm === null ? {} : { note: t('from {from} mm', { from: formatField(from_mm) }) };
}

export function DivisionPanel() {
  const edit = useEdit();
  const zoning = useBench((state) => plateShown(state).zoning);
  const platform = useBench((state) => state.layout.machine.platform);
  const allocation = useBench((state) => state.layout.allocation);
  const where = useWhere();
  return (
    <div className="fields-panel">
      <StepList />
      {'sharedBand_mm' in zoning && (
        <Block title={t(zoning.strategy === 'quadrants' ? 'QUADRANTS' : 'STRIPS')} {...where}>
          {zoning.strategy === 'quadrants' ? (
            <CrossingFields zoning={zoning} platform={platform} />
          ) : (
            <StripFields zoning={zoning} platform={platform} />
          )}
          <SharedBandFields width_mm={zoning.sharedBand_mm} platform={platform} />
        </Block>
      )}
      <Block
        {...(zoning.strategy === 'drawn'
          ? { title: t('DRAWN ZONES'), ...where }
          : { title: t('LASERS OF THE ZONES') })}
      >
        <ZoneLaserFields zoning={zoning} />
      </Block>
      <Block title={t('SHARED LOAD')}>
        <SegmentedField
          label={t('rule')}
          value={allocation}
          options={[
            { value: 'balanced', label: t('Balanced: shared load may be cut'), content: t('balanced') },
            {
              value: 'wholeParts',
              label: t('Whole parts: each to one laser, where a zone holds it whole'),
              content: t('whole'),
            },
          ]}
          onChoose={(rule) => edit.press(t('rule for shared load'), (layout) => setAllocation(layout, rule))}
        />
      </Block>
    </div>
  );
}
