/**
 * Links of any size, written and read beside the page: the shapes of a mesh make one of hundreds of thousands of
 * characters, which takes seconds. What is written is read again at once and compared, so that nobody sends a link that brings
 * something else.
 */
import type { Fault } from '../layout/result';
import { sameValue } from '../layout/same';
import { decodeAny, encodeAny, type AnyLinked } from '../link/index';
import { putTogether, takeApart, type LayoutApart } from './layoutApart';

/** As AnyLinked, its layouts in halves. */
export interface LinkedApart extends Omit<AnyLinked, 'layouts'> {
  readonly layouts: readonly LayoutApart[];
}
export type LinkQuestion =
  { readonly kind: 'write'; readonly linked: LinkedApart } | { readonly kind: 'read'; readonly text: string };
export type LinkAnswer =
  | { readonly kind: 'written'; readonly text: string }
  | { readonly kind: 'read'; readonly linked: LinkedApart }
  | { readonly kind: 'fault'; readonly fault: Fault };

const faulty = (fault: Fault): LinkAnswer => ({ kind: 'fault', fault });

/** The text after "#". Faults: link-not-made, and those of decodeAny where it would be refused on the other side. */
export function writtenLink(linked: AnyLinked): LinkAnswer {
  const text = encodeAny(linked);
  const back = decodeAny(text);
  if (!back.ok) return faulty(back.fault);
  return sameValue(back.value.layouts, linked.layouts)
    ? { kind: 'written', text }
    : faulty({ code: 'link-not-made', params: {} });
}

export const linkedApart = (linked: AnyLinked, footprints: boolean): LinkedApart => ({
  ...linked,
  layouts: linked.layouts.map((layout) => takeApart(layout, footprints)),
});

/** Answers a question of the page. */
export function answerLink(question: LinkQuestion): LinkAnswer {
  if (question.kind === 'write')
    return writtenLink({ ...question.linked, layouts: question.linked.layouts.map(putTogether) });
  const read = decodeAny(question.text);
  return read.ok ? { kind: 'read', linked: linkedApart(read.value, true) } : faulty(read.fault);
}
