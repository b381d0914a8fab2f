/** The built page behind a plain file server of its own, under a sub-path. */
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const PREFIX = '/yard/plates/';
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
};
const PAGE_DIR = process.env['PAGE_DIR'] ?? 'dist';

/** Serves the page; `altered` may change a file, by its name inside, on its way. */
export async function serveYard(
  altered: (inside: string, body: Buffer) => Buffer = (_, body) => body,
): Promise<{ readonly server: Server; readonly address: string }> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const inside = pathname.startsWith(PREFIX) ? pathname.slice(PREFIX.length) || 'index.html' : '../none';
    readFile(join(PAGE_DIR, normalize(`/${inside}`))).then(
      (body) => {
        const headers = { 'content-type': TYPES[extname(inside)] ?? '', 'cache-control': 'no-store' };
        response.writeHead(200, headers).end(altered(inside, body));
      },
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { server, address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${PREFIX}` };
}
