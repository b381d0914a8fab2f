/**
 * Holds what came from typed fields, drawing and opened files against the layout's own rules, and rounds it. What an
 * operation does not touch (above all the shapes, most of a layout) is taken over unread.
 */
import { readLayoutValue } from '../../layout/read';
import { ok, type Result } from '../../layout/result';
import type { Layout, LayoutAt } from '../../layout/types';
import { sameValue } from '../../layout/same';

type Addition = Pick<Layout, 'shapes' | 'parts'>;
const NOTHING: Addition = { shapes: {}, parts: [] };

/**
 * `next`, whose shapes and parts are sound, with everything else read anew; `before` itself where nothing changed;
 * the fault where it is refused.
 */
export function reviewed(before: Layout, next: Layout): Result<Layout> {
  const read = readLayoutValue({ ...next, ...NOTHING });
  if (!read.ok) return read;
  const value: Layout = { ...read.value, shapes: next.shapes, parts: next.parts };
  return ok(sameValue(before, value) ? before : value);
}

/** The same for a layout as divided at one height. */
export function reviewedAt(before: LayoutAt, next: LayoutAt): Result<LayoutAt> {
  const all = (at: LayoutAt): Layout => ({ ...at, zoning: [{ from_mm: 0, zoning: at.zoning }] });
  const result = reviewed(all(before), all(next));
  if (!result.ok) return result;
  const after: LayoutAt = { ...result.value, zoning: result.value.zoning[0]!.zoning };
  return ok(sameValue(before, after) ? before : after);
}

/** `layout` with new shapes and parts of these shapes, rounded; the fault where one of them is refused. */
export function withAddition(layout: Layout, { shapes, parts }: Addition): Result<Layout> {
  const read = readLayoutValue({ ...layout, shapes, parts });
  if (!read.ok) return read;
  return ok({
    ...layout,
    shapes: { ...layout.shapes, ...read.value.shapes },
    parts: [...layout.parts, ...read.value.parts],
  });
}

/** The value of a result, or the layout as it was: for gestures, where a slip of the hand simply does nothing. */
export const orUnchanged = <L extends Layout | LayoutAt>(layout: L, result: Result<L>): L =>
  result.ok ? result.value : layout;
