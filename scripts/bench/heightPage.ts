/**
 * `npm run bench:height:page`: both high bench plates in a real Chromium, the one of spares and the one where every part fills the
 * whole height with layers of which no two are alike. Opens it, waits until the whole height is known, then gives parts
 * new places by the number field and says how long the readout takes until it stands for the whole height again: moved
 * inside a zone, and on to a zone line. Seconds on this machine.
 */
import { writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { DEFAULT_MACHINE } from '../../src/layout/defaults';
import type { Layout, Zoning } from '../../src/layout/types';
import { writeLayout } from '../../src/layout/write';
import { findChromium, LAUNCH_ARGS } from '../findChromium.mjs';
import { servePage } from '../servePage.mjs';
import { highLayout } from './highPlate';
import { sparesLayout } from './sparesPlate';
import { table } from './table';

const SEED = 20_261_125;
const SIDE_mm = 400;
/** Of each of a section's two outlines: such a plate still fits a layout file. */
const POINTS = 64;
const MOVES = 6;
const INSIDE_mm = 0.5;
const OPENED_MS = 30_000;
/** A move that changes no figure may change nothing in the view: then there is nothing to time. */
const UNSEEN_MS = 30_000;
const FIRST_TIME_MS = 180_000;
const LASERS = ['L1', 'L2', 'L3', 'L4'];
const ZONINGS: readonly (readonly [string, Zoning])[] = [
  ['quadrants, band of 20 mm', { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: 20, lasers: LASERS }],
  [
    'four strips, band of 20 mm',
    { strategy: 'strips', run_deg: 90, lines_mm: [-85, 0, 85], sharedBand_mm: 20, lasers: LASERS },
  ],
];

const seen = (values: readonly number[]): number[] =>
  values.filter(Number.isFinite).toSorted((a, b) => a - b);
const median = (values: readonly number[]): number => seen(values)[seen(values).length >> 1] ?? NaN;

/** Types a place into the selected part's x field and waits for the whole height; seconds, NaN where no change was seen. */
async function move(page: Page, x: number): Promise<number> {
  await page.getByTestId('part-x').fill(x.toFixed(3));
  await page.evaluate((unseenMs) => {
    const view = document.querySelector('[data-testid=times-view]')!;
    const kept = window as unknown as { followed: Promise<number> };
    kept.followed = new Promise((resolve) => {
      let began = NaN;
      // no function here may have a name: what the compiler writes beside a named one is not known in the page
      const once = { once: true, capture: true };
      addEventListener(
        'keydown',
        () => {
          began = performance.now();
          setTimeout(() => resolve(NaN), unseenMs);
        },
        once,
      );
      // the view may follow later than the answer comes: it then passes from one whole height to the next
      new MutationObserver((_, watch) => {
        if (Number.isNaN(began) || view.getAttribute('data-whole') !== 'present') return;
        watch.disconnect();
        resolve((performance.now() - began) / 1000);
      }).observe(view, { attributes: true, childList: true, characterData: true, subtree: true });
    });
  }, UNSEEN_MS);
  await page.getByTestId('part-x').press('Enter');
  return page.evaluate(() => (window as unknown as { followed: Promise<number> }).followed);
}

const untilWhole = (page: Page, timeout: number) =>
  page.locator('[data-testid=times-view][data-whole=present]').waitFor({ timeout });

async function measure(page: Page, layout: Layout, folder: string) {
  const file = join(folder, 'plate.json');
  writeFileSync(file, JSON.stringify(JSON.parse(writeLayout(layout))));
  await untilWhole(page, OPENED_MS);
  const chooser = page.waitForEvent('filechooser');
  await page.keyboard.press('Control+o');
  await (await chooser).setFiles(file);
  await page.locator('[data-part="P40"]').waitFor({ timeout: OPENED_MS });
  const began = performance.now();
  await untilWhole(page, FIRST_TIME_MS);
  const first = (performance.now() - began) / 1000;
  const [inside, onLine]: [number[], number[]] = [[], []];
  for (let i = 0; i < MOVES; i++) {
    const part = layout.parts[(i * 7) % layout.parts.length]!;
    await page.locator(`[data-part="${part.id}"]`).click();
    // what follows the figures (problems, checksum) is done
    await page.waitForTimeout(4000);
    inside.push(await move(page, part.at_mm[0] + INSIDE_mm));
    onLine.push(await move(page, 0));
    await move(page, part.at_mm[0]);
  }
  return { first, inside, onLine };
}

const served = await servePage();
const folder = await mkdtemp(join(tmpdir(), 'evenplate-'));
const browser = await chromium.launch({ executablePath: findChromium(), args: LAUNCH_ARGS });
const PLATES: readonly (readonly [string, Layout])[] = [
  ['spares', sparesLayout(SEED)],
  ['all full height', highLayout(SEED, POINTS)],
];
const machine = {
  ...DEFAULT_MACHINE,
  platform: { ...DEFAULT_MACHINE.platform, width_mm: SIDE_mm, depth_mm: SIDE_mm },
};
const rows: string[][] = [];
const seconds = (value: number): string => `${value.toFixed(value < 10 ? 2 : 0)} s`;
const spread = (values: readonly number[]): string =>
  `${seconds(median(values))} (${seconds(Math.min(...seen(values)))} to ${seconds(Math.max(...seen(values)))})`;
for (const [plate, base] of PLATES)
  for (const [name, zoning] of ZONINGS) {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    // from the beginning, so that no file dialog opens before it is listened for
    page.on('filechooser', () => undefined);
    await page.goto(served.url);
    await page.locator('main[data-keys]').waitFor();
    const found = await measure(page, { ...base, machine, zoning: [{ from_mm: 0, zoning }] }, folder);
    rows.push([`${plate}: ${name}`, seconds(found.first), spread(found.inside), spread(found.onLine)]);
    console.error(rows.at(-1)?.join('  '));
    await page.close();
  }
await browser.close();
await served.close();
await rm(folder, { recursive: true });
console.log(`Chromium, ${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)}; 40 parts, 3,000 layers\n`);
console.log(
  table(['whole height in the page', 'first time', 'moved inside its zone', 'moved on to a line'], rows),
);
