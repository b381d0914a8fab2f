/**
 * `npm run bench:mesh`: a mesh of 200,000 triangles at 2,000 layers. First the engine alone in Node (median of five runs, and
 * the volume of the slabs against that of the mesh), then the built page in a real Chromium: seconds from the file to the
 * check page, to the sections and to the part on the plate, the longest task of the page meanwhile, and the memory its
 * process took at most. Leaves with 1 where fewer layers came out or the slabs miss the mesh's volume by 0.1 % and more.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { chromium, type Browser, type Page } from '@playwright/test';
import { checkMesh, orient, readMesh, sectionMesh, type MeshSections } from '../../src/import/mesh';
import type { Result } from '../../src/layout/result';
import { packShape, unpackShape } from '../../src/worker/packShape';
import { findChromium, LAUNCH_ARGS } from '../findChromium.mjs';
import { servePage } from '../servePage.mjs';
import { benchMesh, HEIGHT_MM, TRIANGLES } from './benchMesh';
import { ms, table } from './table';

const SEED = 20_261_125;
const RUNS = 5;
/** As the demo plate has it. */
const LAYER_MM = 0.05;
const LAYERS = HEIGHT_MM / LAYER_MM;
const MOST_MISSED = 0.001;
const KB_PER_MB = 1024;

const file = benchMesh(SEED);
const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
};

/** Times of one run, step by step, and what came out. */
function run() {
  const took: Record<string, number> = {};
  const step = <T>(name: string, work: () => T): T => {
    const began = performance.now();
    const result = work();
    took[name] = performance.now() - began;
    return result;
  };
  const mesh = step('read the file', () => value(readMesh(file, 'boss.stl'))).bodies[0]!.mesh;
  const check = step('check it', () => checkMesh(mesh, 0.01));
  const turned = step('set it down', () => orient(mesh));
  const cut = step('cut it', () => value(sectionMesh(turned, { layer_mm: LAYER_MM, chainGap_mm: 0.01 })));
  const packed = step('pack the slabs', () => packShape({ slabs: cut.slabs }));
  step('unpack them', () => unpackShape(packed));
  return { took, cut, volume: check.volume_mm3! };
}
const runs = Array.from({ length: RUNS }, run);
const median = (name: string): number =>
  runs.map(({ took }) => took[name]!).toSorted((a, b) => a - b)[Math.floor(RUNS / 2)]!;

const pointsOf = ({ slabs }: MeshSections): number =>
  slabs.reduce(
    (sum, { rings }) => sum + rings.reduce((all, ring) => all + ('length' in ring ? ring.length : 1), 0),
    0,
  );

/** Begins to note the tasks of the page that took longer than 50 ms. */
const noteTasks = (): void => {
  const noted: number[] = [];
  Object.assign(globalThis, { noted });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) noted.push(duration);
  }).observe({ type: 'longtask' });
};
const tasksSince = (page: Page): Promise<number[]> =>
  page.evaluate(() => (globalThis as unknown as { noted: number[] }).noted.splice(0));

/** Largest resident memory of the page's process so far, its workers included; null where the system does not tell. */
async function peakMemory(browser: Browser): Promise<number | null> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const peaks = processInfo
    .filter(({ type }) => type === 'renderer')
    .map(({ id }) => {
      try {
        return Number(/VmHWM:\s*(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? NaN);
      } catch {
        return NaN;
      }
    });
  const peak = Math.max(...peaks);
  return Number.isFinite(peak) ? peak / KB_PER_MB : null;
}

interface Stage {
  readonly name: string;
  readonly seconds: number;
  readonly longest_ms: number;
}

async function inBrowser(): Promise<{
  stages: Stage[];
  before: number | null;
  after: number | null;
  version: string;
}> {
  const path = join(mkdtempSync(join(tmpdir(), 'evenplate-')), 'boss.stl');
  writeFileSync(path, file);
  const served = await servePage();
  const browser = await chromium.launch({ executablePath: findChromium(), args: LAUNCH_ARGS });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  page.on('filechooser', () => undefined);
  await page.goto(served.url);
  await page.locator('main[data-keys]').waitFor();
  await page.waitForTimeout(2000);
  // tsx names inner functions by a helper of its own, which the page does not have
  await page.evaluate('globalThis.__name ??= (named) => named');
  await page.evaluate(noteTasks);
  const before = await peakMemory(browser);
  const stages: Stage[] = [];
  const stage = async (name: string, act: () => Promise<void>, rest_ms = 0): Promise<void> => {
    const began = performance.now();
    await act();
    const seconds = (performance.now() - began) / 1000;
    await page.waitForTimeout(rest_ms);
    stages.push({ name, seconds, longest_ms: Math.max(0, ...(await tasksSince(page))) });
  };
  await stage('from the file to the check page with its pictures', async () => {
    const chooser = page.waitForEvent('filechooser');
    await page.keyboard.press('i');
    await (await chooser).setFiles(path);
    await page.getByTestId('mesh-size').waitFor({ timeout: 60_000 });
  });
  await stage('turned by 90° and drawn anew', async () => {
    const size = page.getByTestId('mesh-size');
    const text = await size.innerText();
    await page.getByTestId('mesh-turn-x+').click();
    await page.waitForFunction(
      (was) => document.querySelector('[data-testid=mesh-size]')?.textContent !== was,
      text,
    );
    await page.getByTestId('mesh-turn-x-').click();
    await page.waitForFunction(
      (was) => document.querySelector('[data-testid=mesh-size]')?.textContent === was,
      text,
    );
  });
  await stage(`cut into ${LAYERS} layers`, async () => {
    await page.getByTestId('mesh-cut').click();
    await page.getByTestId('mesh-place').waitFor({ timeout: 120_000 });
  });
  const parts = await page.locator('[data-part]').count();
  await stage(
    'on the plate; tasks of the next six seconds',
    async () => {
      await page.getByTestId('mesh-place').click();
      await page.locator('[data-part]').nth(parts).waitFor();
    },
    6000,
  );
  const after = await peakMemory(browser);
  const version = browser.version();
  await browser.close();
  await served.close();
  rmSync(dirname(path), { recursive: true });
  return { stages, before, after, version };
}

const { cut, volume } = runs[0]!;
const missed = Math.abs(cut.volume_mm3 / volume - 1);
console.log(
  `${TRIANGLES} triangles, ${cut.layers} layers, ${cut.slabs.length} slabs of ${pointsOf(cut)} points; slabs miss the volume by ${(100 * missed).toPrecision(2)} %`,
);
console.log(
  table(
    ['the engine in Node, median of five', ''],
    Object.keys(runs[0]!.took).map((name) => [name, ms(median(name))]),
  ),
);
console.log('');
const { stages, before, after, version } = await inBrowser();
console.log(
  table(
    [`the page in Chromium ${version}`, 'seconds', 'longest task'],
    stages.map(({ name, seconds, longest_ms }) => [
      name,
      seconds.toFixed(2),
      longest_ms > 0 ? ms(longest_ms) : 'under 50 ms',
    ]),
  ),
);
if (before !== null && after !== null)
  console.log(
    `memory of the page's process at most: ${before.toFixed(0)} MB before, ${after.toFixed(0)} MB after`,
  );
process.exit(cut.layers === LAYERS && missed < MOST_MISSED ? 0 : 1);
