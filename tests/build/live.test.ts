/**
 * One layer without the rest of the height: what it is made of and its figures are those that the whole height gives for
 * it, on random plates with up to four divisions over height [mathematics: two ways to the same layer].
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyse, analyseLive, type KnownHeight } from '../../src/build/analyse';
import { findProblems } from '../../src/build/findProblems';
import { layerCount, layerRanges, rangeAt } from '../../src/build/layers';
import { plateOf } from '../../src/build/plate';
import { Stacks } from '../../src/build/stack';
import { totalsOf } from '../../src/build/totals';
import type { Layout } from '../../src/layout/types';
import { plate, rect, standing } from '../support/plates';
import { anyZoning, layouts, runs, stepped, type Wanted } from '../support/random';

const TIMEOUT = { timeout: 60_000 };
/** Random plates with up to three more divisions above the first, in layers of several thicknesses. */
const severalSteps = (wanted: Wanted): fc.Arbitrary<Layout> =>
  fc
    .tuple(stepped(layouts(wanted), 3, anyZoning(true)), fc.constantFrom(0.5, 0.3, 2))
    .map(([layout, layer_mm]) => ({ ...layout, process: { ...layout.process, layer_mm } }));

/** By the definition: the last step that starts at or below the layer's middle. */
const stepOf = ({ zoning, process }: Layout, layer: number): number =>
  zoning.filter(({ from_mm }) => from_mm <= (layer - 0.5) * process.layer_mm + 1e-9).length - 1;

describe('the range of one layer', () => {
  it('is the one of the whole height that holds it, for every layer', TIMEOUT, () => {
    let steps = 0;
    fc.assert(
      fc.property(severalSteps({ bands: true, parts: 5 }), (layout) => {
        const { placed, height_mm } = plateOf(layout);
        const { layer_mm } = layout.process;
        const all = layerRanges(placed, layout.zoning, layer_mm);
        expect(all.map(({ firstLayer }) => firstLayer)).toEqual([
          1,
          ...all.slice(0, -1).map(({ lastLayer }) => lastLayer + 1),
        ]);
        expect(all.at(-1)?.lastLayer).toBe(layerCount(height_mm, layer_mm));
        for (const range of all)
          for (let k = range.firstLayer; k <= range.lastLayer; k++) {
            const one = rangeAt(placed, layout.zoning, layer_mm, k);
            expect([one.firstLayer, one.lastLayer, one.step]).toEqual([
              range.firstLayer,
              range.lastLayer,
              stepOf(layout, k),
            ]);
            expect(range.step).toBe(one.step);
            expect(one.slabs.length).toBe(range.slabs.length);
            one.slabs.forEach((slab, p) => expect(slab).toBe(range.slabs[p]));
          }
        steps = Math.max(steps, new Set(all.map(({ step }) => step)).size);
      }),
      runs(100),
    );
    expect(steps).toBeGreaterThan(2);
  });
});

/** The whole height, run to its end. */
function known(layout: Layout): KnownHeight {
  const run = new Stacks(totalsOf).run(plateOf(layout));
  for (;;) {
    const step = run.next();
    if (step.done) return { ...step.value, ...findProblems(step.value), layout, every: 1 };
  }
}

describe('the figures of one layer, asked for alone', () => {
  const inOrder = (layout: Layout): number[] =>
    Array.from({ length: analyse(layout).build.layers }, (_, k) => k + 1);
  const agrees = (order: (layers: number[]) => number[]) => (layout: Layout) => {
    const [all, live] = [analyse(layout), analyseLive(layout, null)];
    expect([live.build.layers, live.build.height_mm]).toEqual([all.build.layers, all.build.height_mm]);
    for (const k of order(inOrder(layout))) {
      const [a, b] = [all.layer(k), live.layer(k)];
      expect(b.layer).toBe(a.layer);
      expect(b).toEqual(a);
    }
  };
  it('are those of the whole height, where parts are free', TIMEOUT, () => {
    fc.assert(
      fc.property(
        severalSteps({ bands: true, faults: true, parts: 3 }),
        agrees((k) => k),
      ),
      runs(40),
    );
  });
  it('do not depend on which layer was looked at first', TIMEOUT, () => {
    fc.assert(
      fc.property(
        severalSteps({ bands: true, parts: 3 }),
        agrees((k) => k.reverse()),
      ),
      runs(20),
    );
  });
  it('are those of the whole height for parts that keep a laser, too, once that is known', TIMEOUT, () => {
    fc.assert(
      fc.property(severalSteps({ bands: true, whole: true, parts: 3 }), (layout) => {
        const [all, live] = [analyse(layout), analyseLive(layout, known(layout))];
        expect(live.whole).toBe('present');
        expect(live.build).toEqual(all.build);
        expect(live.problems).toEqual(all.problems);
        for (const { firstLayer, lastLayer } of all.stretches)
          for (const k of [firstLayer, lastLayer]) expect(live.layer(k)).toEqual(all.layer(k));
      }),
      runs(30),
    );
  });
  it('say that nothing is known of the whole height', () => {
    const live = analyseLive(
      plate([standing('b', 3, rect(50, 50, 90, 90))], { strategy: 'wholeField' }),
      null,
    );
    expect([live.whole, live.stretches, live.problems, live.checks]).toEqual(['none', [], [], 0]);
    expect(live.layer(1).sectionArea_mm2).toBe(1600);
    expect(live.layer(51).sectionArea_mm2).toBe(0);
  });
});
