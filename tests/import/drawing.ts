/**
 * Small writers of DXF and SVG text, so that a test states its drawing in numbers.
 */
import { readOutlines } from '../../src/import/outlines';
import type { ImportSettings, ImportShape, OutlineImport } from '../../src/import/types';
import { messageText } from '../../src/layout/messages';
import { readFileSync } from 'node:fs';

export const SETTINGS: ImportSettings = { chainGap_mm: 0.01 };

const groups = (...pairs: readonly (string | number)[]): string =>
  pairs.map((value) => `${value}\n`).join('');

export const dxfLine = (x0: number, y0: number, x1: number, y1: number, layer = 'A'): string =>
  groups(0, 'LINE', 8, layer, 10, x0, 20, y0, 11, x1, 21, y1);
export const dxfArc = (x: number, y: number, r: number, from: number, to: number, layer = 'A'): string =>
  groups(0, 'ARC', 8, layer, 10, x, 20, y, 40, r, 50, from, 51, to);
export const dxfCircle = (x: number, y: number, r: number, layer = 'A'): string =>
  groups(0, 'CIRCLE', 8, layer, 10, x, 20, y, 40, r);
/** Vertices as x, y, bulge. */
export const dxfPolyline = (
  vertices: readonly (readonly [number, number, number?])[],
  closed = true,
): string =>
  groups(0, 'LWPOLYLINE', 8, 'A', 90, vertices.length, 70, closed ? 1 : 0) +
  vertices.map(([x, y, bulge = 0]) => groups(10, x, 20, y, 42, bulge)).join('');
/** The form of release 12: one object per vertex. */
export const dxfOldPolyline = (
  vertices: readonly (readonly [number, number, number?])[],
  flags = 1,
): string =>
  groups(0, 'POLYLINE', 8, 'A', 66, 1, 70, flags) +
  vertices.map(([x, y, bulge = 0]) => groups(0, 'VERTEX', 8, 'A', 10, x, 20, y, 42, bulge)).join('') +
  groups(0, 'SEQEND', 8, 'A');
export const dxfObject = groups;

export interface DxfParts {
  readonly insUnits?: number | null;
  readonly tables?: string;
  readonly blocks?: string;
}
const section = (name: string, content: string): string =>
  groups(0, 'SECTION', 2, name) + content + groups(0, 'ENDSEC');

export function dxf(entities: string, { insUnits = 4, tables = '', blocks = '' }: DxfParts = {}): string {
  const header = insUnits === null ? '' : groups(9, '$INSUNITS', 70, insUnits);
  return (
    section('HEADER', header) +
    (tables === '' ? '' : section('TABLES', tables)) +
    (blocks === '' ? '' : section('BLOCKS', blocks)) +
    section('ENTITIES', entities) +
    groups(0, 'EOF')
  );
}

/** A drawing of 100 × 100 mm, one user unit a millimetre. */
export const svg = (
  content: string,
  attributes = 'width="100mm" height="100mm" viewBox="0 0 100 100"',
): string => `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${content}</svg>`;

/** Reads; a refused file fails the test with its sentence. */
export function opened(
  text: string,
  settings: Partial<ImportSettings> = {},
  name = 'drawing',
): OutlineImport {
  const result = readOutlines(name, text, { ...SETTINGS, ...settings });
  if (!result.ok) throw new Error(messageText(result.fault.code, result.fault.params));
  return result.value;
}
/** The code a file is refused with; "accepted" where it is not. */
export function refused(text: string, name = 'drawing'): string {
  const result = readOutlines(name, text, SETTINGS);
  return result.ok ? 'accepted' : result.fault.code;
}
/** The one shape of a drawing. */
export function only(imported: OutlineImport): ImportShape {
  if (imported.shapes.length !== 1) throw new Error(`${imported.shapes.length} shapes instead of 1`);
  return imported.shapes[0];
}
export const areas = (imported: OutlineImport): number[] => imported.shapes.map((shape) => shape.area_mm2);
export const leftOut = (imported: OutlineImport): Record<string, number> =>
  Object.fromEntries(imported.leftOut.map(({ kind, count }) => [kind, count]));
export const fixture = (name: string): string =>
  readFileSync(new URL(`../../shared/fixtures/${name}`, import.meta.url), 'utf8');
