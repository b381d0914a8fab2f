/** Plan and readout are one picture: what a drag changes in both changes in one frame. */
import { measureJumps } from '../scripts/bench/frames';
import type { Page } from '@playwright/test';
import { dragOnPlan, expect, focusPlan, grabAndMove, onPlan, openDemo, test } from './page';

test('every jump of a dragged part changes plan and figures in the same frame', async ({ page }) => {
  await openDemo(page);
  // every jump is to lead elsewhere
  await page.getByTestId('snapping').uncheck();
  // P15, a seal ring of L2, goes over the lines between L1 and L2 and back: every place shares it in another way
  await grabAndMove(page, [130 + 17, -62], [100 + 17, -62]);
  const xs = [5, 0, -5, -12, -17, -11, -6, -1, 4];
  const places = await Promise.all(xs.map((x) => onPlan(page, x + 17, -62)));
  const jumps = await measureJumps(page, '[aria-label="Readout"]', places, 15);
  await page.mouse.up();
  for (const { canvas, readout } of jumps) expect({ canvas, readout }).toEqual({ canvas: [0], readout: [0] });
});

/** The layer of the sections at rest, counted from below. */
const SECTIONS = 1;

/** What the layer looks like on a black ground, one byte a colour; the page keeps it under a name. */
const keepPicture = (page: Page, name: string): Promise<void> =>
  page
    .getByTestId('plan')
    .locator('canvas')
    .nth(SECTIONS)
    .evaluate((canvas: HTMLCanvasElement, key) => {
      const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
      const seen = data.map((value, i) => (i % 4 === 3 ? value : (value * data[i - (i % 4) + 3]!) / 255));
      (window as unknown as Record<string, Uint8ClampedArray>)[key] = seen;
    }, name);

/** The largest difference between two kept pictures, 0 to 255; infinite where their sizes differ. */
const difference = (page: Page, names: readonly [string, string]): Promise<number> =>
  page.evaluate((keys) => {
    const kept = window as unknown as Record<string, Uint8ClampedArray>;
    const [a, b] = [kept[keys[0]]!, kept[keys[1]]!];
    if (a.length !== b.length) return Infinity;
    return a.reduce((most, value, i) => Math.max(most, Math.abs(value - b[i]!)), 0);
  }, names);

/** Edges of lines come out a shade apart (17 measured) where only a part of them is drawn. */
const SAME_SHADE = 32;

test('sections repainted where they changed look as if all had been painted anew', async ({ page }) => {
  await openDemo(page);
  await keepPicture(page, 'first');
  await dragOnPlan(page, [130 + 17, -62], [100 + 17, -62]);
  await dragOnPlan(page, [-90 + 17, -140], [60 + 17, -60]);
  await dragOnPlan(page, [100 + 17, -62], [17, 20]);
  await focusPlan(page);
  await page.keyboard.press('Control+z');
  await keepPicture(page, 'repainted');
  expect(await difference(page, ['first', 'repainted'])).toBeGreaterThan(SAME_SHADE);
  // another size of the window and back: everything is painted anew
  const width = () => page.getByTestId('plan').locator('canvas').nth(SECTIONS).getAttribute('width');
  const before = await width();
  await page.setViewportSize({ width: 1300, height: 820 });
  await expect.poll(width).not.toBe(before);
  await page.setViewportSize({ width: 1440, height: 900 });
  await expect.poll(width).toBe(before);
  await keepPicture(page, 'anew');
  expect(await difference(page, ['repainted', 'anew'])).toBeLessThanOrEqual(SAME_SHADE);
});
