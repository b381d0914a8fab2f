/**
 * What an explanation says must be what the figure shows: the terms of each laser's load, summed by the
 * panel from areas and lengths, come to the load that the engine reports; and every figure of the screen has words.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { demoLayout } from '../../src/layout/demo';
import { explain } from '../../src/panels/readout/explain';
import { BUILD_EXPLANATIONS } from '../../src/panels/readout/explainBuild';
import { LAYER_EXPLANATIONS } from '../../src/panels/readout/explainLayer';
import type { FigureName } from '../../src/panels/readout/figureNames';
import { loadTerms } from '../../src/panels/readout/loadTerms';
import { booksBalance } from '../../src/panels/readout/BookKeeping';

const analysis = analyse(demoLayout());
const figures = analysis.stretches[0]!.figures;
const lasers = figures.lasers.map(({ id }, index) => [id, index] as const);

describe('on the demo plate', () => {
  test.each(lasers)('the terms shown for %s come to its load', (_, laser) => {
    const { hatch_s, vectorGaps_s, contours_s, pieceGaps_s } = loadTerms(analysis, figures, laser);
    const sum = hatch_s + vectorGaps_s + contours_s + pieceGaps_s;
    const { load_s } = figures.lasers[laser]!;
    expect(Math.abs(sum - load_s)).toBeLessThanOrEqual(1e-6 * load_s);
  });
  const names = [
    ...Object.keys(LAYER_EXPLANATIONS),
    ...Object.keys(BUILD_EXPLANATIONS),
    ...['load', 'area', 'idle', 'pieces', 'plumes'].map((kind) => `${kind}-L1`),
  ] as FigureName[];
  test.each(names)('%s says what it means, by which formula, with numbers', (name) => {
    const said = explain(name, analysis, figures);
    expect(said?.meaning.length).toBeGreaterThan(20);
    expect(said?.formula).not.toBe('');
    expect(said?.numbers.join(' ')).toMatch(/\d/);
    expect(said?.numbers.join(' ')).not.toMatch(/NaN|undefined|null/);
  });
  test('nothing is said about a laser that the machine does not have', () => {
    expect(explain('load-L9', analysis, figures)).toBeNull();
  });
});

describe('the book-keeping line', () => {
  test('balances on the demo plate', () => {
    expect(booksBalance(figures)).toBe(true);
  });
  test('shows an imbalance of a ten-thousandth', () => {
    const section = figures.sectionArea_mm2 * 1.0001;
    expect(booksBalance({ ...figures, sectionArea_mm2: section })).toBe(false);
  });
});
