// Reading in steps gives what reading at once gives, and stops often enough on a big drawing. Counts of steps follow from
// the number of objects [mathematics].
import { expect, test } from 'vitest';
import { finish, readingOutlines, readOutlines, type Reading } from '../../src/import/outlines';
import { SETTINGS, dxf, dxfCircle, dxfLine, fixture, svg } from './drawing';

/** How often a reader stopped at each kind of step, and its answer. */
function walked<T>(reading: Reading<T>): { steps: Record<string, number>; answer: T } {
  const steps: Record<string, number> = {};
  for (;;) {
    const step = reading.next();
    if (step.done === true) return { steps, answer: step.value };
    steps[step.value] = (steps[step.value] ?? 0) + 1;
  }
}

test.each(['gasket.svg', 'left-out.svg', 'left-out.dxf', 'slotted-plate.dxf', 'broken.dxf'])(
  '%s reads the same in steps and at once',
  (name) => {
    const read = readOutlines(name, fixture(name), SETTINGS);
    expect(walked(readingOutlines(name, fixture(name), SETTINGS)).answer).toEqual(read);
    expect(finish(readingOutlines(name, fixture(name), SETTINGS))).toEqual(read);
  },
);

test('10 000 objects of a DXF stop at least fifty times while they become curves, and again for outlines', () => {
  const circles = Array.from({ length: 5000 }, (_, i) =>
    dxfCircle(3 * (i % 100), 3 * Math.floor(i / 100), 1),
  );
  const lines = Array.from({ length: 5000 }, (_, i) => dxfLine(0, -1 - i, 1, -1 - i));
  const { steps } = walked(readingOutlines('a.dxf', dxf([...circles, ...lines].join('')), SETTINGS));
  expect(steps.curves).toBeGreaterThanOrEqual(50);
  expect(steps.outlines).toBeGreaterThanOrEqual(25);
  expect(steps.text).toBeGreaterThanOrEqual(4);
});

test('groups within groups of an SVG stop as often as the same elements side by side', () => {
  const rects = Array.from({ length: 4000 }, (_, i) => `<rect x="${2 * i}" width="1" height="1"/>`).join('');
  const flat = walked(readingOutlines('a.svg', svg(rects), SETTINGS)).steps;
  const nested = walked(readingOutlines('a.svg', svg(`<g><g>${rects}</g></g>`), SETTINGS)).steps;
  expect(flat.curves).toBeGreaterThanOrEqual(20);
  expect(nested.curves).toBeGreaterThanOrEqual(20);
});
