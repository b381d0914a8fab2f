/**
 * `npm run bench:browser`: the built page in a real Chromium. Drags one of 100 parts across its neighbours and says how
 * long frames and tasks took; says how many bytes a first visit loads. Leaves with 1 where a limit is missed.
 */
import { chromium } from '@playwright/test';
import { fitCamera, toScreen } from '../../src/canvas/camera';
import { writeLayout } from '../../src/layout/write';
import { LAYOUT_KEY } from '../../src/store/savedForm';
import { findChromium, LAUNCH_ARGS } from '../findChromium.mjs';
import { servePage } from '../servePage.mjs';
import { firstLoad, type LoadedFile } from './firstLoad';
import { measureDrag, type DragFigures } from './frames';
import { benchLayout, PLATFORM_MM } from './plate';
import { ms, table } from './table';

const SEED = 20_261_125;
const MOVES = 240;
const LONG_TASK_MS = 50;
const FIRST_LOAD_KB = 250;
const FIGURE = 'layer-time';
const DRAGGED = 44;
const REST_MS = 1000;

const percentile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? NaN;

const executablePath = findChromium();
const served = await servePage();
const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });

const drag = async (): Promise<DragFigures> => {
  const layout = benchLayout(SEED);
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(([key, text]) => localStorage.setItem(key, text), [
    LAYOUT_KEY,
    writeLayout(layout),
  ] as const);
  await page.goto(served.url);
  await page.getByTestId(FIGURE).waitFor();
  // the parts of the page that come after the plate have come, and their first work is done: what follows is the drag
  await page.locator('main[data-keys]').waitFor();
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(REST_MS);
  const box = await page.getByTestId('plan').boundingBox();
  if (box === null) throw new Error('the plan is not on the page');
  const camera = fitCamera(PLATFORM_MM, PLATFORM_MM, box);
  const at = (x: number, y: number): [number, number] => {
    const { left, top } = toScreen({ x, y }, camera, box);
    return [box.x + left, box.y + top];
  };
  const [x, y] = layout.parts[DRAGGED]!.at_mm;
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

const figures = await drag();
const files = await firstLoad(browser, served.url, FIGURE);
const total = (list: readonly LoadedFile[]): number => list.reduce((sum, { gzipped }) => sum + gzipped, 0);
const bytes = total(files.filter(({ needed }) => needed));
const version = browser.version();
await browser.close();
await served.close();

const { frames_ms, longTasks_ms, together, canvasAlone, readoutAlone } = figures;
const longest = Math.max(0, ...longTasks_ms);
console.log(`Chromium ${version}, ${frames_ms.length} frames, ${MOVES} moves of the mouse`);
console.log(
  table(
    ['drag of one of 100 parts', 'measured', 'wanted'],
    [
      ['frame, median', ms(percentile(frames_ms, 0.5)), ''],
      ['frame, p95', ms(percentile(frames_ms, 0.95)), ''],
      ['frame, longest', ms(Math.max(...frames_ms)), ''],
      ['long tasks', `${longTasks_ms.length}, longest ${ms(longest)}`, `none over ${LONG_TASK_MS} ms`],
      ['frames in which canvas and readout changed', String(together), ''],
      ['frames in which only the canvas changed', String(canvasAlone), ''],
      ['frames in which only the readout changed (without plumes)', String(readoutAlone), 'none'],
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
    ],
  ),
);
process.exit(
  together > 0 && readoutAlone === 0 && longest <= LONG_TASK_MS && bytes <= FIRST_LOAD_KB * 1000 ? 0 : 1,
);
