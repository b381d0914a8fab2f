/**
 * Builds the page and serves dist/ on a free port of this machine, for browser tests, pictures and the browser bench.
 */
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

/** @returns {Promise<{ url: string, close: () => Promise<void> }>} the served page; close() before leaving */
export const servePage = async () => {
  await build({ logLevel: 'warn' });
  const port = await freePort();
  const server = await preview({
    preview: { port, host: '127.0.0.1', strictPort: true, open: false },
    logLevel: 'warn',
  });
  return { url: `http://127.0.0.1:${port}/`, close: () => server.close() };
};
