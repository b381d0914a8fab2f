/**
 * What one or several layouts and a view are as bytes, before they are deflated, and back:
 *   length of the text · the text (canonical JSON, RFC 8785, in UTF-8) · whole numbers (integers.ts)
 * The text holds everything that is neither a shape, a part's place nor a ring, in the lowest version of the layout file
 * that can say it, so that what a later version adds is carried without a word here. The numbers are, layout by
 * layout: slabs of each shape (how many; each one's top as the step from the one below, its rings), parts (shape, place
 * as the step from the part before in 1 µm, turn in 0.001°), then the rings that the text leaves out ({"~":0}), by
 * sorted keys. Rings that appeared before, in the same or an earlier layout, are named by their number.
 */
import { utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import { strFromU8 } from 'fflate';
import type { LayoutRing, Part, Shape, Slab } from '../layout/types';
import { IntegerReader, IntegerWriter, Unreadable } from './integers';
import { fromSteps, RingReader, RingWriter, toSteps } from './rings';

type Json = Readonly<Record<string, unknown>>;
/** The written form of a layout, as far as this file knows it. */
export interface Form extends Json {
  readonly shapes: Readonly<Record<string, Shape>>;
  readonly parts: readonly Part[];
}
export interface Body {
  readonly layouts: readonly Json[];
  readonly view: unknown;
}

const STEPS_PER_DEG = 1000;
const LEFT_OUT = '~';

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isPair = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && value.every((entry) => typeof entry === 'number');
/** An outline has at least three points; a pair of clock times or a place is none. */
const isRing = (value: unknown): value is LayoutRing =>
  Array.isArray(value) ? value.length >= 3 && value.every(isPair) : isObject(value) && 'circle_mm' in value;

/** The value with every ring taken out, handed to `take` in the order of sorted keys. */
function withoutRings(value: unknown, take: (ring: LayoutRing) => void): unknown {
  if (isRing(value)) {
    take(value);
    return { [LEFT_OUT]: 0 };
  }
  if (Array.isArray(value)) return value.map((entry: unknown) => withoutRings(entry, take));
  if (!isObject(value)) return value;
  const keys = Object.keys(value).sort();
  return Object.fromEntries(keys.map((key) => [key, withoutRings(value[key], take)]));
}
/** The inverse, with the rings in the same order. */
function withRings(value: unknown, give: () => LayoutRing): unknown {
  if (Array.isArray(value)) return value.map((entry: unknown) => withRings(entry, give));
  if (!isObject(value)) return value;
  if (Object.hasOwn(value, LEFT_OUT)) return give();
  const keys = Object.keys(value).sort();
  return Object.fromEntries(keys.map((key) => [key, withRings(value[key], give)]));
}

function writeSlabs(slabs: readonly Slab[], out: IntegerWriter, rings: RingWriter): void {
  out.whole(slabs.length);
  let below = 0;
  for (const slab of slabs) {
    const top = toSteps(slab.to_mm);
    out.signed(top - below);
    below = top;
    out.whole(slab.rings.length);
    for (const ring of slab.rings) rings.ring(ring);
  }
}
function readSlabs(from: IntegerReader, rings: RingReader): Slab[] {
  let top = 0;
  return Array.from(counted(from), () => {
    top += from.signed();
    return { to_mm: fromSteps(top), rings: Array.from(counted(from), () => rings.ring()) };
  });
}
/** As many turns as the next number says; the reader stops by itself where the body ends. */
function* counted(from: IntegerReader): Generator<number> {
  const count = from.whole();
  for (let i = 0; i < count; i++) yield i;
}

/** What of a part is not its own default. */
function partWords({ id, shape: _shape, at_mm: _at, turn_deg: _turn, ...rest }: Part): readonly unknown[] {
  const usual: Json = { seams: 'free', laser: null, timeFactor: 1 };
  const own = Object.entries(rest).filter(([key, value]) => usual[key] !== value);
  return own.length === 0 ? [id] : [id, Object.fromEntries(own)];
}
/** Parts without anything of their own are only their id in the text. */
const partText = (part: Part): unknown => {
  const words = partWords(part);
  return words.length === 1 ? words[0] : words;
};
function writePlaces(parts: readonly Part[], ids: readonly string[], out: IntegerWriter): void {
  const numbers = new Map(ids.map((id, index) => [id, index]));
  let [x, y] = [0, 0];
  for (const { shape, at_mm, turn_deg } of parts) {
    const [nextX, nextY] = [toSteps(at_mm[0]), toSteps(at_mm[1])];
    out.whole(numbers.get(shape) ?? ids.length);
    out.signed(nextX - x);
    out.signed(nextY - y);
    out.whole(Math.round(turn_deg * STEPS_PER_DEG));
    [x, y] = [nextX, nextY];
  }
}
function readParts(texts: readonly unknown[], ids: readonly unknown[], from: IntegerReader): Json[] {
  let [x, y] = [0, 0];
  return texts.map((text) => {
    const [id, own] = Array.isArray(text) ? (text as unknown[]) : [text, {}];
    const shape = ids[from.whole()];
    [x, y] = [x + from.signed(), y + from.signed()];
    const place = { shape, at_mm: [fromSteps(x), fromSteps(y)], turn_deg: from.whole() / STEPS_PER_DEG };
    return { ...(isObject(own) ? own : {}), id, ...place };
  });
}

function writeForm({ shapes, parts, ...rest }: Form, out: IntegerWriter, rings: RingWriter): unknown {
  const ids = Object.keys(shapes);
  for (const id of ids) writeSlabs(shapes[id]!.slabs, out, rings);
  writePlaces(parts, ids, out);
  const plain = withoutRings(rest, (ring) => rings.ring(ring));
  return { ...(plain as Json), shapes: ids, parts: parts.map(partText) };
}
function readForm(text: unknown, from: IntegerReader, rings: RingReader): Json {
  if (!isObject(text)) throw new Unreadable('a layout is missing');
  const { shapes, parts, ...rest } = text;
  if (!Array.isArray(shapes) || !Array.isArray(parts)) throw new Unreadable('a list is missing');
  const ids = shapes.map(String);
  const slabs = ids.map((id) => [id, { slabs: readSlabs(from, rings) }] as const);
  const placed = readParts(parts, ids, from);
  const plain = withRings(rest, () => rings.ring()) as Json;
  return { ...plain, shapes: Object.fromEntries(slabs), parts: placed };
}

/** The bytes of some layouts in their written form, and what is looked at. */
export function writeBody(forms: readonly Form[], view: Json): Uint8Array {
  const numbers = new IntegerWriter();
  const rings = new RingWriter(numbers);
  const layouts = forms.map((form) => writeForm(form, numbers, rings));
  const seen = Object.keys(view).length === 0 ? {} : { view };
  const text = utf8ToBytes(canonicalize({ layouts, ...seen }) ?? '');
  const length = new IntegerWriter();
  length.whole(text.length);
  const parts = [length.done(), text, numbers.done()];
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  parts.reduce((at, part) => (bytes.set(part, at), at + part.length), 0);
  return bytes;
}

/** What the bytes say; nothing of it is checked yet. Throws where they say nothing. */
export function readBody(bytes: Uint8Array): Body {
  const from = new IntegerReader(bytes);
  const text: unknown = JSON.parse(strFromU8(from.take(from.whole())));
  if (!isObject(text) || !Array.isArray(text['layouts'])) throw new Unreadable('it holds no layouts');
  const rings = new RingReader(from);
  const layouts = text['layouts'].map((layout: unknown) => readForm(layout, from, rings));
  if (!from.ended) throw new Unreadable('something follows its end');
  return { layouts, view: text['view'] };
}
