/** Selecting alike parts and arranging them by commands. Expected values: mathematics, by hand on small plates. */
import { describe, expect, test } from 'vitest';
import { COMMANDS, runCommand } from '../../src/commands';
import { quadrantsPlate } from '../canvas/hands';
import { part } from '../store/plates';
import { workplace } from './bench';

const view = (place: ReturnType<typeof workplace>) => place.bench.store.getState().view;

describe('selecting alike parts', () => {
  test('all of the same shape: two blocks, not the stepped part', () => {
    const place = workplace(quadrantsPlate());
    place.bench.setView({ selection: ['P02'] });
    runCommand('select-same-shape', place.context);
    expect(view(place).selection).toEqual(['P01', 'P02']);
  });

  test('all that laser 3 exposes here: the part across the middle of the rear; nothing at a height without parts of it', () => {
    const place = workplace(quadrantsPlate());
    runCommand('select-laser-3', place.context);
    expect(view(place).selection).toEqual(['P03']);
    runCommand('select-laser-1', place.context);
    expect(view(place).selection).toEqual(['P01']);
    place.bench.setView({ height_mm: 40 });
    runCommand('select-laser-1', place.context);
    expect(view(place).selection).toEqual([]);
  });

  test('all that the same lasers expose: the part across the line brings both lasers’ parts', () => {
    const layout = quadrantsPlate();
    const place = workplace({
      ...layout,
      parts: [...layout.parts, part('P04', 90, 90), part('P05', -90, 90)],
    });
    place.bench.setView({ selection: ['P05'] });
    runCommand('select-same-laser', place.context);
    expect(view(place).selection).toEqual(['P03', 'P05']);
    runCommand('select-same-laser', place.context);
    expect(view(place).selection).toEqual(['P03', 'P04', 'P05']);
  });
});

describe('arranging', () => {
  const arranging = COMMANDS.filter(({ id }) => /^(align|equal|mirror|one-per)-/.test(id));

  test('each is one entry of history, and undo brings everything back', () => {
    expect(arranging).toHaveLength(13);
    for (const { id, label } of arranging) {
      const place = workplace(quadrantsPlate());
      place.bench.change('Crowd', (layout) => ({
        ...layout,
        parts: [part('P01', -60, -50), part('P02', 61, -70), part('P03', 7, 60, 'stepped')],
      }));
      const before = place.layout();
      place.bench.setView({ selection: ['P01', 'P02', 'P03'] });
      expect(runCommand(id, place.context)).toBe(true);
      expect(place.layout()).not.toEqual(before);
      expect(place.bench.history().undo).toBe(label);
      runCommand('undo', place.context);
      expect(place.layout()).toEqual(before);
    }
  });

  test('aligning takes two parts, distributing three', () => {
    const place = workplace(quadrantsPlate());
    place.bench.setView({ selection: ['P01'] });
    expect(runCommand('align-left', place.context)).toBe(false);
    place.bench.setView({ selection: ['P01', 'P02'] });
    expect(runCommand('equal-gaps-x', place.context)).toBe(false);
    expect(runCommand('align-left', place.context)).toBe(true);
  });

  test('locked parts stay: others align with them, and spreading goes round them', () => {
    const place = workplace(quadrantsPlate());
    place.bench.setView({ selection: ['P01', 'P02', 'P03'], locked: ['P02'] });
    runCommand('align-left', place.context);
    expect(place.layout().parts.map(({ at_mm }) => at_mm)).toEqual([
      [60, -60],
      [60, -60],
      [65, 60],
    ]);
    runCommand('one-per-laser', place.context);
    expect(place.layout().parts[1]!.at_mm).toEqual([60, -60]);
    expect(place.layout().parts[0]!.at_mm).not.toEqual([60, -60]);
  });

  test('says when no laser is on to spread parts to', () => {
    const layout = quadrantsPlate();
    const lasers = layout.machine.lasers.map((laser) => ({ ...laser, on: false }));
    const place = workplace({ ...layout, machine: { ...layout.machine, lasers } });
    place.bench.setView({ selection: ['P01', 'P02'] });
    runCommand('one-per-laser', place.context);
    expect(view(place).notices.map(({ fault }) => fault.code)).toEqual(['spread-no-laser']);
    expect(place.bench.history().undo).toBeNull();
  });
});
