/**
 * Who may expose what: switches, reach, pins, parts that keep one laser. By hand [mathematics]; rules are README's arithmetic.
 * Coordinates from the front-left corner of a 400 × 400 platform; process numbers as in tests/support/plates.ts.
 */
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt } from '../../src/build/analyse';
import { coverage } from '../../src/build/checkers';
import type { Analysis, LayerFigures } from '../../src/build/types';
import { machine, plate, QUADRANTS, rect, standing, strips } from '../support/plates';

type Lasers = Record<string, Record<string, unknown>>;
const withLasers = (own: Lasers) => ({
  lasers: machine().lasers.map((laser) => ({ ...laser, ...own[laser.id] })),
});
const areas = ({ lasers }: LayerFigures): number[] => lasers.map(({ scanArea_mm2 }) => scanArea_mm2);
const codes = ({ problems }: Analysis): string[] => problems.map(({ code }) => code);
const bare = { contours: 0, pieceGap_s: 0 };
const PER_MM2 = 1 / 120 + 0.0004;

describe('a laser that is off', () => {
  const square = standing('square', 10, rect(160, 170, 240, 230));
  const off = (zoning: unknown): Analysis =>
    analyse(plate([square], zoning, { machine: withLasers({ L4: { on: false } }) }));
  it('leaves its region unassigned; the neighbours do not grow', () => {
    const analysis = off(QUADRANTS);
    const layer = figuresAt(analysis, 0);
    expect(areas(layer)).toEqual([1200, 1200, 1200, 0]);
    expect(layer.unassigned_mm2).toBe(1200);
    expect(codes(analysis)).toEqual(['part-unassigned']);
    expect(layer.lasers[3]).toMatchObject({ on: false, load_s: 0, idle_s: 0, pieces: 0, outline_mm: 0 });
    // Borders to unassigned area are neither seam nor contour: 40 mm of L2's and L3's edges end there.
    expect(layer.seamLength_mm).toBe(30 + 40);
    expect(coverage(analysis.divisions[0])).toEqual({ covered: 0.75, twice: 0 });
  });
  it('is no part of the mean that imbalance compares with', () => {
    expect(figuresAt(off(QUADRANTS), 0).imbalanceArea_pct).toBeCloseTo(0, 9);
  });
  it('leaves a shared band to the others that share it', () => {
    const layer = figuresAt(off({ ...QUADRANTS, sharedBand_mm: 40 }), 0);
    // 20 mm along each line are shared with a neighbour; of its 40 × 30 mm², 20 × 10 mm² are not.
    expect(layer.unassigned_mm2).toBeCloseTo(20 * 10, 9);
  });
});

describe('all lasers off', () => {
  it('leave everything unassigned and blocked, with no time and no imbalance', () => {
    const off = { on: false };
    const lasers = withLasers({ L1: off, L2: off, L3: off, L4: off });
    const analysis = analyse(
      plate([standing('b', 10, rect(100, 100, 120, 130))], QUADRANTS, { machine: lasers }),
    );
    const layer = figuresAt(analysis, 0);
    expect(layer).toMatchObject({
      exposure_s: 0,
      unassigned_mm2: 600,
      imbalanceTime_pct: 0,
      bestPossible_s: 0,
    });
    expect(codes(analysis)).toContain('all-lasers-off');
    expect(analysis.problems.some(({ blocks }) => blocks)).toBe(true);
  });
});

describe('a pinned part', () => {
  const block = standing('block', 10, rect(20, 20, 60, 60));
  it('goes to its laser whatever the zones say', () => {
    const layer = figuresAt(analyse(plate([{ ...block, laser: 'L4' }], QUADRANTS)), 0);
    expect(areas(layer)).toEqual([0, 0, 0, 1600]);
  });
  it('is exposed only where its laser reaches', () => {
    // Reach from −160 mm to the right: 40 mm from the left edge of the platform.
    const reach = rect(-160, -200, 200, 200);
    const analysis = analyse(
      plate([{ ...block, laser: 'L4' }], QUADRANTS, { machine: withLasers({ L4: { reach } }) }),
    );
    const layer = figuresAt(analysis, 0);
    expect(areas(layer)[3]).toBeCloseTo(20 * 40, 3);
    expect(layer.unassigned_mm2).toBeCloseTo(20 * 40, 3);
    expect(layer.seams).toEqual([]);
    expect(analysis.problems.filter(({ code }) => code === 'pinned-out-of-reach')).toHaveLength(1);
  });
  it('is exposed by nobody while its laser is off', () => {
    const analysis = analyse(
      plate([{ ...block, laser: 'L4' }], QUADRANTS, { machine: withLasers({ L4: { on: false } }) }),
    );
    expect(areas(figuresAt(analysis, 0))).toEqual([0, 0, 0, 0]);
    expect(figuresAt(analysis, 0).unassigned_mm2).toBe(1600);
    expect(codes(analysis)).toContain('pinned-laser-off');
  });
});

describe('a shared band', () => {
  it('is exposed once, whoever takes it', () => {
    const band = { ...strips(90, [0], ['L1', 'L2']), sharedBand_mm: 60 };
    const block = standing('block', 10, rect(180, 180, 220, 220));
    const layer = figuresAt(analyse(plate([block], band, { process: bare })), 0);
    expect(areas(layer)[0] + areas(layer)[1]).toBeCloseTo(1600, 9);
    expect(layer.sectionArea_mm2).toBe(1600);
    expect(layer.exposure_s).toBeCloseTo(800 * PER_MM2, 6);
    expect(layer.seams).toHaveLength(1);
  });
});

const halves = { ...strips(90, [0], ['L1', 'L2']), sharedBand_mm: 60 };
const inBand = (id: string, seams: 'free' | 'none', y: number, x = 180) => ({
  ...standing(id, 20, rect(x, y, x + 40, y + 30)),
  seams,
});

describe('a part with seams "none"', () => {
  it('goes whole to the lighter laser, over the whole height', () => {
    // L1 holds 3000 mm² up to 10 mm, L2 holds 1000 mm² all the way: with 1200 mm² more, L2 is the better choice below 10 mm
    // (3000 against 2200; else 4200) and the worse above (2200 against 1200): 10 mm of 3000 + 2200 against 4200 + 1200.
    const blocks = [
      standing('left', 10, rect(20, 20, 80, 70)),
      standing('right', 20, rect(300, 20, 350, 40)),
      inBand('keep', 'none', 180),
    ];
    const analysis = analyse(plate(blocks, halves, { process: bare }));
    for (const z of [2, 15]) {
      const layer = figuresAt(analysis, z);
      expect(layer.pieces.filter(({ part }) => part === 2).map(({ laser }) => laser)).toEqual([1]);
      expect(layer.cutParts).toBe(0);
    }
    expect(figuresAt(analysis, 2).exposure_s).toBeCloseTo(3000 * PER_MM2, 9);
    expect(figuresAt(analysis, 15).exposure_s).toBeCloseTo(2200 * PER_MM2, 9);
    expect(analysis.build.choiceProven).toBe(true);
    expect(codes(analysis)).not.toContain('part-held-by-no-zone');
  });
  it('is no faster than itself, and its lasers set the bound', () => {
    const layer = figuresAt(analyse(plate([inBand('keep', 'none', 180)], halves, { process: bare })), 0);
    expect(layer.bestPossible_s).toBeCloseTo(1200 * PER_MM2, 9);
    expect(layer.bestSetBy).toEqual(['L1', 'L2']);
  });
  it('that no zone holds whole is cut along the zones and listed, and blocks', () => {
    const wide = inBand('wide', 'none', 180);
    const across = { ...wide, slabs: [{ to_mm: 20, rings: [rect(150, 180, 270, 210)] }] };
    const analysis = analyse(plate([across], { ...halves, sharedBand_mm: 0 }, { process: bare }));
    const layer = figuresAt(analysis, 0);
    expect(areas(layer).slice(0, 2)).toEqual([1500, 2100]);
    expect([layer.cutParts, layer.seamLength_mm]).toEqual([1, 30]);
    const listed = analysis.problems.filter(({ code }) => code === 'part-held-by-no-zone');
    expect(listed.map(({ parts, blocks }) => [parts, blocks])).toEqual([[['wide'], true]]);
  });
});

describe('whole parts where no zone holds a part', () => {
  // 100 × 100 mm² over the middle of the platform, bands of 20 mm: a laser alone has 40 × 40 mm², no zone the whole.
  const square = standing('square', 20, rect(150, 150, 250, 250));
  const over = (zoning: unknown, machineToo: object = {}): Analysis =>
    analyse({ ...plate([square], zoning, { process: bare, ...machineToo }), allocation: 'wholeParts' });
  const banded = { ...QUADRANTS, sharedBand_mm: 20 };
  it.each([
    ['quadrants', banded, 4],
    ['strips along y', { ...strips(90, [-10, 0, 10]), sharedBand_mm: 5 }, 4],
    ['two lasers crosswise', { ...banded, lasers: ['L1', 'L2', 'L2', 'L1'] }, 2],
  ])('%s: it is cut along the zones, counted, listed, and blocks', (_, zoning, lasers) => {
    const analysis = over(zoning);
    const layer = figuresAt(analysis, 0);
    expect(areas(layer).filter((mm2) => mm2 > 0)).toHaveLength(lasers);
    expect(layer.cutParts).toBe(1);
    const listed = analysis.problems.map(({ code, parts, blocks }) => [code, parts, blocks]);
    expect(listed).toEqual([['part-held-by-no-zone', ['square'], true]]);
  });
  it('a zone that holds it takes it whole, and nothing is listed', () => {
    const analysis = over({ ...QUADRANTS, sharedBand_mm: 100 });
    expect(figuresAt(analysis, 0).cutParts).toBe(0);
    expect(analysis.problems).toEqual([]);
  });
});

describe('a part with seams "none" that is partly unassigned', () => {
  it('keeps one laser in what is left of it, though another could take a share', () => {
    // 80 × 60 mm², centred coordinates −90 … −10 by −30 … 30: L2 holds the front half, L1 50 × 30 mm² of it as well.
    const keep = { ...standing('keep', 20, rect(110, 170, 190, 230)), seams: 'none' };
    const zones = [
      { lasers: ['L2'], rings: [rect(-200, -200, 0, 0)] },
      { lasers: ['L1'], rings: [rect(-60, -200, 200, 0)] },
    ];
    const analysis = analyse(plate([keep], { strategy: 'drawn', zones }, { process: bare }));
    const layer = figuresAt(analysis, 0);
    expect(areas(layer).slice(0, 2)).toEqual([0, 2400]);
    expect([layer.unassigned_mm2, layer.seams.length]).toEqual([2400, 0]);
    expect(codes(analysis)).toEqual(['part-unassigned']);
  });
});

describe('whole parts', () => {
  it('each stay with one laser, and the choice is the best there is', () => {
    // 5, 4, 3, 3, 3 in two groups: 5 + 4 and 3 + 3 + 3, while giving the largest first to the lighter group ends at 10.
    const sizes = [5, 4, 3, 3, 3];
    const parts = sizes.map((size, i) => standing(`b${i}`, 10, rect(50 * i, 0, 50 * i + 10, 10 * size)));
    const two = { lasers: machine(400, ['L1', 'L2']).lasers };
    const options = { allocation: 'wholeParts' as const, process: bare, machine: two };
    const analysis = analyse(plate(parts, { strategy: 'wholeField' }, options));
    const layer = figuresAt(analysis, 0);
    expect(layer.exposure_s).toBeCloseTo(900 * PER_MM2, 9);
    expect([layer.pieces.length, layer.seams.length]).toEqual([5, 0]);
    expect(analysis.build.choiceProven).toBe(true);
  });
});

describe('crumbs', () => {
  const left = (area: number) => standing('left', 10, rect(20, 20, 120, 20 + area / 100));
  const right = (area: number) => standing('right', 10, rect(280, 20, 380, 20 + area / 100));
  /** The part of a block of 1200 mm² in the band that L2 needs for even loads: (1200 + left − right) / 2. */
  const cut = (l: number, r: number): number[] => {
    const parts = [left(l), right(r), inBand('shared', 'free', 180)];
    const layer = figuresAt(analyse(plate(parts, halves, { process: bare })), 0);
    return layer.pieces.filter(({ part }) => part === 2).map(({ area_mm2 }) => area_mm2);
  };
  it('are not cut off: a share of 0.5 mm goes to the neighbour or grows to 1.5 mm', () => {
    // Even loads would want a strip 0.5 × 30 mm for L1; a strip may not be narrower than 1.5 mm.
    const pieces = cut(2170, 1000);
    for (const area of pieces) expect(area).toBeGreaterThanOrEqual(1.5 * 30 - 1e-6);
    expect(pieces.reduce((sum, area) => sum + area, 0)).toBeCloseTo(1200, 9);
  });
  it('are none from 1.5 mm on: the loads come out even', () => {
    const pieces = cut(2100, 1000).sort((a, b) => a - b);
    expect(pieces[0]).toBeCloseTo(50, 5);
    expect(pieces[1]).toBeCloseTo(1150, 5);
  });
});
