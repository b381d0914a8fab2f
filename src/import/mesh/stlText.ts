/**
 * STL as text: "solid name", then "facet normal … outer loop vertex x y z (three times) endloop endfacet", then "endsolid";
 * several solids may follow each other. Words in any case, any white space.
 * Lines of comment and colour that some programs add are passed over. Normals are not read (see stl.ts). Source: 3D
 * Systems, StereoLithography Interface Specification, 1989 [memory].
 */
import { strFromU8 } from 'fflate';
import { fail, ok, type Fault, type Result } from '../../layout/result';
import { IndexTriples } from './growing';
import { MOST_BODIES, MOST_TRIANGLES } from './limits';
import { coordinateFault, readDecimal } from './numbers';
import type { StlBodies, Watching } from './stl';
import type { MeshBody, MeshLeftOut } from './types';
import { PointIndex } from './weld';

const LINE_FEED = 0x0a;
const RETURN = 0x0d;
const BLANK = 0x20;
/** They begin a comment. */
const HASH = 0x23;
const SEMICOLON = 0x3b;
const SMALL = 0x20;
const LONGEST_NAME = 60;
const LONGEST_SHOWN = 20;
/** Facets between two reports of progress. */
const STEP = 16_384;

const codes = (word: string): Uint8Array => Uint8Array.from(word, (letter) => letter.charCodeAt(0));
const SOLID = codes('solid');
const FACET = codes('facet');
const OUTER = codes('outer');
const LOOP = codes('loop');
const VERTEX = codes('vertex');
const END_LOOP = codes('endloop');
const END_FACET = codes('endfacet');
const END_SOLID = codes('endsolid');
const COLOUR = codes('color');

/** The text word by word. */
class Words {
  /** The current word is bytes[from … to). */
  from = 0;
  to = 0;
  constructor(readonly bytes: Uint8Array) {}

  /** To the next word; false at the end. */
  next(): boolean {
    const { bytes } = this;
    let at = this.to;
    for (;;) {
      while (at < bytes.length && bytes[at] <= BLANK) at += 1;
      if (bytes[at] !== HASH && bytes[at] !== SEMICOLON) break;
      at = this.lineEnd(at);
    }
    this.from = at;
    while (at < bytes.length && bytes[at] > BLANK) at += 1;
    this.to = at;
    return this.from < at;
  }
  is(word: Uint8Array): boolean {
    if (this.to - this.from !== word.length) return false;
    for (let i = 0; i < word.length; i++) if ((this.bytes[this.from + i] | SMALL) !== word[i]) return false;
    return true;
  }
  nextIs(word: Uint8Array): boolean {
    return this.next() && this.is(word);
  }
  /** The rest of the line after the current word. */
  restOfLine(): string {
    const start = this.to;
    const at = this.lineEnd(start);
    this.to = at;
    return strFromU8(this.bytes.subarray(start, Math.min(at, start + 4 * LONGEST_NAME))).trim();
  }
  private lineEnd(from: number): number {
    let at = from;
    while (at < this.bytes.length && this.bytes[at] !== LINE_FEED && this.bytes[at] !== RETURN) at += 1;
    return at;
  }
  get line(): number {
    let count = 1;
    for (let i = 0; i < this.from; i++) if (this.bytes[i] === LINE_FEED) count += 1;
    return count;
  }
  /** What stands here instead of what is accepted, or that the text ends. */
  wrong(accepted: string): Result<never> {
    if (this.from === this.to)
      return fail('mesh-truncated', {
        detail: { text: 'the text ends where “{accepted}” is expected', values: { accepted } },
      });
    const found = strFromU8(this.bytes.subarray(this.from, Math.min(this.to, this.from + LONGEST_SHOWN)));
    return fail('mesh-stl-word', { line: this.line, found, accepted });
  }
}

class Solid {
  readonly points = new PointIndex();
  readonly triangles = new IndexTriples();
  private readonly corner = new Uint32Array(3);
  constructor(readonly name: string) {}

  /** One facet, from the word "facet" on; null where it is sound. */
  readFacet(words: Words): Result<never> | null {
    // The normal: up to four words that are not looked at.
    for (let skipped = 0; !words.nextIs(OUTER); skipped++)
      if (skipped > 4 || words.from === words.to) return words.wrong('outer loop');
    if (!words.nextIs(LOOP)) return words.wrong('loop');
    let count = 0;
    while (words.next() && words.is(VERTEX)) {
      const fault = this.readVertex(words, count);
      if (fault) return fault;
      count += 1;
    }
    if (!words.is(END_LOOP)) return words.wrong('endloop');
    if (count !== 3) return fail('mesh-stl-points', { line: words.line, found: count });
    if (!words.nextIs(END_FACET)) return words.wrong('endfacet');
    this.triangles.push(this.corner[0], this.corner[1], this.corner[2]);
    return null;
  }

  private readVertex(words: Words, corner: number): Result<never> | null {
    const x = number(words);
    const y = number(words);
    const z = number(words);
    const fault: Fault | null = coordinateFault(x, y, z);
    if (fault) {
      if (words.to === words.bytes.length)
        return fail('mesh-truncated', { detail: { text: 'the text ends within a point' } });
      return fail(fault.code, {
        ...fault.params,
        where: { text: 'line {line}', values: { line: words.line } },
      });
    }
    if (corner < 3) this.corner[corner] = this.points.add(x, y, z);
    return null;
  }
}

const number = (words: Words): number =>
  words.next() ? readDecimal(words.bytes, words.from, words.to) : NaN;

/** The first facet on the line of the name, which may itself hold these words: three numbers follow, and the loop or the line's end. */
const FACET_BEHIND =
  /\bfacet\s+normal(?:\s+(?:[-+]?[\d.]+(?:e[-+]?\d+)?|[-+]?nan|[-+]?inf\w*)){3}\s*(?:$|outer\b.*$)/i;

/** "solid name", also where the first facet follows on the same line. */
const nameOf = (rest: string): string => rest.replace(FACET_BEHIND, '').trim().slice(0, LONGEST_NAME);

/** Faults: mesh-truncated, mesh-stl-word, mesh-stl-points, mesh-bad-number, mesh-too-far, mesh-too-much, mesh-empty. */
export function readTextStl(bytes: Uint8Array, name: string, watch: Watching): Result<StlBodies> {
  const words = new Words(bytes);
  const solids: Solid[] = [];
  let facets = 0;
  while (words.next()) {
    if (!words.is(SOLID)) return words.wrong('solid');
    if (solids.length >= MOST_BODIES)
      return fail('mesh-too-much', { limit: MOST_BODIES, what: { text: 'solids ¦ counted' } });
    const solid = new Solid(startSolid(words));
    solids.push(solid);
    while (toFacet(words)) {
      const fault = solid.readFacet(words);
      if (fault) return fault;
      facets += 1;
      if (facets > MOST_TRIANGLES)
        return fail('mesh-too-much', { limit: MOST_TRIANGLES, what: { text: 'triangles ¦ counted' } });
      if (facets % STEP === 0) watch(words.to / bytes.length);
    }
    if (!words.is(END_SOLID)) return words.wrong('endsolid');
    words.restOfLine();
  }
  if (facets === 0) return fail('mesh-empty', { name });
  return ok(bodiesOf(solids, name));
}

/** To the next facet of a solid, past lines of colour; false where something else stands. */
function toFacet(words: Words): boolean {
  while (words.next() && words.is(COLOUR)) words.restOfLine();
  return words.is(FACET);
}

/** Reads the solid's name and stands before its first facet. */
function startSolid(words: Words): string {
  const after = words.to;
  const rest = words.restOfLine();
  if (FACET_BEHIND.test(rest)) {
    words.to = after;
    while (words.next() && !words.is(FACET));
    words.to = words.from;
  }
  return nameOf(rest);
}

function bodiesOf(solids: readonly Solid[], fileName: string): StlBodies {
  const leftOut: MeshLeftOut[] = [];
  const bodies: MeshBody[] = [];
  for (const { name, points, triangles } of solids) {
    if (triangles.length === 0) leftOut.push({ kind: 'empty', what: name, count: 1 });
    else
      bodies.push({
        name: name === '' ? fileName : name,
        mesh: { points: points.all(), triangles: triangles.all() },
        copies: 1,
      });
  }
  return { bodies, leftOut };
}
