// Figures taken over from an earlier computation equal those computed anew, to the last bit: random plates, one part after
// the other moved, turned or given another rule.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { plateOf } from '../../src/build/plate';
import { sameAnswer } from '../../src/build/sameAnswer';
import { Stacks } from '../../src/build/stack';
import { totalsOf } from '../../src/build/totals';
import type { Layout, Part } from '../../src/layout/types';
import { plate } from '../support/plates';
import { layouts } from '../support/random';

interface Move {
  readonly part: number;
  readonly dx: number;
  readonly dy: number;
  readonly turn: boolean;
}
const move = fc.record({
  part: fc.nat(3),
  dx: fc.integer({ min: -40, max: 40 }),
  dy: fc.integer({ min: -40, max: 40 }),
  turn: fc.boolean(),
});

const moved = (layout: Layout, { part, dx, dy, turn }: Move): Layout => ({
  ...layout,
  parts: layout.parts.map((own, i): Part => {
    if (i !== part % layout.parts.length) return own;
    const at_mm = [own.at_mm[0] + dx, own.at_mm[1] + dy] as const;
    return { ...own, at_mm, turn_deg: turn ? (own.turn_deg + 90) % 360 : own.turn_deg };
  }),
});

function totals(stacks: Stacks<ReturnType<typeof totalsOf>>, layout: Layout) {
  const run = stacks.run(plateOf(layout));
  for (;;) {
    const step = run.next();
    if (step.done) return step.value.stretches;
  }
}

test('totals of a plate after moves equal those of the plate computed anew', () => {
  const plates = layouts({ bands: true, faults: true, whole: true, parts: 5, spread: 110 });
  fc.assert(
    fc.property(plates, fc.array(move, { minLength: 1, maxLength: 4 }), (first, moves) => {
      const stacks = new Stacks(totalsOf, sameAnswer);
      totals(stacks, first);
      let layout = first;
      for (const next of moves) {
        layout = moved(layout, next);
        const anew = new Stacks(totalsOf);
        expect(totals(stacks, layout)).toEqual(totals(anew, structuredClone(layout)));
      }
    }),
    { numRuns: 100, seed: 20261125 },
  );
});

test('a part moved inside its zone asks for nothing; moved across a line it does', () => {
  const square = (side: number) => [
    {
      to_mm: 6,
      rings: [
        [
          [0, 0],
          [side, 0],
          [side, side],
          [0, side],
        ],
      ],
    },
  ];
  const layout = plate(
    [
      { id: 'P01', slabs: square(30), at: [-100, -100] },
      { id: 'P02', slabs: square(50), at: [60, 60] },
    ],
    { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: 0, lasers: ['L1', 'L2', 'L3', 'L4'] },
  );
  const answers: unknown[] = [];
  const stacks = new Stacks((figures) => {
    answers.push(figures);
    return totalsOf(figures);
  }, sameAnswer);
  totals(stacks, layout);
  totals(stacks, moved(layout, { part: 0, dx: 12, dy: -7, turn: false }));
  expect(answers).toHaveLength(1);
  const across = totals(stacks, moved(layout, { part: 0, dx: 90, dy: 0, turn: false }));
  expect(answers).toHaveLength(2);
  expect(across[0]!.figures.cutParts).toBe(1);
  expect(analyse(layout).stretches[0]!.figures.cutParts).toBe(0);
});
