/**
 * Where the one planned cut would leave a crumb, another part is cut instead: by hand, in a band 60 mm wide that two
 * lasers share. Loads are areas here (no contours, no gaps per piece, no seam overlap), so each laser can have half.
 * Square millimetres [mathematics].
 */
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt } from '../../src/build/analyse';
import { machine, plate, rect, standing, strips } from '../support/plates';

const band = { ...strips(90, [0], ['L1', 'L2']), sharedBand_mm: 60 };
const options = {
  process: { contours: 0, pieceGap_s: 0 },
  machine: { lasers: machine(400, ['L1', 'L2']).lasers },
};
/** Blocks of width × depth one behind the other in the middle of the band. */
const blocks = (...sizes: readonly (readonly [number, number])[]) =>
  sizes.map(([w, d], i) =>
    standing(`b${i}`, 10, rect(200 - w / 2, 40 + 60 * i, 200 + w / 2, 40 + 60 * i + d)),
  );
const areas = (...sizes: readonly (readonly [number, number])[]): number[] =>
  figuresAt(analyse(plate(blocks(...sizes), band, options)), 0).lasers.map((laser) => laser.scanArea_mm2);

describe('a cut that would leave a crumb', () => {
  it('is made through another part: 40 + 20 + 26 mm² are 43 and 43', () => {
    for (const area of areas([10, 4], [10, 2], [10, 2.6])) expect(area).toBeCloseTo(43, 4);
  });
  it('is made through another part: 600 + 300 + 300.66 mm² are 600.33 each', () => {
    for (const area of areas([30, 20], [30, 10], [30, 10.022])) expect(area).toBeCloseTo(600.33, 3);
  });
});
