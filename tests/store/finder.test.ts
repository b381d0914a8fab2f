/**
 * Problems a moment after the plate: until what finds them has come, no check stands behind the empty list; then the
 * analysis is the one that the engine gives at once. Nothing of it is an entry of history.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { findProblems, type FindProblems } from '../../src/build/findProblems';
import { demoLayout } from '../../src/layout/demo';
import type { Layout } from '../../src/layout/types';
import { createWorkbench } from '../../src/store/workbench';

/** P02 stands 5 m off the platform: a fault, whatever else is. */
const faulty = (layout: Layout): Layout => ({
  ...layout,
  parts: layout.parts.map((part) => (part.id === 'P02' ? { ...part, at_mm: [5000, 0] as const } : part)),
});

/** A finder that comes, or does not, when the test says so. */
function waiting() {
  let come: (find: FindProblems) => void = () => undefined;
  let fail: (error: Error) => void = () => undefined;
  const loaded = new Promise<FindProblems>((resolve, reject) => {
    come = resolve;
    fail = reject;
  });
  return { load: () => loaded, come: () => come(findProblems), fail: () => fail(new Error('offline')) };
}
const settled = () => new Promise((resolve) => setTimeout(resolve));
const open = (layout: Layout) => {
  const finder = waiting();
  return { finder, bench: createWorkbench({ layout, loadFinder: finder.load }) };
};

describe('until what finds problems has come', () => {
  test('figures are there, and the list is empty with no check behind it, faulty plate or not', () => {
    const { bench } = open(faulty(demoLayout()));
    const { build, problems, checks } = bench.analysis();
    expect(build.time_h).toBe(analyse(faulty(demoLayout())).build.time_h);
    expect([problems.length, checks]).toEqual([0, 0]);
  });
  test('an analysis that was asked for meanwhile stays as it was', async () => {
    const { bench, finder } = open(faulty(demoLayout()));
    const early = bench.analysis();
    finder.come();
    await settled();
    expect(early.checks).toBe(0);
    expect(bench.analysis()).not.toBe(early);
  });
});

describe('once it has come', () => {
  test('subscribers hear of it, and the problems are those of the engine', async () => {
    const { bench, finder } = open(faulty(demoLayout()));
    bench.analysis();
    let heard = 0;
    bench.store.subscribe(() => heard++);
    finder.come();
    await settled();
    expect(heard).toBe(1);
    const { problems, checks } = bench.analysis();
    expect(problems.map(({ code, parts }) => [code, parts[0]])).toContainEqual(['part-off-platform', 'P02']);
    expect(checks).toBe(analyse(faulty(demoLayout())).checks);
    expect(bench.analysis()).toBe(bench.analysis());
  });
  test('in the middle of a gesture: the plate is where the hand left it, and one step leads back', async () => {
    const { bench, finder } = open(demoLayout());
    bench.beginGesture('Move P02');
    bench.change('Move P02', faulty);
    finder.come();
    await settled();
    bench.endGesture();
    expect(bench.analysis().problems.length).toBeGreaterThan(0);
    expect(bench.timeline().past).toHaveLength(1);
    bench.undo();
    expect(bench.store.getState().layout).toEqual(demoLayout());
    expect(bench.analysis().problems).toEqual([]);
    expect(bench.analysis().checks).toBeGreaterThan(0);
  });
});

test('where it does not come, a notice says so and no check is claimed', async () => {
  const { bench, finder } = open(demoLayout());
  finder.fail();
  await settled();
  expect(bench.store.getState().view.notices.map(({ fault }) => fault.code)).toEqual([
    'problems-not-looked-for',
  ]);
  expect(bench.analysis().checks).toBe(0);
});
test('it is looked for without being told how, and not where the analysis is given', async () => {
  const own = createWorkbench({ layout: demoLayout() });
  const given = createWorkbench({
    layout: demoLayout(),
    analyse,
    loadFinder: () => Promise.reject(new Error()),
  });
  expect(given.analysis().checks).toBe(analyse(demoLayout()).checks);
  await expect.poll(() => own.analysis().checks).toBe(analyse(demoLayout()).checks);
  expect(given.store.getState().view.notices).toEqual([]);
});
