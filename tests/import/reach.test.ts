// What lies too far out, or would need too many points, is known before it is computed. The work is counted, not timed:
// the reader's own counts of points against what the drawing's numbers say [mathematics].
import { describe, expect, test } from 'vitest';
import { chain } from '../../src/import/chain';
import { line } from '../../src/import/curve';
import { Budget, MOST_EFFORT, MOST_POINTS, type Used } from '../../src/import/limits';
import { readOutlines } from '../../src/import/outlines';
import type { OutlineImport } from '../../src/import/types';
import {
  SETTINGS,
  areas,
  dxf,
  dxfArc,
  dxfCircle,
  dxfLine,
  dxfObject,
  dxfPolyline,
  leftOut,
  only,
  opened,
  svg,
} from './drawing';

function counted(text: string): { imported: OutlineImport | null; code: string; used: Used } {
  const budget = new Budget();
  const read = readOutlines('drawing', text, SETTINGS, budget);
  const code = read.ok ? 'accepted' : read.fault.code;
  return { imported: read.ok ? read.value : null, code, used: budget.used };
}
const triangle = (x: number): string =>
  dxfLine(x, 0, x + 5, 0) + dxfLine(x + 5, 0, x, 5) + dxfLine(x, 5, x, 0);
const sector = (x: number): string => dxfArc(0, 0, x, 0, 90) + dxfLine(0, 0, x, 0) + dxfLine(0, 0, 0, x);
const FAR = [1e9, 1e12, 1e17, 1e300] as const;

describe.each(FAR)('coordinates of %s mm', (far) => {
  test.each([
    ['loose lines', dxf(triangle(far)), 3],
    ['a circle far away', dxf(dxfCircle(far, 0, 5)), 1],
    ['a circle of that radius', dxf(dxfCircle(0, 0, far)), 1],
    ['an arc of that radius and its chords', dxf(sector(far)), 3],
    [
      'an ellipse',
      dxf(dxfObject(0, 'ELLIPSE', 8, 'A', 10, 0, 20, 0, 11, far, 21, 0, 40, 0.5, 41, 0, 42, 6.28)),
      1,
    ],
    [
      'a polyline with bulges',
      dxf(
        dxfPolyline([
          [0, 0, 1],
          [far, 0, 1],
        ]),
      ),
      1,
    ],
    [
      'a block scaled up',
      dxf(dxfObject(0, 'INSERT', 8, 'A', 2, 'B', 10, 0, 20, 0, 41, far, 42, far), {
        blocks: dxfObject(0, 'BLOCK', 2, 'B', 10, 0, 20, 0) + dxfCircle(0, 0, 5) + dxfObject(0, 'ENDBLK'),
      }),
      1,
    ],
    ['SVG path numbers', svg(`<path d="M0 0C${far} 0 ${far} ${far} 0 ${far}z"/>`), 1],
    [
      'SVG transforms that multiply',
      svg(`<g transform="scale(${far})"><g transform="scale(${far})"><circle r="1"/></g></g>`),
      1,
    ],
    [
      'nested use, each level moving further',
      svg(
        `<defs><rect id="a" width="1" height="1"/><use id="b" href="#a" x="${far}"/></defs><use href="#b" x="${far}"/>`,
      ),
      1,
    ],
    ['a tiny viewBox', svg('<path d="M0 0h1v1z"/>', `width="100mm" viewBox="0 0 ${1 / far} ${1 / far}"`), 1],
  ])('%s are left out, counted, and no point of them is computed', (_, text, count) => {
    const { imported, used } = counted(text);
    expect(imported?.shapes).toEqual([]);
    expect(imported === null ? null : leftOut(imported)).toEqual({ far: count });
    expect(used.points).toBe(0);
    expect(used.tried).toBe(0);
  });

  test('what lies near is read beside what lies far, and the box holds it alone', () => {
    const imported = opened(dxf(triangle(0) + triangle(far)));
    expect(areas(imported)[0]).toBeCloseTo(12.5, 9);
    expect(imported.box).toEqual({ minX: 0, minY: 0, maxX: 5, maxY: 5 });
    expect(leftOut(imported)).toEqual({ far: 3 });
  });

  test('an arc whose angles are that large ends, with no more points than a full circle', () => {
    const { used } = counted(dxf(dxfArc(0, 0, 5, far, 2 * far)));
    // a full circle of 5 mm: steps of √(8·0.004/5) = 0.08 rad, 79 of them and a few at the quarters
    expect(used.points).toBeGreaterThan(1);
    expect(used.points).toBeLessThanOrEqual(85);
  });

  test('chaining by itself ends for ends that far out', () => {
    const edge = (x: number) => ({ curve: line(x, 0, x + 1, 0), points: [x, 0, x + 1, 0], name: 'A' });
    const { loops } = chain([edge(far), edge(far / 2)], 0.01);
    expect(loops).toEqual([]);
  });

  test('a scale as tiny leaves nothing, and nothing hangs', () => {
    const drawing = `<g transform="scale(${1 / far})"><rect width="9" height="9"/></g><rect width="9" height="9"/>`;
    const imported = opened(svg(drawing));
    expect(areas(imported)).toEqual([81]);
    expect(leftOut(imported)).toEqual({ 'no-area': 1 });
  });
});

test('100 m is the border: an outline that ends there is read, one a millimetre beyond is not', () => {
  expect(only(opened(dxf(dxfCircle(99_995, 0, 5)))).area_mm2).toBeCloseTo(25 * Math.PI, 6);
  expect(leftOut(opened(dxf(dxfCircle(99_996, 0, 5))))).toEqual({ far: 1 });
});

test('a nearly straight arc keeps its place though its centre lies kilometres away', () => {
  // radius 1e7 mm over a chord of 100 mm: sagitta 100²/(8·1e7) = 0.000125 mm, so the square's area is 10⁴ + 2/3·100·0.000125
  const half = (Math.asin(50 / 1e7) * 180) / Math.PI;
  const top = dxfArc(50, 100 - 1e7 * Math.cos(Math.asin(50 / 1e7)), 1e7, 90 - half, 90 + half);
  const shape = only(
    opened(dxf(dxfLine(0, 0, 100, 0) + dxfLine(100, 0, 100, 100) + dxfLine(0, 0, 0, 100) + top)),
  );
  expect(Math.abs(shape.area_mm2 - (1e4 + (2 / 3) * 100 * 0.000125))).toBeLessThan(0.02);
});

describe('points are counted before they are made', () => {
  const spline = (count: number, degree: number): string => {
    const inner = Array.from({ length: count - degree - 1 }, (_, i) => i + 1);
    const ends = (value: number): number[] => Array.from({ length: degree + 1 }, () => value);
    const knots = [...ends(0), ...inner, ...ends(count - degree)];
    const points = Array.from({ length: count }, (_, i) => [
      10,
      (i % 7) * 9000,
      20,
      ((i * i) % 11) * 9000,
    ]).flat();
    return dxfObject(0, 'SPLINE', 8, 'A', 70, 8, 71, degree, ...knots.flatMap((k) => [40, k]), ...points);
  };
  test.each([
    ['one spline of 20 000 wild spans', dxf(spline(20_000, 3))],
    ['one spline of degree 25', dxf(spline(2_000, 25))],
    ['a hundred circles of 90 m', dxf(Array.from({ length: 100 }, (_, i) => dxfCircle(i, 0, 9e4)).join(''))],
  ])('%s stops at the limit', (_, text) => {
    const { code, used } = counted(text);
    expect(code).toBe('outlines-too-much');
    // tries of a curve: one of eight steps and at most four finer ones
    expect(used.tried).toBeLessThan(5 * MOST_POINTS);
  });

  test('effort grows with the square of the degree', () => {
    const { used } = counted(dxf(spline(2_000, 25)));
    expect(used.tried).toBeLessThan((1.5 * MOST_EFFORT) / 625);
  });

  test('135 200 lines that form one tangle are left out and counted, never an exception', () => {
    const side = 260;
    const lines: string[] = [];
    for (let y = 0; y < side; y++)
      for (let x = 0; x < side; x++) lines.push(dxfLine(x, y, x + 1, y), dxfLine(x, y, x, y + 1));
    const { imported } = counted(dxf(lines.join('')));
    const counts = imported === null ? {} : leftOut(imported);
    expect((counts.branch ?? 0) + (counts.open ?? 0)).toBeGreaterThan(100_000);
  });
});
