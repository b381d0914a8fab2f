// The union of many nearly equal sections. Expected values: closed forms (mathematics), and on random sections the
// area of their plain union by JTS (npm jsts), a general-purpose geometry library.
import { describe, expect, it } from 'vitest';
import { circleRing } from '../../src/geometry/circle';
import { uniteNearlyAlike } from '../../src/geometry/cover';
import { area, containsPoint, rectangle } from '../../src/geometry/region';
import { reversed } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';
import { nothing, polygon } from '../support/secondLibrary';

const SLACK = 0.005;
const unite = (regions: readonly Region[]): Region => uniteNearlyAlike(regions, SLACK);
const disc = (x: number, y: number, r: number): Region => [circleRing(x, y, r)];
const steps = (count: number) => Array.from({ length: count }, (_, i) => (i + 0.5) / count);
const vertices = (region: Region) => region.reduce((sum, ring) => sum + ring.length / 2, 0);

describe('the union of sections over height', () => {
  it('of nothing is nothing, of one region that region', () => {
    const block = rectangle(0, 0, 3, 2);
    expect(unite([])).toEqual([]);
    expect(unite([[], block, []])).toBe(block);
  });
  it('of a cone is its base, whichever end is wide', () => {
    const cone = steps(300).map((z) => disc(4, -7, 30 - 20 * z));
    expect(unite(cone)).toBe(cone[0]);
    expect(unite(cone.toReversed())).toBe(cone[0]);
  });
  it('of a leaning cylinder is a disc drawn out: π r² + 2 r L [mathematics]', () => {
    const leaning = steps(2000).map((z) => disc(40 * z, 0, 15));
    const whole = unite(leaning);
    const drawnOut = 40 * (1 - 1 / 2000);
    // Every vertex may fall short by the slack: outline × slack.
    const exact = Math.PI * 225 + 2 * 15 * drawnOut;
    expect(area(whole)).toBeLessThan(exact + 1e-2);
    expect(area(whole)).toBeGreaterThan(exact - SLACK * (2 * Math.PI * 15 + 2 * drawnOut));
    expect(vertices(whole)).toBeLessThan(2000);
  });
  it('of a tube that widens and narrows keeps the narrowest bore', () => {
    const tube = steps(200).map((z): Region => {
      const bore = 5 + 3 * Math.abs(2 * z - 1);
      return [circleRing(0, 0, 20), reversed(circleRing(0, 0, bore))];
    });
    const whole = unite(tube);
    const narrowest = 5 + 3 / 200;
    expect(area(whole) / (Math.PI * (400 - narrowest ** 2))).toBeCloseTo(1, 4);
    expect(containsPoint(whole, 0, 0)).toBe(false);
  });
  it('closes a bore where one section is solid', () => {
    const hollow: Region = [circleRing(0, 0, 20), reversed(circleRing(0, 0, 8))];
    const whole = unite([hollow, disc(0, 0, 19), hollow, hollow]);
    expect(area(whole) / (Math.PI * 400)).toBeCloseTo(1, 6);
  });
  it('keeps a thin rib between two blocks that only one section has', () => {
    const blocks: Region = [...rectangle(0, 0, 10, 10), ...rectangle(30, 0, 40, 10)];
    const rib = rectangle(5, 4, 35, 4.4);
    expect(area(unite([blocks, blocks, rib, blocks]))).toBeCloseTo(200 + 20 * 0.4, 4);
  });
  it('leaves out what sticks out by the slack, and nothing more', () => {
    const block = rectangle(0, 0, 100, 20);
    expect(unite([block, rectangle(10, 10, 20, 20.004), block])).toBe(block);
    expect(area(unite([block, rectangle(10, 10, 20, 20.006), block]))).toBeCloseTo(2000.06, 4);
  });
  it('agrees with JTS on random stacks', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const random = seeded(seed);
      const turn = random() * 0.1;
      const lean = random() * 30;
      const stack = steps(24).map((z, i) => wobbly(lean * z, turn * i, 12 + 6 * random()));
      const outline = 2 * Math.PI * 25 + 60;
      const exact = stack.reduce((sum, region) => sum.union(polygon(points(region))), nothing()).getArea();
      expect(Math.abs(area(unite(stack)) - exact), `seed ${seed}`).toBeLessThan(SLACK * outline);
    }
  });
});

function seeded(seed: number): () => number {
  let state = seed * 2654435761;
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const points = ([ring]: Region) =>
  Array.from({ length: ring.length / 2 }, (_, i) => [ring[2 * i], ring[2 * i + 1]] as const);

/** A five-lobed outline of mean radius r. */
function wobbly(x: number, turn: number, r: number): Region {
  const ring = new Float64Array(80);
  for (let i = 0; i < 40; i++) {
    const angle = (Math.PI * i) / 20;
    const q = r * (1 + 0.2 * Math.cos(5 * angle + 5 * turn));
    ring.set([x + q * Math.cos(angle), q * Math.sin(angle)], 2 * i);
  }
  return [ring];
}
