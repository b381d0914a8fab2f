/** Words for those who hear the page. Expected figures: places and halves of squares, by hand [mathematics]. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { layerFiguresAt } from '../../src/canvas/layerAt';
import type { Layout } from '../../src/layout/types';
import { newsOf } from '../../src/panels/spoken/news';
import { lineText, partTexts, zoneTexts } from '../../src/panels/spoken/spokenText';
import { createWorkbench } from '../../src/store/workbench';
import { smallPlate } from '../store/plates';

/** P01 20 × 20 a quarter right of the line between L1 and L2, without a shared band. */
const plate = (): Layout => {
  const small = smallPlate();
  const [first, ...rest] = small.parts;
  return {
    ...small,
    zoning: [
      {
        from_mm: 0,
        zoning: { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: 0, lasers: ['L1', 'L2', 'L3', 'L4'] },
      },
    ],
    parts: [{ ...first!, at_mm: [-5, -60.5] }, ...rest],
  };
};
const figures = (layout: Layout) => layerFiguresAt(analyse(layout), 1);

describe('a part', () => {
  test('has its name, its place and who exposes how much of it', () => {
    const layout = plate();
    expect(partTexts(layout, figures(layout))[0]).toBe('P01, x −5 mm, y −60.5 mm, 75 % on L1, 25 % on L2');
    expect(partTexts(layout, figures(layout))[1]).toBe('P02, x 60 mm, y −60 mm, 100 % on L2');
  });
  test('says its turn, and that it has no section where it has none', () => {
    const layout = plate();
    const turned = { ...layout, parts: layout.parts.map((part) => ({ ...part, turn_deg: 90 })) };
    expect(partTexts(turned, null)[1]).toBe('P02, x 60 mm, y −60 mm, turned 90°, no section at this height');
  });
});
test('a laser says what it exposes in the layer, and that it is off', () => {
  const layout = plate();
  const off = {
    ...layout,
    machine: {
      ...layout.machine,
      lasers: layout.machine.lasers.map((laser, i) => ({ ...laser, on: i !== 2 })),
    },
  };
  // 300 of 400 mm²; 100 + 400; off; none
  expect(zoneTexts(off, figures(off)).slice(0, 3)).toEqual([
    'L1: 1 part, section 300 mm²',
    'L2: 2 parts, section 500 mm²',
    'L3: off',
  ]);
});
test('a zone line has its number and its place', () => {
  const [{ zoning }] = plate().zoning as [Layout['zoning'][number]];
  expect(lineText(zoning, 1)).toBe('Zone line 2 of 2, y 0 mm');
  expect(lineText({ strategy: 'wholeField' }, 0)).toBe('');
});

describe('news', () => {
  const work = () => createWorkbench({ layout: plate(), analyse });
  const after = (change: (bench: ReturnType<typeof work>) => void) => {
    const bench = work();
    bench.setView({ height_mm: 1, selection: ['P02'] });
    const before = bench.store.getState();
    change(bench);
    return newsOf(bench, before);
  };
  const moved = (id: string) => (bench: ReturnType<typeof work>) =>
    bench.change('Move', (layout) => ({
      ...layout,
      parts: layout.parts.map((part) => (part.id === id ? { ...part, at_mm: [70, -60] as const } : part)),
    }));

  test('a selected part that was moved is told by its new place', () => {
    expect(after(moved('P02'))).toBe('P02, x 70 mm, y −60 mm, 100 % on L2');
  });
  test('hovering, and parts that are not selected, are none', () => {
    expect(after((bench) => bench.setView({ hover: { kind: 'part', part: 'P01' } }))).toBeNull();
    expect(after(moved('P03'))).toBeNull();
  });
  test('a selection is told, its size where it holds several, and that it is gone', () => {
    expect(after((bench) => bench.setView({ selection: ['P02', 'P01'] }))).toMatch(
      /^2 parts selected; P01, /,
    );
    expect(after((bench) => bench.setView({ selection: [] }))).toBe('Nothing is selected');
  });
  test('a message is told with what to do about it', () => {
    expect(after((bench) => bench.notify({ code: 'work-not-saved-full', params: {} }))).toMatch(
      /storage is full.*Save the layout as a file/,
    );
  });
});

describe('the one polite region', () => {
  // an output element, and these roles, are polite regions without saying so (WAI-ARIA 1.2, HTML-AAM [memory])
  const POLITE = /aria-live|<output\b|role="(?:status|log|timer|marquee)"/;
  const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.tsx'),
  );
  test('is the only element that is spoken of by itself', () => {
    expect(files.length).toBeGreaterThan(100);
    const polite = files.filter((name) => POLITE.test(readFileSync(`src/${name}`, 'utf8')));
    expect(polite).toEqual(['panels/spoken/Spoken.tsx']);
  });
});
