/**
 * The border where outline files come in: SVG or DXF text to shapes in millimetres, +x right, +y up. A file that is
 * malformed or too large is a fault; what is well formed but no outline is counted in `leftOut`.
 */
import { fail, ok, type Result } from '../layout/result';
import { readDxf } from './dxf/read';
import { LeftOutList } from './leftOut';
import { Budget, MOST_CHARACTERS, MOST_CURVES, MOST_RINGS } from './limits';
import { nest } from './nest';
import { overlappingShapes, smallShapes } from './remarks';
import { finish, type Reading } from './steps';
import { readSvg } from './svg/read';
import type { ImportSettings, OutlineImport } from './types';

export { placeImport } from './place';
export { importProblems, importRemarks } from './problems';
export { finish, type Reading, type ReadingStep } from './steps';
export { DRAWING_UNITS, MM_PER_UNIT } from './units';
export type * from './types';

const CHARACTERS_PER_MB = 1_000_000;

/** Reads an outline file at once; see readingOutlines. */
export const readOutlines = (
  name: string,
  text: string,
  settings: ImportSettings,
  budget: Budget = new Budget(),
): Result<OutlineImport> => finish(readingOutlines(name, text, settings, budget));

/**
 * Reads an outline file step by step.
 * @param name file name; its ending decides the kind, the text's beginning where the ending is another
 * @param text the file's text (a DXF in binary form is recognised and refused)
 * @param budget counts what the reading costs and ends it
 */
export function* readingOutlines(
  name: string,
  text: string,
  settings: ImportSettings,
  budget: Budget = new Budget(),
): Reading<Result<OutlineImport>> {
  if (text.length > MOST_CHARACTERS) {
    const found = Math.ceil(text.length / CHARACTERS_PER_MB);
    return fail('outlines-too-large', { found, limit: MOST_CHARACTERS / CHARACTERS_PER_MB });
  }
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const kind = kindOf(name, plain);
  if (kind === null) return fail('outlines-unknown-kind', { name });
  const leftOut = new LeftOutList();
  const read = kind === 'svg' ? readSvg : readDxf;
  const found = yield* read(plain, settings, leftOut, budget);
  if (!found.ok) return found;
  const { rings, unit, repaired, closed } = found.value;
  if (!budget.left || rings.length > MOST_RINGS) return fail('outlines-too-much', { found: MOST_CURVES });
  yield 'outlines';
  const nesting = nest(rings);
  for (const duplicate of nesting.duplicates) leftOut.add('duplicate', duplicate);
  const list = leftOut.list();
  if (nesting.shapes.length === 0 && list.length === 0) return fail('outlines-empty', { name });
  const box = nesting.box ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const { shapes } = nesting;
  yield 'outlines';
  return ok({
    name,
    kind,
    unit,
    box,
    shapes,
    leftOut: list,
    repaired: repaired + nesting.repaired,
    closed,
    small: smallShapes(shapes),
    overlaps: overlappingShapes(shapes),
  });
}

function kindOf(name: string, text: string): 'svg' | 'dxf' | null {
  const start = text.slice(0, 1000).trimStart();
  if (/\.svg$/i.test(name) || (start.startsWith('<') && !/\.dxf$/i.test(name))) return 'svg';
  if (/\.dxf$/i.test(name) || /^(0\s*\r?\n\s*SECTION|999\s*\r?\n)/.test(start)) return 'dxf';
  return start.startsWith('AutoCAD Binary DXF') ? 'dxf' : null;
}
