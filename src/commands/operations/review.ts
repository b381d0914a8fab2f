/**
 * Holds a layout that came from typed fields against the layout's own rules, and rounds what was typed. Shapes and
 * parts are taken over unread: typed machine and process fields do not touch them, and they are most of a layout.
 */
import { readLayoutValue } from '../../layout/read';
import { ok, type Result } from '../../layout/result';
import { sameValue } from '../../store/same';
import type { Layout } from '../../layout/types';

/** `next` with its lengths and angles rounded; `before` itself where nothing changed; the fault where it is refused. */
export function reviewed(before: Layout, next: Layout): Result<Layout> {
  const read = readLayoutValue({ ...next, shapes: {}, parts: [] });
  if (!read.ok) return read;
  const value: Layout = { ...read.value, shapes: next.shapes, parts: next.parts };
  return ok(sameValue(before, value) ? before : value);
}
