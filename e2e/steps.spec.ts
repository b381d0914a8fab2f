/**
 * Zones by height in the real page, on Tall one, which was computed by hand: in quadrants 109.113 h; all four lasers sharing
 * the tall part above 60 mm 54.113 h, and as every layer above 60 mm costs the same, halfway for a change at 150 mm.
 */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { checksumNow, chooseFile, expect, figure, focusPlan, openDemo, test, typeInto } from './page';

const QUADRANTS_H = 109.1;
const SHARED_H = 54.11;
const HALFWAY_H = (109.113 + 54.113) / 2;

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await chooseFile(page, () => page.keyboard.press('Control+o'), 'shared/examples/tall-one.json');
  await expect(page.getByTestId('layout-name')).toHaveValue(/Tall one/);
  await page.getByTestId('tab-division').click();
  await expectHours(page, QUADRANTS_H);
});

/** While a high plate is being computed the figure may show no number. */
const expectHours = (page: Page, hours: number) =>
  expect.poll(() => figure(page, 'build-hours').catch(() => NaN)).toBeCloseTo(hours, 1);

/** Whole field from 60 mm on, by keys. */
const shareAbove = async (page: Page): Promise<void> => {
  await typeInto(page, 'height', '60');
  await focusPlan(page);
  await page.keyboard.press('v');
  await expect(page.getByTestId('step-from-1')).toHaveValue('60');
  await page.keyboard.press('r');
  await expectHours(page, SHARED_H);
};

/** Where a height lies in the elevation: the handle of a change stands on it. */
const handleMiddle = async (page: Page, index = 1): Promise<readonly [number, number]> => {
  const box = (await page.getByTestId(`step-handle-${index}`).boundingBox())!;
  return [box.x + box.width / 2, box.y + box.height / 2];
};

test('the whole field from 60 mm on takes half the hours, undo brings them back, redo halves them again', async ({
  page,
}) => {
  await shareAbove(page);
  await expect(page.getByTestId('step-shown')).toHaveText('zones 2 of 2, from 60 mm');
  await expect(page.getByTestId('step-1')).toContainText('60 mm to the top');
  await expect(page.getByTestId('step-1')).toContainText('whole field');
  await expect(page.getByTestId('step-1')).toHaveAttribute('aria-current', 'true');
  await page.keyboard.press('Control+z');
  await expectHours(page, QUADRANTS_H);
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('step-1')).toHaveCount(0);
  await page.keyboard.press('Control+y');
  await page.keyboard.press('Control+y');
  await expectHours(page, SHARED_H);
});

test('the panel leads to each division, moves it by a typed number and takes it away', async ({ page }) => {
  await shareAbove(page);
  await page.getByTestId('step-0').click();
  // layers 1 to 1000: the middle one is the 500th, whose middle is at 29.97 mm
  await expect(page.getByTestId('height')).toHaveValue('29.97');
  await expect(page.getByTestId('step-shown')).toHaveText('zones 1 of 2, from 0 mm');
  await expect(page.getByTestId('crossing-x')).toBeVisible();
  await focusPlan(page);
  await page.keyboard.press('Shift+PageUp');
  await expect(page.getByTestId('step-shown')).toHaveText('zones 2 of 2, from 60 mm');
  await expect(page.getByTestId('crossing-x')).toHaveCount(0);
  await typeInto(page, 'step-from-1', '150');
  await expectHours(page, HALFWAY_H);
  // 2.4 in are 60.96 mm, 1016 layers of 0.06 mm
  await typeInto(page, 'step-from-1', '2.4 in');
  await expect(page.getByTestId('step-from-1')).toHaveValue('60.96');
  await typeInto(page, 'step-from-1', '60,04');
  await expect(page.getByTestId('step-from-1')).toHaveValue('60.06');
  await typeInto(page, 'step-from-1', '0');
  await expect(page.getByTestId('zones-over-height').getByRole('alert')).toContainText('0.06 to 399.96');
  await page.getByTestId('step-from-1').press('Escape');
  await page.getByTestId('step-remove-1').click();
  await expectHours(page, QUADRANTS_H);
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('step-from-1')).toHaveValue('60.06');
});

test('the whole field is suggested where one laser works alone, with its hours before and after', async ({
  page,
}) => {
  await expect(page.getByTestId('suggestion')).toContainText('from 60 mm to the top: L4 works, 3 wait');
  await expect(page.getByTestId('suggestion-figures')).toContainText(/109\.1\sh now, 54\.11\sh with it/);
  await expect(page.getByTestId('suggestion-figures')).toContainText('1 part cut');
  await page.getByTestId('suggestion-use').click();
  await expectHours(page, SHARED_H);
  await expect(page.getByTestId('suggestion-done')).toHaveText(/109\.1\sh before, 54\.11\sh now/);
  await expect(page.getByTestId('suggestion')).toHaveCount(0);
  await page.getByTestId('command-undo').click();
  await expectHours(page, QUADRANTS_H);
  await expect(page.getByTestId('suggestion-done')).toHaveCount(0);
  await expect(page.getByTestId('suggestion')).toBeVisible();
});

test('the line in the elevation is dragged layer by layer: one entry of history, and Escape gives it up', async ({
  page,
}) => {
  await shareAbove(page);
  const from = page.getByTestId('step-from-1');
  const handle = page.getByTestId('step-handle-1');
  const [x, y] = await handleMiddle(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 30, y - 40, { steps: 8 });
  await page.mouse.up();
  const dragged = Number(await from.inputValue());
  expect(dragged).toBeGreaterThan(60);
  expect((await handleMiddle(page))[1]).toBeCloseTo(y - 40, 0);
  const layers = dragged / 0.06;
  expect(Math.abs(layers - Math.round(layers))).toBeLessThan(1e-6);
  // every layer of 0.06 mm that L4 does alone again costs the same
  await expectHours(page, 54.113 + ((dragged - 60) / 180) * (109.113 - 54.113));
  await page.getByTestId('command-undo').click();
  await expect(from).toHaveValue('60');

  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y - 50, { steps: 8 });
  await expect(from).not.toHaveValue('60');
  await page.keyboard.press('Escape');
  await expect(from).toHaveValue('60');
  await page.mouse.move(x, y - 60, { steps: 4 });
  await page.mouse.up();
  await expect(from).toHaveValue('60');
  await expectHours(page, SHARED_H);

  await handle.focus();
  await page.keyboard.press('ArrowUp');
  await expect(from).toHaveValue('60.06');
  await page.keyboard.press('Shift+ArrowDown');
  await expect(from).toHaveValue('59.46');
  await expect(page.getByTestId('step-handle-1')).toHaveAttribute('aria-valuetext', /from 59\.46/);
  for (let i = 0; i < 2; i++) await page.getByTestId('command-undo').click();
  await expect(from).toHaveValue('60');
});

test('a change of zones survives a reload, and a file that is saved and opened again', async ({ page }) => {
  await shareAbove(page);
  const sum = await checksumNow(page);
  const download = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  const path = await (await download).path();
  const saved = JSON.parse(readFileSync(path, 'utf8'));
  expect(saved.version).toBe(2);
  expect(saved.zoning.map((step: { from_mm: number }) => step.from_mm)).toEqual([0, 60]);
  // longer than the work waits to be saved
  await page.waitForTimeout(1500);
  await page.reload();
  await expect(page.getByTestId('checksum')).toHaveText(sum);
  await expectHours(page, SHARED_H);
  await expect(page.locator('main[data-keys]')).toBeVisible();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expectHours(page, QUADRANTS_H);
  await chooseFile(page, () => page.keyboard.press('Control+o'), {
    name: 'saved.json',
    mimeType: 'application/json',
    buffer: readFileSync(path),
  });
  await expect(page.getByTestId('checksum')).toHaveText(sum);
  await expectHours(page, SHARED_H);
  await expect(page.getByTestId('step-handle-1')).toBeVisible();
});

/** Tall one whose tall part changes a little in every layer: too many layers for one frame. */
const inManySlabs = (): Buffer => {
  const layout = JSON.parse(readFileSync('shared/examples/tall-one.json', 'utf8'));
  const outline = (i: number) => [
    [0, 0],
    [100, 0],
    [100, 100 - (i % 7) / 1000],
    [0, 100],
  ];
  layout.shapes.tall.slabs = Array.from({ length: 4000 }, (_, i) => ({
    to_mm: Math.round(60 * (i + 1)) / 1000,
    rings: [outline(i)],
  }));
  return Buffer.from(JSON.stringify(layout));
};

/** Tops and bottoms that elevation and time per layer have had in any frame, while the page said what. */
const watchViews = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const seen = new Set<string>();
    Object.assign(window, { seenViews: seen });
    const view = (id: string) => document.querySelector(`[data-testid="${id}"]`)!;
    const watch = (): void => {
      const boxes = ['elevation-view', 'times-view'].map((id) => view(id).getBoundingClientRect());
      const said = view('height-news').textContent!.replace(/[\d ]+/g, ' ');
      seen.add([...boxes.map(({ top, bottom }) => `${top}-${bottom}`), said].join('|'));
      requestAnimationFrame(watch);
    };
    watch();
  });

for (const width of [1440, 1024])
  test(`elevation and time per layer share z while a high plate is being computed, ${width} px wide`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    await watchViews(page);
    const file = { name: 'tall.json', mimeType: 'application/json', buffer: inManySlabs() };
    await chooseFile(page, () => page.keyboard.press('Control+o'), file);
    await expect(page.getByTestId('times-view')).toHaveAttribute('data-whole', 'present');
    await shareAbove(page);
    await expect(page.getByTestId('times-view')).toHaveAttribute('data-whole', 'present');
    const seen = await page.evaluate(() => [...(window as unknown as { seenViews: Set<string> }).seenViews]);
    const views = seen.map((entry) => entry.split('|'));
    expect(views.filter(([, , said]) => said !== '').length).toBeGreaterThan(0);
    for (const [elevation, times, said] of views) expect(times, said).toBe(elevation);
  });

test('hovering the time per layer shows the plate at that height, leaving takes it back, a press sets it', async ({
  page,
}) => {
  const chart = (await page.getByTestId('times-view').boundingBox())!;
  const at = (share: number) => [chart.x + chart.width / 2, chart.y + chart.height * share] as const;
  await typeInto(page, 'height', '30');
  const area = () => figure(page, 'section-area');
  const low = await area();
  await page.mouse.move(...at(0.3));
  await expect.poll(area).toBeLessThan(low);
  const high = await area();
  await expect(page.locator('.times-tip')).toContainText('a press sets this height');
  await expect(page.locator('.time-kept')).toBeAttached();
  await page.mouse.move(chart.x - 200, chart.y + 20);
  await expect.poll(area).toBe(low);
  await expect(page.locator('.time-kept')).toHaveCount(0);
  await page.mouse.click(...at(0.3));
  await page.mouse.move(chart.x - 200, chart.y + 20);
  await expect(page.locator('.times-tip')).toHaveCount(0);
  expect(await area()).toBe(high);
});

test('a high plate is shared out among the threads that the processor has to spare', async ({ page }) => {
  const cores = await page.evaluate(() => navigator.hardwareConcurrency);
  test.skip(cores < 2, 'one core: one thread computes all');
  const scripts: string[] = [];
  page.on('request', (request) => scripts.push(request.url()));
  const file = { name: 'tall.json', mimeType: 'application/json', buffer: inManySlabs() };
  await chooseFile(page, () => page.keyboard.press('Control+o'), file);
  await expect(page.getByTestId('times-view')).toHaveAttribute('data-whole', 'present');
  await expect.poll(() => scripts.filter((url) => url.includes('mate.worker')).length).toBeGreaterThan(0);
});
