/** The built page is static: a plain file server serves it under a sub-path, and it asks no other server for anything. */
import type { Server } from 'node:http';
import { expect, openDemo, test } from './page';
import { serveYard } from './yard';

let server: Server;
let own: string;
test.beforeAll(async () => {
  ({ server, address: own } = await serveYard());
});
test.afterAll(() => {
  server.close();
});

test('the built page works under a sub-path and stays on its own server', async ({ page }) => {
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(own)) elsewhere.push(request.url());
  });
  await openDemo(page, own);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog')).toBeVisible();
  expect(elsewhere).toEqual([]);
});
