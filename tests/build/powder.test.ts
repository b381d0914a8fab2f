/**
 * Powder of a layer and the services of a store. Mass balance of a layer, and counting layer by layer in whole
 * numbers [mathematics].
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powderOfLayer } from '../../src/build/powder';
import { MOST_SERVICES, servicesOf, type Taking } from '../../src/build/services';
import { runs } from '../support/random';

const process = { layer_mm: 0.06, doseFactor: 2, packing: 0.6 };

describe('powder of a layer', () => {
  it('without a section is what the layer holds, and the rest of the dose overflows', () => {
    // 400 · 400 · 0.06 mm³ = 9.6 cm³
    const { dose_l, need_l, overflow_l } = powderOfLayer(400 * 400, 0, process);
    expect([dose_l, need_l, overflow_l]).toEqual([
      expect.closeTo(0.0192, 12),
      expect.closeTo(0.0096, 12),
      expect.closeTo(0.0096, 12),
    ]);
  });

  it('melted metal takes 1/packing of its volume in powder', () => {
    // 40000 mm² · 0.06 mm = 2.4 cm³ of metal from 4 cm³ of powder: 1.6 cm³ more than the bare layer.
    const bare = powderOfLayer(400 * 400, 0, process);
    const filled = powderOfLayer(400 * 400, 40_000, process);
    expect(filled.need_l - bare.need_l).toBeCloseTo(0.0016, 12);
    expect(filled.dose_l).toBe(bare.dose_l);
  });

  it('a dose that does not fill the layer leaves a negative overflow', () => {
    const short = { ...process, doseFactor: 1 };
    expect(powderOfLayer(400 * 400, 40_000, short).overflow_l).toBeCloseTo(-0.0016, 12);
  });
});

const after = (takings: readonly Taking[], capacity: number, room = capacity): readonly number[] =>
  servicesOf(takings, { capacity, room }).after;

describe('services of a store', () => {
  it('what exactly fits, fits', () => {
    expect(after([{ layers: 10, each: 2 }], 10)).toEqual([5]);
    expect(after([{ layers: 10, each: 2 }], 20)).toEqual([]);
    // A tenth has no exact binary form: ten of them are one all the same.
    expect(after([{ layers: 20, each: 0.1 }], 1)).toEqual([10]);
  });

  it('the last layer of the build needs no service after it', () => {
    expect(after([{ layers: 10, each: 2 }], 10)).not.toContain(10);
  });

  it('a store that is full at the start is served before the first layer', () => {
    expect(after([{ layers: 10, each: 2 }], 10, 0)).toEqual([0, 5]);
    expect(after([{ layers: 10, each: 2 }], 10, -3)).toEqual([0, 5]);
  });

  it('a store filled beyond what it holds counts as full', () => {
    expect(after([{ layers: 10, each: 2 }], 10, 99)).toEqual([5]);
  });

  it('layers that take nothing, or give back, leave the store as it is', () => {
    const takings = [
      { layers: 4, each: 2 },
      { layers: 1000, each: 0 },
      { layers: 1000, each: -5 },
      { layers: 4, each: 2 },
    ];
    expect(after(takings, 10)).toEqual([2005]);
  });

  it('a layer that takes more than the whole store ends the list and is named', () => {
    const takings = [
      { layers: 7, each: 2 },
      { layers: 3, each: 11 },
    ];
    expect(servicesOf(takings, { capacity: 10, room: 10 })).toEqual({
      after: [5, 7],
      stuck: { layer: 8, each: 11 },
      cut: false,
    });
    expect(servicesOf([{ layers: 3, each: 1 }], { capacity: 0, room: 0 }).stuck?.layer).toBe(1);
  });

  it('a list of services without end is cut, however high the build', () => {
    const found = servicesOf([{ layers: 1e9, each: 1 }], { capacity: 1, room: 1 });
    expect(found.after).toEqual(Array.from({ length: MOST_SERVICES }, (_, i) => i + 1));
    expect(found.cut).toBe(true);
  });

  it('going by stretches gives what counting layer by layer gives', () => {
    const taking = fc.record({
      layers: fc.integer({ min: 1, max: 60 }),
      each: fc.integer({ min: -2, max: 30 }),
    });
    fc.assert(
      fc.property(
        fc.array(taking, { maxLength: 12 }),
        fc.integer({ min: 0, max: 120 }),
        fc.integer({ min: -10, max: 120 }),
        (takings, capacity, room) => {
          expect(servicesOf(takings, { capacity, room })).toEqual(counted(takings, capacity, room));
        },
      ),
      runs(2000),
    );
  });
});

/** One layer after the other, in whole numbers. */
function counted(takings: readonly Taking[], capacity: number, room: number): unknown {
  const each = takings.flatMap((taking) => Array.from({ length: taking.layers }, () => taking.each));
  const services: number[] = [];
  let left = Math.min(room, capacity);
  for (let layer = 1; layer <= each.length; layer++) {
    const takes = each[layer - 1]!;
    if (takes <= 0) continue;
    if (takes > left) {
      services.push(layer - 1);
      if (takes > capacity) return { after: services, stuck: { layer, each: takes }, cut: false };
      left = capacity;
    }
    left -= takes;
  }
  return { after: services, stuck: null, cut: false };
}
