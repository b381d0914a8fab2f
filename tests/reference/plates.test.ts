/**
 * Plates computed by hand. Process numbers are common practice, no source; the figures beside them were
 * worked out by hand from areas of rectangles, discs and circle segments. Tolerance 0.1 %, areas 0.05 %.
 */
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt } from '../../src/build/analyse';
import type { LayerFigures } from '../../src/build/types';
import { machine, plate, QUADRANTS, rect, standing, strips } from '../support/plates';

const near = (actual: number, expected: number, relative = 0.001): void => {
  expect(Math.abs(actual - expected), `${actual} is not ${expected}`).toBeLessThanOrEqual(
    Math.abs(expected) * relative + 1e-9,
  );
};
const areas = (layer: LayerFigures): number[] => layer.lasers.map((laser) => laser.scanArea_mm2);
const nearAll = (actual: readonly number[], expected: readonly number[], relative = 0.0005): void => {
  expect(actual.length).toBe(expected.length);
  actual.forEach((value, i) => near(value, expected[i], relative));
};
const books = (layer: LayerFigures): void => {
  const scanned = areas(layer).reduce((a, b) => a + b, 0);
  near(scanned - layer.doubleExposed_mm2 + layer.unassigned_mm2, layer.sectionArea_mm2, 1e-6);
};

const ringPlate = [
  standing('ring', 120, { circle_mm: [200, 200, 150] }, { circle_mm: [200, 200, 120] }),
  standing('b1', 120, rect(20, 20, 60, 60)),
  standing('b2', 120, rect(340, 20, 380, 60)),
  standing('b3', 120, rect(20, 340, 60, 380)),
  standing('b4', 120, rect(340, 350, 380, 370)),
];

describe('Ring plate', () => {
  it('in quadrants', () => {
    const analysis = analyse(plate(ringPlate, QUADRANTS));
    const layer = figuresAt(analysis, 0);
    nearAll(areas(layer), [7961.73, 7961.73, 7961.73, 7161.73]);
    near(layer.exposure_s, 70.546);
    near(layer.imbalanceArea_pct, 2.58, 0.002);
    near(layer.imbalanceTime_pct, 2.56, 0.002);
    near(Math.max(...layer.lasers.map((l) => l.idle_s)), 7.053);
    expect(layer.seams).toHaveLength(4);
    near(layer.seamLength_mm, 120);
    expect(layer.witnessLines).toBe(8);
    expect(layer.cutParts).toBe(1);
    expect(analysis.build.layers).toBe(2000);
    near(analysis.build.time_h, 44.748);
    expect(analysis.problems).toEqual([]);
    books(layer);
  });

  it('in quadrants with the blade laying powder both ways', () => {
    const recoater = { towards_deg: 0, mode: 'bothWays', oneWay_s: 10, bothWays_s: 7.5 };
    near(analyse(plate(ringPlate, QUADRANTS, { machine: { recoater } })).build.time_h, 43.359);
  });

  it('in four strips of equal width', () => {
    const analysis = analyse(plate(ringPlate, strips(90, [-100, 0, 100])));
    const layer = figuresAt(analysis, 0);
    nearAll(areas(layer), [9143.08, 6780.37, 6780.37, 8343.08]);
    near(layer.exposure_s, 81.098);
    near(layer.imbalanceArea_pct, 17.8);
    near(layer.imbalanceTime_pct, 17.89);
    expect(layer.seams).toHaveLength(6);
    near(layer.seamLength_mm, 241.88);
    near(analysis.build.time_h, 50.61);
    books(layer);
  });

  it('in four strips of equal area', () => {
    const lines = [86.49, 193.34, 306.11].map((x) => x - 200);
    const layer = figuresAt(analyse(plate(ringPlate, strips(90, lines))), 0);
    nearAll(areas(layer), [7761.73, 7761.73, 7761.73, 7761.73]);
  });

  it('with a shared band of 30 mm the best possible is an equal share for all', () => {
    const bare = { contours: 0, vectorGap_ms: 0, pieceGap_s: 0 };
    const layer = figuresAt(
      analyse(plate(ringPlate, { ...QUADRANTS, sharedBand_mm: 30 }, { process: bare })),
      0,
    );
    near(layer.bestPossible_s, 7761.73 / 120, 0.0005);
    near(layer.exposure_s, 7761.73 / 120, 0.0005);
    books(layer);
  });

  it('as whole parts the ring is the plate', () => {
    const analysis = analyse(plate(ringPlate, { strategy: 'wholeField' }, { allocation: 'wholeParts' }));
    const layer = figuresAt(analysis, 0);
    nearAll(
      [...areas(layer)].sort((a, b) => b - a),
      [25446.9, 2400, 1600, 1600],
    );
    near(analysis.build.time_h, 130.602);
    expect(layer.seams).toEqual([]);
    expect(analysis.build.choiceProven).toBe(true);
  });

  it('a ring counted without its hole would read 70686 mm², a 32-sided one 25283.7: ours is 25446.9', () => {
    const layer = figuresAt(analyse(plate([ringPlate[0]], { strategy: 'wholeField' })), 0);
    near(layer.sectionArea_mm2, Math.PI * (150 ** 2 - 120 ** 2), 1e-5);
    for (const wrong of [70686, 25283.7])
      expect(Math.abs(layer.sectionArea_mm2 - wrong)).toBeGreaterThan(100);
  });
});

const corners = [
  [60, 60],
  [60, 140],
  [140, 60],
  [140, 140],
  [260, 60],
  [340, 60],
  [260, 140],
  [340, 140],
  [60, 260],
  [140, 260],
  [60, 340],
  [140, 340],
];
const tallPlate = [
  ...corners.map(([x, y], i) => standing(`b${i}`, 60, rect(x - 25, y - 25, x + 25, y + 25))),
  standing('tall', 240, rect(250, 250, 350, 350)),
];

describe('Tall one', () => {
  it('in quadrants is even at 30 mm and idle at 150 mm', () => {
    const analysis = analyse(plate(tallPlate, QUADRANTS));
    expect(figuresAt(analysis, 30).imbalanceTime_pct).toBeLessThan(0.7);
    near(figuresAt(analysis, 150).imbalanceTime_pct, 300);
    near(analysis.build.time_h, 109.113);
    near(analysis.build.dose_l, 76.8);
    near(analysis.build.overflow_l, 35.6);
  });

  it('in strips takes 72 hours with one seam of 100 mm above the blocks', () => {
    const analysis = analyse(plate(tallPlate, strips(90, [-100, 0, 100])));
    near(analysis.build.time_h, 72.446);
    const above = figuresAt(analysis, 150);
    expect(above.seams).toHaveLength(1);
    near(above.seamLength_mm, 100);
  });

  it.each([
    [80, 10000, ['L4']],
    [120, 8100, ['L4']],
    [150, 5625, ['L4']],
    [180, 3600, ['L4']],
    [200, 2500, null],
  ])('a shared band of %i mm leaves %i mm² to the slowest', (sharedBand_mm, load, setBy) => {
    const bare = { contours: 0, vectorGap_ms: 0, pieceGap_s: 0 };
    const layer = figuresAt(
      analyse(plate(tallPlate, { ...QUADRANTS, sharedBand_mm }, { process: bare })),
      150,
    );
    near(layer.bestPossible_s, load / 120, 1e-6);
    if (setBy) expect(layer.bestSetBy).toEqual(setBy);
    near(layer.exposure_s, load / 120, 1e-6);
    books(layer);
  });

  it('in quadrants below 60 mm and shared by all four above takes 54.113 h, with a minimum of 40 s 60.763 h', () => {
    // Zones that change over height are two plates on top of each other: 1000 layers of this one, 3000 of that one.
    const hours = (minLayer_s: number): number => {
      const process = { minLayer_s };
      const below = figuresAt(analyse(plate(tallPlate, QUADRANTS, { process })), 30);
      const above = figuresAt(analyse(plate(tallPlate, { strategy: 'wholeField' }, { process })), 150);
      return (1000 * below.time_s + 3000 * above.time_s) / 3600;
    };
    near(hours(0), 54.113);
    near(hours(40), 60.763);
    near(hours(40) - hours(0), 6.65);
  });

  it('shared by all four above the blocks takes a quarter, with four piece gaps', () => {
    const layer = figuresAt(analyse(plate([tallPlate[12]], { strategy: 'wholeField' })), 150);
    const alone = 10000 / 120 + 0.4e-3 * 10000 + 400 / 600;
    near(layer.exposure_s, alone / 4 + 0.02, 1e-6);
    near(layer.bestPossible_s, (alone + 0.02) / 4, 1e-6);
    expect(layer.seams).toHaveLength(3);
    books(layer);
  });
});

const twoLasers = { lasers: machine(400, ['L1', 'L2']).lasers };

describe('Equal totals lie', () => {
  it('two parts of equal volume leave 60 % imbalance in every layer', () => {
    const two = (id: string, x: number, below: number, above: number) => {
      const square = (side: number) => rect(x, 100, x + side, 100 + side);
      return {
        id,
        slabs: [
          { to_mm: 50, rings: [square(below)] },
          { to_mm: 100, rings: [square(above)] },
        ],
      };
    };
    const parts = [two('A', 20, 100, 50), two('B', 220, 50, 100)];
    const analysis = analyse(plate(parts, strips(90, [0], ['L1', 'L2']), { machine: twoLasers }));
    for (const z of [10, 40, 60, 90]) near(figuresAt(analysis, z).imbalanceArea_pct, 60);
  });
});

describe('Mushroom', () => {
  it('has the stem below 50 mm and the cap above', () => {
    const mushroom = {
      id: 'mushroom',
      slabs: [
        { to_mm: 50, rings: [{ circle_mm: [200, 200, 10] }] },
        { to_mm: 70, rings: [{ circle_mm: [200, 200, 50] }] },
      ],
    };
    const analysis = analyse(plate([mushroom], { strategy: 'wholeField' }));
    near(figuresAt(analysis, 25).sectionArea_mm2, 314.16, 1e-4);
    near(figuresAt(analysis, 60).sectionArea_mm2, 7853.98, 1e-4);
  });
});

describe('Thin walls', () => {
  it('cost more than a block of the same area', () => {
    const fins = Array.from({ length: 12 }, (_, i) =>
      standing(`f${i}`, 10, rect(20 + 5 * i, 20, 21 + 5 * i, 120)),
    );
    const block = standing('block', 10, rect(300, 20, 330, 60));
    const layer = figuresAt(
      analyse(
        plate([...fins, block], strips(90, [0], ['L1', 'L2']), {
          process: { vectorCount: 'areaAndOutline' },
        }),
      ),
      0,
    );
    near(layer.lasers[0].load_s, 17.85);
    near(layer.lasers[1].load_s, 10.91);
  });
});
