// The polygon engine. Sources: jsts (a port of JTS) as a second library, mathematics (closed forms), counts of unit cells.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaBalance } from '../../src/geometry/balance';
import { circleRing } from '../../src/geometry/circle';
import { clean, inset, intersect, outset, subtract, unite } from '../../src/geometry/clipper';
import { area, components, mirrorX, outlineLength, rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed, ringOf } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';
import { SEED, cellRegion, gridCells, jsts, starRegion } from './shapes';

/** Random regions on a busy machine. */
const TIMEOUT = { timeout: 60_000 };

const seeded = { seed: SEED, numRuns: 150 };
const frame: Region = [...rectangle(0, 0, 30, 20), reversed(rectangle(5, 5, 15, 15)[0])];

describe('clean', () => {
  it('keeps the vertices of sound outlines bit for bit', () => {
    const odd = ringOf([
      [0.1, 0.2],
      [30.3, 0.7],
      [17.77, 23.45],
    ]);
    const { region, repaired } = clean([odd], 'evenOdd');
    expect(repaired).toBe(false);
    expect(region[0]).toBe(odd);
  });
  it('sets the sense of turning: outlines, holes, islands, by either rule', () => {
    const rings = [
      rectangle(0, 0, 100, 100)[0],
      rectangle(10, 10, 90, 90)[0],
      reversed(rectangle(20, 20, 80, 80)[0]),
    ];
    const evenOdd = clean(rings, 'evenOdd');
    expect([area(evenOdd.region), evenOdd.repaired]).toEqual([10000 - 6400 + 3600, false]);
    expect(components(evenOdd.region)).toHaveLength(2);
    const nonZero = clean(rings, 'nonZero');
    expect([area(nonZero.region), nonZero.repaired]).toEqual([10000, false]);
    const drilled = clean([rings[0], reversed(rings[1])], 'nonZero');
    expect([area(drilled.region), drilled.repaired]).toEqual([3600, false]);
  });
  it('repairs a bow-tie and says so', () => {
    const tie = clean(
      [
        ringOf([
          [0, 0],
          [10, 10],
          [10, 0],
          [0, 10],
        ]),
      ],
      'evenOdd',
    );
    expect(tie.repaired).toBe(true);
    expect(area(tie.region)).toBeCloseTo(50, 5);
    const throughVertex = clean(
      [
        ringOf([
          [0, 0],
          [5, 5],
          [10, 10],
          [10, 0],
          [5, 5],
          [0, 10],
        ]),
      ],
      'evenOdd',
    );
    expect(throughVertex.repaired).toBe(true);
    expect(area(throughVertex.region)).toBeCloseTo(50, 5);
  });
  it('fills a five-pointed star by the rule asked for', () => {
    const tips = Array.from({ length: 5 }, (_, i) => {
      const a = (4 * Math.PI * i) / 5;
      return [10 * Math.cos(a), 10 * Math.sin(a)] as const;
    });
    const [whole, open] = [clean([ringOf(tips)], 'nonZero'), clean([ringOf(tips)], 'evenOdd')];
    // Pentagram of circumradius R: inner radius R·sin 18°/sin 54°, star 5·R·r·sin 36°, pentagon (5/2)·r²·sin 72°.
    const r = (10 * Math.sin(Math.PI / 10)) / Math.sin(0.3 * Math.PI);
    const star = 50 * r * Math.sin(Math.PI / 5);
    const middle = 2.5 * r * r * Math.sin(0.4 * Math.PI);
    expect([whole.repaired, open.repaired]).toEqual([true, true]);
    expect(area(whole.region)).toBeCloseTo(star, 5);
    expect(area(open.region)).toBeCloseTo(star - middle, 5);
  });
  it('repairs overlapping outlines, edges run twice, spikes and rings without area', () => {
    const two = clean([rectangle(0, 0, 10, 10)[0], rectangle(5, 5, 15, 15)[0]], 'evenOdd');
    expect([area(two.region), two.repaired]).toEqual([150, true]);
    const abutting = clean([rectangle(0, 0, 10, 10)[0], rectangle(10, 0, 20, 10)[0]], 'evenOdd');
    expect([area(abutting.region), abutting.region.length, abutting.repaired]).toEqual([200, 1, true]);
    const spike = clean(
      [
        ringOf([
          [0, 0],
          [10, 0],
          [15, 0],
          [10, 0],
          [10, 10],
          [0, 10],
        ]),
      ],
      'evenOdd',
    );
    expect([area(spike.region), spike.repaired]).toEqual([100, true]);
    const flat = clean(
      [
        ringOf([
          [0, 0],
          [10, 0],
          [5, 0],
        ]),
      ],
      'evenOdd',
    );
    expect(flat).toEqual({ region: [], repaired: true });
    expect(clean([rectangle(0, 0, 1, 1)[0], rectangle(0, 0, 1, 1)[0]], 'evenOdd').region).toEqual([]);
  });
  it('leaves outlines alone that only touch in a point', () => {
    const corner = clean([rectangle(0, 0, 10, 10)[0], rectangle(10, 10, 20, 20)[0]], 'evenOdd');
    expect([area(corner.region), corner.region.length, corner.repaired]).toEqual([200, 2, false]);
    const diamond = ringOf([
      [0, 5],
      [5, 2],
      [8, 5],
      [5, 8],
    ]);
    const inside = clean([rectangle(0, 0, 10, 10)[0], diamond], 'evenOdd');
    expect([area(inside.region), inside.repaired]).toEqual([76, false]);
  });
  it('of nothing is nothing', () => {
    expect(clean([], 'evenOdd')).toEqual({ region: [], repaired: false });
  });
});

describe('union, intersection and difference', () => {
  it('agree with jsts on random regions', TIMEOUT, () => {
    fc.assert(
      fc.property(starRegion, starRegion, (a, b) => {
        const [ja, jb] = [jsts(a), jsts(b)];
        for (const [ours, theirs] of [
          [intersect(a, b), ja.intersection(jb)],
          [unite([a, b]), ja.union(jb)],
          [subtract(a, b), ja.difference(jb)],
        ] as const) {
          expect(Math.abs(area(ours) - theirs.getArea())).toBeLessThan(5e-3);
          expect(Math.abs(outlineLength(ours) - theirs.getLength())).toBeLessThan(5e-3);
        }
        expect(areaBalance(a, [intersect(a, b), subtract(a, b)])).toBeLessThan(1e-6);
      }),
      seeded,
    );
  });
  it('count unit cells right', TIMEOUT, () => {
    fc.assert(
      fc.property(gridCells, gridCells, (a, b) => {
        const [ra, rb] = [cellRegion(a), cellRegion(b)];
        const count = (keep: (p: boolean, q: boolean) => boolean): number =>
          a.flatMap((row, j) => row.filter((p, i) => keep(p, b[j][i]))).length;
        expect(area(intersect(ra, rb))).toBeCloseTo(
          count((p, q) => p && q),
          6,
        );
        expect(area(unite([ra, rb]))).toBeCloseTo(
          count((p, q) => p || q),
          6,
        );
        expect(area(subtract(ra, rb))).toBeCloseTo(
          count((p, q) => p && !q),
          6,
        );
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
  it('do not depend on place, turn, mirroring and size', () => {
    const other: Region = [circleRing(20, 12, 9)];
    const plain = area(intersect(frame, other));
    for (const turn of [0, 30, 90, 211]) {
      const place = (r: Region): Region => turnAndMove(r, turn, 150, -90);
      expect(area(intersect(place(frame), place(other)))).toBeCloseTo(plain, 3);
    }
    expect(area(intersect(mirrorX(frame), mirrorX(other)))).toBeCloseTo(plain, 3);
    const scaled = (r: Region, k: number): Region => r.map((ring) => ring.map((v) => v * k));
    for (const k of [0.01, 20])
      expect(area(intersect(scaled(frame, k), scaled(other, k))) / (plain * k * k)).toBeCloseTo(1, 6);
  });
  it('keep given vertices bit for bit', () => {
    const cut = intersect(
      [
        ringOf([
          [0.1, 0.1],
          [9.3, 0.2],
          [9.7, 8.9],
          [0.3, 9.1],
        ]),
      ],
      rectangle(-50, -50, 5, 50),
    );
    const xs = [...cut[0]].filter((_, i) => i % 2 === 0);
    expect(xs).toContain(0.1);
    expect(xs).toContain(0.3);
  });
  it('take empty regions', () => {
    expect(intersect(frame, [])).toEqual([]);
    expect(subtract(frame, [])).toBe(frame);
    expect(unite([])).toEqual([]);
    expect(area(unite([frame, []]))).toBe(500);
  });
});

describe('insets', () => {
  it('of convex shapes follow Steiner', () => {
    // A + P·r + π·r²: 30 × 20 by 2 → 812.56637; inset 26 × 16 = 416 [mathematics].
    expect(area(outset(rectangle(0, 0, 30, 20), 2)) / 812.56637).toBeCloseTo(1, 5);
    expect(area(inset(rectangle(0, 0, 30, 20), 2)) / 416).toBeCloseTo(1, 6);
    expect(Math.abs(area(outset([circleRing(0, 0, 40)], 3)) / (Math.PI * 43 ** 2) - 1)).toBeLessThan(1e-5);
    expect(Math.abs(area(inset([circleRing(0, 0, 40)], 3)) / (Math.PI * 37 ** 2) - 1)).toBeLessThan(1e-5);
  });
  it('round the corner of an L and grow no more than a convex shape would', () => {
    const ell: Region = [
      ringOf([
        [0, 0],
        [30, 0],
        [30, 10],
        [10, 10],
        [10, 30],
        [0, 30],
      ]),
    ];
    // Arms 6 × 26 and 6 × 20, and at the reflex corner the square of 2 less the quarter disc: 276 + 4 − π.
    expect(area(inset(ell, 2)) / (280 - Math.PI)).toBeCloseTo(1, 5);
    const steiner = area(ell) + outlineLength(ell) * 2 + Math.PI * 4;
    expect(area(outset(ell, 2))).toBeLessThan(steiner);
  });
  it('grow holes, drop what is too thin and split at narrow necks', () => {
    expect(area(inset(frame, 1))).toBeCloseTo(28 * 18 - (100 + 40 + Math.PI), 3);
    expect(inset(rectangle(0, 0, 30, 1), 0.5)).toEqual([]);
    const dumbbell = unite([rectangle(0, 0, 10, 10), rectangle(10, 4, 20, 6), rectangle(20, 0, 30, 10)]);
    expect(components(inset(dumbbell, 1.5))).toHaveLength(2);
  });
  it('agree with jsts on random regions', TIMEOUT, () => {
    fc.assert(
      fc.property(starRegion, fc.double({ min: 0.02, max: 3, noNaN: true }), (region, d) => {
        // jsts keeps crumbs of holes that an outset closes entirely, so outsets are compared without holes.
        const outer = [region[0]];
        for (const [ours, theirs] of [
          [inset(region, d), jsts(region).buffer(-d, 400)],
          [outset(outer, d), jsts(outer).buffer(d, 400)],
        ] as const)
          expect(Math.abs(area(ours) - theirs.getArea())).toBeLessThan(1e-5 * area(region) + 1e-3);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
  it('do not multiply the vertices of finely divided circles', () => {
    const bore: Region = [circleRing(0, 0, 50), reversed(circleRing(0, 0, 30))];
    const vertices = (r: Region): number => r.reduce((n, ring) => n + ring.length / 2, 0);
    const shrunk = inset(bore, 0.05);
    expect(vertices(shrunk)).toBeLessThan(1.1 * vertices(bore));
    expect(Math.abs(area(shrunk) / (Math.PI * (49.95 ** 2 - 30.05 ** 2)) - 1)).toBeLessThan(1e-6);
  });
});

describe('areaBalance', () => {
  it('is the relative difference between a whole and its parts', () => {
    expect(areaBalance(rectangle(0, 0, 10, 10), [rectangle(0, 0, 4, 10), rectangle(4, 0, 10, 10)])).toBe(0);
    expect(areaBalance(rectangle(0, 0, 10, 10), [rectangle(0, 0, 4, 10)])).toBeCloseTo(0.6, 12);
    expect(areaBalance([], [])).toBe(0);
  });
});
