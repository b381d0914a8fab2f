/** Commands that change the order of the list: where they apply, what they do, and that undo takes each back at once. */
import { describe, expect, test } from 'vitest';
import { command, runCommand } from '../../../src/commands';
import { createKeyboard } from '../../../src/commands/keyboard';
import { demoLayout } from '../../../src/layout/demo';
import type { Layout } from '../../../src/layout/types';
import { keyEvent, workplace } from '../bench';

/** Parts A to F, turned so that their order by turn is F, E, D, C, B, A. */
const plate = (): Layout => {
  const demo = demoLayout();
  const parts = demo.parts.slice(0, 6);
  return { ...demo, parts: parts.map((part, i) => ({ ...part, id: 'ABCDEF'[i]!, turn_deg: 60 - 10 * i })) };
};
const table = () => {
  const place = workplace(plate());
  const order = () =>
    place
      .layout()
      .parts.map(({ id }) => id)
      .join('');
  const view = () => place.bench.store.getState().view;
  const lack = (id: string) => {
    const { when } = command(id);
    return when(place.context) ? null : (when.lack?.(place.context) ?? '');
  };
  return { ...place, order, view, lack };
};

describe('moving in the list', () => {
  test('to the top and to the bottom gathers the selection in its own order', () => {
    const { bench, context, order, view } = table();
    bench.setView({ selection: ['E', 'B'] });
    runCommand('list-top', context);
    expect(order()).toBe('BEACDF');
    runCommand('list-bottom', context);
    expect(order()).toBe('ACDFBE');
    expect(view().selection).toEqual(['E', 'B']);
    bench.undo();
    expect(order()).toBe('BEACDF');
  });
  test('a held key is one step of history', () => {
    const { bench, context, order } = table();
    bench.setView({ selection: ['E'] });
    const keyboard = createKeyboard(context);
    for (let i = 0; i < 3; i++) keyboard.down(keyEvent('Alt+ArrowUp', { repeat: i > 0 }));
    keyboard.up({ key: 'ArrowUp' });
    expect(order()).toBe('AEBCDF');
    bench.undo();
    expect(order()).toBe('ABCDEF');
    expect(bench.history().undo).toBeNull();
  });
  test('a locked part changes its place in the list, not on the plate', () => {
    const { bench, context, order, layout } = table();
    const [was] = layout().parts;
    bench.setView({ selection: ['A'], locked: ['A'] });
    runCommand('list-down', context);
    expect(order()).toBe('BACDEF');
    expect(layout().parts[1]).toBe(was);
  });
  test('is off, and says why, where the list shows another order or there is nowhere to go', () => {
    const { bench, lack } = table();
    expect(lack('list-up')).toBe('no part is selected');
    bench.setView({ selection: ['A', 'B'] });
    expect(lack('list-up')).toBe('it is at the top of the list');
    expect(lack('list-down')).toBeNull();
    bench.setView({ list: { search: 'A', sort: null } });
    expect(lack('list-down')).toBe('the list shows only what is looked for');
    bench.setView({ list: { search: '', sort: { column: 'turn', down: false } } });
    expect(lack('list-bottom')).toBe('a column sorts the list');
  });
});

describe('keeping the order that a column gives', () => {
  test('makes it the order of the layout, in one step, and the list shows it unsorted', () => {
    const { bench, context, order, view } = table();
    bench.setView({ list: { search: '', sort: { column: 'turn', down: false } } });
    expect(runCommand('keep-order', context)).toBe(true);
    expect(order()).toBe('FEDCBA');
    expect(view().list.sort).toBeNull();
    bench.undo();
    expect(order()).toBe('ABCDEF');
    expect(bench.history().undo).toBeNull();
  });
  test('is off where nothing sorts the list, or where not all of it is shown', () => {
    const { bench, lack } = table();
    expect(lack('keep-order')).toBe('no column sorts the list');
    bench.setView({ list: { search: 'P1', sort: { column: 'id', down: true } } });
    expect(lack('keep-order')).toBe('the list shows only what is looked for');
  });
});
