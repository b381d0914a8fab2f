/** A line cuts a connected region in two, or in more: counted by hand and against the cutting itself. */
import { describe, expect, it } from 'vitest';
import { circleRing } from '../../src/geometry/circle';
import { clean } from '../../src/geometry/clipper';
import { cutByLine, untagged } from '../../src/geometry/halfPlane';
import { cutsInTwo } from '../../src/geometry/halves';
import { components } from '../../src/geometry/region';
import type { HalfPlane, Region } from '../../src/geometry/types';

const region = (...rings: Float64Array[]): Region => clean(rings, 'evenOdd').region;
const at = (c: number): HalfPlane => ({ nx: 1, ny: 0, c });

describe('cutsInTwo', () => {
  const disc = region(circleRing(0, 0, 20));
  const ring = region(circleRing(0, 0, 20), circleRing(0, 0, 10));
  const u = region(Float64Array.of(0, 0, 30, 0, 30, 10, 10, 10, 10, 20, 30, 20, 30, 30, 0, 30));

  it('a disc falls in two wherever it is cut', () => expect(cutsInTwo(disc, at(7))).toBe(true));
  it('a ring falls in two through its hole and beside it', () => {
    expect(cutsInTwo(ring, at(0))).toBe(true);
    expect(cutsInTwo(ring, at(15))).toBe(true);
  });
  it('a U falls in two across its back and in three across its arms', () => {
    expect(cutsInTwo(u, at(5))).toBe(true);
    expect(cutsInTwo(u, at(20))).toBe(false);
  });
  it('a line beside the region cuts nothing', () => expect(cutsInTwo(disc, at(30))).toBe(false));

  it('agrees with the cut itself on a comb with holes at 400 places and turns', () => {
    const comb = region(
      Float64Array.of(
        0,
        0,
        60,
        0,
        60,
        40,
        50,
        40,
        50,
        10,
        40,
        10,
        40,
        35,
        30,
        35,
        30,
        12,
        20,
        12,
        20,
        40,
        0,
        40,
      ),
      circleRing(8, 20, 5),
      circleRing(45, 5, 3),
    );
    for (let k = 0; k < 400; k++) {
      const a = k * 0.7;
      const line = {
        nx: Math.cos(a),
        ny: Math.sin(a),
        c: 30 * Math.cos(a) + 20 * Math.sin(a) + ((k * 7) % 50) - 25,
      };
      const { inside, outside } = cutByLine(untagged(comb), line);
      const pieces = [inside, outside].map((side) => components(side.rings).length);
      expect(cutsInTwo(comb, line), `k = ${k}: ${pieces.join(' and ')}`).toBe(
        pieces[0] === 1 && pieces[1] === 1,
      );
    }
  });
});
