/**
 * The chosen division as numbers: lines, shared band, lasers of the zones, and the rule that gives load to lasers.
 */
import { useBench } from '../../canvas/bench';
import { setAllocation } from '../../commands/operations';
import { plateShown } from '../../store/shown';
import { Block } from '../controls/Block';
import { SegmentedField } from '../controls/Segmented';
import { useEdit } from '../useEdit';
import { CrossingFields, SharedBandFields, StripFields } from './LineFields';
import { ZoneLaserFields } from './ZoneLaserFields';

export function DivisionPanel() {
  const edit = useEdit();
  const zoning = useBench((state) => plateShown(state).zoning);
  const platform = useBench((state) => state.layout.machine.platform);
  const allocation = useBench((state) => state.layout.allocation);
  return (
    <div className="fields-panel">
      {'sharedBand_mm' in zoning && (
        <Block title={zoning.strategy === 'quadrants' ? 'QUADRANTS' : 'STRIPS'}>
          {zoning.strategy === 'quadrants' ? (
            <CrossingFields zoning={zoning} platform={platform} />
          ) : (
            <StripFields zoning={zoning} platform={platform} />
          )}
          <SharedBandFields width_mm={zoning.sharedBand_mm} platform={platform} />
        </Block>
      )}
      <Block title={zoning.strategy === 'drawn' ? 'DRAWN ZONES' : 'LASERS OF THE ZONES'}>
        <ZoneLaserFields zoning={zoning} />
      </Block>
      <Block title="SHARED LOAD">
        <SegmentedField
          label="rule"
          value={allocation}
          options={[
            { value: 'balanced', label: 'Balanced: shared load may be cut', content: 'balanced' },
            { value: 'wholeParts', label: 'Whole parts: every part to one laser', content: 'whole' },
          ]}
          onChoose={(rule) => edit.press('rule for shared load', (layout) => setAllocation(layout, rule))}
        />
      </Block>
    </div>
  );
}
