/**
 * What the page's first file holds, read from the imports themselves: everything that src/main.tsx reaches without import().
 * The list of what comes later is the one of DEVELOPERS.md, not the bundler's.
 */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../../src');

/** Paths of static imports and re-exports of values: "import type" and "export type" load nothing. */
const STATIC = /^(?:import|export)(?! type\b)(?:[^'";]*?\bfrom)? *'(\.[^']+)'/gm;

function fileOf(path: string): string | null {
  return [`${path}.ts`, `${path}.tsx`, `${path}/index.ts`].find((file) => existsSync(file)) ?? null;
}

/** Files of src that `file` and what it imports load at once. */
function loadedWith(file: string, found = new Set<string>()): Set<string> {
  if (found.has(file)) return found;
  found.add(file);
  for (const [, path] of readFileSync(file, 'utf8').matchAll(STATIC)) {
    const next = fileOf(resolve(dirname(file), path!));
    if (next) loadedWith(next, found);
  }
  return found;
}

const loaded = (file: string): string[] =>
  [...loadedWith(resolve(ROOT, file))].map((path) => relative(ROOT, path));
const first = loaded('main.tsx');

describe('the first file holds', () => {
  test.each([
    'canvas/Plan.tsx',
    'canvas/gestures/edits.ts',
    'panels/readout/Readout.tsx',
    'allocation/allocate.ts',
    'build/analysis.ts',
    'store/workbench.ts',
  ])('%s', (file) => expect(first).toContain(file));
});
describe('the first file does without', () => {
  test.each([
    ['screens/aroundPlate.ts', 'screens/ListColumn.tsx'],
    ['canvas/OverPlan.tsx', 'canvas/PlanHandles.tsx'],
    ['build/findProblems.ts', 'build/checks.ts'],
    ['build/analyse.ts', 'build/scheduleFaults.ts'],
    ['store/persist.ts', 'store/keeper.ts'],
    ['layout/messages.ts', 'layout/messages/plateMessages.ts'],
  ])('%s, which brings %s', (file, part) => {
    expect(loaded(file)).toContain(part);
    expect(first).not.toContain(file);
    expect(first).not.toContain(part);
  });
});
