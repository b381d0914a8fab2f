/**
 * What a build leaves out because no laser exposes it: a volume, and the heights it lies at. Its hours are not those of the
 * whole job. mm², cm³, mm above the platform.
 */
import type { Cm3, Mm, Mm2 } from '../units/types';
import type { LayerTotals, WholeHeight } from './types';

/** Below this, rounding of outlines, not a gap between zones. */
export const SMALLEST_MM2: Mm2 = 0.005;
const MM3_PER_CM3 = 1000;

/** Some of the layer is exposed by nobody. */
export const leavesOut = ({ unassigned_mm2 }: Pick<LayerTotals, 'unassigned_mm2'>): boolean =>
  unassigned_mm2 >= SMALLEST_MM2;

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
    if (!leavesOut(figures)) continue;
    volume += (to_mm - from_mm) * figures.unassigned_mm2;
    const last = ranges.at(-1);
    if (last && Math.abs(last.to_mm - from_mm) < 1e-9) last.to_mm = to_mm;
    else ranges.push({ from_mm, to_mm });
  }
  return ranges.length === 0 ? null : { volume_cm3: volume / MM3_PER_CM3, ranges };
}
