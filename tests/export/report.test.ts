// The report has exactly the keys of its format, and what a plate of known figures has to say in them. Sources of the
// figures: circles and rectangles by hand [mathematics]; downwind of two equal loads in line 2b/w − (b/w)²
// [mathematics]; twelve fins and a block, computed by hand with the mean number of lines P/(π·h) (Cauchy-Crofton).
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse, layerAtHeight } from '../../src/build/analyse';
import { report, type Report } from '../../src/export/report';
import { emptyLayout } from '../../src/layout/defaults';
import { readLayout } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';

const open = (file: string): Layout => {
  const result = readLayout(readFileSync(new URL(`../../shared/examples/${file}`, import.meta.url), 'utf8'));
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
};
function reportOf(layout: Layout, height_mm = 0): Report {
  const analysis = analyse(layout);
  const at = layerAtHeight(analysis, height_mm);
  if (!at) throw new Error('outside the build');
  return report(analysis, at.figures, at.height_mm);
}

/** The keys of the format, in order; events come with a schedule only. */
const KEYS = {
  root: ['format', 'version', 'layout', 'lasers', 'layer', 'build', 'problems'],
  laser: ['id', 'on', 'scanArea_mm2', 'outline_mm', 'pieces', 'load_s', 'idle_s', 'downwind_plumes'],
  layer: [
    'height_mm',
    'sectionArea_mm2',
    'unassigned_mm2',
    'doubleExposed_mm2',
    'exposure_s',
    'time_s',
    'imbalanceTime_pct',
    'imbalanceArea_pct',
    'bestPossible_s',
    'bestSetBy',
    'seams',
  ],
  seams: ['count', 'length_mm', 'cutParts', 'witnessLines'],
  build: [
    'layers',
    'time_h',
    'exposure_h',
    'recoat_h',
    'heldByMinLayer_h',
    'imbalance_pct',
    'idle_laserH',
    'load_laserH',
    'dose_l',
    'overflow_l',
    'scanVolume_cm3',
  ],
};

describe('the form', () => {
  test.each(['demo.json', 'mushroom.json', 'whole-parts.json'])(
    '%s gives exactly the keys of the format',
    (file) => {
      const made = reportOf(open(file));
      expect(Object.keys(made)).toEqual(KEYS.root);
      expect(made.format).toBe('evenplate-report');
      expect(made.version).toBe(1);
      expect(Object.keys(made.lasers[0] ?? {})).toEqual(KEYS.laser);
      expect(Object.keys(made.layer)).toEqual(KEYS.layer);
      expect(Object.keys(made.layer.seams)).toEqual(KEYS.seams);
      expect(Object.keys(made.build)).toEqual(KEYS.build);
    },
  );

  test('every figure is a finite number, so the JSON holds no null', () => {
    const texts = ['demo.json', 'mushroom.json'].map((file) => JSON.stringify(reportOf(open(file))));
    expect(texts.join()).not.toMatch(/null|undefined/);
  });
});

describe('plates whose figures are known', () => {
  test('the demo plate has no problem and its books are in order at every stretch', () => {
    const layout = open('demo.json');
    const errors = [0, 5, 6, 8, 12, 18, 25, 30, 34, 48, 65, 90].map((z) => {
      const { lasers, layer } = reportOf(layout, z);
      const books = lasers.reduce((sum, laser) => sum + laser.scanArea_mm2, 0) - layer.doubleExposed_mm2;
      return Math.abs(books + layer.unassigned_mm2 - layer.sectionArea_mm2) / layer.sectionArea_mm2;
    });
    expect(Math.max(...errors)).toBeLessThan(1e-6);
    expect(reportOf(layout).problems).toEqual([]);
  });

  test('the cap of the mushroom collides with the neighbour of its stem', () => {
    const { problems, layer } = reportOf(open('mushroom.json'), 60);
    expect(layer.sectionArea_mm2).toBeCloseTo(Math.PI * 50 ** 2, 0);
    expect(problems.map((problem) => problem.part)).toContain('Mushroom');
    expect(problems.every((problem) => problem.text.length > 10)).toBe(true);
  });

  test('twelve fins cost more than a block of the same area', () => {
    const { lasers } = reportOf(open('thin-walls.json'));
    expect(lasers.map((laser) => laser.scanArea_mm2)).toEqual([
      expect.closeTo(1200, 3),
      expect.closeTo(1200, 3),
    ]);
    expect(lasers[0]?.load_s).toBeCloseTo(17.85, 2);
    expect(lasers[1]?.load_s).toBeCloseTo(10.91, 2);
  });

  test('the laser downwind has 2b/w − (b/w)² plumes over its beam, the other none', () => {
    const { lasers } = reportOf(open('downwind.json'));
    const expected = (2 * 10) / 160 - (10 / 160) ** 2;
    expect(Math.abs((lasers[0]?.downwind_plumes ?? NaN) - expected)).toBeLessThan(1e-3);
    expect(lasers[1]?.downwind_plumes).toBe(0);
  });

  test('nine whole parts reach the optimum of Graham’s family: 12 units of 100 mm²', () => {
    const { lasers, layer } = reportOf(open('whole-parts.json'));
    expect(lasers.map((laser) => Math.round(laser.scanArea_mm2))).toEqual([1200, 1200, 1200, 1200]);
    expect(layer.exposure_s).toBeCloseTo(1200 / (0.1 * 1200), 6);
  });
});

test('an empty plate has a report of zeros', () => {
  const { layer, build, lasers } = reportOf(emptyLayout());
  expect([
    layer.sectionArea_mm2,
    layer.exposure_s,
    layer.imbalanceTime_pct,
    build.layers,
    build.time_h,
  ]).toEqual([0, 0, 0, 0, 0]);
  expect(lasers.map((laser) => laser.load_s)).toEqual([0, 0, 0, 0]);
  expect(layer.bestSetBy).toEqual(['L1']);
});
