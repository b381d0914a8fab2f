/**
 * Regions as triangles: counter-clockwise, the region's own edges outside, every other edge run through both ways, and the
 * region's area, which Green's theorem gives [mathematics].
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clean } from '../../src/geometry/clipper';
import { area, rectangle } from '../../src/geometry/region';
import { reversed } from '../../src/geometry/ring';
import { pieces, trianglesOf } from '../../src/geometry/triangles';
import type { Region } from '../../src/geometry/types';

const ring = (...points: number[]) => Float64Array.from(points);

/** Twice the area of each triangle. */
function doubles({ points, triangles }: ReturnType<typeof trianglesOf>): number[] {
  const at = (i: number) => [points[2 * i]!, points[2 * i + 1]!] as const;
  return Array.from({ length: triangles.length / 3 }, (_, t) => {
    const [[ax, ay], [bx, by], [cx, cy]] = [0, 1, 2].map((k) => at(triangles[3 * t + k]!)) as [
      readonly [number, number],
      readonly [number, number],
      readonly [number, number],
    ];
    return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  });
}

/** Edges as "a b", one for each time they are run through without being run back. */
function outside(edges: readonly (readonly [number, number])[]): string[] {
  const count = new Map<string, number>();
  for (const [a, b] of edges) {
    const back = count.get(`${b} ${a}`) ?? 0;
    if (back > 0) count.set(`${b} ${a}`, back - 1);
    else count.set(`${a} ${b}`, (count.get(`${a} ${b}`) ?? 0) + 1);
  }
  return [...count].flatMap(([edge, times]) => Array<string>(times).fill(edge)).sort();
}

function expectFilled(component: Region, apart = true): void {
  const made = trianglesOf(component);
  const { starts, triangles } = made;
  const ringEdges = starts
    .slice(0, -1)
    .flatMap((first, r) =>
      Array.from({ length: starts[r + 1]! - first }, (_, i): [number, number] => [
        first + i,
        first + ((i + 1) % (starts[r + 1]! - first)),
      ]),
    );
  const sides = triangles.map((a, i): [number, number] => [a, triangles[i % 3 === 2 ? i - 2 : i + 1]!]);
  expect(outside(sides)).toEqual(outside(ringEdges));
  const twice = doubles(made);
  if (apart) expect(Math.min(...twice)).toBeGreaterThan(-1e-6);
  expect(twice.reduce((sum, one) => sum + one, 0) / 2).toBeCloseTo(area(component), 6);
}

describe('a region as triangles', () => {
  it('a square: two of them', () => {
    const made = trianglesOf(rectangle(0, 0, 4, 3));
    expect(doubles(made)).toEqual([12, 12]);
  });

  it('a frame, and points along straight edges', () => {
    expectFilled([...rectangle(0, 0, 10, 10), reversed(rectangle(2, 2, 5, 8)[0]!)]);
    expectFilled([ring(0, 0, 1, 0, 2, 0, 3, 0, 3, 3, 3, 6, 2, 6, 1, 6, 0, 6, 0, 4, 0, 2)]);
    expectFilled([
      ring(0, 0, 2, 0, 4, 0, 6, 0, 6, 6, 0, 6, 0, 3),
      ring(2, 2, 2, 3, 2, 4, 4, 4, 4, 3, 4, 2, 3, 2),
    ]);
  });

  it('any rectangles of a grid, whose points lie in line and whose holes touch the outline: closed, and the area', () => {
    const box = fc
      .tuple(
        fc.integer({ min: 0, max: 9 }),
        fc.integer({ min: 0, max: 9 }),
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 6 }),
      )
      .map(([x, y, w, d]) => rectangle(x, y, x + w, y + d)[0]!);
    fc.assert(
      fc.property(fc.array(box, { minLength: 1, maxLength: 12 }), (boxes) => {
        for (const component of pieces(clean(boxes, 'evenOdd').region)) expectFilled(component, false);
      }),
      { numRuns: 400 },
    );
  });

  it('any crossing polygon, repaired', () => {
    const point = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(fc.array(point, { minLength: 6, maxLength: 60 }), (flat) => {
        const rings = [Float64Array.from(flat.slice(0, flat.length - (flat.length % 2)))];
        for (const component of pieces(clean(rings, 'evenOdd').region)) expectFilled(component);
      }),
      { numRuns: 200 },
    );
  });
});
