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
import { books, BOOKS_TOLERANCE } from '../../src/build/books';
import { downwindPlumes } from '../../src/build/downwind';
import { bareArea, barePlumes, bareSeconds } from '../../src/panels/readout/cellNumbers';
import { shownNumber } from '../../src/panels/readout/sumTable';

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
    ...['laser', 'load', 'area', 'idle', 'pieces', 'plumes'].map((kind) => `${kind}-L1`),
  ] as FigureName[];
  test.each(names)('%s says what it means, by which formula, with numbers', (name) => {
    const said = explain(name, analysis, figures);
    expect(said?.meaning.length).toBeGreaterThan(20);
    expect(said?.formula).not.toBe('');
    const { rows = [], total = null } = said?.table ?? {};
    const lines = [
      ...(said?.numbers ?? []),
      ...[...rows, ...(total === null ? [] : [total])].map((row) => `${row.label} ${row.value}`),
    ];
    expect(lines.join(' ')).toMatch(/\d/);
    expect(lines.join(' ')).not.toMatch(/NaN|undefined|null|Infinity/);
  });
  test.each(names)('the rows of %s add up to its total as they stand on the screen', (name) => {
    const table = explain(name, analysis, figures)?.table;
    if (table === undefined || table.total === null || table.total.value === '') return;
    const sum = table.rows.reduce((all, row) => all + Number(row.value), 0);
    expect(sum).toBeCloseTo(shownNumber(table.total.value), 6);
  });
  const cells = lasers.flatMap(([id, laser]) => {
    const own = figures.lasers[laser]!;
    const rows = [
      [`load-${id}`, bareSeconds(own.load_s)],
      [`area-${id}`, bareArea(own.scanArea_mm2)],
      [`idle-${id}`, bareSeconds(own.idle_s)],
      [`plumes-${id}`, barePlumes(downwindPlumes(analysis, figures)[laser]!)],
    ] as const;
    return rows.map(([name, cell]) => [name, cell] as const);
  });
  test.each(cells)('%s ends with the number in the table, %s', (name, cell) => {
    const said = explain(name as FigureName, analysis, figures);
    const last = said?.table?.total?.value ?? said?.numbers.at(-1)?.split(' = ').at(-1) ?? '';
    expect(shownNumber(last)).toBe(shownNumber(cell));
  });
  test('the time of all eleven stretches is told: the biggest seven and the rest in one line', () => {
    const rows = explain('build-hours', analysis, figures)?.table?.rows ?? [];
    expect(analysis.stretches).toHaveLength(11);
    expect(rows).toHaveLength(8);
    expect(rows.at(-1)?.label).toBe('4 more stretches');
  });
  test('the number of vectors has its own formula with numbers', () => {
    const said = explain('load-L1', analysis, figures)?.numbers.join(' ') ?? '';
    expect(said).toMatch(/n = A\/\(s·h\) \+ \(P\+S\)\/\(π·h\) = \d.* = \d+ vectors/);
  });
  test('nothing is said about a laser that the machine does not have', () => {
    expect(explain('load-L9', analysis, figures)).toBeNull();
  });
});

describe('the book-keeping line', () => {
  test('balances on the demo plate', () => {
    expect(books(figures).error).toBeLessThanOrEqual(BOOKS_TOLERANCE);
  });
  test('shows an imbalance of a ten-thousandth', () => {
    const section = figures.sectionArea_mm2 * 1.0001;
    expect(books({ ...figures, sectionArea_mm2: section }).error).toBeGreaterThan(BOOKS_TOLERANCE);
  });
});
