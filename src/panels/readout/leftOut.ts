/**
 * What figures leave out, in words: of the layer shown an area, of the whole build a volume with the heights it lies at.
 * A figure that leaves something out says so beside its number. mm², cm³, mm above the platform.
 */
import { t } from '../../language/index';
import { leavesOut, leftOutOfBuild, type LeftOut } from '../../build/leftOut';
import type { LayerTotals } from '../../build/types';
import { formatCm3, formatField, formatMm2 } from '../../units/format';

export { leftOutOfBuild, type LeftOut };

/** "without 5494 mm²"; undefined where the layer is exposed whole. */
export const leftOutOfLayer = (figures: LayerTotals | undefined): string | undefined =>
  figures !== undefined && leavesOut(figures)
    ? t('without {unassigned}', { unassigned: formatMm2(figures.unassigned_mm2) })
    : undefined;

/** "without 123.4 cm³". */
export const leftOutVolume = ({ volume_cm3 }: LeftOut): string =>
  t('without {volume}', { volume: formatCm3(volume_cm3) });

/** "z 0–48 mm", "z 0–48 mm in 3 ranges". */
export function leftOutHeights({ ranges }: LeftOut): string {
  const [first, last] = [ranges[0], ranges.at(-1)];
  const span = `z ${formatField(first?.from_mm ?? 0)}–${formatField(last?.to_mm ?? 0)} mm`;
  return ranges.length > 1 ? t('{span} in {ranges} ranges', { span, ranges: ranges.length }) : span;
}
