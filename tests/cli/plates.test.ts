// The Ring and the NIST plate through the command line, as files. Sources: the Ring is computed by hand from circles
// and rectangles (0.1 %, areas 0.05 %); the NIST plate is AM-Bench AMB2018-01, Heigel et al. (2020), J. Res. NIST
// 125:125005, doi 10.6028/jres.125.005, its zones derived from the published outlines.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readText, reportAt } from '../../src/cli/analyse';
import { refusal } from '../../src/cli/output';
import type { Report } from '../../src/export/report';
import { readLayout } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';

const example = (file: string): string =>
  fileURLToPath(new URL(`../../shared/examples/${file}`, import.meta.url));

/** A process of its own takes a second or two, more on a busy machine. */
const PROCESS = { timeout: 60_000 };

/** The report as the terminal prints it, from a process of its own. */
function analysed(file: string, ...more: string[]): Report {
  const run = spawnSync('npm', ['run', '--silent', 'analyse', '--', example(file), ...more], {
    encoding: 'utf8',
  });
  if (run.status !== 0 || run.stderr !== '') throw new Error(`exit ${run.status}: ${run.stderr}`);
  return JSON.parse(run.stdout) as Report;
}
/** The same without a new process; a layout is read once. */
const layouts = new Map<string, Layout>();
function layoutOf(file: string): Layout {
  const known = layouts.get(file);
  if (known) return known;
  const text = readText(example(file));
  const read = text.ok ? readLayout(text.value) : text;
  if (!read.ok) throw new Error(read.fault.code);
  layouts.set(file, read.value);
  return read.value;
}
function quick(file: string, height_mm: number | null = null): Report {
  const made = reportAt(layoutOf(file), height_mm);
  if (!made.ok) throw new Error(made.fault.code);
  return made.value;
}
/** Relative deviations; a value of 0 has to be met to 1e-9. */
const off = (found: readonly number[], expected: readonly number[]): number =>
  Math.max(
    ...expected.map((value, i) => Math.abs((found[i] ?? NaN) - value) / (value === 0 ? 1 : Math.abs(value))),
  );
const areas = (report: Report): number[] => report.lasers.map((laser) => laser.scanArea_mm2);

/** Σ scan areas − double exposure + unassigned = section area. */
function bookKeeping({ lasers, layer }: Report): number {
  const scanned = lasers.reduce((sum, laser) => sum + laser.scanArea_mm2, 0);
  const books = scanned - layer.doubleExposed_mm2 + layer.unassigned_mm2;
  return Math.abs(books - layer.sectionArea_mm2) / layer.sectionArea_mm2;
}

describe('the Ring plate', () => {
  test('quadrants: areas, times, imbalance, seams and the build', PROCESS, () => {
    const report = analysed('ring.json', '--height', '60');
    const { layer, build, lasers } = report;
    expect(off(areas(report), [7961.73, 7961.73, 7961.73, 7161.73])).toBeLessThan(5e-4);
    expect(
      off([layer.exposure_s, layer.time_s, lasers[3]?.idle_s ?? NaN], [70.546, 80.546, 7.053]),
    ).toBeLessThan(1e-3);
    expect(layer.imbalanceArea_pct).toBeCloseTo(2.58, 2);
    expect(layer.imbalanceTime_pct).toBeCloseTo(2.56, 2);
    expect(layer.seams).toMatchObject({ count: 4, cutParts: 1, witnessLines: 8 });
    expect(off([layer.seams.length_mm, build.time_h], [120, 44.748])).toBeLessThan(1e-3);
    expect(build.layers).toBe(2000);
    expect(layer.height_mm).toBeCloseTo(60.03, 9);
    expect(bookKeeping(report)).toBeLessThan(1e-6);
    expect(report.problems).toEqual([]);
  });

  test('strips at 100, 200 and 300 mm from the left edge', PROCESS, () => {
    const report = analysed('ring-strips.json');
    const { layer, build } = report;
    expect(off(areas(report), [9143.08, 6780.37, 6780.37, 8343.08])).toBeLessThan(5e-4);
    expect(
      off([layer.exposure_s, layer.seams.length_mm, build.time_h], [81.098, 241.88, 50.61]),
    ).toBeLessThan(1e-3);
    expect(layer.imbalanceArea_pct).toBeCloseTo(17.8, 1);
    expect(layer.imbalanceTime_pct).toBeCloseTo(17.89, 1);
    expect(layer.seams.count).toBe(6);
    expect(layer.height_mm).toBeCloseTo(0.03, 9);
    expect(bookKeeping(report)).toBeLessThan(1e-6);
  });
});

describe('the NIST plate', () => {
  test('quadrants on the bridge layer at z = 10 mm', PROCESS, () => {
    const report = analysed('nist-plate.json', '--height', '10');
    expect(off(areas(report), [285.1, 452.4, 294.6, 442.9])).toBeLessThan(5e-4);
    expect(report.layer.imbalanceArea_pct).toBeCloseTo(22.6847, 3);
    expect(report.layer.height_mm).toBeCloseTo(10.01, 9);
    expect(bookKeeping(report)).toBeLessThan(1e-6);
  });

  test('four strips side by side at z = 10 mm', PROCESS, () => {
    const report = analysed('nist-strips-x.json', '--height', '10');
    expect(off(areas(report), [79.7, 500, 500, 395.3])).toBeLessThan(5e-4);
    expect(report.layer.imbalanceArea_pct).toBeCloseTo(35.5932, 3);
  });

  test('four strips one behind the other at z = 10 mm are in balance', PROCESS, () => {
    const report = analysed('nist-strips-y.json', '--height', '10');
    expect(off(areas(report), [368.75, 368.75, 368.75, 368.75])).toBeLessThan(5e-4);
    expect(report.layer.imbalanceArea_pct).toBeCloseTo(0, 6);
    expect(report.layer.seams.count).toBe(0);
  });

  // The part of one laser in a leg layer: 248.75 mm² at 0.1 mm and 800 mm/s are 3.1094 s; 637 vectors at the recorded
  // mean gap of 1.569 ms are 0.9995 s; contours of 4 × 20, 4 × 11, 4 × 15 and 45.07 mm at 900 mm/s.
  test('a leg layer of one part takes the time that its published numbers give', () => {
    const { lasers, layer, build } = quick('nist-strips-y.json');
    const contours = (4 * 20 + 4 * 11 + 4 * 15 + 45.07) / 900;
    expect(
      off(
        lasers.map((laser) => laser.load_s),
        Array(4).fill(3.1094 + 0.9995 + contours),
      ),
    ).toBeLessThan(1e-3);
    expect(off([layer.sectionArea_mm2], [4 * 248.75])).toBeLessThan(1e-6);
    expect(build.layers).toBe(625);
    const volume = Object.values(build.scanVolume_cm3).reduce((sum, cm3) => sum + cm3, 0);
    expect(off([volume], [(4 * 3732.5) / 1000])).toBeLessThan(1e-6);
  });
});

// The layer k with (k−1)·t ≤ z < k·t, t = 0.02 mm; the top belongs to the last one.
describe('which layer a height means', () => {
  test.each<[number, number, number]>([
    [0, 0.01, 4 * 248.75],
    [0.02, 0.03, 4 * 248.75],
    [4.999, 4.99, 4 * 248.75],
    [5, 5.01, 4 * (248.75 + 60 * 0.01)],
    [6, 6.01, 4 * (248.75 + 60 * 1.01)],
    [7, 7.01, 4 * 368.75],
    [12, 12.01, 4 * 55],
    [12.5, 12.49, 4 * 55],
  ])('%d is cut at %d mm', (height, middle, area) => {
    const { layer } = quick('nist-plate.json', height);
    expect(layer.height_mm).toBeCloseTo(middle, 9);
    expect(off([layer.sectionArea_mm2], [area])).toBeLessThan(1e-6);
  });

  test.each([-0.01, 12.51, 1000])('%d lies outside the build', (height) => {
    const made = reportAt(layoutOf('nist-plate.json'), height);
    const said = made.ok ? { exitCode: 0, text: '' } : refusal(made.fault);
    expect(said.exitCode).toBe(2);
    expect(said.text).toMatch(/^[^\n]*12\.5 mm[^\n]*\n$/);
  });
});
