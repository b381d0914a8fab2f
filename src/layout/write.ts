/**
 * Writes a layout as a file: all keys, in the order of DESIGN's file format, one short thing per line. Reading what
 * was written gives an equal layout.
 */
import type { Layout } from './types';

const LINE_LENGTH = 110;
const STEP = '  ';

interface Entry {
  readonly key: string;
  readonly value: unknown;
}
const entriesOf = (value: object): readonly Entry[] =>
  Array.isArray(value)
    ? value.map((entry: unknown) => ({ key: '', value: entry }))
    : Object.entries(value).map(([key, entry]) => ({
        key: `${JSON.stringify(key)}: `,
        value: entry as unknown,
      }));

/** The value on one line with blanks after commas and inside braces. */
function oneLine(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inside = entriesOf(value).map((entry) => entry.key + oneLine(entry.value));
  if (Array.isArray(value)) return `[${inside.join(', ')}]`;
  return inside.length === 0 ? '{}' : `{ ${inside.join(', ')} }`;
}

function pretty(value: unknown, indent: string): string {
  const short = oneLine(value);
  const isFlat = typeof value !== 'object' || value === null;
  if (isFlat || short.length + indent.length <= LINE_LENGTH) return short;
  const deeper = indent + STEP;
  const lines = entriesOf(value).map((entry) => deeper + entry.key + pretty(entry.value, deeper));
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}\n${lines.join(',\n')}\n${indent}${close}`;
}

/** The layout as JSON text that ends in a newline. */
export const writeLayout = (layout: Layout): string => `${pretty(layout, '')}\n`;
