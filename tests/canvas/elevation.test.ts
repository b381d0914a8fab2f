/**
 * Silhouettes, the height's keys and the times over height. Expected values: mathematics, on the plate of hands.ts. Millimetres
 * above the platform, z upwards, px downwards; seconds.
 */
import { describe, expect, it } from 'vitest';
import { heightForKey } from '../../src/canvas/HeightLine';
import { covers, joinRanges, namePlace, silhouettes } from '../../src/canvas/silhouettes';
import { layerBars, meanLoad } from '../../src/canvas/timeChart';
import { zAxis } from '../../src/canvas/zAxis';
import { emptyLayout } from '../../src/layout/defaults';
import { planHands } from './hands';

describe('the shared upward axis', () => {
  it('goes to px and back, and stays inside the build', () => {
    const axis = zAxis(120, 260);
    for (const z of [0, 0.03, 60, 119.97, 120]) expect(axis.toMm(axis.toPx(z))).toBeCloseTo(z, 9);
    expect(axis.toMm(-50)).toBe(120);
    expect(axis.toMm(9999)).toBe(0);
    expect(axis.toPx(120)).toBeLessThan(axis.toPx(0));
  });
});

describe('silhouettes', () => {
  it('join ranges of x that touch or overlap and keep others apart', () => {
    const ranges = [
      [8, 15],
      [30, 40],
      [0, 10],
      [40, 41],
    ] as const;
    expect(joinRanges(ranges)).toEqual([
      [0, 15],
      [30, 41],
    ]);
  });

  it('stand rear part first, so that the front part hides it', () => {
    const { bench } = planHands();
    expect(silhouettes(bench.analysis().layout).map(({ id }) => id)).toEqual(['P03', 'P01', 'P02']);
  });

  it('are one block per slab, as wide as its section', () => {
    const { bench } = planHands();
    const stepped = silhouettes(bench.analysis().layout)[0];
    expect(stepped.blocks).toEqual([
      { from_mm: 0, to_mm: 20, left_mm: -15, right_mm: 15 },
      { from_mm: 20, to_mm: 50, left_mm: -5, right_mm: 5 },
    ]);
  });

  it('name a part where its top is in sight', () => {
    const { bench } = planHands();
    const [stepped, block] = silhouettes(bench.analysis().layout);
    const place = namePlace(stepped, 8, 6)!;
    expect(place).toMatchObject({ x: 0, narrow: false });
    expect(covers(block, place)).toBe(false);
    expect(covers({ ...block, blocks: [{ from_mm: 0, to_mm: 50, left_mm: 2, right_mm: 9 }] }, place)).toBe(
      true,
    );
    expect(namePlace(stepped, 12, 6)?.narrow).toBe(true);
  });
});

describe('height by keys', () => {
  // 50 mm at 0.06 mm a layer are 834 layers (50 / 0.06 = 833.3); the stretches end at 20, 30 and 50 mm
  const analysis = planHands().bench.analysis();

  it('goes layer by layer and stops at the ends', () => {
    expect(analysis.build.layers).toBe(834);
    expect(heightForKey(analysis, 10, 'ArrowUp')).toBeCloseTo(10.05, 9); // layer 167 covers 9.96–10.02
    expect(heightForKey(analysis, 10, 'ArrowDown')).toBeCloseTo(9.93, 9);
    expect(heightForKey(analysis, 0, 'ArrowDown')).toBeCloseTo(0.03, 9);
    expect(heightForKey(analysis, 50, 'ArrowUp')).toBeCloseTo(50.01, 9);
  });

  it('goes to the middle of the next stretch, to the first layer, to the last', () => {
    const next = heightForKey(analysis, 10, 'PageUp')!;
    expect(next).toBeGreaterThan(20);
    expect(next).toBeLessThan(30);
    expect(heightForKey(analysis, next, 'PageDown')).toBeLessThan(20);
    expect(heightForKey(analysis, 10, 'Home')).toBeCloseTo(0.03, 9);
    expect(heightForKey(analysis, 10, 'a')).toBeNull();
  });
});

describe('time per layer', () => {
  it('is load, idle, recoat and wait side by side, together the layer time', () => {
    const { bench } = planHands({
      ...planHands().layout(),
      process: { ...emptyLayout().process, minLayer_s: 60 },
    });
    for (const { figures } of bench.analysis().stretches) {
      const bars = layerBars(figures);
      expect(bars[0].from_s).toBe(0);
      for (let i = 1; i < bars.length; i++) expect(bars[i].from_s).toBeCloseTo(bars[i - 1].to_s, 9);
      expect(bars.at(-1)?.to_s).toBeCloseTo(60, 9);
      expect(bars.find((bar) => bar.kind === 'recoat')?.to_s).toBeCloseTo(figures.exposure_s + 10, 9);
    }
  });

  it('begins idle at the mean load of the lasers that are on', () => {
    const { bench } = planHands();
    const { figures } = bench.analysis().stretches[0];
    const loads = figures.lasers.map((laser) => laser.load_s);
    expect(meanLoad(figures)).toBeCloseTo(loads.reduce((a, b) => a + b) / 4, 9);
    const idle = layerBars(figures).find((bar) => bar.kind === 'idle')!;
    expect(idle.to_s).toBeCloseTo(Math.max(...loads), 9);
  });
});
