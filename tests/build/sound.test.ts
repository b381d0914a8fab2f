/**
 * The check of a layer: it finds nothing on random plates, and finds each fault that is put into a layer's figures, its
 * outlines or its division by hand. What is put in is known, so no expected value comes from the engine [mathematics].
 * Coordinates from the front-left corner of a 400 × 400 platform.
 */
import fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type * as Balance from '../../src/allocation/solver/balance';
import type { BalanceSolution } from '../../src/allocation/types';
import { analyse, analyseLive } from '../../src/build/analyse';
import { layerIsSound } from '../../src/build/sound';
import type { Analysis, LayerFigures, Piece } from '../../src/build/types';
import { rectangle, turnAndMove } from '../../src/geometry/region';
import { messageText } from '../../src/layout/messages';
import type { Layout } from '../../src/layout/types';
import type { Division } from '../../src/zoning/types';
import { plate, QUADRANTS, rect, standing } from '../support/plates';
import { anyZoning, layouts, runs, stepped } from '../support/random';

const solver = vi.hoisted(() => ({ spoil: <T>(solution: T): T => solution }));
vi.mock('../../src/allocation/solver/balance', async (original) => {
  const actual = await original<typeof Balance>();
  type Solve = typeof actual.solveBalance;
  const solveBalance: Solve = (problem, options) => solver.spoil(actual.solveBalance(problem, options));
  return { ...actual, solveBalance };
});
beforeEach(() => {
  solver.spoil = (solution) => solution;
});

const TIMEOUT = { timeout: 60_000 };
const processes = fc.record({
  hatchInset_mm: fc.constantFrom(0, 0.05, 0.8),
  vectorCount: fc.constantFrom('area' as const, 'areaAndOutline' as const),
  seamOverlap_mm: fc.constantFrom(0, 0.1),
  minLayer_s: fc.constantFrom(0, 25),
});
/** Plates of every strategy, divided anew at up to two heights; lasers off, short reach, pins, parts that keep a laser. */
const plates = fc
  .tuple(
    stepped(layouts({ bands: true, faults: true, whole: true }), 2, anyZoning(true)),
    processes,
    fc.boolean(),
  )
  .map(([layout, own]): Layout => ({ ...layout, process: { ...layout.process, ...own } }));

describe('on random plates every layer is sound', () => {
  it('of the whole height', TIMEOUT, () => {
    fc.assert(
      fc.property(plates, (layout) => {
        const analysis = analyse(layout);
        for (const { figures } of analysis.stretches) expect(layerIsSound(analysis, figures)).toBeNull();
      }),
      runs(120),
    );
  });
  it('and asked for alone, before the whole height is known', TIMEOUT, () => {
    fc.assert(
      fc.property(plates, fc.nat({ max: 200 }), (layout, k) => {
        const live = analyseLive(layout, null);
        const layer = 1 + (k % live.build.layers);
        expect(layerIsSound(live, live.layer(layer))).toBeNull();
      }),
      runs(80),
    );
  });
  it('a plate without parts is sound', () => {
    const empty = analyse(plate([], QUADRANTS));
    expect(layerIsSound(empty, empty.layer(1))).toBeNull();
  });
});

/** Equal blocks of 40 × 40 in L1's and L2's quadrant, and one that the line between the two halves. */
const blocks = analyse(
  plate(
    [
      standing('left', 10, rect(60, 60, 100, 100)),
      standing('right', 10, rect(300, 60, 340, 100)),
      standing('halved', 10, rect(180, 120, 220, 160)),
    ],
    QUADRANTS,
    { process: { seamOverlap_mm: 0.1 } },
  ),
);
const layer = blocks.layer(1);
const [division] = blocks.divisions;
const withPiece = (which: (piece: Piece) => boolean, change: (piece: Piece) => Partial<Piece>) => ({
  ...layer,
  pieces: layer.pieces.map((piece) => (which(piece) ? { ...piece, ...change(piece) } : piece)),
});
const withLaser = (k: number, change: Partial<LayerFigures['lasers'][number]>): LayerFigures => ({
  ...layer,
  lasers: layer.lasers.map((laser, i) => (i === k ? { ...laser, ...change } : laser)),
});
const withDivision = (change: Partial<Division>): Analysis => ({
  ...blocks,
  divisions: [{ ...division, ...change }],
});
const said = (analysis: Analysis, figures: LayerFigures): string => {
  const fault = layerIsSound(analysis, figures);
  return fault ? messageText(fault.code, fault.params) : 'sound';
};
const HERE = 'The books do not balance here: ';

describe('figures that disagree are found', () => {
  const [l1] = layer.lasers;
  it('the layer they come from is sound', () => expect(said(blocks, layer)).toBe('sound'));
  it.each<[string, LayerFigures]>([
    [
      'scan areas − double exposure + unassigned miss the section by 1 mm².',
      withLaser(0, { scanArea_mm2: l1.scanArea_mm2 + 1 }),
    ],
    [
      'the layer is 2 s faster than the best possible.',
      { ...layer, bestPossible_s: layer.exposure_s - layer.costOfCutting_s + 2 },
    ],
    ['the load of L1 is off by 0.5 s.', withLaser(0, { load_s: l1.load_s - 0.5, idle_s: l1.idle_s + 0.5 })],
    ['the load and idle time of L1 is off by 0.25 s.', withLaser(0, { idle_s: l1.idle_s + 0.25 })],
    ['the true outline of L1 is off by 3 mm.', withLaser(0, { outline_mm: l1.outline_mm + 3 })],
    ['the number of pieces of L1 is off by 1.', withLaser(0, { pieces: l1.pieces + 1 })],
    ['the load of L1 is off by NaN s.', withLaser(0, { load_s: NaN })],
    [
      'the scan area of L1 is off by 5 mm².',
      {
        ...withLaser(0, { scanArea_mm2: l1.scanArea_mm2 + 5 }),
        sectionArea_mm2: layer.sectionArea_mm2 + 5,
      },
    ],
    ['the time of the layer is off by 7 s.', { ...layer, time_s: layer.time_s + 7 }],
    ['the number of cut parts of the layer is off by 1.', { ...layer, cutParts: 2 }],
    [
      'the seam length of the layer is off by 80 mm.',
      {
        ...layer,
        seamLength_mm: 80,
        doubleExposed_mm2: 8,
        sectionArea_mm2: layer.sectionArea_mm2 - 4,
      },
    ],
    ['the doubly exposed area of the layer is off by 0.1 mm².', { ...layer, seamLength_mm: 41 }],
    [
      'the unassigned area of the layer is off by 9 mm².',
      { ...layer, unassigned_mm2: 9, sectionArea_mm2: layer.sectionArea_mm2 + 9 },
    ],
    [
      'solved again, the planned exposure differs by 1 s.',
      { ...layer, costOfCutting_s: layer.costOfCutting_s - 1 },
    ],
  ])('%s', (text, figures) => expect(said(blocks, figures)).toBe(HERE + text));
  it('an exposure that no laser takes', () => {
    const { layout } = blocks;
    const lasers = layout.machine.lasers.map((laser) => ({ ...laser, on: false }));
    const off = analyse({ ...layout, machine: { ...layout.machine, lasers } });
    const idle = off.layer(1);
    expect(said(off, idle)).toBe('sound');
    expect(said(off, { ...idle, exposure_s: 3, time_s: idle.time_s + 3 })).toBe(
      `${HERE}the exposure of the layer is off by 3 s.`,
    );
  });
});

describe('outlines that do not fit are found', () => {
  const inPart = (part: number) => (piece: Piece) => piece.part === part;
  const shift = (x: number) => (piece: Piece) => ({ region: turnAndMove(piece.region, 0, x, 0) });
  it.each<[string, LayerFigures]>([
    [
      'L2 exposes 1600 mm² of left outside its zone or its reach.',
      withPiece(
        ({ part }) => part < 2,
        ({ part }) => ({ laser: 1 - part }),
      ),
    ],
    ['the pieces of left and its section differ by 40 mm².', withPiece(inPart(0), shift(1))],
    ['L1 exposes 40 mm² of halved outside its zone or its reach.', withPiece(inPart(2), shift(1))],
    [
      'a piece of left and its outline differ by 40 mm².',
      withPiece(inPart(0), () => ({ region: rectangle(-140, -140, -99, -100) })),
    ],
    [
      'the pieces of left and its section differ by 1600 mm².',
      withPiece(inPart(0), () => ({ region: rectangle(-100, -140, -60, -100) })),
    ],
  ])('%s', (text, figures) => expect(said(blocks, figures)).toBe(HERE + text));

  it('pieces of one part that lie one on the other', () => {
    const block = standing('b', 10, rect(160, 160, 240, 240));
    const shared = analyse(plate([block], { strategy: 'wholeField' }, { process: { contours: 0 } }));
    const figures = shared.layer(1);
    expect(said(shared, figures)).toBe('sound');
    const strips = [...figures.pieces].sort((a, b) => a.region[0][0] - b.region[0][0]);
    expect(strips.map(({ area_mm2 }) => Math.round(area_mm2))).toEqual([1600, 1600, 1600, 1600]);
    const twice = figures.pieces.map((piece) =>
      piece === strips[0] ? { ...piece, region: strips[1].region } : piece,
    );
    expect(said(shared, { ...figures, pieces: twice })).toBe(`${HERE}pieces of b overlap by 1600 mm².`);
  });
});

describe('a division that does not fit is found', () => {
  const [front] = division.cells;
  it.each<[string, Analysis]>([
    ['L1 is off and exposes a piece of left.', withDivision({ on: 0b1110 })],
    [
      'L1 exposes 1600 mm² of left outside its zone or its reach.',
      withDivision({ reach: division.reach.map((own, k) => (k === 0 ? rectangle(-200, -90, 0, 0) : own)) }),
    ],
    [
      'L2 exposes 1600 mm² of right outside its zone or its reach.',
      withDivision({
        zones: division.zones.map((zone, k) => (k === 1 ? { ...zone, lasers: 1 } : zone)),
      }),
    ],
    [
      'regions of the division overlap or leave the platform by 40000 mm².',
      withDivision({ cells: [...division.cells, front] }),
    ],
    [
      'regions of the division overlap or leave the platform by 400 mm².',
      withDivision({
        cells: division.cells.map((cell) =>
          cell === front ? { ...cell, region: rectangle(-202, -200, 0, 0) } : cell,
        ),
      }),
    ],
  ])('%s', (text, analysis) => expect(said(analysis, layer)).toBe(HERE + text));
});

describe('a plan that does not hold is found', () => {
  it('a laser that gets less than its shares add up to', () => {
    solver.spoil = <T>(solution: T): T => {
      const { loads_s } = solution as BalanceSolution;
      return { ...solution, loads_s: loads_s.map((load) => load / 2) };
    };
    expect(said(blocks, layer)).toMatch(
      /^The books do not balance here: the plan of the layer does not hold/,
    );
  });
});
