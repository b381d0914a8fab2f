/**
 * Parts as text for the clipboard, and back: { "format": "evenplate-parts", "version": 1, "shapes", "parts" }, shapes and
 * parts as a layout file has them. What comes back is held against the layout's own schema. Platform millimetres.
 */
import { parseJson } from '../../layout/read';
import { fail, ok, type Fault, type Result } from '../../layout/result';
import type { Layout, Part, PartId, Shape, ShapeId } from '../../layout/types';
import { withAddition } from './review';

export const CLIP_FORMAT = 'evenplate-parts';
const CLIP_VERSION = 1;
const KEYS = ['format', 'version', 'shapes', 'parts'];
/** Characters of a foreign text that a message repeats. */
const SHOWN = 40;

/** What a text held: parts with the shapes they need. */
export interface Clip {
  readonly shapes: Readonly<Record<ShapeId, Shape>>;
  readonly parts: readonly Part[];
  /** Parts whose pin named a laser that the machine does not have. */
  readonly unpinned: readonly PartId[];
}

/** The parts named, as text. */
export function clipText(layout: Layout, ids: readonly PartId[]): string {
  const chosen = new Set(ids);
  const parts = layout.parts.filter(({ id }) => chosen.has(id));
  const names = [...new Set(parts.map(({ shape }) => shape))];
  const shapes = Object.fromEntries(names.map((name) => [name, layout.shapes[name]!]));
  return JSON.stringify({ format: CLIP_FORMAT, version: CLIP_VERSION, shapes, parts });
}

type Json = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Two rows with as many tabs, semicolons or commas, or one with tabs. */
export function isTable(text: string): boolean {
  if (text.trimStart().startsWith('{')) return false;
  const [first = '', second] = text.trim().split(/\r?\n/);
  const even = (separator: string): boolean => {
    const count = first.split(separator).length;
    return count > 1 && count === second?.split(separator).length;
  };
  return (second === undefined && first.includes('\t')) || ['\t', ';', ','].some(even);
}

function foreign(text: string): Fault {
  if (text.trim() === '') return { code: 'clip-nothing', params: {} };
  if (isTable(text)) return { code: 'clip-table', params: {} };
  const [line = ''] = text.trim().split(/\r?\n/);
  const found = [...line].slice(0, SHOWN).join('');
  return { code: 'clip-no-parts', params: { found: found.length < line.length ? `${found}…` : found } };
}

const unreadable = (detail: Fault): Result<never> => fail('clip-wrong-value', { detail });

function envelope(text: string): Result<Json> {
  if (!text.trimStart().startsWith('{')) return { ok: false, fault: foreign(text) };
  const json = parseJson(text);
  if (!json.ok)
    return text.includes(CLIP_FORMAT) ? unreadable(json.fault) : { ok: false, fault: foreign(text) };
  const value = json.value;
  if (!isObject(value)) return { ok: false, fault: foreign(text) };
  if (value['format'] === 'evenplate-layout') return fail('clip-layout');
  if (value['format'] !== CLIP_FORMAT) return { ok: false, fault: foreign(text) };
  if (value['version'] !== CLIP_VERSION)
    return fail('clip-newer-version', { found: String(value['version']), newest: CLIP_VERSION });
  const key = Object.keys(value).find((name) => !KEYS.includes(name));
  return key === undefined
    ? ok(value)
    : unreadable({ code: 'layout-unknown-key', params: { key, path: '' } });
}

/** Raw parts without pins to lasers that the machine does not have. */
function withoutStrangePins(layout: Layout, parts: readonly unknown[]) {
  const known = new Set(layout.machine.lasers.map(({ id }) => id));
  const unpinned: PartId[] = [];
  const lifted = parts.map((part) => {
    if (!isObject(part) || typeof part['laser'] !== 'string' || known.has(part['laser'])) return part;
    unpinned.push(String(part['id']));
    return { ...part, laser: null };
  });
  return { lifted, unpinned };
}

/**
 * What a text holds, for the machine of a layout. Faults: clip-nothing, clip-no-parts, clip-layout, clip-table,
 * clip-newer-version, clip-wrong-value.
 */
export function readClip(layout: Layout, text: string): Result<Clip> {
  const read = envelope(text);
  if (!read.ok) return read;
  const raw = read.value['parts'];
  const { lifted, unpinned } = withoutStrangePins(layout, Array.isArray(raw) ? raw : []);
  const addition = { shapes: read.value['shapes'], parts: Array.isArray(raw) ? lifted : raw };
  const checked = withAddition(
    { ...layout, shapes: {}, parts: [] },
    addition as Pick<Layout, 'shapes' | 'parts'>,
  );
  if (!checked.ok) return unreadable(checked.fault);
  const { shapes, parts } = checked.value;
  return parts.length > 0 ? ok({ shapes, parts, unpinned }) : fail('clip-nothing');
}
