/** The list of commands, and what those for parts and selection do. */
import { labelOf } from '../../src/commands/labels';
import { describe, expect, test } from 'vitest';
import { COMMANDS, command, runCommand } from '../../src/commands';
import { chordOf } from '../../src/commands/keyboard';
import { demoLayout } from '../../src/layout/demo';
import { chosen, keyEvent, workplace } from './bench';

describe('the list', () => {
  test('ids are unique, kebab-case, and labels are unique', () => {
    const ids = COMMANDS.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
    expect(new Set(COMMANDS.map(labelOf)).size).toBe(ids.length);
  });

  test('no key is on two commands', () => {
    const keys = COMMANDS.flatMap((entry) => entry.keys);
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  });

  test('every key is written as a keyboard reports it', () => {
    for (const key of COMMANDS.flatMap((entry) => entry.keys)) expect(chordOf(keyEvent(key))).toBe(key);
  });

  test('an unknown id is a fault of the program', () => {
    expect(() => command('no-such-command')).toThrow('no-such-command');
  });
});

describe('parts', () => {
  test.each([
    ['move-left-by-1', -1, 0],
    ['move-right-by-10', 10, 0],
    ['move-back-by-tenth', 0, 0.1],
    ['move-front-by-1', 0, -1],
  ])('%s moves the selection and nothing else', (id, dx, dy) => {
    const place = workplace();
    const before = place.layout();
    chosen(place, 2);
    expect(runCommand(id, place.context)).toBe(true);
    place.layout().parts.forEach((part, i) => {
      const was = before.parts[i]!;
      const [x, y] = i < 2 ? [was.at_mm[0] + dx, was.at_mm[1] + dy] : was.at_mm;
      expect(part.at_mm[0]).toBeCloseTo(x!, 9);
      expect(part.at_mm[1]).toBeCloseTo(y!, 9);
    });
  });

  test('six turns of 15° make one of 90°, and back', () => {
    const place = workplace();
    const [id] = chosen(place);
    const turn = () => place.layout().parts.find((part) => part.id === id)!.turn_deg;
    const start = turn();
    for (let i = 0; i < 6; i++) runCommand('turn-counter-clockwise-15', place.context);
    expect(turn()).toBe((start + 90) % 360);
    runCommand('turn-clockwise-90', place.context);
    expect(turn()).toBe(start);
    runCommand('turn-clockwise-1', place.context);
    expect(turn()).toBe((start + 359) % 360);
  });

  test('seams and pins apply to the selection and can be lifted', () => {
    const place = workplace();
    chosen(place, 3);
    const fields = () =>
      place
        .layout()
        .parts.slice(0, 4)
        .map(({ seams, laser }) => `${seams} ${laser}`);
    const last = fields()[3];
    runCommand('seams-none', place.context);
    runCommand('pin-laser-2', place.context);
    expect(fields()).toEqual(['none L2', 'none L2', 'none L2', last]);
    runCommand('seams-free', place.context);
    runCommand('unpin', place.context);
    expect(fields()).toEqual(['free null', 'free null', 'free null', last]);
  });

  test('a laser the machine does not have cannot be pinned to', () => {
    const place = workplace();
    chosen(place);
    expect(place.layout().machine.lasers).toHaveLength(4);
    expect(runCommand('pin-laser-5', place.context)).toBe(false);
    expect(runCommand('switch-laser-5', place.context)).toBe(false);
  });

  test('without a selection nothing that concerns parts applies', () => {
    const place = workplace();
    const concerned = COMMANDS.filter(({ group, id }) => group === 'part' || id === 'delete-parts');
    expect(concerned.length).toBeGreaterThan(20);
    expect(concerned.filter((entry) => entry.when(place.context))).toEqual([]);
  });
});

describe('edit', () => {
  test('duplicate is refused at once where a layout may not hold the copies', () => {
    const parts = Array.from({ length: 3000 }, (_, i) => ({ ...demoLayout().parts[0]!, id: `Q${i}` }));
    const place = workplace();
    place.bench.change('Fill', (layout) => ({ ...layout, parts }));
    place.bench.setView({ selection: parts.map(({ id }) => id) });
    const before = place.layout();
    runCommand('duplicate', place.context);
    expect(place.layout()).toBe(before);
    expect(place.bench.store.getState().view.notices.map(({ fault }) => fault)).toEqual([
      { code: 'too-many-parts', params: { found: 6000, limit: 5000 } },
    ]);
  });
  test('duplicate selects the copies, which share the shapes; delete takes them away again', () => {
    const place = workplace();
    const before = place.layout();
    chosen(place, 2);
    runCommand('duplicate', place.context);
    const { selection } = place.bench.store.getState().view;
    expect(selection).toHaveLength(2);
    expect(place.layout().parts).toHaveLength(before.parts.length + 2);
    expect(place.layout().shapes).toBe(before.shapes);
    expect(new Set(place.layout().parts.map((part) => part.id)).size).toBe(before.parts.length + 2);
    runCommand('delete-parts', place.context);
    expect(place.layout()).toEqual(before);
    runCommand('undo', place.context);
    expect(place.layout().parts).toHaveLength(before.parts.length + 2);
  });

  test('escape gives up the gesture first, then the tool, then the selection', () => {
    const place = workplace();
    const before = place.layout();
    const [id] = chosen(place);
    place.bench.setView({ tool: 'disc' });
    place.bench.beginGesture('Drag');
    runCommand('move-left-by-1', place.context);
    runCommand('step-back', place.context);
    expect(place.layout()).toBe(before);
    expect(place.bench.store.getState().view).toMatchObject({ tool: 'disc', selection: [id] });
    runCommand('step-back', place.context);
    expect(place.bench.store.getState().view).toMatchObject({ tool: 'select', selection: [id] });
    runCommand('step-back', place.context);
    expect(place.bench.store.getState().view.selection).toEqual([]);
    expect(runCommand('step-back', place.context)).toBe(false);
  });

  test('select all takes every part; undo and redo apply only where there is something', () => {
    const place = workplace();
    expect(runCommand('undo', place.context)).toBe(false);
    runCommand('select-all', place.context);
    expect(place.bench.store.getState().view.selection).toEqual(place.layout().parts.map(({ id }) => id));
    runCommand('delete-parts', place.context);
    expect(place.layout().parts).toEqual([]);
    expect(runCommand('redo', place.context)).toBe(false);
    runCommand('undo', place.context);
    expect(place.layout()).toEqual(demoLayout());
    runCommand('redo', place.context);
    expect(place.layout().parts).toEqual([]);
  });
});
