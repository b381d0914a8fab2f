/**
 * Layers and the build, by hand [mathematics]; conventions: layer k covers (k−1)·t … k·t and is cut at
 * its middle, a middle on a slab's top belongs to the slab above, the last layer counts in full. Coordinates from the
 * front-left corner of a 400 × 400 platform.
 */
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt, layerAtHeight } from '../../src/build/analyse';
import { layerAt, layerCount } from '../../src/build/layers';
import type { Analysis } from '../../src/build/types';
import { paramText } from '../../src/layout/messages';
import { plate, QUADRANTS, rect, standing } from '../support/plates';

const FIELD = { strategy: 'wholeField' };
const stepped = (...steps: readonly (readonly [number, number])[]) => ({
  id: 'stepped',
  slabs: steps.map(([to_mm, side]) => ({ to_mm, rings: [rect(100, 100, 100 + side, 110)] })),
});
const inLayers = (layer_mm: number, ...steps: readonly (readonly [number, number])[]): Analysis =>
  analyse(plate([stepped(...steps)], FIELD, { process: { layer_mm } }));
const sections = ({ stretches }: Analysis): number[][] =>
  stretches.map(({ firstLayer, lastLayer, figures }) => [firstLayer, lastLayer, figures.sectionArea_mm2]);

describe('a section', () => {
  it('cut exactly at a slab’s top belongs to the slab above', () => {
    // Middles at 0.5, 1.5, 2.5 …; the slab ends at 2.5.
    expect(sections(inLayers(1, [2.5, 20], [5, 30]))).toEqual([
      [1, 2, 200],
      [3, 5, 300],
    ]);
  });
  it('cut just below a slab’s top belongs to that slab', () => {
    expect(sections(inLayers(1, [2.501, 20], [5, 30]))).toEqual([
      [1, 3, 200],
      [4, 5, 300],
    ]);
  });
  it('of a slab between two middles is never cut', () => {
    expect(sections(inLayers(1, [2.6, 20], [3.4, 50], [5, 30]))).toEqual([
      [1, 3, 200],
      [4, 5, 300],
    ]);
  });
});

describe('the last layer', () => {
  it('that is begun is counted, in full for dose and volume', () => {
    const analysis = inLayers(1, [4.6, 20]);
    expect(analysis.build.layers).toBe(5);
    const { dose_l, scanVolume_cm3 } = analysis.build;
    expect(dose_l).toBeCloseTo((5 * 400 * 400 * 2) / 1e6, 9);
    expect(Object.values(scanVolume_cm3).reduce((sum, v) => sum + v, 0)).toBeCloseTo((5 * 200) / 1000, 9);
  });
  it('that is begun by less than half has a middle above the part: powder and time, no section', () => {
    const analysis = inLayers(1, [4.4, 20]);
    expect(analysis.build.layers).toBe(5);
    expect(sections(analysis)).toEqual([
      [1, 4, 200],
      [5, 5, 0],
    ]);
    expect(analysis.stretches[1].figures.time_s).toBe(10);
  });
  it('is not made by a rounding error', () => {
    // 0.06 · 2000 and 0.1 · 3 are not representable; neither adds a layer.
    expect([layerCount(120, 0.06), layerCount(0.3, 0.1), layerCount(12.5, 0.02)]).toEqual([2000, 3, 625]);
    expect([layerCount(120.001, 0.06), layerCount(0, 0.06)]).toEqual([2001, 0]);
  });
});

describe('a height', () => {
  it('belongs to the layer k with (k−1)·t ≤ z < k·t, the top to the last', () => {
    const at = (z: number): number => layerAt(z, 0.06, 0.6);
    expect([0, 0.059, 0.06, 0.0601, 0.12, 0.54, 0.599, 0.6].map(at)).toEqual([1, 1, 2, 2, 3, 10, 10, 10]);
    expect(layerAt(0.18, 0.06, 0.6)).toBe(4);
  });
  it('outside the build has none', () => {
    expect([layerAt(-0.001, 0.06, 0.6), layerAt(0.601, 0.06, 0.6), layerAt(Number.NaN, 0.06, 0.6)]).toEqual([
      0, 0, 0,
    ]);
    expect(layerAtHeight(inLayers(1, [4, 20]), 4.001)).toBeNull();
  });
  it('above the middle of a part that ends within its layer is still that layer', () => {
    const found = layerAtHeight(inLayers(1, [4.6, 20]), 4.55);
    expect(found).toMatchObject({ layer: 5, height_mm: 4.5 });
  });
});

describe('the minimum layer time', () => {
  it('fills up short layers, and the hours it holds are named', () => {
    // 50 layers of 20 × 10 mm for one laser: E = 200/120 + 0.4 ms·200 + 60/600 + 0.02 = 1.8667 s, 10 s for the blade.
    const block = { ...standing('block', 3, rect(100, 100, 120, 110)), laser: 'L2' };
    const build = (minLayer_s: number) =>
      analyse(plate([block], QUADRANTS, { process: { minLayer_s } })).build;
    const exposure = 200 / 120 + 0.08 + 0.1 + 0.02;
    expect(build(0).time_h).toBeCloseTo((50 * (10 + exposure)) / 3600, 12);
    expect(build(0).heldByMinLayer_h).toBe(0);
    expect(build(15).time_h).toBeCloseTo((50 * 15) / 3600, 12);
    expect(build(15).heldByMinLayer_h).toBeCloseTo((50 * (5 - exposure)) / 3600, 12);
    expect(build(11).heldByMinLayer_h).toBe(0);
    expect(build(15).exposure_h).toBeCloseTo((50 * exposure) / 3600, 12);
    expect(build(15).recoat_h).toBeCloseTo(500 / 3600, 12);
  });
});

describe('the imbalance of the build', () => {
  it('is that of all layers together, not of totals', () => {
    // Two blocks of equal volume and load, one upon the other in time: in each half of the height one laser does all.
    const low = { id: 'low', slabs: [{ to_mm: 3, rings: [rect(50, 50, 90, 90)] }] };
    const high = {
      id: 'high',
      slabs: [
        { to_mm: 3, rings: [rect(250, 50, 251, 51)] },
        { to_mm: 6, rings: [rect(250, 50, 290, 90)] },
      ],
    };
    const two = { ...QUADRANTS, lasers: ['L1', 'L2', 'L1', 'L2'] };
    const bare = { contours: 0, pieceGap_s: 0, vectorGap_ms: 0 };
    const { build } = analyse(plate([low, high], two, { process: bare }));
    // Four lasers are on: 50·1600 + 50·1600 exposed, mean (1601 + 1600)/4 a layer.
    expect(build.imbalance_pct).toBeCloseTo(100 * ((4 * 3200) / 3201 - 1), 6);
    expect(build.idle_laserH).toBeCloseTo((50 * (4 * 3200 - 3201)) / 120 / 3600, 9);
  });
});

describe('parts that stand in one another', () => {
  it('are summed and listed, and block', () => {
    const parts = [standing('a', 3, rect(50, 50, 90, 90)), standing('b', 3, rect(80, 50, 120, 90))];
    const analysis = analyse(plate(parts, QUADRANTS));
    expect(figuresAt(analysis, 0).sectionArea_mm2).toBe(3200);
    expect(figuresAt(analysis, 0).lasers[0].scanArea_mm2).toBe(3200);
    const listed = analysis.problems.filter(({ code }) => code === 'parts-overlap');
    expect(listed.map((p) => [p.parts, paramText(p.params.area), p.blocks])).toEqual([
      [['a', 'b'], '400', true],
    ]);
  });
});

describe('an empty plate', () => {
  it('has no layers, no time, and one empty layer to show', () => {
    const analysis = analyse(plate([], QUADRANTS));
    expect(analysis.build).toMatchObject({ layers: 0, time_h: 0, imbalance_pct: 0, dose_l: 0 });
    expect(figuresAt(analysis, 0)).toMatchObject({ sectionArea_mm2: 0, exposure_s: 0, imbalanceTime_pct: 0 });
    expect(figuresAt(analysis, 0).bestSetBy).toEqual(['L1']);
  });
});
