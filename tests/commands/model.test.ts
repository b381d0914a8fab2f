/**
 * Random sessions: whatever is done in whatever order, the layout stays one that reading accepts as it is, undo leads
 * back to the start and redo to the end, a link carries the whole of it, and no operation writes into the layout it was
 * given (all are frozen). [mathematics]: an operation followed by reading is the operation; undo and redo are inverses,
 * and so are the two ends of a link. Reading refuses what is no finite number.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../src/commands';
import { demoLayout } from '../../src/layout/demo';
import { readLayoutValue } from '../../src/layout/read';
import { decodeLink, encodeLink } from '../../src/link';
import { smallPlate } from '../store/plates';
import { workplace } from './bench';
import { anyStep, applied, few, frozen, idsOf, OVER_HEIGHT, SEED, some } from './sessions';
import { dividedTwice } from './wholeHeight';

/** One division for all heights, or another one from 20 mm on. */
const start = fc.constantFrom(smallPlate(), dividedTwice(smallPlate(), 20));

test('after any sequence of operations reading accepts the layout exactly as it is', () => {
  fc.assert(
    fc.property(start, fc.array(anyStep, { minLength: 1, maxLength: 40, ...few }), (plate, session) => {
      let layout = frozen(plate);
      const heights = () => layout.zoning.map(({ from_mm }) => from_mm);
      for (const { name, run } of session) {
        const before = heights();
        layout = frozen(applied(layout, run));
        expect(readLayoutValue(JSON.parse(JSON.stringify(layout)))).toEqual({ ok: true, value: layout });
        if (!OVER_HEIGHT.includes(name)) expect(heights()).toEqual(before);
      }
    }),
    { seed: SEED, numRuns: 300 },
  );
}, 60_000);

describe('sessions on the workbench', () => {
  /** Commands that only ask for files or open dialogs change nothing here; opening replaces the whole layout. */
  const ids = COMMANDS.filter(({ group, id }) => group !== 'help' && !/^(open|save)-/.test(id));
  const action = fc.oneof(
    {
      weight: 4,
      arbitrary: fc.constantFrom(...ids).map((command) => ({ kind: 'command', command }) as const),
    },
    { weight: 4, arbitrary: anyStep.map(({ run }) => ({ kind: 'change', run }) as const) },
    { weight: 2, arbitrary: some.map((positions) => ({ kind: 'select', positions }) as const) },
    {
      weight: 1,
      arbitrary: fc.constantFrom({ kind: 'begin' }, { kind: 'end' }, { kind: 'cancel' } as const),
    },
  );

  test('undo leads to the start, redo to the end, and the view never points at what is gone', () => {
    fc.assert(
      fc.property(start, fc.array(action, { minLength: 1, maxLength: 60, ...few }), (plate, session) => {
        const { bench, context, layout } = workplace(frozen(plate));
        bench.store.subscribe((state) => {
          frozen(state.layout);
          const known = state.layout.parts.map(({ id }) => id);
          expect(state.view.selection.filter((id) => !known.includes(id))).toEqual([]);
          expect(Number.isFinite(state.view.height_mm)).toBe(true);
        });
        for (const act of session) {
          if (act.kind === 'begin') bench.beginGesture('Gesture');
          if (act.kind === 'end') bench.endGesture();
          if (act.kind === 'cancel') bench.cancelGesture();
          if (act.kind === 'select') bench.setView({ selection: idsOf(layout(), act.positions) });
          if (act.kind === 'change') bench.change('Change', (present) => applied(present, act.run));
          if (act.kind === 'command' && !/height/.test(act.command.id) && act.command.when(context))
            void act.command.run(context);
        }
        bench.endGesture();
        const redone: (string | null)[] = [];
        while (bench.history().redo !== null) {
          redone.push(bench.history().redo);
          bench.redo();
        }
        const end = layout();
        expect(readLayoutValue(JSON.parse(JSON.stringify(end)))).toEqual({ ok: true, value: end });
        expect(decodeLink(encodeLink(end))).toEqual({ ok: true, value: { layout: end, view: {} } });
        let steps = 0;
        for (; bench.history().undo !== null; steps++) bench.undo();
        expect(layout()).toEqual(plate);
        for (let i = 0; i < steps; i++) {
          const before = layout();
          bench.redo();
          expect(layout()).not.toEqual(before);
        }
        expect(layout()).toEqual(end);
        expect(bench.history().redo).toBeNull();
      }),
      { seed: SEED, numRuns: 200 },
    );
  }, 60_000);

  test('the demo plate survives every command once, one after the other', () => {
    const { bench, context, layout } = workplace(demoLayout());
    const start = layout();
    for (const command of ids) {
      bench.setView({
        selection: layout()
          .parts.slice(0, 2)
          .map(({ id }) => id),
      });
      if (command.when(context)) void command.run(context);
      expect(readLayoutValue(JSON.parse(JSON.stringify(layout())))).toEqual({ ok: true, value: layout() });
    }
    while (bench.history().undo !== null) bench.undo();
    expect(layout()).toEqual(start);
  });
});
