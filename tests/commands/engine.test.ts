/**
 * The engine on what random sessions leave behind: figures are finite, scan areas − double exposure + unassigned =
 * section area, and no layer is faster than its lower bound [mathematics].
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import type { LayerFigures } from '../../src/build/types';
import { demoLayout } from '../../src/layout/demo';
import type { Layout } from '../../src/layout/types';
import { smallPlate } from '../store/plates';
import { anyStep, applied, few, frozen, SEED } from './sessions';
import { dividedTwice } from './wholeHeight';

const twoDivisions = (): Layout => dividedTwice(smallPlate(), 15);

/** Sessions whose plate would only take long: many parts, or a shape of more than a million layers. */
const MOST_PARTS = 60;
const MOST_LAYERS = 1e6;
const small = ({ parts, shapes, process }: Layout): boolean =>
  parts.length <= MOST_PARTS &&
  Object.values(shapes).every(({ slabs }) => slabs.at(-1)!.to_mm / process.layer_mm <= MOST_LAYERS);

function expectSound(figures: LayerFigures): void {
  const scanned = figures.lasers.reduce((sum, laser) => sum + laser.scanArea_mm2, 0);
  const balance = scanned - figures.doubleExposed_mm2 + figures.unassigned_mm2 - figures.sectionArea_mm2;
  expect(Math.abs(balance)).toBeLessThanOrEqual(1e-6 * Math.max(1, figures.sectionArea_mm2));
  expect(figures.exposure_s).toBeGreaterThanOrEqual(figures.bestPossible_s * (1 - 1e-9));
  expect(figures.exposure_s).toBe(Math.max(...figures.lasers.map((laser) => laser.load_s)));
}

test('after any session the figures are finite, the areas add up and the bound holds', () => {
  fc.assert(
    fc.property(
      fc.array(anyStep, { minLength: 1, maxLength: 20, ...few }),
      fc.constantFrom(smallPlate, twoDivisions, demoLayout),
      (session, start) => {
        let layout = frozen(start());
        for (const { run } of session) layout = frozen(applied(layout, run));
        fc.pre(small(layout));
        const { build, stretches } = analyse(layout);
        const numbers = Object.entries(build).filter(([, value]) => typeof value === 'number');
        expect(numbers.filter(([, value]) => !Number.isFinite(value))).toEqual([]);
        for (const { figures } of stretches) expectSound(figures);
      },
    ),
    { seed: SEED, numRuns: 60 },
  );
}, 120_000);
