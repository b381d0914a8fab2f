/**
 * Which laser exposes which part at which heights, over the whole height. Layers count from 1; areas are those of the
 * sections, without seam overlap. mm², mm³.
 */
import { plateOf } from '../../build/plate';
import { Stacks } from '../../build/stack';
import { totalsOf } from '../../build/totals';
import type { LayerFigures, LayerTotals, Stretch } from '../../build/types';
import type { Layout } from '../../layout/types';
import type { Mm, Mm2, Mm3 } from '../../units/types';

/** What one laser exposes of one part in a layer; laser −1: what no laser exposes. */
export interface PartShare {
  readonly part: number;
  readonly laser: number;
  readonly area_mm2: Mm2;
}
/** A layer's figures with the shares of its parts. */
export interface PartTotals extends LayerTotals {
  readonly shares: readonly PartShare[];
}
/** Layers in a row in which a laser exposes some of a part. */
export interface LaserRange {
  readonly part: number;
  readonly laser: number;
  readonly firstLayer: number;
  readonly lastLayer: number;
  readonly volume_mm3: Mm3;
}

const keyOf = (part: number, laser: number): string => `${part} ${laser}`;

function sharesOf({ pieces }: LayerFigures): PartShare[] {
  const shares = new Map<string, PartShare>();
  for (const { part, laser, area_mm2 } of pieces) {
    const key = keyOf(part, laser);
    shares.set(key, { part, laser, area_mm2: (shares.get(key)?.area_mm2 ?? 0) + area_mm2 });
  }
  return [...shares.values()];
}

/** Divides the whole height, keeping numbers only. Yields how far it is, 0 to 1. */
export function* partStretches(layout: Layout): Generator<number, readonly Stretch<PartTotals>[]> {
  const stacks = new Stacks((figures): PartTotals => ({ ...totalsOf(figures), shares: sharesOf(figures) }));
  return (yield* stacks.run(plateOf(layout))).stretches;
}

const byPlace = (a: LaserRange, b: LaserRange): number =>
  a.part - b.part || a.firstLayer - b.firstLayer || a.laser - b.laser;

/** The ranges of all parts, by part, then from the platform up, then by laser. */
export function laserRanges(stretches: readonly Stretch<PartTotals>[], layer_mm: Mm): readonly LaserRange[] {
  const ranges: LaserRange[] = [];
  /** Index of the last range of each part and laser. */
  const last = new Map<string, number>();
  for (const { firstLayer, lastLayer, figures } of stretches)
    for (const { part, laser, area_mm2 } of figures.shares) {
      const key = keyOf(part, laser);
      const at = last.get(key) ?? -1;
      const before = ranges[at];
      const volume_mm3 = area_mm2 * (lastLayer - firstLayer + 1) * layer_mm;
      if (before && before.lastLayer === firstLayer - 1)
        ranges[at] = { ...before, lastLayer, volume_mm3: before.volume_mm3 + volume_mm3 };
      else last.set(key, ranges.push({ part, laser, firstLayer, lastLayer, volume_mm3 }) - 1);
    }
  return ranges.sort(byPlace);
}
