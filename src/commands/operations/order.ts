/**
 * The order of the parts: the one that file, list, tables and sheet go by. What moves keeps its own order among itself.
 */
import type { Layout, Part, PartId } from '../../layout/types';

/** The layout with its parts in another order; itself where that is the order it has. */
const inOrder = (layout: Layout, parts: readonly Part[]): Layout =>
  parts.every((part, i) => part === layout.parts[i]) ? layout : { ...layout, parts };

/** Each of these parts one place up (−1) or down (+1) the list; those that have come to its end stay there. */
export function stepInList(layout: Layout, ids: readonly PartId[], step: -1 | 1): Layout {
  const chosen = new Set(ids);
  const parts = [...layout.parts];
  const free = (i: number): boolean => parts[i] !== undefined && !chosen.has(parts[i].id);
  const last = parts.length - 1;
  for (let k = 0; k <= last; k++) {
    const [at, next] = step < 0 ? [k, k - 1] : [last - k, last - k + 1];
    if (chosen.has(parts[at]!.id) && free(next)) [parts[at], parts[next]] = [parts[next]!, parts[at]!];
  }
  return inOrder(layout, parts);
}

/** These parts in one block where `gap` is: 0 above the first part of the list, n below the n-th. */
export function placeInList(layout: Layout, ids: readonly PartId[], gap: number): Layout {
  const chosen = new Set(ids);
  const moved = layout.parts.filter(({ id }) => chosen.has(id));
  const rest = layout.parts.filter(({ id }) => !chosen.has(id));
  const above = layout.parts.slice(0, Math.max(0, gap)).filter(({ id }) => !chosen.has(id)).length;
  return inOrder(layout, [...rest.slice(0, above), ...moved, ...rest.slice(above)]);
}

/** All parts in the order of `ids`; parts that are not named keep their order behind them. */
export function orderParts(layout: Layout, ids: readonly PartId[]): Layout {
  const place = new Map(ids.map((id, i) => [id, i]));
  const of = ({ id }: Part): number => place.get(id) ?? ids.length;
  return inOrder(
    layout,
    layout.parts.toSorted((a, b) => of(a) - of(b)),
  );
}
