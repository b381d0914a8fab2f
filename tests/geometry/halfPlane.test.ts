// Half-plane cuts. Sources: mathematics (closed forms, counts of unit cells), and jsts, a port of JTS, as a second library.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleRing } from '../../src/geometry/circle';
import { areaInConvex, chords, clipToConvex, cutByLine, untagged } from '../../src/geometry/halfPlane';
import { area, components, outlineLength, rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed, ringOf, signedArea } from '../../src/geometry/ring';
import type { HalfPlane, Region } from '../../src/geometry/types';
import {
  SEED,
  cellRegion,
  gridCells,
  halfPlane,
  halfPlaneRectangle,
  jsts,
  starRegion,
  taggedLength,
  type Cells,
} from './shapes';

/** Random regions on a busy machine. */
const TIMEOUT = { timeout: 60_000 };

const left = (c: number): HalfPlane => ({ nx: 1, ny: 0, c });
const below = (c: number): HalfPlane => ({ nx: 0, ny: 1, c });
const right = (c: number): HalfPlane => ({ nx: -1, ny: 0, c: -c });

describe('cutByLine', () => {
  it('separates a rectangle and tags the new edge on both sides', () => {
    const { inside, outside } = cutByLine(untagged(rectangle(0, 0, 10, 4)), left(3));
    expect(area(inside.rings)).toBe(12);
    expect(area(outside.rings)).toBe(28);
    expect([taggedLength(inside, 1), taggedLength(outside, 1)]).toEqual([4, 4]);
    expect([taggedLength(inside, 0), taggedLength(outside, 0)]).toEqual([10, 18]);
  });
  it('hands back the region itself where the line misses or only touches it', () => {
    const t = untagged(rectangle(0, 0, 10, 4));
    expect(cutByLine(t, left(10)).inside).toBe(t);
    expect(cutByLine(t, left(10)).outside.rings).toEqual([]);
    expect(cutByLine(t, left(0)).outside).toBe(t);
  });
  it('cuts a ring into two arms on each side through its hole', () => {
    const ring: Region = [circleRing(0, 0, 150), reversed(circleRing(0, 0, 120))];
    const { inside, outside } = cutByLine(untagged(ring), left(0));
    expect(components(inside.rings)).toHaveLength(1);
    expect(components(outside.rings)).toHaveLength(1);
    expect(area(inside.rings)).toBeCloseTo((Math.PI * (150 ** 2 - 120 ** 2)) / 2, 6);
    const quarter = cutByLine(inside, below(0)).inside;
    expect(area(quarter.rings)).toBeCloseTo((Math.PI * (150 ** 2 - 120 ** 2)) / 4, 6);
    expect(taggedLength(quarter, 1)).toBeCloseTo(60, 3);
    const outer = cutByLine(untagged(ring), left(-130));
    expect(components(outer.inside.rings)).toHaveLength(1);
  });
  it('leaves a comb its teeth as separate pieces without bridges between them', () => {
    const comb: [number, number][] = [
      [0, 0],
      [70, 0],
    ];
    for (let x = 60; x >= 0; x -= 20) comb.push([x + 10, 30], [x, 30], [x, 10], [x - 10, 10]);
    comb.splice(-1, 1);
    comb.push([0, 10]);
    const { outside, inside } = cutByLine(untagged([ringOf(comb)]), below(20));
    expect(components(outside.rings).map(area)).toEqual([100, 100, 100, 100]);
    expect(taggedLength(outside, 1)).toBe(40);
    expect(components(inside.rings)).toHaveLength(1);
    const atRoots = cutByLine(untagged([ringOf(comb)]), below(10));
    expect(components(atRoots.outside.rings).map(area)).toEqual([200, 200, 200, 200]);
    expect(area(atRoots.inside.rings)).toBe(700);
    expect(taggedLength(atRoots.inside, 1)).toBe(40);
    expect(taggedLength(atRoots.inside, 0)).toBe(70 + 10 + 10 + 30);
  });
  it('keeps an outline edge on the line as outline, on the side of its material only', () => {
    const step = untagged([
      ringOf([
        [0, 0],
        [10, 0],
        [10, 5],
        [4, 5],
        [4, 9],
        [0, 9],
      ]),
    ]);
    const { inside, outside } = cutByLine(step, below(5));
    expect(taggedLength(inside, 1)).toBe(4);
    expect(taggedLength(inside, 0)).toBe(10 + 5 + 6 + 5);
    expect(taggedLength(outside, 1)).toBe(4);
    expect(taggedLength(outside, 0)).toBe(12);
  });
  it('keeps the edge of a hole that lies on the line on the side of its material', () => {
    const t = untagged([...rectangle(0, 0, 10, 10), reversed(rectangle(3, 5, 7, 8)[0])]);
    const { inside, outside } = cutByLine(t, below(5));
    expect(area(inside.rings)).toBe(50);
    expect(taggedLength(inside, 0)).toBe(10 + 5 + 5 + 4);
    expect(taggedLength(inside, 1)).toBe(6);
    expect(area(outside.rings)).toBe(38);
    expect(taggedLength(outside, 1)).toBe(6);
    expect(components(outside.rings)).toHaveLength(1);
  });
  it('keeps tags of earlier cuts', () => {
    const first = cutByLine(untagged(rectangle(0, 0, 10, 10)), left(6)).inside;
    const second = cutByLine(first, below(4)).inside;
    expect(taggedLength(second, 1)).toBe(4 + 6);
    expect(taggedLength(second, 0)).toBe(6 + 4);
    const again = cutByLine(first, left(6));
    expect(again.inside).toBe(first);
  });
  it('handles tips that touch the line from either side', () => {
    const tip = untagged([
      ringOf([
        [-5, -5],
        [5, -5],
        [5, 5],
        [0, 0],
        [-5, 5],
      ]),
    ]);
    const { inside, outside } = cutByLine(tip, below(0));
    expect(components(inside.rings).map(area)).toEqual([50]);
    expect(components(outside.rings).map(area)).toEqual([12.5, 12.5]);
    const notch = untagged([
      ringOf([
        [-5, -5],
        [0, 0],
        [5, -5],
        [5, 5],
        [-5, 5],
      ]),
    ]);
    const other = cutByLine(notch, below(0));
    expect(components(other.inside.rings).map(area)).toEqual([12.5, 12.5]);
    expect(components(other.outside.rings).map(area)).toEqual([50]);
  });
  it('agrees with jsts on area, outline and number of pieces of random regions', TIMEOUT, () => {
    fc.assert(
      fc.property(starRegion, halfPlane, (region, h) => {
        const whole = jsts(region);
        const { inside, outside } = cutByLine(untagged(region), h);
        const plane = jsts(halfPlaneRectangle(h));
        for (const [ours, theirs] of [
          [inside, whole.intersection(plane)],
          [outside, whole.difference(plane)],
        ] as const) {
          expect(Math.abs(area(ours.rings) - theirs.getArea())).toBeLessThan(1e-7);
          expect(Math.abs(outlineLength(ours.rings) - theirs.getLength())).toBeLessThan(1e-6);
          const pieces = theirs.getArea() === 0 ? 0 : theirs.getNumGeometries();
          expect(components(ours.rings)).toHaveLength(pieces);
        }
        expect(taggedLength(inside, 1)).toBeCloseTo(taggedLength(outside, 1), 9);
        expect(taggedLength(inside, 0) + taggedLength(outside, 0)).toBeCloseTo(outlineLength(region), 7);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
  it('counts unit cells right where vertices and edges lie on the line, at any turn', TIMEOUT, () => {
    fc.assert(
      fc.property(
        gridCells,
        fc.integer({ min: 0, max: 6 }),
        fc.constantFrom(0, 90, 180, 270, 30, 45, 77.7, 201.3),
        (cells, k, turn) => {
          const region = turnAndMove(cellRegion(cells), turn, 0, 0);
          const line = turnAndMove([Float64Array.of(1, 0)], turn, 0, 0)[0];
          const { inside, outside } = cutByLine(untagged(region), { nx: line[0], ny: line[1], c: k });
          for (const [side, from, to] of [
            [inside, 0, k],
            [outside, k, 6],
          ] as const) {
            const count = countCells(cells, from, to);
            expect(area(side.rings)).toBeCloseTo(count.cells, 9);
            expect(taggedLength(side, 0)).toBeCloseTo(count.outline, 9);
            expect(taggedLength(side, 1)).toBeCloseTo(count.cut, 9);
            expect(components(side.rings).length).toBeLessThanOrEqual(count.edgeConnected);
            expect(components(side.rings).length).toBeGreaterThanOrEqual(count.cornerConnected);
          }
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
  });
});

/** Cells in the columns from … to: their number, outline and cut edges, and pieces joined by edges or by corners too. */
function countCells(cells: Cells, from: number, to: number) {
  const full = (i: number, j: number): boolean => cells[j]?.[i] === true;
  const inSide = (i: number, j: number): boolean => i >= from && i < to && full(i, j);
  let number = 0;
  let outline = 0;
  let cut = 0;
  for (let j = 0; j < 6; j++)
    for (let i = from; i < to; i++) {
      if (!full(i, j)) continue;
      number++;
      for (const [di, dj] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ]) {
        if (!full(i + di, j + dj)) outline++;
        else if (!inSide(i + di, j + dj)) cut++;
      }
    }
  const pieces = (reach: readonly number[][]): number => {
    const seen = new Set<number>();
    let n = 0;
    for (let start = 0; start < 36; start++) {
      if (seen.has(start) || !inSide(start % 6, Math.floor(start / 6))) continue;
      n++;
      const stack = [start];
      while (stack.length > 0) {
        const at = stack.pop() ?? 0;
        if (seen.has(at)) continue;
        seen.add(at);
        for (const [di, dj] of reach) {
          const i = (at % 6) + di;
          const j = Math.floor(at / 6) + dj;
          if (j >= 0 && j < 6 && inSide(i, j)) stack.push(j * 6 + i);
        }
      }
    }
    return n;
  };
  const edges = [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ];
  const corners = [...edges, [1, 1], [1, -1], [-1, 1], [-1, -1]];
  return { cells: number, outline, cut, edgeConnected: pieces(edges), cornerConnected: pieces(corners) };
}

describe('convex cells', () => {
  const box = [left(20), right(-5), below(15), { nx: 0, ny: -1, c: 10 }];
  it('measure by areaInConvex what clipToConvex cuts out and what jsts finds', TIMEOUT, () => {
    fc.assert(
      fc.property(starRegion, fc.array(halfPlane, { minLength: 1, maxLength: 5 }), (region, planes) => {
        let theirs = jsts(region);
        for (const h of planes) theirs = theirs.intersection(jsts(halfPlaneRectangle(h)));
        expect(Math.abs(areaInConvex(region, planes) - theirs.getArea())).toBeLessThan(1e-7);
        expect(Math.abs(area(clipToConvex(untagged(region), planes).rings) - theirs.getArea())).toBeLessThan(
          1e-7,
        );
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
  it('take the whole region where it is inside and nothing where it is outside', () => {
    expect(areaInConvex(rectangle(0, 0, 3, 3), box)).toBe(9);
    expect(areaInConvex(rectangle(30, 0, 33, 3), box)).toBe(0);
    expect(areaInConvex(rectangle(-100, -100, 100, 100), box)).toBeCloseTo(25 * 25, 9);
    expect(clipToConvex(untagged(rectangle(30, 0, 33, 3)), box).rings).toEqual([]);
  });
  it('cut the quadrant of a disc at a segment of known area', () => {
    // Chord 21, height 6: radius 12.1875, area 89.254148 [published: help.matheass.eu, Circular sections].
    const disc: Region = [circleRing(0, 0, 12.1875)];
    expect(areaInConvex(disc, [right(12.1875 - 6)])).toBeCloseTo(89.254148, 1);
    expect(Math.abs(areaInConvex(disc, [right(12.1875 - 6)]) / 89.254148 - 1)).toBeLessThan(5e-4);
  });
});

describe('chords', () => {
  it('are the intervals of the line inside the region', () => {
    const frame: Region = [...rectangle(0, 0, 30, 20), reversed(rectangle(5, 5, 15, 15)[0])];
    expect([...chords(frame, below(10))]).toEqual([-30, -15, -5, 0]);
    expect([...chords(frame, left(10))]).toEqual([0, 5, 15, 20]);
    expect([...chords(frame, left(20))]).toEqual([0, 20]);
    expect([...chords(frame, left(31))]).toEqual([]);
  });
  it('at an outline edge on the line belong to the side below it', () => {
    expect([...chords(rectangle(0, 0, 3, 2), left(3))]).toEqual([0, 2]);
    expect([...chords(rectangle(0, 0, 3, 2), left(0))]).toEqual([]);
  });
  it('have the length of the cut edges of a cut there', () => {
    fc.assert(
      fc.property(starRegion, halfPlane, (region, h) => {
        const found = chords(region, h);
        let length = 0;
        for (let i = 0; i < found.length; i += 2) length += found[i + 1] - found[i];
        expect(length).toBeCloseTo(taggedLength(cutByLine(untagged(region), h).inside, 1), 7);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});

describe('rings of a cut', () => {
  it('turn counter-clockwise outside and clockwise around holes', () => {
    const t = untagged([...rectangle(0, 0, 30, 20), reversed(rectangle(5, 5, 15, 15)[0])]);
    expect(
      cutByLine(t, left(20))
        .inside.rings.map((r) => Math.sign(signedArea(r)))
        .sort(),
    ).toEqual([-1, 1]);
    expect(cutByLine(t, left(10)).inside.rings.map(signedArea)).toEqual([150]);
  });
});
