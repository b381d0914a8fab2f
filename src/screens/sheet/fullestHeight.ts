/** Where the plan of the sheet says most: the lowest height at which most parts are exposed. Millimetres above the platform. */
import type { SheetFacts } from '../../export/sheet/types';
import type { Layout } from '../../layout/types';
import type { Mm } from '../../units/types';

export function fullestHeight(
  { process }: Pick<Layout, 'process'>,
  { holdings }: Pick<SheetFacts, 'holdings'>,
): Mm {
  const all = holdings.flatMap(({ part, ranges }) => ranges.map((range) => ({ part, ...range })));
  const partsAt = (z: Mm): number =>
    new Set(all.flatMap(({ part, from_mm, to_mm }) => (from_mm <= z && z < to_mm ? [part] : []))).size;
  const starts = [...new Set(all.map(({ from_mm }) => from_mm))].sort((a, b) => a - b);
  let [best, most] = [0, 0];
  for (const from of starts) {
    const parts = partsAt(from);
    if (parts > most) [best, most] = [from, parts];
  }
  return best + process.layer_mm / 2;
}
