/** Commands that change the zones over height: on Tall one, 4000 layers of 0.06 mm up to 240 mm. */
import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { runCommand } from '../../src/commands';
import { commandForKey } from '../../src/commands/keyboard';
import { readLayout } from '../../src/layout/read';
import { plateOf } from '../../src/store/shown';
import { keyEvent, workplace } from './bench';
import { accepted } from './operations/read';

const tall = accepted(readLayout(readFileSync('shared/examples/tall-one.json', 'utf8')));
let place: ReturnType<typeof workplace>;
const look = (height_mm: number) => place.bench.setView({ height_mm });
const height = () => place.bench.store.getState().view.height_mm;
const run = (id: string) => runCommand(id, place.context);
const steps = () => place.layout().zoning.map((step) => [step.from_mm, step.zoning.strategy]);
const hours = () => place.bench.analysis().build.time_h;

beforeEach(() => {
  place = workplace(tall);
});

describe('the zones changed from the height shown on', () => {
  test('begin at the bottom of the layer shown, and what is chosen then holds from there on', () => {
    look(60.04);
    expect(run('change-from-here')).toBe(true);
    expect(steps()).toEqual([
      [0, 'quadrants'],
      [60, 'quadrants'],
    ]);
    expect(hours()).toBeCloseTo(109.113, 2);
    run('divide-whole-field');
    expect(steps()[1]).toEqual([60, 'wholeField']);
    // by hand: 1000 layers of quadrants, then all four lasers share the tall part, four piece gaps a layer
    expect(hours()).toBeCloseTo(54.113, 2);
    look(59.9);
    expect(plateOf(place.bench).zoning.strategy).toBe('quadrants');
  });

  test('are one entry of history, undone and done again', () => {
    look(60);
    run('change-from-here');
    run('divide-whole-field');
    expect(place.bench.history().undo).toBe('Whole field');
    run('undo');
    expect(place.bench.history().undo).toBe('Change the zones from this height on');
    run('undo');
    expect(place.layout()).toBe(tall);
    run('redo');
    run('redo');
    expect(hours()).toBeCloseTo(54.113, 2);
  });

  test('cannot begin in the first layer, twice in one layer, or on an empty plate', () => {
    expect(run('change-from-here')).toBe(false);
    look(60);
    expect(run('change-from-here')).toBe(true);
    expect(run('change-from-here')).toBe(false);
    run('select-all');
    run('delete-parts');
    expect(run('change-from-here')).toBe(false);
  });

  test('are taken away while they are shown, never those at the platform', () => {
    look(60);
    run('change-from-here');
    look(59.9);
    expect(run('remove-change')).toBe(false);
    look(200);
    expect(run('remove-change')).toBe(true);
    expect(place.layout()).toEqual(tall);
    expect(run('remove-change')).toBe(false);
  });
});

describe('going from zones to zones', () => {
  test('is going to the middles of their layers, over those that hold in none, and ends at the ends', () => {
    expect(run('zones-above')).toBe(false);
    look(120);
    run('change-from-here');
    look(60);
    run('change-from-here');
    const { bench } = place;
    bench.change('a thin one', (layout) => ({
      ...layout,
      zoning: layout.zoning.toSpliced(1, 0, { from_mm: 59.98, zoning: layout.zoning[0]!.zoning }),
    }));
    look(10);
    const seen: number[] = [];
    while (run('zones-above')) seen.push(height());
    expect(seen).toEqual([89.97, 179.97]);
    while (run('zones-below')) seen.push(height());
    expect(seen).toEqual([89.97, 179.97, 89.97, 29.97]);
    expect(bench.history().undo).toBe('a thin one');
  });

  test('has keys of its own', () => {
    look(60);
    run('change-from-here');
    const id = (chord: string) => commandForKey(keyEvent(chord), place.context)?.id;
    expect(id('Shift+PageDown')).toBe('zones-below');
    expect(id('Shift+V')).toBe('remove-change');
    look(30);
    expect(id('v')).toBe('change-from-here');
    expect(id('Shift+PageUp')).toBe('zones-above');
    expect(id('PageUp')).toBe('height-up');
  });
});
