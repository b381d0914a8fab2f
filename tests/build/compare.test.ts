/**
 * Layouts side by side. Expected values: Tall one as computed by hand (quadrants 109.113 h, strips 72.446 h with one seam of
 * 100 mm from the platform to the top; process numbers common practice, no source), differences by mental arithmetic.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import {
  BUILD_FIGURES,
  comparedAt,
  isWhole,
  LAYER_FIGURES,
  meanSeam,
  rowOf,
  sameWork,
  seamPrice,
  type Compared,
  type FigureKey,
} from '../../src/build/compare';
import { whatChanged } from '../../src/build/whatChanged';
import { readLayout } from '../../src/layout/read';
import type { Layout, Zoning } from '../../src/layout/types';

const tallOne = (): Layout => {
  const read = readLayout(readFileSync('shared/examples/tall-one.json', 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
};
const LASERS = ['L1', 'L2', 'L3', 'L4'];
const STRIPS: Zoning = {
  strategy: 'strips',
  run_deg: 90,
  lines_mm: [-100, 0, 100],
  sharedBand_mm: 0,
  lasers: LASERS,
};
const divided = (zoning: Zoning): Layout => ({ ...tallOne(), zoning: [{ from_mm: 0, zoning }] });
const compared = (layout: Layout, height_mm: number): Compared => comparedAt(analyse(layout), height_mm);

const quadrants = compared(tallOne(), 150);
const strips = compared(divided(STRIPS), 150);
const row = (key: FigureKey, columns: readonly Compared[], reference = 0) => {
  const figure = [...BUILD_FIGURES, ...LAYER_FIGURES].find((one) => one.key === key);
  return rowOf(figure!, columns, reference);
};

describe('rows of figures', () => {
  it('show Tall one in quadrants and strips, the difference, and the shorter build as the best', () => {
    const hours = row('time_h', [quadrants, strips]);
    expect(hours.values[0]).toBeCloseTo(109.113, 2);
    expect(hours.values[1]).toBeCloseTo(72.446, 2);
    expect(hours.differences[0]).toBe(0);
    expect(hours.differences[1]).toBeCloseTo(-36.667, 2);
    expect(hours.best).toEqual([1]);
    expect(row('time_h', [quadrants, strips], 1).differences[0]).toBeCloseTo(36.667, 2);
  });

  it('mark the fewest seams as best, on the other side than the hours: no column wins by all rows', () => {
    const seams = row('seams', [quadrants, strips]);
    expect(seams.values).toEqual([0, 1]);
    expect(seams.best).toEqual([0]);
    expect(row('seamLength_mm', [quadrants, strips]).values[1]).toBeCloseTo(100, 6);
    expect(row('meanSeam_mm', [quadrants, strips]).values[1]).toBeCloseTo(100, 6);
  });

  it('mark nothing where all are alike, where neither end is better, or where a figure is missing', () => {
    expect(row('time_h', [strips, strips, strips]).best).toEqual([]);
    expect(row('layers', [quadrants, strips]).best).toEqual([]);
    const above = { ...strips, layer: null };
    expect(row('seams', [quadrants, above])).toEqual({
      key: 'seams',
      values: [0, null],
      differences: [0, null],
      best: [],
    });
  });

  it('mark all that share the best value', () => {
    expect(row('time_h', [quadrants, strips, strips]).best).toEqual([1, 2]);
  });

  it('take the mean seam over all layers: 100 mm over 4000 layers, none in 2000 more above them, is 66.7 mm', () => {
    const [first] = strips.stretches;
    const stretch = (firstLayer: number, lastLayer: number, seamLength_mm: number) => ({
      ...first!,
      firstLayer,
      lastLayer,
      figures: { ...first!.figures, seamLength_mm },
    });
    expect(meanSeam([stretch(1, 4000, 100), stretch(4001, 6000, 0)])).toBeCloseTo(200 / 3, 9);
    expect(meanSeam([])).toBe(0);
  });
});

describe('what leaves something unexposed', () => {
  const lasers = (on: boolean) => tallOne().machine.lasers.map((laser) => ({ ...laser, on }));
  const dark = compared({ ...tallOne(), machine: { ...tallOne().machine, lasers: lasers(false) } }, 150);
  const empty = compared({ ...tallOne(), parts: [] }, 0);

  it('is not the best, though it takes no time to expose', () => {
    expect(isWhole(dark)).toBe(false);
    expect(isWhole(quadrants)).toBe(true);
    expect(row('exposure_h', [dark, quadrants, strips]).values[0]).toBe(0);
    expect(row('exposure_h', [dark, quadrants, strips]).best).toEqual([2]);
    expect(row('layerExposure_s', [dark, quadrants, strips]).best).toEqual([2]);
    expect(row('time_h', [dark, strips]).best).toEqual([]);
  });

  it('leaves out all that was to be exposed, and those that leave out least are the best of that row', () => {
    // a part's volume is what its lasers expose where no seam is exposed twice
    const [volume] = row('volume_cm3', [quadrants]).values;
    const left = row('leftOut_cm3', [dark, quadrants, strips]);
    expect(left.values[0]).toBeCloseTo(volume!, 6);
    expect(left.values.slice(1)).toEqual([0, 0]);
    expect(left.best).toEqual([1, 2]);
  });

  it('is like an empty plate in that: nothing to build is no short build, and has no layer', () => {
    expect(empty.layer).toBeNull();
    expect(row('time_h', [empty, quadrants, strips]).best).toEqual([2]);
  });
});

describe('the price of a seam', () => {
  it('in Tall one: one seam of 100 mm buys 36.667 h, 0.36667 h for every millimetre', () => {
    const { gained_h, perSeam_h, perMm_h } = seamPrice(quadrants, strips);
    expect(gained_h).toBeCloseTo(36.667, 2);
    expect(perSeam_h).toBeCloseTo(36.667, 2);
    expect(perMm_h).toBeCloseTo(0.36667, 4);
  });

  it('is the same seen from the other side: giving up the seam costs what it bought', () => {
    const [there, back] = [seamPrice(quadrants, strips), seamPrice(strips, quadrants)];
    expect(back.gained_h).toBeCloseTo(-there.gained_h, 9);
    expect(back.perSeam_h).toBeCloseTo(there.perSeam_h!, 9);
  });

  it('is undefined where the seams do not differ', () => {
    expect(seamPrice(strips, strips)).toEqual({ gained_h: 0, perSeam_h: null, perMm_h: null });
    expect(seamPrice(quadrants, { ...strips, layer: null }).perSeam_h).toBeNull();
  });
});

describe('a seam has a price', () => {
  const { parts, process, machine } = tallOne();

  it('between divisions and places of the same parts, whatever machine and process are called', () => {
    expect(sameWork(tallOne(), divided(STRIPS))).toBe(true);
    const named = {
      ...divided(STRIPS),
      parts: parts.map((part) => ({ ...part, turn_deg: 90 })),
      process: { ...process, name: 'x' },
      machine: { ...machine, name: 'y' },
    };
    expect(sameWork(tallOne(), named)).toBe(true);
  });

  it('not where parts, process or machine are others', () => {
    expect(sameWork(tallOne(), { ...tallOne(), parts: parts.slice(1) })).toBe(false);
    expect(sameWork(tallOne(), { ...tallOne(), process: { ...process, speed_mm_s: 900 } })).toBe(false);
    const oneWay_s = machine.recoater.oneWay_s + 1;
    const slower = { ...machine, recoater: { ...machine.recoater, oneWay_s } };
    expect(sameWork(tallOne(), { ...tallOne(), machine: slower })).toBe(false);
  });
});

describe('what changed', () => {
  const before = tallOne();
  const nothing = {
    moved: [],
    turned: [],
    added: [],
    removed: [],
    ruled: [],
    reshaped: [],
    zoning: false,
    allocation: false,
    process: [],
    machine: [],
    limits: [],
    schedule: false,
  };

  it('is nothing between equal layouts, whatever they are called', () => {
    expect(whatChanged(before, { ...structuredClone(before), name: 'other', note: 'x' })).toEqual(nothing);
  });

  it('names every part with what became of it', () => {
    const [first, second, third, fourth] = before.parts;
    const after: Layout = {
      ...before,
      parts: [
        { ...first!, at_mm: [first!.at_mm[0] + 3, first!.at_mm[1] - 4] },
        { ...second!, turn_deg: 350 },
        { ...third!, seams: 'none' },
        ...before.parts.slice(4),
        { ...fourth!, id: 'X1' },
      ],
    };
    expect(whatChanged(before, after)).toEqual({
      ...nothing,
      moved: [{ id: first!.id, by_mm: 5 }],
      turned: [{ id: second!.id, by_deg: -10 }],
      ruled: [third!.id],
      removed: [fourth!.id],
      added: ['X1'],
    });
  });

  it('names zones, allocation, and the keys of process and machine', () => {
    const after: Layout = {
      ...divided(STRIPS),
      allocation: 'wholeParts',
      process: { ...before.process, layer_mm: 0.03, speed_mm_s: 900 },
      machine: { ...before.machine, buildHeight_mm: 500 },
    };
    expect(whatChanged(before, after)).toEqual({
      ...nothing,
      zoning: true,
      allocation: true,
      process: ['layer_mm', 'speed_mm_s'],
      machine: ['buildHeight_mm'],
    });
  });

  it('tells a part of a shape whose outline is another one', () => {
    const { shape, id } = before.parts[0]!;
    const slabs = before.shapes[shape]!.slabs.map((slab) => ({ ...slab, to_mm: slab.to_mm + 1 }));
    const changes = whatChanged(before, { ...before, shapes: { ...before.shapes, [shape]: { slabs } } });
    expect(changes.reshaped).toContain(id);
    expect(changes.moved).toEqual([]);
  });
});
