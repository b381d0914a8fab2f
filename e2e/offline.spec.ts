/** After one visit the page opens without its server, under any path; a newer version waits until the page is closed. */
import type { Server } from 'node:http';
import type { Page } from '@playwright/test';
import { expect, figure, openDemo, test } from './page';
import { serveYard } from './yard';

let server: Server;
let own: string;
/** Stands at the end of sw.js: another one is another version. */
let version = '';

test.beforeEach(async () => {
  version = '';
  ({ server, address: own } = await serveYard((inside, body) =>
    inside === 'sw.js' ? Buffer.concat([body, Buffer.from(version)]) : body,
  ));
});
const closeServer = async () => {
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
};
test.afterEach(closeServer);

/** Waits until the files are kept. */
const kept = (page: Page) =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    await new Promise<void>((resolve) => {
      if (active?.state === 'activated') resolve();
      else active?.addEventListener('statechange', () => active.state === 'activated' && resolve());
    });
  });

test('the second visit needs no server: plate, dialogs and workers are there', async ({ page }) => {
  await openDemo(page, own);
  const time = await figure(page, 'layer-time');
  await kept(page);
  await closeServer();
  await page.reload();
  await expect(page.locator('main[data-keys]')).toBeVisible();
  expect(await figure(page, 'layer-time')).toBe(time);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys and help' })).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Shift+A');
  await expect(page.getByRole('dialog')).toBeVisible();
});

test('a newer version is kept beside the open one and loads nothing anew', async ({ page }) => {
  await openDemo(page, own);
  await kept(page);
  await page.reload();
  await expect(page.locator('main[data-keys]')).toBeVisible();
  version = '\n// the next version';
  await page.evaluate(async () => {
    document.body.dataset['mark'] = 'still this page';
    await (await navigator.serviceWorker.ready).update();
  });
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting?.state))
    .toBe('installed');
  await page.waitForTimeout(1000);
  expect(await page.evaluate(() => document.body.dataset['mark'])).toBe('still this page');
});
