// Reach outlines that cross shared bands. What one laser alone may expose is one piece wherever it hangs together
//, whatever lines the cells behind it were made from. Square millimetres by hand [mathematics].
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt } from '../../src/build/analyse';
import { LASERS, machine, plate, standing } from '../support/plates';

/** Found on a random plate: L3's reach, a strip of its own and the band of a neighbour that is out of reach meet. */
const reach: Record<string, number[][]> = {
  L3: [
    [199.349, -0.016],
    [162.361, 136.232],
    [27.947, 158.559],
    [-52.261, 90.478],
    [-195.003, 70.954],
    [-110.574, -40.256],
    [-59.563, -103.158],
    [26.898, -152.642],
    [158.272, -132.834],
  ],
  L4: [
    [38.16, -25.62],
    [44.508, 83.045],
    [-56.385, 136.631],
    [-139.789, 69.289],
    [-171.503, 5.867],
    [-209.973, -71.109],
    [-180.525, -191.085],
    [-59.736, -168.867],
    [-14.801, -84.519],
  ],
};
const lasers = machine(340).lasers.map((laser) => ({
  ...laser,
  reach: reach[laser.id] ?? null,
  on: laser.id !== 'L1',
}));
const bands = {
  strategy: 'strips',
  run_deg: 0,
  lines_mm: [-149.986, -96.121, -0.012],
  sharedBand_mm: 1.001,
  lasers: ['L1', 'L4', 'L3', 'L2'],
};
/** Two walls 2 mm wide over the band at y = −96.6 … −95.6, joined above it; both ends stand in L3's region. */
const bridge = [
  [100, -96.4],
  [102, -96.4],
  [102, -60],
  [120, -60],
  [120, -96.4],
  [122, -96.4],
  [122, -50],
  [100, -50],
];
const layer = () =>
  figuresAt(
    analyse(
      plate([{ ...standing('bridge', 10, bridge), at: [0, 0] }], bands, {
        side: 340,
        machine: { lasers },
        process: { pieceGap_s: 0.02 },
      }),
    ),
    0,
  );
const AREA = 2 * 2 * 36.4 + 22 * 10;

describe('a part that one laser alone reaches across a band', () => {
  it('is exposed by it in full', () => {
    expect(layer().lasers[LASERS.indexOf('L3')].scanArea_mm2).toBeCloseTo(AREA, 2);
    expect(layer().unassigned_mm2).toBeCloseTo(0, 2);
  });
  // The region that L3 alone may expose is united from two whose edges along y = −95.62 differ by 1e-5 mm.
  it('is one piece', () => {
    expect(layer().pieces.filter(({ laser }) => laser === 2)).toHaveLength(1);
  });
  it('is hatched once', () => {
    const hatched = layer().pieces.reduce((sum, piece) => sum + piece.hatchArea_mm2, 0);
    expect(hatched).toBeCloseTo(AREA, 2);
  });
});
