/**
 * DXF text to its objects. The format is pairs of lines, a group code and a value; code 0 begins an object (DXF
 * Reference, "Group codes" [memory]). Read by our own scanner: npm dxf-parser 1.1.2 waits for ever on some damaged
 * files and loses vertices, weights and mirrored circles. Lengths stay in the drawing's units here.
 */
import { fail, ok, type Result } from '../../layout/result';
import { MOST_VISITS } from '../limits';
import type { Reading } from '../steps';

export interface Entity {
  readonly type: string;
  /** Line of the file it begins at. */
  readonly line: number;
  /** Group codes with numbers, in order. */
  readonly codes: number[];
  readonly numbers: number[];
  /** Group codes with text (2: name, 8: layer). */
  readonly texts: Map<number, string>;
  /** Of a POLYLINE. */
  readonly vertices: Entity[];
}
export interface Block {
  readonly baseX: number;
  readonly baseY: number;
  readonly entities: readonly Entity[];
}
export interface Layer {
  readonly off: boolean;
  readonly frozen: boolean;
}
export interface DxfDocument {
  /** $INSUNITS; null where the file has none. */
  readonly insUnits: number | null;
  readonly layers: ReadonlyMap<string, Layer>;
  readonly blocks: ReadonlyMap<string, Block>;
  readonly entities: readonly Entity[];
}

/** The first number of a group code; `otherwise` where the object has none. */
export function numberOf(entity: Entity, code: number, otherwise: number): number {
  const i = entity.codes.indexOf(code);
  return i < 0 ? otherwise : entity.numbers[i];
}
/** All numbers of a group code, in order. */
export const numbersOf = (entity: Entity, code: number): number[] =>
  entity.numbers.filter((_, i) => entity.codes[i] === code);

/** Names are compared without regard to case. */
export const key = (name: string): string => name.toUpperCase();

const BINARY_SENTINEL = 'AutoCAD Binary DXF';

/** Codes that carry numbers (DXF Reference, "Group code value types"). */
const isNumeric = (code: number): boolean =>
  (code >= 10 && code <= 99) ||
  (code >= 110 && code <= 149) ||
  (code >= 160 && code <= 179) ||
  (code >= 210 && code <= 289);

/** Pairs of lines in one file. */
const MOST_GROUPS = 20 * MOST_VISITS;

/** What follows this code belongs to an embedded object of its own. */
const EMBEDDED = 101;

class Builder {
  insUnits: number | null = null;
  readonly layers = new Map<string, Layer>();
  readonly blocks = new Map<string, Block>();
  readonly entities: Entity[] = [];
  section = '';
  ended = false;
  private sectionWanted = false;
  private variable = '';
  private current: Entity | null = null;
  private embedded = false;
  private block: { name: string; baseX: number; baseY: number; entities: Entity[] } | null = null;

  /** Takes one group; false where a number was expected and not found. */
  group(code: number, value: string, lineNumber: number): boolean {
    if (code === 0) {
      this.finish();
      this.begin(value, lineNumber);
      return true;
    }
    if (this.sectionWanted && code === 2) {
      this.section = value;
      this.sectionWanted = false;
      return true;
    }
    if (this.section === 'HEADER') return this.header(code, value);
    if (this.current === null || this.embedded) return true;
    if (code === EMBEDDED) this.embedded = true;
    else if (code === 2 || code === 8) this.current.texts.set(code, value);
    else if (isNumeric(code)) {
      const number = value === '' ? Number.NaN : Number(value);
      if (!Number.isFinite(number)) return false;
      this.current.codes.push(code);
      this.current.numbers.push(number);
    }
    return true;
  }

  private header(code: number, value: string): boolean {
    if (code === 9) this.variable = value;
    else if (this.variable === '$INSUNITS' && code === 70) this.insUnits = Number(value);
    return true;
  }

  private begin(type: string, lineNumber: number): void {
    this.current = null;
    this.embedded = false;
    if (type === 'SECTION') this.sectionWanted = true;
    else if (type === 'ENDSEC') this.section = '';
    else if (type === 'EOF') this.ended = true;
    else this.current = { type, line: lineNumber, codes: [], numbers: [], texts: new Map(), vertices: [] };
  }

  /** Puts the object that just ended where it belongs. */
  finish(): void {
    const done = this.current;
    if (done === null) return;
    if (this.section === 'ENTITIES') place(this.entities, done);
    else if (this.section === 'BLOCKS') this.blockObject(done);
    else if (this.section === 'TABLES' && done.type === 'LAYER') this.layer(done);
  }

  private layer(record: Entity): void {
    const flags = numberOf(record, 70, 0);
    const layer = { off: numberOf(record, 62, 7) < 0, frozen: (flags & 1) !== 0 };
    this.layers.set(key(record.texts.get(2) ?? ''), layer);
  }

  private blockObject(done: Entity): void {
    if (done.type === 'BLOCK') {
      const name = key(done.texts.get(2) ?? '');
      this.block = { name, baseX: numberOf(done, 10, 0), baseY: numberOf(done, 20, 0), entities: [] };
    } else if (done.type === 'ENDBLK') {
      if (this.block !== null) this.blocks.set(this.block.name, this.block);
      this.block = null;
    } else if (this.block !== null) place(this.block.entities, done);
  }
}

/** Vertices go to the polyline before them. */
function place(list: Entity[], done: Entity): void {
  if (done.type === 'SEQEND') return;
  const last = list[list.length - 1];
  if (done.type === 'VERTEX' && last?.type === 'POLYLINE') last.vertices.push(done);
  else list.push(done);
}

/** Lines of the text one after the other, whatever the line ends are. */
class Lines {
  number = 0;
  private at = 0;
  private readonly text: string;
  constructor(text: string) {
    this.text = text.includes('\n') ? text : text.replace(/\r/g, '\n');
  }
  next(): string | null {
    if (this.at >= this.text.length) return null;
    const end = this.text.indexOf('\n', this.at);
    const stop = end < 0 ? this.text.length : end;
    const line = this.text.slice(this.at, stop).trim();
    this.at = stop + 1;
    this.number += 1;
    return line;
  }
}

/** Groups between two steps. */
const STRIDE = 20_000;

/** Reads the objects of a DXF file. */
export function* readDocument(text: string): Reading<Result<DxfDocument>> {
  if (text.startsWith(BINARY_SENTINEL)) return fail('dxf-binary');
  const lines = new Lines(text);
  const builder = new Builder();
  while (!builder.ended) {
    const code = lines.next();
    if (code === null || (code === '' && lines.next() === null)) break;
    if (!/^-?\d{1,4}$/.test(code)) return fail('dxf-broken', { line: lines.number, found: shown(code) });
    const value = lines.next();
    if (value === null) return fail('dxf-cut-off', { line: lines.number });
    if (!builder.group(Number(code), value, lines.number))
      return fail('dxf-bad-number', { line: lines.number, found: shown(value), code });
    if (lines.number % STRIDE === 0) yield 'text';
    if (lines.number / 2 > MOST_GROUPS) return fail('outlines-too-much', { found: lines.number });
  }
  builder.finish();
  if (!builder.ended && builder.section !== '') return fail('dxf-cut-off', { line: lines.number });
  const { insUnits, layers, blocks, entities } = builder;
  return ok({ insUnits, layers, blocks, entities });
}

const shown = (value: string): string => (value.length > 40 ? `${value.slice(0, 40)}…` : value);
