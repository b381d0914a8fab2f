// Pairs of parts on crowded plates. Expected values: mathematics, on blocks placed by hand.
import { describe, expect, it } from 'vitest';
import { finished } from '../../src/build/finished';
import { MOST_PAIRS, pairSteps } from '../../src/build/pairs';
import type { PartView } from '../../src/build/types';
import { rectangle } from '../../src/geometry/region';
import { messageText } from '../../src/layout/messages';

const block = (id: string, x: number, y: number): PartView => {
  const footprint = rectangle(x - 10, y - 10, x + 10, y + 10);
  return {
    id,
    height_mm: 40,
    footprint,
    sections: [{ from_mm: 0, to_mm: 40, section: footprint }],
  };
};
const row = (count: number, pitch: number): PartView[] =>
  Array.from({ length: count }, (_, i) => block(`P${i}`, pitch * i, 0));

describe('a plate on which more pairs come near than are listed', () => {
  // 40 parts on one spot: 40 · 39 / 2 = 780 pairs.
  const crowd = finished(pairSteps(row(40, 0), 3));
  it('lists so many of them and one entry that counts the rest, which blocks hand-over', () => {
    expect(MOST_PAIRS).toBe(500);
    const pairs = crowd.problems.filter(({ code }) => code === 'parts-overlap');
    expect(pairs).toHaveLength(500);
    expect(crowd.problems).toHaveLength(501);
    const last = crowd.problems.at(-1)!;
    expect([last.code, last.blocks, last.params]).toEqual([
      'pairs-not-compared',
      true,
      { listed: 500, left: 280 },
    ]);
    expect(messageText(last.code, last.params)).toContain('280 more come near');
  });
  it('claims no check of a pair that was not compared', () => {
    expect(crowd.checks).toBe(500);
  });
  it('still decides by boxes the pairs that stand clear of each other', () => {
    // 40 on one spot and 10 a metre off, 30 mm apart: the 400 + 45 pairs with those are decided.
    const far = Array.from({ length: 10 }, (_, i) => block(`F${i}`, 1000 + 30 * i, 0));
    const { checks, problems } = finished(pairSteps([...row(40, 0), ...far], 3));
    expect([checks, problems.at(-1)!.params.left]).toEqual([500 + 400 + 45, 280]);
  });
});

it('exactly as many pairs as are listed need no entry of their own', () => {
  // Blocks of 20 mm every 22 mm: each is 2 mm from the next, nearer than 3.
  const { checks, problems } = finished(pairSteps(row(501, 22), 3));
  expect(problems.map(({ code }) => code)).toEqual(Array(500).fill('parts-too-close'));
  expect(checks).toBe((501 * 500) / 2);
  expect(finished(pairSteps(row(502, 22), 3)).problems.at(-1)!.params).toEqual({ listed: 500, left: 1 });
});

it('goes in steps: nothing of it compares more than one pair of outlines between two pauses', () => {
  let steps = 0;
  for (const run = pairSteps(row(40, 0), 3); !run.next().done;) steps++;
  // 500 comparisons and 40 rows.
  expect(steps).toBe(540);
});
