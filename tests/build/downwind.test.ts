// Downwind. Sources: closed forms [mathematics] and a seeded random sample of spots.
import { describe, expect, it } from 'vitest';
import { plumesOver } from '../../src/build/downwind';
import { circleRing } from '../../src/geometry/circle';
import { boxOf, containsPoint, rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';

/** Two equal loads of width w in line with the flow: 2b/w − (b/w)². */
const inLine = (b: number, w: number): number => (2 * b) / w - (b / w) ** 2;
const place = (region: Region, turn: number): Region => turnAndMove(region, turn, 7, -11);

describe('plumes over a beam', () => {
  it.each([0, 90, 180, 270, 37.3])(
    'of two 160 mm wide loads in line with a flow towards %d° are 0.121 and 0',
    (turn) => {
      // Two loads 160 wide in line, half-width 10: 0.121 on the downwind one, 0 on the other [computed by hand].
      const up = place(rectangle(-160, -80, 0, 80), turn);
      const down = place(rectangle(10, -80, 170, 80), turn);
      const [first, second] = plumesOver([[up], [down]], [10, 10], turn, 10);
      expect(first).toBeCloseTo(0, 12);
      expect(Math.abs(second - inLine(10, 160))).toBeLessThan(1e-5);
      expect(second).toBeCloseTo(0.121, 3);
      expect(plumesOver([[up], [down]], [10, 10], turn + 180, 10)[0]).toBeCloseTo(second, 6);
      for (const value of plumesOver([[up], [down]], [10, 10], turn + 90, 10))
        expect(value).toBeLessThan(1e-12);
    },
  );
  it.each([0.05, 1, 7.7, 40, 159, 160, 400])('follow the closed form for a half-width of %d mm', (b) => {
    const [, second] = plumesOver([[rectangle(-160, -80, 0, 80)], [rectangle(0, -80, 30, 80)]], [5, 5], 0, b);
    expect(Math.abs(second - (b >= 160 ? 1 : inLine(b, 160)))).toBeLessThan(1e-4);
  });
  it('side by side at equal heights count half of what lies in the strip', () => {
    // |v − v′| ≤ b for two widths w that abut: (b/w)²/2 while b ≤ w; behind and before by halves.
    const [left, right] = plumesOver([[rectangle(0, 0, 50, 40)], [rectangle(0, 40, 50, 80)]], [5, 5], 0, 10);
    expect(Math.abs(left - (10 / 40) ** 2 / 4)).toBeLessThan(1e-4);
    expect(Math.abs(right - (10 / 40) ** 2 / 4)).toBeLessThan(1e-4);
  });
  it('are decided point by point where the areas interleave along the flow', () => {
    // Teeth of 10 mm in turn, i first, five each: j is behind in 5 + 4 + … + 1 of 25 pairs.
    const teeth = (start: number): Region[] =>
      [0, 1, 2, 3, 4].map((k) => rectangle(start + 20 * k, 0, start + 20 * k + 10, 30));
    const [first, second] = plumesOver([teeth(0), teeth(10)], [5, 5], 0, 100);
    expect(Math.abs(second - 15 / 25)).toBeLessThan(1e-3);
    expect(Math.abs(first - 10 / 25)).toBeLessThan(1e-3);
  });
  it('shrink where the upwind laser is done before, and not where it works longer', () => {
    const pair: Region[][] = [[rectangle(-160, -80, 0, 80)], [rectangle(0, -80, 160, 80)]];
    expect(plumesOver(pair, [5, 10], 0, 10)[1]).toBeCloseTo(inLine(10, 160) / 2, 5);
    expect(plumesOver(pair, [20, 10], 0, 10)[1]).toBeCloseTo(inLine(10, 160), 5);
  });
  it('add up over all upwind lasers', () => {
    const three: Region[][] = [0, 50, 100].map((x) => [rectangle(x, 0, x + 50, 60)]);
    const [a, b, c] = plumesOver(three, [1, 1, 1], 0, 10);
    expect(a).toBeCloseTo(0, 9);
    expect(b).toBeCloseTo(inLine(10, 60), 4);
    expect(c).toBeCloseTo(2 * inLine(10, 60), 4);
  });
  it('are 0 without load, without area and without width', () => {
    const one: Region[][] = [[rectangle(0, 0, 10, 10)], []];
    expect(plumesOver(one, [1, 0], 0, 10)).toEqual([0, 0]);
    expect(plumesOver([[], []], [0, 0], 0, 10)).toEqual([0, 0]);
    expect(plumesOver([[rectangle(0, 0, 9, 9)], [rectangle(9, 0, 18, 9)]], [1, 1], 0, 0)).toEqual([0, 0]);
  });
  it('agree with a random sample of spots on rings, discs and blocks in mixed order', () => {
    const areas: Region[][] = [
      [[circleRing(-40, 20, 60), reversed(circleRing(-40, 20, 30))], rectangle(60, -90, 100, -60)],
      [[circleRing(50, 40, 45)], rectangle(-110, -80, -60, -50)],
      [rectangle(-20, -40, 40, -10), rectangle(90, 60, 130, 110)],
    ];
    const loads = [30, 20, 45];
    const towards = 215;
    const found = plumesOver(areas, loads, towards, 12);
    const sampled = sample(areas, loads, towards, 12, 400_000);
    // Standard error of a share of 400,000 pairs: below 0.0008; two pairs add up per laser.
    found.forEach((value, j) => expect(Math.abs(value - sampled[j])).toBeLessThan(0.004));
  });
});

/** mulberry32, a small public-domain generator; the seed is pinned. */
function generator(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

function spots(regions: readonly Region[], count: number, random: () => number): Float64Array {
  const box = boxOf(regions.flat());
  const out = new Float64Array(2 * count);
  for (let n = 0; n < count;) {
    const x = box.minX + random() * (box.maxX - box.minX);
    const y = box.minY + random() * (box.maxY - box.minY);
    if (!regions.some((region) => containsPoint(region, x, y))) continue;
    out[2 * n] = x;
    out[2 * n + 1] = y;
    n++;
  }
  return out;
}

function sample(areas: Region[][], loads: number[], towards: number, b: number, count: number): number[] {
  const random = generator(20261125);
  const [c, s] = [Math.cos((towards * Math.PI) / 180), Math.sin((towards * Math.PI) / 180)];
  const all = areas.map((regions) => spots(regions, count, random));
  return areas.map((_, j) =>
    areas.reduce((sum, __, i) => {
      if (i === j) return sum;
      let hits = 0;
      for (let n = 0; n < 2 * count; n += 2) {
        const dx = all[j][n] - all[i][n];
        const dy = all[j][n + 1] - all[i][n + 1];
        if (c * dx + s * dy > 0 && Math.abs(c * dy - s * dx) <= b) hits++;
      }
      return sum + (hits / count) * Math.min(1, loads[i] / loads[j]);
    }, 0),
  );
}
