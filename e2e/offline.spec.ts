/** After one visit the page opens without its server, under any path; a newer version waits until the page is closed. */
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, figure, openDemo, test } from './page';

const PREFIX = '/yard/plates/';
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};
const PAGE_DIR = process.env['PAGE_DIR'] ?? 'dist';

let server: Server;
let own: string;
/** Stands at the end of sw.js: another one is another version. */
let version = '';

async function answer(pathname: string): Promise<Buffer> {
  const inside = pathname.startsWith(PREFIX) ? pathname.slice(PREFIX.length) || 'index.html' : '../none';
  const body = await readFile(join(PAGE_DIR, normalize(`/${inside}`)));
  return inside === 'sw.js' ? Buffer.concat([body, Buffer.from(version)]) : body;
}

test.beforeEach(async () => {
  version = '';
  server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const type = TYPES[extname(pathname) || '.html'] ?? '';
    answer(pathname).then(
      (body) => response.writeHead(200, { 'content-type': type, 'cache-control': 'no-store' }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  own = `http://127.0.0.1:${(server.address() as AddressInfo).port}${PREFIX}`;
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
