/**
 * Who exposes what, seams, and failing lasers. Tall one and Ring were computed by hand (process numbers common practice, no
 * source). Tall one: twelve blocks 50 × 50 × 60, four in each quadrant but the rear right, where one of 100 × 100 × 240 stands.
 *   Three lasers on the whole field, below z 60 (1000 layers): 40,000 mm² at 120 mm²/s, 40,000 gaps of 0.4 ms, 2800 mm of outline
 *   at 600 mm/s, 13 to 15 pieces of 0.02 s: 354.26 to 354.30 s, a third of it and 10 s of recoating: 128.09 to 128.10 s; above
 *   (3000 layers) 10,000 mm², 400 mm, 3 pieces: 88.06 s, a third and 10 s: 39.353 s; together 68.374 to 68.378 h.
 */
import { describe, expect, it } from 'vitest';
import { sheetFacts, sheetFactSteps } from '../../../src/export/sheet/facts';
import type { Layout } from '../../../src/layout/types';
import { divided, example, WHOLE_FIELD } from './plates';

const tallOne = example('tall-one');
const ring = example('ring');
const BLOCKS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];
const TALL = 12;
const pinnedTo = (layout: Layout, part: number, laser: string): Layout => ({
  ...layout,
  parts: layout.parts.with(part, { ...layout.parts[part]!, laser }),
});

describe('who exposes what', () => {
  it('one laser per quadrant, each part from the platform to its top', () => {
    const { holdings, seams, mostSeams } = sheetFacts(tallOne);
    expect(holdings.map(({ part }) => part)).toEqual([...BLOCKS, TALL]);
    expect(holdings.map(({ laser }) => laser)).toEqual([0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3]);
    for (const { part, ranges } of holdings) {
      expect(ranges).toHaveLength(1);
      expect(ranges[0]!.from_mm).toBe(0);
      expect(ranges[0]!.to_mm).toBeCloseTo(part === TALL ? 240 : 60, 9);
    }
    expect(seams).toEqual([]);
    expect(mostSeams).toBe(0);
  });

  it('from 60 mm on the tall one is shared by all four lasers', () => {
    const stepped = {
      ...tallOne,
      zoning: [...tallOne.zoning, { from_mm: 60, zoning: WHOLE_FIELD }],
    };
    const tall = sheetFacts(stepped).holdings.filter(({ part }) => part === TALL);
    expect(tall.map(({ laser }) => laser)).toEqual([0, 1, 2, 3]);
    for (const { laser, ranges } of tall) {
      expect(ranges).toHaveLength(1);
      expect(ranges[0]!.from_mm).toBeCloseTo(laser === 3 ? 0 : 60, 9);
      expect(ranges[0]!.to_mm).toBeCloseTo(240, 9);
    }
  });

  it('the ring is cut four times across its wall of 30 mm, over its whole height', () => {
    const { seams, mostSeams, longestSeams_mm } = sheetFacts(ring);
    expect(seams.map(({ part, lasers }) => [part, ...lasers])).toEqual([
      [0, 0, 1],
      [0, 0, 2],
      [0, 1, 3],
      [0, 2, 3],
    ]);
    for (const { longest_mm, ranges } of seams) {
      expect(longest_mm).toBeCloseTo(30, 2);
      expect(ranges[0]!.to_mm).toBeCloseTo(120, 9);
    }
    expect(mostSeams).toBe(4);
    expect(longestSeams_mm).toBeCloseTo(120, 2);
  });

  it('what no laser exposes stands last, as laser −1', () => {
    const lasers = tallOne.machine.lasers.map((laser) => ({ ...laser, on: laser.id !== 'L2' }));
    const { holdings } = sheetFacts({ ...tallOne, machine: { ...tallOne.machine, lasers } });
    expect(holdings.filter(({ laser }) => laser === -1).map(({ part }) => part)).toEqual([4, 5, 6, 7]);
  });
});

describe('a failing laser', () => {
  it('leaves the parts of its own zone; divided anew the other three expose all', () => {
    const { outages } = sheetFacts(tallOne);
    expect(outages.map(({ asZoned }) => asZoned?.parts)).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6, 7],
      [8, 9, 10, 11],
      [TALL],
    ]);
    expect(outages[0]!.asZoned!.volume_cm3).toBeCloseTo(4 * 5 * 5 * 6, 3);
    expect(outages[3]!.asZoned!.volume_cm3).toBeCloseTo(10 * 10 * 24, 3);
    for (const { anew } of outages) {
      expect(anew?.parts).toEqual([]);
      expect(anew?.time_h).toBeGreaterThan(68.374 - 0.001);
      expect(anew?.time_h).toBeLessThan(68.378 + 0.001);
    }
  });

  it('leaves its quarter of the ring: 7961.73 mm² with a block of 1600, 7161.73 with one of 800, by 120 mm', () => {
    const { outages } = sheetFacts(ring);
    expect(outages.map(({ asZoned }) => asZoned?.parts)).toEqual([
      [0, 1],
      [0, 2],
      [0, 3],
      [0, 4],
    ]);
    expect(outages[0]!.asZoned!.volume_cm3).toBeCloseTo(955.41, 1);
    expect(outages[3]!.asZoned!.volume_cm3).toBeCloseTo(859.41, 1);
  });

  it('leaves nothing where the whole field is everybody’s: the zones may stay', () => {
    for (const { asZoned, anew } of sheetFacts(divided(tallOne, WHOLE_FIELD)).outages) {
      expect(asZoned?.parts).toEqual([]);
      expect(asZoned?.time_h).toBeGreaterThan(68.374 - 0.001);
      expect(asZoned?.time_h).toBeLessThan(68.378 + 0.001);
      expect(anew).toBeNull();
    }
  });

  it('sets free what was pinned to it when the field is divided anew', () => {
    const { outages } = sheetFacts(pinnedTo(divided(tallOne, WHOLE_FIELD), TALL, 'L4'));
    expect(outages.map(({ pinned }) => pinned)).toEqual([[], [], [], [TALL]]);
    expect(outages[3]!.asZoned?.parts).toEqual([TALL]);
    expect(outages[3]!.anew?.parts).toEqual([]);
  });

  it('that is the only one on leaves nobody to go on; one that is off is not asked for', () => {
    const lasers = tallOne.machine.lasers.map((laser) => ({ ...laser, on: laser.id === 'L3' }));
    const { outages } = sheetFacts({ ...tallOne, machine: { ...tallOne.machine, lasers } });
    expect(outages).toEqual([{ laser: 2, pinned: [], asZoned: null, anew: null }]);
  });

  it('leaves what no other laser reaches, however the field is divided', () => {
    // L1 to L3 reach the front half and the left half; the tall one at the rear right is L4's alone
    const near = (x: number, y: number) => ({ circle_mm: [x, y, 150] as const });
    const reaches = [near(-100, -100), near(100, -100), near(-100, 100), near(100, 100)];
    const lasers = tallOne.machine.lasers.map((laser, l) => ({ ...laser, reach: reaches[l]! }));
    const { outages } = sheetFacts({ ...tallOne, machine: { ...tallOne.machine, lasers } });
    expect(outages[3]!.anew?.parts).toEqual([TALL]);
  });
});

describe('the work', () => {
  it('tells how far it is, never backwards and never past the end', () => {
    const shares: number[] = [];
    for (const share of sheetFactSteps(tallOne)) shares.push(share);
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1 + 1e-9);
  });
});
