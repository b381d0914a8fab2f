/** The menu over the plan against the list of commands. */
import { describe, expect, test } from 'vitest';
import { COMMANDS, command } from '../../src/commands';
import { isPerLaser, MENUS } from '../../src/panels/planMenu/entries';

describe.each(Object.entries(MENUS))('the menu about a %s', (_about, blocks) => {
  const ids = blocks.flatMap((block) => block.flatMap((group) => group.ids));

  test('offers commands of the list only, each once', () => {
    expect(ids.map((id) => command(id).id)).toEqual(ids);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

test('the menu about a part holds every command that arranges', () => {
  const ids = MENUS.part.flatMap((block) => block.flatMap((group) => group.ids));
  const arranging = COMMANDS.map(({ id }) => id).filter((id) => /^(align|equal|mirror|one-per)-/.test(id));
  expect(arranging.length).toBeGreaterThan(10);
  expect(arranging.filter((id) => !ids.includes(id))).toEqual([]);
});

test('numbers of lasers are told from other commands', () => {
  expect(['pin-laser-3', 'select-laser-12', 'one-per-laser', 'select-same-laser'].map(isPerLaser)).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
