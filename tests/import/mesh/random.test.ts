// Random bodies, randomly turned: section areas against a sum over triangles that follows no outline, and the parts of the
// cutting one by one. Seeds are printed by fast-check where a run fails.
import fc from 'fast-check';
import clipping from 'polygon-clipping';
import { describe, expect, test } from 'vitest';
import { orient, sectionMesh, type Mesh } from '../../../src/import/mesh';
import { areApart } from '../../../src/import/mesh/section/apart';
import { closeChains } from '../../../src/import/mesh/section/close';
import { Reference } from '../../../src/import/mesh/section/same';
import { rounded, simplified, TOLERANCE_mm } from '../../../src/import/mesh/section/tidy';
import { revolved, tetrahedra, type Point2 } from './meshes';
import { areaOf, perimeter, slabAt, value } from './slabs';

/** A ball with bumps: radius 10 + waves over both angles. Star-shaped, so its surface never meets itself. */
const bumpy = (waves: readonly number[]): Mesh => {
  const [a, b, c, d] = waves;
  const ball = revolved(
    Array.from({ length: 25 }, (_, i): Point2 => {
      const angle = (Math.PI * i) / 24 - Math.PI / 2;
      return [i % 24 === 0 ? 0 : Math.cos(angle), Math.sin(angle)];
    }),
    32,
    false,
  );
  const points = Float64Array.from(ball.points);
  for (let i = 0; i < points.length; i += 3) {
    const [x, y, z] = [points[i], points[i + 1], points[i + 2]];
    const turn = Math.atan2(y, x);
    const flat = Math.hypot(x, y);
    const r = 10 + flat * (a * Math.sin(3 * turn + c) + b * Math.cos(5 * turn + d)) + c * Math.sin(4 * z + d);
    for (let axis = 0; axis < 3; axis++) points[i + axis] *= r;
  }
  return { points, triangles: ball.triangles };
};
/** ½ Σ (x₁y₂ − x₂y₁) over the segments in which triangles meet the plane [mathematics: Green]. */
function greenAt({ points, triangles }: Mesh, z: number): number {
  let twice = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => points.subarray(3 * triangles[t + k], 3 * triangles[t + k] + 3));
    const ends: { up: boolean; x: number; y: number }[] = [];
    corners.forEach((p, k) => {
      const q = corners[(k + 1) % 3];
      if (p[2] <= z === q[2] <= z) return;
      const share = (z - p[2]) / (q[2] - p[2]);
      ends.push({ up: p[2] <= z, x: p[0] + share * (q[0] - p[0]), y: p[1] + share * (q[1] - p[1]) });
    });
    if (ends.length !== 2) continue;
    const [from, to] = ends[0].up ? [ends[1], ends[0]] : ends;
    twice += from.x * to.y - to.x * from.y;
  }
  return twice / 2;
}
const wave = fc.double({ min: 0.1, max: 1.6, noNaN: true });
const turn = fc.double({ min: -180, max: 180, noNaN: true });

test('sections of random bodies measure what their triangles say, in every turn', () => {
  fc.assert(
    fc.property(fc.tuple(wave, wave, wave, wave), turn, turn, (waves, turnX_deg, turnY_deg) => {
      const body = orient(bumpy(waves), { turnX_deg, turnY_deg });
      const { slabs, layers, volume_mm3 } = value(sectionMesh(body, { layer_mm: 0.4, chainGap_mm: 0.01 }));
      for (let k = 1; k < layers; k++) {
        const z = (k - 0.5) * 0.4;
        const slab = slabAt(slabs, z);
        expect(Math.abs(areaOf(slab) - greenAt(body, z))).toBeLessThan(0.0012 * perimeter(slab) + 0.002);
      }
      expect(volume_mm3 / tetrahedra(body)).toBeCloseTo(1, 2);
    }),
    { numRuns: 40 },
  );
});

describe('the same to 0.001 mm²', () => {
  const star = (radii: readonly number[], x: number, y: number): Float64Array =>
    Float64Array.from(
      radii.flatMap((r, i) => {
        const angle = (2 * Math.PI * i) / radii.length;
        return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
      }),
    );
  const closed = (ring: Float64Array): [number, number][] =>
    Array.from({ length: ring.length / 2 + 1 }, (_, i) => {
      const k = (2 * i) % ring.length;
      return [ring[k], ring[k + 1]];
    });
  const shoelace = (ring: readonly [number, number][]): number =>
    ring.slice(1).reduce((sum, [x, y], i) => sum + (ring[i][0] * y - x * ring[i][1]) / 2, 0);
  /** null where the library finds none. */
  const exclusiveOr = (one: [number, number][], other: [number, number][]): number | null => {
    try {
      const areas = clipping
        .xor([one], [other])
        .map((rings) => rings.map((ring) => Math.abs(shoelace(ring as [number, number][]))));
      return areas.reduce((sum, [outer, ...holes]) => sum + outer - holes.reduce((a, b) => a + b, 0), 0);
    } catch {
      return null;
    }
  };
  test('as the exclusive or of a second library has it', () => {
    const radii = fc.array(fc.double({ min: 4, max: 9, noNaN: true }), { minLength: 5, maxLength: 40 });
    const shift = fc.tuple(fc.double({ min: -1, max: 1, noNaN: true }), fc.integer({ min: -6, max: -2 }));
    let equal = 0;
    fc.assert(
      fc.property(radii, shift, shift, ([...list], [dx, px], [dr, pr]) => {
        const one = star(list, 0, 0);
        const other = star(
          list.map((r, i) => (i === 1 ? r + dr * 10 ** pr : r)),
          dx * 10 ** px,
          0,
        );
        const area = exclusiveOr(closed(one), closed(other));
        // now and then that library loses its way
        fc.pre(area !== null);
        fc.pre(Math.abs(area! - 0.001) > 2e-5);
        const same = new Reference([one], [one]).equals([other]);
        equal += same ? 1 : 0;
        expect(same).toBe(area! < 0.001);
      }),
      { numRuns: 400 },
    );
    expect(equal).toBeGreaterThan(40);
  });
  test('points on straight sides and another start change nothing', () => {
    const plain = Float64Array.of(0, 0, 10, 0, 10, 8, 0, 8);
    const dotted = Float64Array.of(10, 8, 4, 8, 0, 8, 0, 3, 0, 0, 2, 0, 7, 0, 10, 0);
    expect(new Reference([plain], [plain]).equals([dotted])).toBe(true);
  });
  test('equal areas at another place are not the same', () => {
    const here = Float64Array.of(0, 0, 10, 0, 10, 8, 0, 8);
    const there = Float64Array.from(here, (v, i) => v + (i % 2 === 0 ? 0.001 : 0));
    expect(new Reference([here], [here]).equals([there])).toBe(false);
  });
});

describe('tidy rings', () => {
  const away = (x: number, y: number, ring: Float64Array): number => {
    let least = Infinity;
    for (let i = 0; i < ring.length; i += 2) {
      const k = (i + 2) % ring.length;
      const [dx, dy] = [ring[k] - ring[i], ring[k + 1] - ring[i + 1]];
      const along = ((x - ring[i]) * dx + (y - ring[i + 1]) * dy) / (dx * dx + dy * dy || 1);
      const share = Math.min(1, Math.max(0, along));
      least = Math.min(least, Math.hypot(x - ring[i] - share * dx, y - ring[i + 1] - share * dy));
    }
    return least;
  };
  test('every point left out lies within half a micrometre of what stays, and a circle keeps a fraction of 4000', () => {
    const circle = Float64Array.from({ length: 8000 }, (_, i) =>
      i % 2 === 0 ? 20 * Math.cos((Math.PI * i) / 4000) : 20 * Math.sin((Math.PI * (i - 1)) / 4000),
    );
    const fewer = simplified(circle, TOLERANCE_mm);
    // Chords of height 0.0005 on a radius of 20: at least 2π/(2·√(2·0.0005/20)) = 444.3 of them.
    expect(fewer.length / 2).toBeGreaterThanOrEqual(444);
    expect(fewer.length / 2).toBeLessThan(1000);
    for (let i = 0; i < circle.length; i += 2)
      expect(away(circle[i], circle[i + 1], fewer)).toBeLessThanOrEqual(TOLERANCE_mm + 1e-12);
  });
  test.each([
    ['repeats', [0, 0, 0, 0, 5, 0, 5, 5, 5, 5, 0, 5, 0, 0], 4],
    ['a spike', [0, 0, 5, 0, 9, 0, 5, 0, 5, 5, 0, 5], 4],
    ['a spike over the end', [5, 0, 5, 5, 0, 5, 0, 0, 0, -4, 0, 0], 4],
    ['two steps of a spike', [0, 0, 5, 0, 7, 0, 9, 0, 7, 0, 5, 0, 5, 5, 0, 5], 4],
    ['points that round to one', [0, 0, 5, 0, 5, 0.0002, 5, 5, 0.0004, 5, 0, 5], 4],
  ])('%s go', (_, ring, count) => {
    const kept = rounded(Float64Array.from(ring));
    expect(kept).toHaveLength(2 * count);
    expect(new Set(closedPoints(kept!))).toEqual(new Set(['0,0', '5,0', '5,5', '0,5']));
  });
  test('what has no area is nothing', () => {
    expect(rounded(Float64Array.of(0, 0, 5, 0, 9, 0))).toBeNull();
    expect(rounded(Float64Array.of(0, 0, 0.0003, 0, 0, 0.0003))).toBeNull();
    expect(rounded(Float64Array.of(0, 0, 5, 5, 0, 0, 5, 5))).toBeNull();
  });
  const closedPoints = (ring: Float64Array): string[] =>
    Array.from({ length: ring.length / 2 }, (_, i) => `${ring[2 * i]},${ring[2 * i + 1]}`);
});

describe('rings that keep apart', () => {
  const ring = (...flat: number[]): Float64Array => Float64Array.from(flat);
  const square = (x: number, y: number, size: number): Float64Array =>
    ring(x, y, x + size, y, x + size, y + size, x, y + size);
  test.each<[string, Float64Array[], boolean]>([
    ['one square', [square(0, 0, 9)], true],
    ['a square in a square', [square(0, 0, 9), square(3, 3, 3)], true],
    ['two beside each other', [square(0, 0, 9), square(9.001, 0, 9)], true],
    ['two with a common side', [square(0, 0, 9), square(9, 0, 9)], false],
    ['two with a common corner', [square(0, 0, 9), square(9, 9, 9)], false],
    ['two that cross', [square(0, 0, 9), square(4, 4, 9)], false],
    ['two that overlap with sides in line', [square(0, 0, 9), ring(4, 0, 13, 0, 13, 9, 4, 9)], false],
    ['a bow tie', [ring(0, 0, 9, 9, 9, 0, 0, 9)], false],
    ['a corner that touches a side of its own ring', [ring(0, 0, 9, 0, 9, 9, 5, 0, 0, 9)], false],
    ['a side that folds back', [ring(0, 0, 9, 0, 4, 0, 4, 5)], false],
    ['a needle upright', [ring(0, 0, 0.001, 0, 0.001, 900, 0, 900)], true],
    ['edges in one line, apart', [ring(33, 17, 0, 0, 23, 7, 18, 2, 17, 0, 29, 13)], true],
    ['nothing', [], true],
  ])('%s', (_, rings, apart) => {
    expect(areApart(rings)).toBe(apart);
  });
  test('no pair of edges that cross is overlooked', () => {
    const crossing = (r: Float64Array): boolean => {
      const n = r.length / 2;
      const p = (i: number): [number, number] => [r[2 * (i % n)], r[2 * (i % n) + 1]];
      const side = (a: [number, number], b: [number, number], c: [number, number]): number =>
        Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
      for (let i = 0; i < n; i++)
        for (let k = i + 2; k < n; k++) {
          if (i === 0 && k === n - 1) continue;
          const [a, b, c, d] = [p(i), p(i + 1), p(k), p(k + 1)];
          // edges in one line apart from each other lie on both sides of neither
          const apart = (axis: 0 | 1): boolean =>
            Math.max(a[axis], b[axis]) < Math.min(c[axis], d[axis]) ||
            Math.max(c[axis], d[axis]) < Math.min(a[axis], b[axis]);
          if (apart(0) || apart(1)) continue;
          if (side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0) return true;
        }
      return false;
    };
    const place = fc.integer({ min: 0, max: 40 });
    let found = 0;
    fc.assert(
      fc.property(fc.array(place, { minLength: 6, maxLength: 14 }), (list) => {
        const corners = ring(...list.slice(0, 2 * Math.floor(list.length / 2)));
        if (!crossing(corners)) return;
        found += 1;
        expect(areApart([corners])).toBe(false);
      }),
      { numRuns: 2000 },
    );
    expect(found).toBeGreaterThan(500);
  });
});

describe('open outlines', () => {
  const chain = (...flat: number[]): Float64Array => Float64Array.from(flat);
  test('join end to start, nearest first', () => {
    const halves = [chain(0, 0, 5, 0, 5, 5), chain(5.005, 5, 0, 5, 0, 0.004)];
    const { rings, widestGap } = closeChains(halves, 0.01);
    expect(widestGap).toBeNull();
    expect(rings.map((ring) => ring.length / 2)).toEqual([6]);
  });
  test('the widest gap that stays open is named, and closing it closes all', () => {
    const halves = [chain(0, 0, 5, 0, 5, 5), chain(5, 5.2, 0, 5.2, 0, 3)];
    const open = closeChains(halves, 0.01);
    expect([open.rings.length, open.widestGap]).toEqual([0, 3]);
    expect(closeChains(halves, 3)).toMatchObject({ widestGap: null, rings: { length: 1 } });
  });
  test('a random square cut into pieces and shaken closes again', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 39.99, noNaN: true }), { minLength: 1, maxLength: 12 }),
        fc.integer(),
        (cuts, seed) => {
          const at = (s: number): [number, number] => {
            const [side, rest] = [Math.floor(s / 10), s % 10];
            return ([[rest, 0], [10, rest], [10 - rest, 10], [0, 10 - rest]] as [number, number][])[side % 4]; // prettier-ignore
          };
          const sorted = [...new Set(cuts)].sort((a, b) => a - b);
          const pieces = sorted.map((from, i) => {
            const to = i + 1 < sorted.length ? sorted[i + 1] : sorted[0] + 40;
            const corners = [10, 20, 30, 40, 50, 60, 70].filter((s) => s > from && s < to);
            return chain(...[from, ...corners, to].flatMap((s) => at(s % 40)));
          });
          const order = pieces
            .map((piece, i) => [Math.sin(seed + i), piece] as const)
            .sort((a, b) => a[0] - b[0]);
          const { rings, widestGap } = closeChains(
            order.map(([, piece]) => piece),
            0.005,
          );
          expect(widestGap).toBeNull();
          expect(rings.reduce((sum, ring) => sum + shoelaceOf(ring), 0)).toBeCloseTo(100, 0);
        },
      ),
    );
  });
  const shoelaceOf = (ring: Float64Array): number => {
    let twice = 0;
    for (let i = 0; i < ring.length; i += 2) {
      const k = (i + 2) % ring.length;
      twice += ring[i] * ring[k + 1] - ring[k] * ring[i + 1];
    }
    return twice / 2;
  };
});
