// What the check page remarks on in a drawing that was read. Areas and overlaps by hand [mathematics]; what a fill closes:
// SVG 2, 13.4 (open subpaths are filled as if closed); pixels: CSS Values and Units 4, 6.2.
import { describe, expect, test } from 'vitest';
import { importProblems } from '../../src/import/outlines';
import type { OutlineImport } from '../../src/import/types';
import { messageAdvice, messageText } from '../../src/layout/messages';
import { opened, svg } from './drawing';

const MM = 'width="100mm" height="100mm" viewBox="0 0 100 100"';
const read = (body: string, attributes = MM): OutlineImport => opened(svg(body, attributes));
const says = (imported: OutlineImport): string[] =>
  importProblems(imported).map(({ code, params }) => messageText(code, params));

describe('an open outline with a fill', () => {
  test('is closed as the fill shows, and said to be', () => {
    const imported = read('<polyline points="0,0 10,0 10,10 0,10"/>');
    expect(imported.shapes.map(({ area_mm2 }) => area_mm2)).toEqual([expect.closeTo(100, 9)]);
    expect(says(imported)).toEqual(['1 open outline was closed as its fill shows.']);
  });
  test('counts once for each open subpath', () => {
    const imported = read('<path d="M0 0H10V10M20 0H30V10M40 0H50V10Z"/>');
    expect(imported.shapes).toHaveLength(3);
    expect(says(imported)).toEqual(['2 open outlines were closed as their fills show.']);
  });
  test.each([
    ['a polygon', '<polygon points="0,0 10,0 10,10"/>'],
    ['a polyline back at its start', '<polyline points="0,0 10,0 10,10 0,0"/>'],
    ['a path ended by Z', '<path d="M0 0H10V10Z"/>'],
    ['a circle, a rectangle', '<circle cx="50" cy="50" r="5"/><rect width="4" height="4"/>'],
  ])('is none: %s', (_, body) => {
    expect(says(read(body))).toEqual([]);
  });
  test('without a fill it is left out, with how to have it taken', () => {
    const imported = read('<polyline points="0,0 10,0 10,10" fill="none" stroke="black"/>');
    expect(imported).toMatchObject({ shapes: [], closed: 0 });
    const [problem] = importProblems(imported);
    expect(messageAdvice(problem!.code, problem!.params)).toBe(
      'To have it taken, fill it in the drawing program.',
    );
  });
});

describe('the unit of an SVG', () => {
  const body = '<rect width="96" height="96"/>';
  test.each([
    ['a viewBox alone', 'viewBox="0 0 96 96"'],
    ['bare numbers', 'width="96" height="96"'],
    ['a percentage', 'width="100%" height="100%" viewBox="0 0 96 96"'],
  ])('%s says none: taken as px', (_, attributes) => {
    const imported = read(body, attributes);
    expect(imported.unit).toMatchObject({ unit: 'px', from: 'css' });
    expect(imported.shapes[0]!.width_mm).toBeCloseTo(25.4, 9);
    expect(says(imported)).toEqual(['No unit in the file: taken as px, 1/96 in.']);
  });
  test.each([
    ['mm', 'width="96mm" height="96mm" viewBox="0 0 96 96"'],
    ['px', 'width="96px" height="96px"'],
  ])('%s written in the file is a unit', (unit, attributes) => {
    const imported = read(body, attributes);
    expect(imported.unit).toMatchObject({ unit, from: 'file' });
    expect(says(imported)).toEqual([]);
  });
});

describe('shapes worth a look', () => {
  test('less than 0.1 mm wide or deep', () => {
    const imported = read(
      '<rect id="sliver" width="30" height="0.09"/><rect id="bar" y="20" width="30" height="0.11"/>',
    );
    expect(says(imported)).toEqual(['1 shape measures less than 0.1 mm in width or depth, first “sliver”.']);
  });
  test('two that overlap', () => {
    const imported = read(
      '<rect id="flange" width="10" height="10"/><circle id="boss" cx="10" cy="5" r="3"/><rect x="50" width="9" height="9"/>',
    );
    expect(imported.shapes).toHaveLength(3);
    expect(says(imported)).toEqual(['1 pair of shapes overlaps, first “flange” and “boss”.']);
  });
  test('not where they touch, or stand in a hole', () => {
    const touching = '<rect width="10" height="10"/><rect x="10" width="10" height="10"/>';
    const island =
      '<path fill-rule="evenodd" d="M30 0H60V30H30ZM35 5H55V25H35Z"/><rect x="40" y="10" width="10" height="10"/>';
    const imported = read(touching + island);
    expect(imported.shapes).toHaveLength(4);
    expect(imported.overlaps).toEqual({ count: 0, first: [] });
  });
  test('every pair of twenty in one place is counted', () => {
    const many = Array.from(
      { length: 20 },
      (_, i) => `<rect x="${i / 10}" y="${i / 10}" width="30" height="30"/>`,
    );
    expect(read(many.join('')).overlaps.count).toBe((20 * 19) / 2);
  });
});
