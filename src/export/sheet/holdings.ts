/**
 * Who exposes which part from where to where, and where parts are cut: gathered from the layers of a build, of which only
 * this is kept. Millimetres above the platform, mm².
 */
import type { LayerFigures, LayerTotals, Stretch } from '../../build/types';
import { totalsOf } from '../../build/totals';
import type { Mm, Mm2 } from '../../units/types';
import type { HeightRange, Holding, SeamRun, SheetFacts } from './types';

/** Areas below this are rounding of outlines, not something a laser exposes or leaves. */
export const LEAST_AREA_MM2: Mm2 = 0.005;
/** Stretches that touch are one range; a difference below this is rounding. */
const TOUCHING_MM: Mm = 1e-9;

/** What is kept of a layer: its numbers, and per part who exposes how much of it and how long its seams are. */
export interface SharesOfLayer extends LayerTotals {
  readonly held: readonly { readonly part: number; readonly laser: number; readonly area_mm2: Mm2 }[];
  readonly cuts: readonly {
    readonly part: number;
    readonly lasers: readonly [number, number];
    readonly length_mm: Mm;
  }[];
  readonly seamCount: number;
}

/** Sums of `value` by the key of an item, with the first item of each key. */
function sums<T>(items: readonly T[], key: (item: T) => string, value: (item: T) => number): [T, number][] {
  const found = new Map<string, [T, number]>();
  for (const item of items) {
    const known = found.get(key(item));
    if (known) known[1] += value(item);
    else found.set(key(item), [item, value(item)]);
  }
  return [...found.values()];
}

/** A layer's numbers and shares. */
export function sharesOf(figures: LayerFigures): SharesOfLayer {
  const held = sums(
    figures.pieces,
    ({ part, laser }) => `${part} ${laser}`,
    ({ area_mm2 }) => area_mm2,
  );
  const cuts = sums(
    figures.seams,
    ({ part, lasers }) => `${part} ${lasers.join()}`,
    ({ length_mm }) => length_mm,
  );
  return {
    ...totalsOf(figures),
    held: held.map(([{ part, laser }, area_mm2]) => ({ part, laser, area_mm2 })),
    cuts: cuts.map(([{ part, lasers }, length_mm]) => ({ part, lasers, length_mm })),
    seamCount: figures.seams.length,
  };
}

type Growing = { from_mm: Mm; to_mm: Mm };

/** Adds a stretch to ascending ranges: prolongs the last one where they touch. */
function prolong(ranges: Growing[], { from_mm, to_mm }: HeightRange): void {
  const last = ranges.at(-1);
  if (last && from_mm - last.to_mm < TOUCHING_MM) last.to_mm = to_mm;
  else ranges.push({ from_mm, to_mm });
}

/** The entry of a key, made where there is none. */
function entry<T>(map: Map<string, T>, key: string, make: () => T): T {
  let found = map.get(key);
  if (!found) map.set(key, (found = make()));
  return found;
}

/** The laser that exposes nothing comes last. */
const lasersFirst = (laser: number): number => (laser < 0 ? Infinity : laser);

function holdingsOf(stretches: readonly Stretch<SharesOfLayer>[]): Holding[] {
  const found = new Map<string, { part: number; laser: number; ranges: Growing[] }>();
  for (const stretch of stretches)
    for (const { part, laser, area_mm2 } of stretch.figures.held)
      if (area_mm2 >= LEAST_AREA_MM2)
        prolong(entry(found, `${part} ${laser}`, () => ({ part, laser, ranges: [] })).ranges, stretch);
  return [...found.values()].sort((a, b) => a.part - b.part || lasersFirst(a.laser) - lasersFirst(b.laser));
}

function seamsOf(stretches: readonly Stretch<SharesOfLayer>[]): SeamRun[] {
  type Run = { part: number; lasers: readonly [number, number]; ranges: Growing[]; longest_mm: Mm };
  const found = new Map<string, Run>();
  for (const stretch of stretches)
    for (const { part, lasers, length_mm } of stretch.figures.cuts) {
      const make = (): Run => ({ part, lasers, ranges: [], longest_mm: 0 });
      const run = entry(found, `${part} ${lasers.join()}`, make);
      prolong(run.ranges, stretch);
      run.longest_mm = Math.max(run.longest_mm, length_mm);
    }
  return [...found.values()].sort(
    (a, b) => a.part - b.part || a.lasers[0] - b.lasers[0] || a.lasers[1] - b.lasers[1],
  );
}

/** What the sheet says of the plate as it is divided. */
export const gather = (
  stretches: readonly Stretch<SharesOfLayer>[],
): Omit<SheetFacts, 'outages' | 'checksum'> => ({
  holdings: holdingsOf(stretches),
  seams: seamsOf(stretches),
  mostSeams: stretches.reduce((most, { figures }) => Math.max(most, figures.seamCount), 0),
  longestSeams_mm: stretches.reduce((most, { figures }) => Math.max(most, figures.seamLength_mm), 0),
});
