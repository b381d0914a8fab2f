/**
 * Builds the page and serves it on a free port of this machine, for browser tests, pictures and the browser bench.
 */
import { rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { build, preview } from 'vite';

const freePort = () =>
  new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });

/**
 * Builds into a folder of its own, so that dist/ stays what the user built and two runs do not disturb each other.
 * @returns {Promise<{ url: string, folder: string, close: () => Promise<void> }>} close() before leaving
 */
export const servePage = async () => {
  const folder = `node_modules/.cache/page-${process.pid}`;
  await build({ logLevel: 'warn', build: { outDir: folder, emptyOutDir: true } });
  const port = await freePort();
  const server = await preview({
    preview: { port, host: '127.0.0.1', strictPort: true, open: false },
    build: { outDir: folder },
    logLevel: 'warn',
  });
  const close = async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { url: `http://127.0.0.1:${port}/`, folder, close };
};
