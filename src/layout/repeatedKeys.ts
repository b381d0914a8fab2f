/**
 * Does a JSON text give one object the same key twice? RFC 8259, 4 leaves the outcome open (names "SHOULD be unique") and
 * JSON.parse keeps the last value in silence, so a shape could vanish from a plate. One pass over the characters of a
 * text that JSON.parse has accepted: strings are jumped over, nothing is built but the keys of the objects that are open.
 */
import type { Path } from './path';

export interface RepeatedKey {
  readonly key: string;
  /** The object that holds it twice. */
  readonly path: Path;
  /** Line of the second one, from 1. */
  readonly line: number;
}
interface Level {
  /** Keys met so far; empty in a list. */
  readonly keys: Set<string>;
  inObject: boolean;
  key: string;
  index: number;
}
const QUOTE = 34;
const COMMA = 44;
const COLON = 58;
const LIST_OPENS = 91;
const BACKSLASH = 92;
const LIST_CLOSES = 93;
const OBJECT_OPENS = 123;
const OBJECT_CLOSES = 125;

/** No layout nests deeper than ten; what does is left to the schema, which refuses it. */
const MOST_LEVELS = 64;

/** Place of the quotation mark that ends the string begun at `start`. */
function stringEnd(text: string, start: number): number {
  for (let end = text.indexOf('"', start + 1); ; end = text.indexOf('"', end + 1)) {
    let slashes = 0;
    while (text.charCodeAt(end - 1 - slashes) === BACKSLASH) slashes += 1;
    if (slashes % 2 === 0) return end;
  }
}

/** The key between two quotation marks; "a" and its escaped form are the same key. */
function keyAt(text: string, start: number, end: number): string {
  const raw = text.slice(start + 1, end);
  return raw.includes('\\') ? (JSON.parse(`"${raw}"`) as string) : raw;
}

/** Levels of nesting; those left are used again, since a layout opens a list for every point. */
class Levels {
  private readonly all: Level[] = [];
  private depth = 0;

  open(inObject: boolean): Level {
    const level = this.all[this.depth] ?? { keys: new Set<string>(), inObject, key: '', index: 0 };
    this.all[this.depth] = level;
    this.depth += 1;
    if (level.keys.size > 0) level.keys.clear();
    level.inObject = inObject;
    level.index = 0;
    return level;
  }
  close(): Level | undefined {
    this.depth -= 1;
    return this.all[this.depth - 1];
  }
  get tooDeep(): boolean {
    return this.depth > MOST_LEVELS;
  }
  /** The way to the innermost level. */
  path(): Path {
    const outer = this.all.slice(0, this.depth - 1);
    return outer.map(({ inObject, key, index }) => (inObject ? key : index));
  }
}

const lineOf = (text: string, at: number): number => text.slice(0, at).split('\n').length;

/** The first key that an object of a well-formed JSON text holds twice; null where none does. */
export function repeatedKey(text: string): RepeatedKey | null {
  const levels = new Levels();
  let level: Level | undefined;
  let keyComes = false;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === COMMA) {
      keyComes = level?.inObject === true;
      if (level !== undefined) level.index += 1;
    } else if (c === QUOTE) {
      const end = stringEnd(text, i);
      if (keyComes && level !== undefined) {
        const key = keyAt(text, i, end);
        if (level.keys.has(key)) return { key, path: levels.path(), line: lineOf(text, i) };
        level.keys.add(key);
        level.key = key;
      }
      i = end;
    } else if (c === OBJECT_OPENS || c === LIST_OPENS) {
      keyComes = c === OBJECT_OPENS;
      level = levels.open(keyComes);
      if (levels.tooDeep) return null;
    } else if (c === COLON) keyComes = false;
    else if (c === OBJECT_CLOSES || c === LIST_CLOSES) level = levels.close();
  }
  return null;
}
