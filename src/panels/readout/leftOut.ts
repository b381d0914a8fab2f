/**
 * What figures leave out because no laser exposes it: of the layer shown an area, of the whole build a volume with the
 * heights it lies at. A figure that leaves something out says so beside its number. mm², cm³, mm above the platform.
 */
import type { LayerTotals, WholeHeight } from '../../build/types';
import { SMALLEST_MM2 } from '../../export/forUse';
import { formatCm3, formatField, formatMm2 } from '../../units/format';
import type { Cm3, Mm } from '../../units/types';

const MM3_PER_CM3 = 1000;

const open = ({ unassigned_mm2 }: LayerTotals): boolean => unassigned_mm2 >= SMALLEST_MM2;

/** "without 5494 mm²"; undefined where the layer is exposed whole. */
export const leftOutOfLayer = (figures: LayerTotals | undefined): string | undefined =>
  figures !== undefined && open(figures) ? `without ${formatMm2(figures.unassigned_mm2)}` : undefined;

export interface LeftOut {
  readonly volume_cm3: Cm3;
  /** Heights in a row that leave something out. */
  readonly ranges: readonly { readonly from_mm: Mm; readonly to_mm: Mm }[];
}

/** What the build leaves out; null where every layer is exposed whole. */
export function leftOutOfBuild({ stretches }: Pick<WholeHeight, 'stretches'>): LeftOut | null {
  const ranges: { from_mm: Mm; to_mm: Mm }[] = [];
  let volume = 0;
  for (const { from_mm, to_mm, figures } of stretches) {
    if (!open(figures)) continue;
    volume += (to_mm - from_mm) * figures.unassigned_mm2;
    const last = ranges.at(-1);
    if (last && Math.abs(last.to_mm - from_mm) < 1e-9) last.to_mm = to_mm;
    else ranges.push({ from_mm, to_mm });
  }
  return ranges.length === 0 ? null : { volume_cm3: volume / MM3_PER_CM3, ranges };
}

/** "without 123.4 cm³". */
export const leftOutVolume = ({ volume_cm3 }: LeftOut): string => `without ${formatCm3(volume_cm3)}`;

/** "z 0–48 mm", "z 0–48 mm in 3 ranges". */
export function leftOutHeights({ ranges }: LeftOut): string {
  const [first, last] = [ranges[0], ranges.at(-1)];
  const span = `z ${formatField(first?.from_mm ?? 0)}–${formatField(last?.to_mm ?? 0)} mm`;
  return ranges.length > 1 ? `${span} in ${ranges.length} ranges` : span;
}
