// What the blade meets in one layer. Expected values: mathematics, on blocks, discs and rings placed by hand; for random
// sections the met length is measured line by line by JTS (npm jsts), a general-purpose geometry library.
import { describe, expect, it } from 'vitest';
import { metAt, steepestRise, type MetProfile } from '../../src/build/bladeProfile';
import { circleRing } from '../../src/geometry/circle';
import { rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';
import { line, polygon } from '../support/secondLibrary';
import { bladeContact, ONE_WAY } from './blade';

const block = (x: number, y: number, turn = 0): Region =>
  turnAndMove(rectangle(-10, -20, 10, 20), turn, x, y);
const disc = (x: number, y: number, r: number): Region => [circleRing(x, y, r)];
const BOTH = { ...ONE_WAY, bothWays: true };

describe('a block of 20 × 40 mm', () => {
  it('square to the blade is met over 40 mm at once', () => {
    const { largest, steepest, jump, profile } = bladeContact([block(5, 0)], 0);
    expect(largest).toEqual({ met_mm: 40, at_mm: -5 });
    expect(jump).toEqual({ rise_mm: 40, from_mm: -5, to_mm: -5, back: false });
    expect(steepest.rise_mm).toBe(40);
    expect([-5.1, -4.9, 14.9, 15.1].map((s) => metAt(profile, s))).toEqual([0, 40, 40, 0]);
  });
  it('met along its length rises by 20 mm, wherever the blade comes from', () => {
    for (const towards of [90, 270]) {
      const { largest, jump } = bladeContact([block(0, 7)], towards);
      expect([largest.met_mm, jump.rise_mm]).toEqual([20, 20]);
      expect(jump.to_mm).toBe(towards === 90 ? 7 - 20 : -7 - 20);
    }
  });
  it('turned by 45° is met over 20·√2 = 28.284 mm at most and rises by 2 mm a millimetre', () => {
    const { largest, steepest, jump } = bladeContact([block(0, 0, 45)], 0);
    expect(largest.met_mm).toBeCloseTo(20 * Math.SQRT2, 9);
    // The first corner stands at −(10 + 20)/√2, the next one 20/√2 behind it.
    expect(largest.at_mm).toBeCloseTo(-10 / Math.SQRT2, 9);
    expect(steepest.rise_mm).toBeCloseTo(2, 9);
    expect(jump.rise_mm).toBe(0);
  });
  it('turned by any angle rises by stroke/(sin·cos), until a whole side is met', () => {
    for (const turn of [1, 2, 10, 30, 60, 85]) {
      const a = (turn * Math.PI) / 180;
      // Met length just behind the first corner: ds·(tan a + cot a); it grows up to the shorter plateau.
      const plateau = Math.min(40 / Math.cos(a), 20 / Math.sin(a));
      const expected = Math.min(plateau, 1 / (Math.sin(a) * Math.cos(a)));
      expect(bladeContact([block(3, 1, turn)], 0).steepest.rise_mm, `turn ${turn}`).toBeCloseTo(expected, 7);
    }
  });
  it('askew by less than a layout can say is met at once, by more within that much of the stroke', () => {
    const askew = (by: number): Region => [Float64Array.of(0, 0, 20, 0, 20, 40, by, 40)];
    expect(bladeContact([askew(0.0005)], 0).jump.rise_mm).toBeCloseTo(40, 9);
    const { jump, steepest } = bladeContact([askew(0.01)], 0);
    expect(jump.rise_mm).toBe(0);
    expect([steepest.rise_mm, steepest.from_mm, steepest.to_mm]).toEqual([
      expect.closeTo(40, 7),
      0,
      expect.closeTo(0.01, 9),
    ]);
  });
  it('is the same to a blade that turns with it', () => {
    const { largest, jump } = bladeContact([block(0, 0, 33)], 33);
    expect(largest.met_mm).toBeCloseTo(40, 9);
    expect(jump.rise_mm).toBeCloseTo(40, 9);
    expect(jump.to_mm).toBeCloseTo(-10, 9);
  });
});

describe('round sections', () => {
  it('a disc is met over its diameter, at its middle', () => {
    const { largest, jump } = bladeContact([disc(12, 0, 15)], 0);
    expect(largest.met_mm).toBeCloseTo(30, 1);
    // Sides at the middle run along the stroke: the largest is met from the beginning of such a side.
    expect(Math.abs(largest.at_mm - 12)).toBeLessThan(1);
    // A polygon in place of the circle begins with a side parallel to the blade: at most 2·√(2·15·0.005·2) mm of it.
    expect(jump.rise_mm).toBeLessThan(2 * Math.sqrt(2 * 15 * 0.01));
  });
  it('a disc rises over the first millimetre by the chord 2·√(2 r − 1) there', () => {
    const { steepest } = bladeContact([disc(0, 0, 15)], 0);
    expect(steepest.rise_mm).toBeCloseTo(2 * Math.sqrt(2 * 15 - 1), 1);
    expect(steepest.from_mm).toBeCloseTo(-15, 1);
  });
  it('a ring is met most just short of its bore: 2·√(R² − r²)', () => {
    const ring: Region = [circleRing(0, 0, 30), reversed(circleRing(0, 0, 24))];
    const { largest, profile } = bladeContact([ring], 0);
    expect(largest.met_mm).toBeCloseTo(2 * Math.sqrt(900 - 576), 1);
    expect(Math.abs(largest.at_mm)).toBeCloseTo(24, 1);
    expect(metAt(profile, 0)).toBeCloseTo(12, 2);
  });
});

describe('several sections', () => {
  it('side by side add: 40 + 40 mm at once', () => {
    const { largest, steepest } = bladeContact([block(0, -30), block(0, 30)], 0);
    expect([largest.met_mm, steepest.rise_mm]).toEqual([80, 80]);
  });
  it('half a millimetre behind one another add to one rise, a millimetre and a half do not', () => {
    expect(bladeContact([block(0, -30), block(0.5, 30)], 0).steepest).toEqual({
      rise_mm: 80,
      from_mm: -10,
      to_mm: -9.5,
      back: false,
    });
    const apart = bladeContact([block(0, -30), block(1.5, 30)], 0);
    expect([apart.steepest.rise_mm, apart.largest.met_mm]).toEqual([40, 80]);
  });
  it('one behind the other do not add', () => {
    const { largest, steepest } = bladeContact([block(0, 0), block(30, 0)], 0);
    expect([largest.met_mm, steepest.rise_mm]).toEqual([40, 40]);
  });
  it('without any there is nothing to meet', () => {
    const { largest, steepest, sides } = bladeContact([], 0);
    expect([largest.met_mm, steepest.rise_mm, sides.length]).toEqual([0, 0, 0]);
  });
});

describe('the way back', () => {
  // A wedge: its tip towards the left, its back 30 mm wide at x = 40.
  const wedge: Region = [Float64Array.of(0, 0, 40, -15, 40, 15)];
  it('counts only where the blade lays powder both ways', () => {
    expect(bladeContact([wedge], 0).steepest.rise_mm).toBeCloseTo(30 / 40, 9);
    expect(bladeContact([wedge], 180).jump).toEqual({ rise_mm: 30, from_mm: -40, to_mm: -40, back: false });
    const both = bladeContact([wedge], 0, BOTH);
    expect([both.jump.rise_mm, both.jump.to_mm, both.steepest.rise_mm]).toEqual([30, 40, 30]);
    expect([both.jump.back, both.steepest.back]).toEqual([true, true]);
  });
  it('meets the sides that face it', () => {
    expect(bladeContact([wedge], 0).sides).toHaveLength(0);
    expect(bladeContact([wedge], 180).sides.map((side) => side.length_mm)).toEqual([30]);
    expect(bladeContact([wedge], 0, BOTH).sides).toHaveLength(1);
  });
});

describe('sides nearly parallel to the blade', () => {
  const sidesOf = (region: Region, towards = 0) => bladeContact([region], towards).sides;
  it('are those the blade runs on to, with their length and angle', () => {
    const [side, ...more] = sidesOf(block(0, 0, 3));
    expect(more).toEqual([]);
    expect([side.length_mm, side.angle_deg]).toEqual([expect.closeTo(40, 9), expect.closeTo(3, 9)]);
  });
  it('count up to the angle of the setting, and not beyond', () => {
    expect(sidesOf(block(0, 0, 5))).toHaveLength(1);
    expect(sidesOf(block(0, 0, -5))).toHaveLength(1);
    expect(sidesOf(block(0, 0, 5.01))).toHaveLength(0);
    expect(bladeContact([block(0, 0, 8)], 0, { ...ONE_WAY, side_deg: 10 }).sides).toHaveLength(1);
  });
  it('count from 5 mm on', () => {
    expect(sidesOf(rectangle(0, 0, 3, 5))).toHaveLength(1);
    expect(sidesOf(rectangle(0, 0, 3, 4.99))).toHaveLength(0);
  });
  it('are counted once where a mesh has broken them up', () => {
    const points = Array.from({ length: 41 }, (_, i) => [i % 2 === 0 ? 0 : 0.002, 40 - i]).flat();
    const broken: Region = [Float64Array.from([...points, 20, 0, 20, 40])];
    expect(sidesOf(broken).map((side) => side.length_mm)).toEqual([40]);
  });
  it('include those of a pocket, where the blade comes on to material again', () => {
    const frame: Region = [...rectangle(0, 0, 60, 30), reversed(rectangle(10, 5, 50, 25)[0])];
    const lengths = sidesOf(frame).map((side) => side.length_mm);
    expect(lengths.sort((a, b) => a - b)).toEqual([20, 30]);
  });
  it('are none on a disc, a ring or a fine polygon of any size on the platform', () => {
    for (const r of [3, 20, 80, 150]) expect(sidesOf(disc(0, 0, r)), `radius ${r}`).toEqual([]);
    expect(sidesOf([circleRing(0, 0, 60), reversed(circleRing(0, 0, 50))])).toEqual([]);
  });
  it('name their section and add up', () => {
    const { sides, sides_mm } = bladeContact([disc(-50, 0, 10), block(0, 0), block(50, 0, 90)], 0);
    expect(sides.map(({ section }) => section)).toEqual([1, 2]);
    expect(sides_mm).toBeCloseTo(60, 9);
  });
});

describe('random sections', () => {
  it('are met over the length that JTS measures on the same line', () => {
    const random = seeded(7);
    for (let run = 0; run < 20; run++) {
      const region = star(random);
      const towards = 360 * random();
      const { profile } = bladeContact([region], towards);
      const seen = polygon(points(region));
      const [ux, uy] = [Math.cos((towards * Math.PI) / 180), Math.sin((towards * Math.PI) / 180)];
      for (let k = 0; k < 12; k++) {
        const s = -30 + 60 * random();
        const across = line([s * ux + 99 * uy, s * uy - 99 * ux], [s * ux - 99 * uy, s * uy + 99 * ux]);
        expect(metAt(profile, s), `run ${run}`).toBeCloseTo(seen.intersection(across).getLength(), 6);
      }
    }
  });
  it('rise as steeply as the worst of many pairs of places, and the place named does rise so', () => {
    const random = seeded(11);
    for (let run = 0; run < 20; run++) {
      const { profile, steepest } = bladeContact([star(random), star(random)], 360 * random());
      const sampled = sampledRise(profile, 1);
      expect(steepest.rise_mm).toBeGreaterThanOrEqual(sampled - 1e-9);
      expect(steepest.rise_mm).toBeLessThan(sampled + 0.5);
      expect(metAt(profile, steepest.to_mm) - metAt(profile, steepest.from_mm)).toBeCloseTo(
        steepest.rise_mm,
        6,
      );
      expect(steepest.to_mm - steepest.from_mm).toBeLessThanOrEqual(1 + 1e-9);
      expect(steepestRise(profile, 5).rise_mm).toBeGreaterThanOrEqual(steepest.rise_mm);
    }
  });
});

/** The largest rise over at most `stroke` among places 0.05 mm apart. */
function sampledRise(profile: MetProfile, stroke: number): number {
  const met = Array.from({ length: 1601 }, (_, i) => metAt(profile, -40 + 0.05 * i));
  let most = 0;
  met.forEach((b, i) => {
    for (let k = Math.max(0, i - Math.round(stroke / 0.05)); k < i; k++) most = Math.max(most, b - met[k]);
  });
  return most;
}

const points = ([ring]: Region) =>
  Array.from({ length: ring.length / 2 }, (_, i) => [ring[2 * i], ring[2 * i + 1]] as const);

function seeded(seed: number): () => number {
  let state = seed * 2654435761;
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A star-shaped outline about the origin, within 30 mm. */
function star(random: () => number): Region {
  const ring = new Float64Array(24);
  for (let i = 0; i < 12; i++) {
    const angle = (Math.PI * i) / 6;
    const r = 8 + 22 * random();
    ring.set([r * Math.cos(angle), r * Math.sin(angle)], 2 * i);
  }
  return [ring];
}
