/**
 * How a place in a layout file is written in a message: machine.lasers[2].power_W, shapes["valve block"].slabs[0].
 */
import type { Words } from './result';

export type Path = readonly (string | number)[];

const PLAIN_KEY = /^[A-Za-z_]\w*$/;
const LONGEST_PATH = 120;
const LONGEST_VALUE = 40;

/** The path as text; "the layout" for its root. */
export function pathText(path: Path): string | Words {
  const text = path.reduce<string>((before, key) => {
    if (typeof key === 'number') return `${before}[${key}]`;
    if (!PLAIN_KEY.test(key)) return `${before}[${JSON.stringify(key)}]`;
    return before === '' ? key : `${before}.${key}`;
  }, '');
  if (text === '') return { text: 'the layout' };
  return text.length > LONGEST_PATH ? `${text.slice(0, LONGEST_PATH)}…` : text;
}

function jsonOf(value: unknown): string {
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return 'an object';
  }
}

/** A value as it stood in the file, shortened. */
export function valueText(value: unknown): string | Words {
  if (typeof value === 'number' || value === undefined)
    return value === undefined ? { text: 'missing' } : String(value);
  if (Array.isArray(value)) return { text: 'a list of {count}', values: { count: value.length } };
  if (typeof value === 'object' && value !== null) return { text: 'an object' };
  const text = jsonOf(value);
  return text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE)}…` : text;
}
