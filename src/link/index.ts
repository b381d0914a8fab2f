/**
 * Layouts as the text after "#" of a link, which a browser never sends to a server, and back:
 *   kind and prefix "." length of the body in base 36 "." body in base64url · check
 * Kind L: one layout and what is looked at; C: two to four layouts side by side. The check is the first eight hexadecimal digits
 * of SHA-256 over all that stands before it. A prefix once written stays readable for ever; a change of the coding takes
 * the next one. Lengths come back to the micrometre, angles to 0.001°, everything else to the bit.
 */
import { fileForm } from '../layout/write';
import { readLayoutValue } from '../layout/read';
import { fail, ok, type Result } from '../layout/result';
import type { Layout } from '../layout/types';
import { toBase64url } from './base64url';
import { writeBody, type Form } from './body';
import { deflate } from './deflate';
import { DICTIONARY_1 } from './dictionary1';
import { opened, PREFIX, sealed, type LinkKind } from './envelope';
import { readView, type LinkView } from './view';

export type { LinkKind, LinkView };
export interface Linked {
  readonly layout: Layout;
  readonly view: LinkView;
}
/** What a text after "#" holds, whichever kind it is; a link of one plate has one layout. */
export interface AnyLinked {
  readonly kind: LinkKind;
  readonly layouts: readonly Layout[];
  readonly view: LinkView;
}
export interface LinkedComparison {
  readonly layouts: readonly Layout[];
  readonly view: LinkView;
}

/** Longer links break in mail and chat programs [common practice, no source]. */
export const COMFORTABLE_LINK = 2000;
const FEWEST_COMPARED = 2;
const MOST_COMPARED = 4;

/** What a text after "#" (a whole address is taken too) claims to be; null where it is no link of ours. */
export function linkKind(text: string): LinkKind | null {
  const kind = PREFIX.exec(text.slice(text.indexOf('#') + 1).trim())?.[1];
  if (kind === undefined) return null;
  return kind === 'L' ? 'layout' : 'comparison';
}

function encode(kind: LinkKind, layouts: readonly Layout[], view: LinkView): string {
  // A written layout has the keys of every version in one place; what a version adds stands beside them.
  const forms = layouts.map((layout) => fileForm(layout) as unknown as Form);
  const { height_mm, camera } = view;
  const seen = {
    ...(height_mm === undefined ? {} : { height_mm }),
    ...(camera === undefined || camera === null ? {} : { camera }),
  };
  return sealed(kind, toBase64url(deflate(writeBody(forms, seen), DICTIONARY_1)));
}

/** The text after "#" that holds a layout and what is looked at. */
export const encodeLink = (layout: Layout, view: LinkView = {}): string => encode('layout', [layout], view);

/** The text after "#" that holds two to four layouts. */
export const encodeComparison = (layouts: readonly Layout[], view: LinkView = {}): string =>
  encode('comparison', layouts, view);

function decode(text: string, kind: LinkKind): Result<LinkedComparison> {
  const body = opened(text, kind);
  if (!body.ok) return body;
  const layouts: Layout[] = [];
  for (const value of body.value.layouts) {
    const layout = readLayoutValue(value);
    if (!layout.ok) return layout;
    layouts.push(layout.value);
  }
  return ok({ layouts, view: readView(body.value.view) });
}

/**
 * The layout in the text after "#" (a whole address is taken too; blanks and line breaks in it are passed over).
 * Faults: link-none, link-other-kind, link-newer, link-cut, link-altered, link-too-large and those of readLayoutValue.
 */
export function decodeLink(text: string): Result<Linked> {
  const linked = decode(text, 'layout');
  if (!linked.ok) return linked;
  const [layout, ...more] = linked.value.layouts;
  return layout === undefined || more.length > 0
    ? fail('link-altered')
    : ok({ layout, view: linked.value.view });
}

/** The layouts of a comparison. Faults: those of decodeLink. */
export function decodeComparison(text: string): Result<LinkedComparison> {
  const linked = decode(text, 'comparison');
  if (!linked.ok) return linked;
  const count = linked.value.layouts.length;
  return count < FEWEST_COMPARED || count > MOST_COMPARED ? fail('link-altered') : linked;
}

/** Either kind, told by its first letter. Faults: those of decodeLink. */
export function decodeAny(text: string): Result<AnyLinked> {
  const kind = linkKind(text);
  if (kind === null) return fail('link-none');
  if (kind === 'comparison') {
    const linked = decodeComparison(text);
    return linked.ok ? ok({ kind, ...linked.value }) : linked;
  }
  const linked = decodeLink(text);
  return linked.ok ? ok({ kind, layouts: [linked.value.layout], view: linked.value.view }) : linked;
}

/** The text after "#" of either kind: one layout for a link of one plate, two to four for a comparison. */
export const encodeAny = ({ kind, layouts, view }: AnyLinked): string => encode(kind, layouts, view);
