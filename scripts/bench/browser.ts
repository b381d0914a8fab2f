/**
 * `npm run bench:browser`: the built page in a real Chromium. Drags one of 100 parts across its neighbours, with snapping as a
 * visitor finds it and without, and one of 400, and says how long frames and tasks took; says how many bytes a first visit
 * loads, in English and in German. Leaves with 1 where a limit is missed; the limits of a drag hold for 100 parts.
 */
import { chromium } from '@playwright/test';
import { fitCamera, toScreen } from '../../src/canvas/camera';
import { writeLayout } from '../../src/layout/write';
import { LAYOUT_KEY, VIEW_KEY } from '../../src/store/savedForm';
import { findChromium, LAUNCH_ARGS } from '../findChromium.mjs';
import { servePage } from '../servePage.mjs';
import { firstLoad, type LoadedFile } from './firstLoad';
import { measureDrag, type DragFigures } from './frames';
import { benchLayout, largeBenchLayout } from './plate';
import type { Layout } from '../../src/layout/types';
import { ms, table } from './table';

const SEED = 20_261_125;
const MOVES = 240;
const LONG_TASK_MS = 50;
const FIRST_LOAD_KB = 250;
const FIGURE = 'layer-time';
const DRAGGED = 44;
const DRAGGED_OF_400 = 189;
const REST_MS = 1000;

const percentile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? NaN;

const executablePath = findChromium();
const served = await servePage();
const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });

const drag = async (layout: Layout, dragged: number, snapping: boolean): Promise<DragFigures> => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const kept: readonly (readonly [string, string])[] = [
    [LAYOUT_KEY, writeLayout(layout)],
    [VIEW_KEY, JSON.stringify({ snapping })],
  ];
  await page.addInitScript((all) => {
    for (const [key, text] of all) localStorage.setItem(key, text);
  }, kept);
  await page.goto(served.url);
  await page.getByTestId(FIGURE).waitFor();
  // the parts of the page that come after the plate have come, and their first work is done: what follows is the drag
  await page.locator('main[data-keys]').waitFor();
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(REST_MS);
  const box = await page.getByTestId('plan').boundingBox();
  if (box === null) throw new Error('the plan is not on the page');
  const { width_mm, depth_mm } = layout.machine.platform;
  const camera = fitCamera(width_mm, depth_mm, box);
  const at = (x: number, y: number): [number, number] => {
    const { left, top } = toScreen({ x, y }, camera, box);
    return [box.x + left, box.y + top];
  };
  const [x, y] = layout.parts[dragged]!.at_mm;
  const grip: [number, number] = [x + 8, y + 5];
  const figures = await measureDrag(
    page,
    '[aria-label="Readout"]',
    at(...grip),
    at(grip[0] + 60, grip[1] + 30),
    MOVES,
  );
  await page.close();
  return figures;
};

const plate = benchLayout(SEED);
const drags: readonly (readonly [string, DragFigures])[] = [
  ['100, snapping', await drag(plate, DRAGGED, true)],
  ['100, free', await drag(plate, DRAGGED, false)],
  ['400, snapping', await drag(largeBenchLayout(SEED), DRAGGED_OF_400, true)],
];
const total = (list: readonly LoadedFile[]): number => list.reduce((sum, { gzipped }) => sum + gzipped, 0);
const neededBytes = (files: readonly LoadedFile[]): number => total(files.filter(({ needed }) => needed));
const files = await firstLoad(browser, served.url, FIGURE);
const inGerman = neededBytes(await firstLoad(browser, served.url, FIGURE, 'de-DE'));
const bytes = neededBytes(files);
const version = browser.version();
await browser.close();
await served.close();

const longest = ({ longTasks_ms }: DragFigures): number => Math.max(0, ...longTasks_ms);
const row = (name: string, of: (figures: DragFigures) => string, wanted = ''): string[] => [
  name,
  ...drags.map(([, figures]) => of(figures)),
  wanted,
];
console.log(`Chromium ${version}, ${MOVES} moves of the mouse each`);
console.log(
  table(
    ['drag of one part of', ...drags.map(([name]) => name), 'wanted of 100'],
    [
      row('frame, median', ({ frames_ms }) => ms(percentile(frames_ms, 0.5))),
      row('frame, p95', ({ frames_ms }) => ms(percentile(frames_ms, 0.95))),
      row('frame, longest', ({ frames_ms }) => ms(Math.max(...frames_ms))),
      row(
        'long tasks',
        (figures) => `${figures.longTasks_ms.length}, longest ${ms(longest(figures))}`,
        `none over ${LONG_TASK_MS} ms`,
      ),
      row('frames in which canvas and readout changed', ({ together }) => String(together)),
      row('frames in which only the canvas changed', ({ canvasAlone }) => String(canvasAlone)),
      row('only the readout changed (without plumes)', ({ readoutAlone }) => String(readoutAlone), 'none'),
    ],
  ),
);
console.log('');
const kB = (value: number): string => `${(value / 1000).toFixed(1)} kB`;
console.log(
  table(
    ['first load, gzipped', 'needed', 'came after'],
    [
      ...files.map(({ name, gzipped, needed }) =>
        needed ? [name, kB(gzipped), ''] : [name, '', kB(gzipped)],
      ),
      [`all (needed: at most ${FIRST_LOAD_KB} kB)`, kB(bytes), kB(total(files) - bytes)],
      ['all, in German', kB(inGerman), ''],
    ],
  ),
);
const kept = ([, figures]: (typeof drags)[number]): boolean =>
  figures.together > 0 && figures.readoutAlone === 0 && longest(figures) <= LONG_TASK_MS;
const limit = FIRST_LOAD_KB * 1000;
process.exit(drags.slice(0, 2).every(kept) && bytes <= limit && inGerman <= limit ? 0 : 1);
