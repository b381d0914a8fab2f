/** What the list of commands offers, in what order it finds, and that whatever does not apply says why. */
import { describe, expect, test } from 'vitest';
import { COMMANDS, command } from '../../src/commands';
import { all, where } from '../../src/commands/make';
import { emptyLayout } from '../../src/layout/defaults';
import type { Text } from '../../src/language/index';
import { rank } from '../../src/screens/CommandPalette';
import { GROUPS, listed } from '../../src/screens/commandGroups';
import { chosen, workplace } from '../commands/bench';

const found = (words: string): string[] =>
  COMMANDS.map(({ id, label }) => ({ label, score: rank(id, words, [label]) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ label }) => label);

describe('finding', () => {
  test('every word must stand in the label, in any order and case', () => {
    expect(found('AREA no such')).toEqual([]);
    expect(found('Strips')[0]).toContain('trips');
    expect(found('back move').every((label) => /move/i.test(label) && /back/i.test(label))).toBe(true);
    expect(found('back move')).not.toEqual([]);
  });
  test('a label that begins with the words comes before one that holds them', () => {
    const labels = ['Redo the cut', 'Cut the widest strip in two'];
    const scores = labels.map((label) => rank('id', 'cut', [label]));
    expect(scores[1]).toBeGreaterThan(scores[0]!);
    expect(scores[0]).toBeGreaterThan(0);
  });
});

describe('the list', () => {
  test('every group of commands has its heading, so that none is lost', () => {
    const groups = GROUPS.map(({ group }) => group);
    expect(COMMANDS.filter(({ group }) => !groups.includes(group)).map(({ id }) => id)).toEqual([]);
  });
  test('lasers that the machine does not have are left out, and nothing else but what cannot be chosen', () => {
    const place = workplace();
    const ids = listed(COMMANDS, place.context).map((entry) => entry.command.id);
    expect(place.layout().machine.lasers).toHaveLength(4);
    expect(ids.filter((id) => id.startsWith('pin-laser-'))).toHaveLength(4);
    const missing = COMMANDS.map(({ id }) => id).filter((id) => !ids.includes(id));
    expect(missing.filter((id) => !/^(pin|switch|select)-laser-\d+$/.test(id)).sort()).toEqual([
      'palette',
      'step-back',
    ]);
  });
  test.each([
    ['undo', 'nothing to undo'],
    ['delete-parts', 'no part is selected'],
    ['pin-laser-1', 'no part is selected'],
    ['add-strip', 'not divided into strips'],
    ['drop-schedule', 'no start is planned'],
  ])('%s says that %s', (id, words) => {
    const { context } = workplace();
    context.bench.setView({ selection: [] });
    if (id === 'drop-schedule') context.bench.change('no plan', (layout) => ({ ...layout, schedule: null }));
    const [entry] = listed([command(id)], context);
    expect(entry?.lack).toBe(words);
  });
  test('with a part selected its commands apply and say nothing', () => {
    const place = workplace();
    chosen(place);
    expect(listed([command('delete-parts')], place.context)[0]?.lack).toBeNull();
  });
  test('of several conditions the first that fails is the one that is said', () => {
    const { context } = workplace();
    const fails = (words: Text) => where(words, () => false);
    expect(
      all(
        where('nobody', () => true),
        fails('no parts'),
        fails('no zone'),
      ).lack?.(context),
    ).toBe('no parts');
  });
  test('on an empty plate everything that does not apply says why, in a few words', () => {
    const { context } = workplace(emptyLayout());
    const off = listed(COMMANDS, context).filter(({ lack }) => lack !== null);
    expect(off.length).toBeGreaterThan(20);
    expect(off.filter(({ lack }) => !/^[a-z0-9][a-z0-9 ]+$/.test(lack ?? ''))).toEqual([]);
  });
});
