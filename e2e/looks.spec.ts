/** The sheet on other screens: another pixel density while it is open, colours chosen by the system, less motion, small to large. */
import type { Page } from '@playwright/test';
import { expect, openDemo, test } from './page';

/** Device pixels per CSS px of every canvas of the plan. */
const densities = (page: Page) =>
  page
    .locator('[data-testid=plan] canvas')
    .evaluateAll((all) =>
      all.map((canvas) => (canvas as HTMLCanvasElement).width / (canvas as HTMLCanvasElement).clientWidth),
    );

test('the plan stays sharp when the window goes to a screen of twice the density, and back', async ({
  page,
}) => {
  await openDemo(page);
  const chrome = await page.context().newCDPSession(page);
  for (const deviceScaleFactor of [2, 1]) {
    // A window that goes to another screen changes its size a little as well.
    const size = { width: 1439 + deviceScaleFactor, height: 900, mobile: false };
    await chrome.send('Emulation.setDeviceMetricsOverride', { ...size, deviceScaleFactor });
    await expect
      .poll(() => densities(page))
      .toEqual([deviceScaleFactor, deviceScaleFactor, deviceScaleFactor]);
  }
});

test('under forced colours what is pressed can be told, and lasers keep their hatching', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  await openDemo(page);
  const ground = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((element) => getComputedStyle(element).backgroundColor);
  expect(await ground('.choice[data-state=on]')).not.toBe(await ground('.choice[data-state=off]'));
  const hatching = await page
    .locator('.bar-load')
    .first()
    .evaluate((element) => getComputedStyle(element).backgroundImage);
  expect(hatching).toContain('repeating-linear-gradient');
});

test('under reduced motion nothing moves', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openDemo(page);
  const moving = await page.locator('*').evaluateAll((all) =>
    all
      .filter((element) => {
        const { transitionDuration, animationDuration, animationName } = getComputedStyle(element);
        const lasts = (text: string) => text.split(', ').some((part) => parseFloat(part) > 0);
        return lasts(transitionDuration) || (animationName !== 'none' && lasts(animationDuration));
      })
      .map((element) => element.className),
  );
  expect(moving).toEqual([]);
});

for (const [width, height] of [
  [1024, 768],
  [1440, 900],
  [2560, 1440],
  [3840, 2160],
] as const)
  test(`at ${width} × ${height} the sheet fills the window and nothing runs out of it`, async ({ page }) => {
    await openDemo(page);
    await page.setViewportSize({ width, height });
    await page.waitForTimeout(300);
    const sheet = (await page.locator('main.bench').boundingBox())!;
    expect([sheet.x, sheet.y, sheet.width, sheet.height]).toEqual([0, 0, width, height]);
    const plan = (await page.getByTestId('plan').boundingBox())!;
    expect(plan.width).toBeGreaterThanOrEqual(560);
    for (const place of ['.header', '.title-block', '.readout']) {
      const overflow = await page
        .locator(place)
        .first()
        .evaluate((element) => element.scrollWidth - element.clientWidth);
      expect(overflow, place).toBeLessThanOrEqual(0);
    }
  });

test('at 1024 px a name of 64 letters gives way, and every button of the header stays where it was', async ({
  page,
}) => {
  await openDemo(page);
  await page.setViewportSize({ width: 1024, height: 768 });
  const undo = page.getByTestId('command-undo');
  const before = await undo.boundingBox();
  await page.getByTestId('layout-name').fill('W'.repeat(64));
  await page.getByTestId('layout-name').press('Enter');
  await expect(undo).toBeEnabled();
  expect(await undo.boundingBox()).toEqual(before);
});
