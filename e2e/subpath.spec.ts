/** The built page is static: a plain file server serves it under a sub-path, and it asks no other server for anything. */
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { expect, openDemo, test } from './page';

const PREFIX = '/yard/plates/';
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
};

const PAGE_DIR = process.env['PAGE_DIR'] ?? 'dist';

let server: Server;
test.beforeAll(async () => {
  server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const inside = pathname.startsWith(PREFIX) ? pathname.slice(PREFIX.length) || 'index.html' : '../none';
    readFile(join(PAGE_DIR, normalize(`/${inside}`))).then(
      (body) => response.writeHead(200, { 'content-type': TYPES[extname(inside)] ?? '' }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
});
test.afterAll(() => {
  server.close();
});

test('the built page works under a sub-path and stays on its own server', async ({ page }) => {
  const { port } = server.address() as AddressInfo;
  const own = `http://127.0.0.1:${port}${PREFIX}`;
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(own)) elsewhere.push(request.url());
  });
  await openDemo(page, own);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog')).toBeVisible();
  expect(elsewhere).toEqual([]);
});
