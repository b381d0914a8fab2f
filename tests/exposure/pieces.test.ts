/**
 * Pieces, seams and their loads on plates small enough to compute by hand [mathematics]; the rules are README's arithmetic.
 * Coordinates from the front-left corner of a 400 × 400 platform, process numbers as in tests/support/plates.ts:
 * 120 mm²/s, a vector of 10 mm, a gap of 0.4 ms, one contour at 600 mm/s, 0.02 s a piece.
 */
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt } from '../../src/build/analyse';
import type { LayerFigures } from '../../src/build/types';
import { plate, QUADRANTS, rect, standing, strips } from '../support/plates';

const halves = strips(90, [0], ['L1', 'L2']);
const layer = (...given: Parameters<typeof plate>): LayerFigures => figuresAt(analyse(plate(...given)), 0);
/** s per mm² hatched: exposure and gaps. */
const PER_MM2 = 1 / 120 + 0.0004;
const loads = ({ lasers }: LayerFigures): number[] => lasers.slice(0, 2).map(({ load_s }) => load_s);
const areas = ({ lasers }: LayerFigures): number[] => lasers.map(({ scanArea_mm2 }) => scanArea_mm2);

describe('the true outline', () => {
  it.each([
    ['side by side', halves, rect(180, 190, 230, 210)],
    ['one behind the other', strips(0, [0], ['L1', 'L2']), rect(190, 180, 210, 230)],
  ])('of a block cut in two has 60 and 80 mm; the cut is no outline (strips %s)', (_, zoning, block) => {
    const figures = layer([standing('block', 10, block)], zoning);
    expect(figures.lasers.slice(0, 2).map(({ outline_mm }) => outline_mm)).toEqual([60, 80]);
    expect(figures.seamLength_mm).toBe(20);
  });
  // An edge along the zone line is outline wherever the part stands: no rounding of the part's place may lose it.
  it('of a block cut in two stays the same wherever the block stands', () => {
    for (let i = 0; i < 100; i++) {
      const x = 185 + 0.137 * i;
      const shape = rect(-10.3, 0, 39.7, 20);
      const block = { ...standing('block', 10, shape), at: [x - 200, 0] as const };
      const figures = layer([block], halves);
      const outlines = figures.lasers.slice(0, 2).map(({ outline_mm }) => outline_mm);
      expect(outlines[0] + outlines[1], `at ${x}`).toBeCloseTo(140, 6);
    }
  });
  it('includes the edges of a hole that is cut', () => {
    // A square standing on its corner with such a hole: each half has half of both outlines.
    const diamond = (r: number): number[][] => [
      [200 - r, 200],
      [200, 200 - r],
      [200 + r, 200],
      [200, 200 + r],
    ];
    const figures = layer([standing('frame', 10, diamond(40), diamond(10))], halves);
    expect(figures.pieces).toHaveLength(2);
    for (const piece of figures.pieces) {
      expect(piece.outline_mm).toBeCloseTo(2 * 40 * Math.SQRT2 + 2 * 10 * Math.SQRT2, 9);
      expect(piece.area_mm2).toBeCloseTo(1600 - 100, 6);
    }
    expect(figures.seams.map(({ length_mm }) => length_mm)).toEqual([30, 30]);
  });
});

describe('the hatch area', () => {
  it('of two tips behind one line is theirs', () => {
    const crown = [
      [-50, -20],
      [20, -10],
      [-10, 0],
      [4, 12],
      [-50, 30],
    ];
    const part = { ...standing('crown', 10, crown), at: [0, 0] as const, turn_deg: 5 };
    const figures = layer([part], strips(95, [0], ['L1', 'L2']));
    // Tips 20 and 4 mm high on bases of 200/21 and 100/21 mm.
    const tips = figures.pieces.filter(({ laser }) => laser === 1).map((piece) => piece.hatchArea_mm2);
    expect(tips.sort((a, b) => a - b)[0]).toBeCloseTo(200 / 21, 6);
    expect(tips[1]).toBeCloseTo(2000 / 21, 6);
  });
  it('of a wall thinner than two insets is nothing: no vectors, only the contour and the gap', () => {
    const wall = standing('wall', 10, rect(100, 100, 101, 200));
    const process = { hatchInset_mm: 0.6, vectorCount: 'areaAndOutline' };
    const [load] = loads(layer([wall], halves, { process }));
    expect(load).toBeCloseTo(202 / 600 + 0.02, 9);
  });
  it('of a block loses a frame as wide as the inset, its area none', () => {
    const block = standing('block', 10, rect(100, 100, 130, 140));
    const process = { hatchInset_mm: 0.5, vectorCount: 'areaAndOutline' };
    const figures = layer([block], halves, { process });
    expect(areas(figures)[0]).toBe(1200);
    const lines = 140 / (Math.PI * 0.1);
    expect(loads(figures)[0]).toBeCloseTo(29 * 39 * PER_MM2 + 0.0004 * lines + 140 / 600 + 0.02, 6);
  });
});

describe('the factor of a part', () => {
  it('multiplies its whole load, the gap included, and nothing else', () => {
    const part = (timeFactor: number) => ({ ...standing('block', 10, rect(100, 100, 130, 140)), timeFactor });
    const [once] = loads(layer([part(1)], halves));
    expect(once).toBeCloseTo(1200 * PER_MM2 + 140 / 600 + 0.02, 9);
    const slow = layer([part(2.5)], halves);
    expect(loads(slow)[0]).toBeCloseTo(2.5 * once, 9);
    expect(areas(slow)[0]).toBe(1200);
  });
});

describe('the seam overlap', () => {
  const block = standing('block', 10, rect(180, 190, 240, 220));
  it('adds half of it along the seam to each side, and is double exposure in full', () => {
    const figures = layer([block], halves, { process: { seamOverlap_mm: 0.2 } });
    expect(areas(figures).slice(0, 2)).toEqual([20 * 30 + 3, 40 * 30 + 3]);
    expect(figures.doubleExposed_mm2).toBeCloseTo(6, 9);
    expect(figures.unassigned_mm2).toBe(0);
    expect(figures.sectionArea_mm2).toBe(1800);
  });
  it('costs time on both sides, and so do the lines that end at the seam', () => {
    const load = (process: Record<string, unknown>): number => loads(layer([block], halves, { process }))[1];
    expect(load({ seamOverlap_mm: 0.2 }) - load({})).toBeCloseTo(3 * PER_MM2, 9);
    const bare = { vectorCount: 'areaAndOutline', contours: 0 };
    expect(load(bare)).toBeCloseTo(1200 * PER_MM2 + (0.0004 * (110 + 30)) / (Math.PI * 0.1) + 0.02, 9);
  });
});

describe('seams', () => {
  it('do not run where one laser has both zones', () => {
    const square = standing('square', 10, rect(170, 170, 230, 230));
    const front = layer([square], { ...QUADRANTS, lasers: ['L1', 'L1', 'L3', 'L4'] });
    expect(front.pieces.filter(({ laser }) => laser === 0)).toHaveLength(1);
    expect(front.seams.map(({ lasers, length_mm }) => [...lasers, length_mm])).toEqual(
      expect.arrayContaining([
        [0, 2, 30],
        [0, 3, 30],
        [2, 3, 30],
      ]),
    );
    expect(front.seams).toHaveLength(3);
    const all = layer([square], { ...QUADRANTS, lasers: ['L2', 'L2', 'L2', 'L2'] });
    expect([all.pieces.length, all.seams.length, all.cutParts]).toEqual([1, 0, 0]);
  });
  it('that end on the edge of the platform leave no mark there', () => {
    const half = layer([standing('half', 10, rect(180, -20, 220, 30))], halves);
    expect(half.seams).toHaveLength(1);
    expect(half.seamLength_mm).toBe(30);
    expect(half.witnessLines).toBe(1);
    expect(half.unassigned_mm2).toBe(40 * 20);
  });
  it('that meet in one point of the outline leave one mark there', () => {
    const ell = [
      [160, 160],
      [240, 160],
      [240, 200],
      [200, 200],
      [200, 240],
      [160, 240],
    ];
    const figures = layer([standing('ell', 10, ell)], QUADRANTS);
    expect(figures.seams.map(({ lasers, length_mm }) => [...lasers, length_mm])).toEqual(
      expect.arrayContaining([
        [0, 1, 40],
        [0, 2, 40],
      ]),
    );
    expect(figures.witnessLines).toBe(3);
  });
  it('through a hole are two, with four marks', () => {
    const ring = standing('ring', 10, { circle_mm: [200, 200, 50] }, { circle_mm: [200, 200, 20] });
    const figures = layer([ring], halves);
    expect(figures.seams).toHaveLength(2);
    for (const { length_mm, witnessLines } of figures.seams) {
      expect(Math.abs(length_mm - 30)).toBeLessThan(0.02);
      expect(witnessLines).toBe(2);
    }
    expect([figures.witnessLines, figures.cutParts, figures.pieces.length]).toEqual([4, 1, 2]);
  });
  it('across a U make three pieces of it', () => {
    const u = [
      [100, 150],
      [160, 150],
      [160, 250],
      [140, 250],
      [140, 170],
      [120, 170],
      [120, 250],
      [100, 250],
    ];
    const figures = layer([standing('u', 10, u)], strips(0, [0], ['L1', 'L2']));
    const found = figures.pieces.map(({ laser, area_mm2 }) => [laser, area_mm2]);
    expect(found).toEqual(
      expect.arrayContaining([
        [0, 60 * 20 + 2 * 20 * 30],
        [1, 1000],
        [1, 1000],
      ]),
    );
    expect([found.length, figures.seams.length, figures.witnessLines]).toEqual([3, 2, 4]);
    const legs = 2 * (1000 * PER_MM2 + 120 / 600 + 0.02);
    expect(loads(figures)[1]).toBeCloseTo(legs, 9);
  });
});
