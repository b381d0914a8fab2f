/**
 * Every zone line as a number: the crossing point of the quadrants, each line between strips, the strips' count and
 * direction, the shared band. Millimetres on the platform.
 */
import { t } from '../../language/index';
import {
  addStrip,
  FEWEST_STRIPS,
  MOST_STRIPS,
  removeStrip,
  setSharedBand,
  setStripCount,
  setStripDirection,
  setZoneLine,
} from '../../commands/operations';
import type { Platform, QuadrantsZoning, StripsZoning } from '../../layout/types';
import { formatMm } from '../../units/format';
import { AngleField, LengthField, NumberField } from '../controls/fields';
import { SliderLine } from '../controls/SliderLine';
import { useEdit, useOnShown } from '../useEdit';
import { crossingLimits, stripLineLimits } from './lineLimits';

interface CrossingProps {
  readonly zoning: QuadrantsZoning;
  readonly platform: Platform;
}

export function CrossingFields({ zoning, platform }: CrossingProps) {
  const onShown = useOnShown();
  const [x, y] = zoning.at_mm;
  return (
    <>
      <LengthField
        label={t('crossing x')}
        value={x}
        {...crossingLimits(platform, 'x')}
        testId="crossing-x"
        recipe={onShown((plate, c: number) => setZoneLine(plate, { kind: 'quadrantX' }, c))}
      />
      <LengthField
        label={t('crossing y')}
        value={y}
        {...crossingLimits(platform, 'y')}
        testId="crossing-y"
        recipe={onShown((plate, c: number) => setZoneLine(plate, { kind: 'quadrantY' }, c))}
      />
    </>
  );
}

function StripButtons({ count }: { readonly count: number }) {
  const edit = useEdit();
  const onShown = useOnShown();
  return (
    <div className="row">
      <button
        type="button"
        className="button"
        disabled={count >= MOST_STRIPS}
        onClick={() =>
          edit.press(
            t('add a strip'),
            onShown((plate) => addStrip(plate)),
          )
        }
      >
        {t('Cut the widest')}
      </button>
      <button
        type="button"
        className="button"
        disabled={count <= FEWEST_STRIPS}
        onClick={() =>
          edit.press(
            t('remove a strip'),
            onShown((plate) => removeStrip(plate)),
          )
        }
      >
        {t('Merge the narrowest')}
      </button>
    </div>
  );
}

interface StripProps {
  readonly zoning: StripsZoning;
  readonly platform: Platform;
}

export function StripFields({ zoning, platform }: StripProps) {
  const onShown = useOnShown();
  const axis = zoning.run_deg === 90 ? 'x' : zoning.run_deg === 0 ? 'y' : 'line';
  return (
    <>
      <NumberField
        label={t('strips, equal widths')}
        value={zoning.lasers.length}
        min={FEWEST_STRIPS}
        max={MOST_STRIPS}
        whole
        testId="strip-count"
        recipe={onShown(setStripCount)}
      />
      <AngleField
        label={t('strips run along')}
        value={zoning.run_deg}
        step={5}
        testId="strip-direction"
        hint={t('90°: side by side in x; 0°: front to back in y')}
        recipe={onShown(setStripDirection)}
      />
      {zoning.lines_mm.map((c, index) => (
        <LengthField
          key={`${index} of ${zoning.lines_mm.length}`}
          label={t('line {number}, {axis}', { number: index + 1, axis })}
          value={c}
          {...stripLineLimits(platform, zoning, index)}
          testId={`strip-line-${index}`}
          recipe={onShown((plate, value: number) => setZoneLine(plate, { kind: 'strip', index }, value))}
        />
      ))}
      <StripButtons count={zoning.lasers.length} />
    </>
  );
}

interface BandProps {
  readonly width_mm: number;
  readonly platform: Platform;
}

export function SharedBandFields({ width_mm, platform }: BandProps) {
  const edit = useEdit();
  const onShown = useOnShown();
  const most = Math.max(platform.width_mm, platform.depth_mm);
  return (
    <>
      <LengthField
        label={t('shared band')}
        value={width_mm}
        min={0}
        max={most}
        step={5}
        testId="shared-band"
        recipe={onShown(setSharedBand)}
      />
      <SliderLine
        label={t('Width of the shared band')}
        value={width_mm}
        min={0}
        max={most}
        step={5}
        valueText={formatMm(width_mm)}
        testId="shared-band-slider"
        onHold={edit.hold(t('shared band'))}
        onChange={(value) =>
          edit.press(
            t('shared band'),
            onShown((plate) => setSharedBand(plate, value)),
          )
        }
      />
      <p className="hint">{t('The strip that either of two neighbours may take; its load counts once.')}</p>
    </>
  );
}
