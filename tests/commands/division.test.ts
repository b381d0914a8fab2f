/** Commands that divide the platform, and those that only look. */
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/commands';
import { demoLayout } from '../../src/layout/demo';
import { plateOf } from '../../src/store/shown';
import { chosen, workplace } from './bench';

describe('division', () => {
  test.each([
    ['divide-quadrants', { strategy: 'quadrants', at_mm: [0, 0] }],
    ['divide-strips-x', { strategy: 'strips', run_deg: 90 }],
    ['divide-strips-y', { strategy: 'strips', run_deg: 0 }],
    ['divide-whole-field', { strategy: 'wholeField' }],
    ['divide-drawn', { strategy: 'drawn', zones: [{ lasers: ['L1', 'L2', 'L3', 'L4'] }] }],
  ])('%s divides so, and again changes nothing', (id, expected) => {
    const place = workplace();
    runCommand(id === 'divide-whole-field' ? 'divide-quadrants' : 'divide-whole-field', place.context);
    runCommand(id, place.context);
    const { zoning } = place.layout();
    expect(zoning).toMatchObject([{ from_mm: 0, zoning: expected }]);
    expect(zoning).toHaveLength(1);
    runCommand(id, place.context);
    expect(place.layout().zoning).toBe(zoning);
  });

  test('the zone line chosen for the keys moves along its normal', () => {
    const place = workplace();
    const at = () => {
      const { zoning } = plateOf(place.bench);
      return zoning.strategy === 'quadrants' ? zoning.at_mm : null;
    };
    const [x, y] = at()!;
    runCommand('zone-line-up-1', place.context);
    expect(at()).toEqual([x + 1, y]);
    runCommand('next-zone-line', place.context);
    runCommand('zone-line-down-tenth', place.context);
    expect(at()).toEqual([x + 1, y - 0.1]);
    runCommand('next-zone-line', place.context);
    runCommand('zone-line-down-1', place.context);
    expect(at()).toEqual([x, y - 0.1]);
  });

  test('a whole field has no line to move and no strip to add', () => {
    const place = workplace();
    runCommand('divide-whole-field', place.context);
    expect(runCommand('zone-line-up-1', place.context)).toBe(false);
    expect(runCommand('next-zone-line', place.context)).toBe(false);
    expect(runCommand('add-strip', place.context)).toBe(false);
  });

  test('strips go up to 12 and down to 2', () => {
    const place = workplace();
    runCommand('divide-strips-x', place.context);
    const strips = () => {
      const { zoning } = plateOf(place.bench);
      return zoning.strategy === 'strips' ? zoning.lasers.length : 0;
    };
    while (runCommand('add-strip', place.context)) expect(strips()).toBeLessThanOrEqual(12);
    expect(strips()).toBe(12);
    while (runCommand('remove-strip', place.context)) expect(strips()).toBeGreaterThanOrEqual(2);
    expect(strips()).toBe(2);
  });

  test('a laser is switched off and on, the allocation rule is chosen', () => {
    const place = workplace();
    runCommand('switch-laser-3', place.context);
    expect(place.layout().machine.lasers.map(({ on }) => on)).toEqual([true, true, false, true]);
    runCommand('switch-laser-3', place.context);
    runCommand('allocate-whole-parts', place.context);
    expect(place.layout().allocation).toBe('wholeParts');
    runCommand('allocate-balanced', place.context);
    expect(place.layout()).toEqual(demoLayout());
  });
});

describe('view', () => {
  test('the height steps through the middles of the stretches and stops at the last', () => {
    const place = workplace();
    const height = () => place.bench.store.getState().view.height_mm;
    const { stretches } = place.bench.analysis();
    expect(stretches.length).toBeGreaterThan(2);
    const seen: number[] = [];
    while (runCommand('height-up', place.context)) seen.push(height());
    expect(seen).toEqual(stretches.slice(1).map(({ from_mm, to_mm }) => (from_mm + to_mm) / 2));
    expect(place.layout()).toEqual(demoLayout());
    while (runCommand('height-down', place.context));
    expect(height()).toBe((stretches[0]!.from_mm + stretches[0]!.to_mm) / 2);
  });

  test('zooming starts from what the plan shows, and fit returns to it', () => {
    const place = workplace();
    const fitted = { centreX_mm: 1, centreY_mm: 2, pxPerMm: 2 };
    expect(runCommand('zoom-in', place.context)).toBe(false);
    place.bench.setView({ fitted });
    runCommand('zoom-in', place.context);
    expect(place.bench.store.getState().view.camera).toEqual({ ...fitted, pxPerMm: 2.5 });
    for (let i = 0; i < 200; i++) runCommand('zoom-out', place.context);
    expect(place.bench.store.getState().view.camera!.pxPerMm).toBe(0.02);
    runCommand('zoom-fit', place.context);
    expect(place.bench.store.getState().view.camera).toBeNull();
    expect(runCommand('zoom-fit', place.context)).toBe(false);
  });

  test('fit once more shows parts off the platform too, then the platform again', () => {
    const place = workplace();
    const everything = { centreX_mm: 5000, centreY_mm: 0, pxPerMm: 0.1 };
    place.bench.setView({ everything });
    const camera = () => place.bench.store.getState().view.camera;
    runCommand('zoom-fit', place.context);
    expect(camera()).toEqual(everything);
    runCommand('zoom-fit', place.context);
    expect(camera()).toBeNull();
  });

  test('the ground goes through three and comes round', () => {
    const place = workplace();
    const seen = [1, 2, 3].map(() => {
      runCommand('theme', place.context);
      return place.bench.store.getState().view.theme;
    });
    expect(seen).toEqual(['light', 'dark', 'system']);
  });

  test('tools and dialogs are reached by command', () => {
    const place = workplace();
    for (const name of ['pan', 'rectangle', 'disc', 'ring', 'polygon', 'zone', 'select']) {
      runCommand(`tool-${name}`, place.context);
      expect(place.bench.store.getState().view.tool).toBe(name);
    }
    for (const id of ['help', 'machine', 'process', 'about']) runCommand(id, place.context);
    chosen(place);
    runCommand('copy-in-rows', place.context);
    expect(place.asked.dialogs).toEqual(['help', 'machine', 'process', 'about', 'copies']);
    expect(place.bench.history().undo).toBeNull();
  });
});
