// How the page is built and the unit tests are run. dist/ is static with relative addresses: any file
// server, any sub-path.
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  base: './',
  plugins: [react()],
  build: {
    target: 'es2023',
    chunkSizeWarningLimit: 900,
    // Every browser that runs es2023 knows modulepreload.
    modulePreload: { polyfill: false },
    // What the first paint needs comes in one file: it packs better than ten.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
  },
  test: { include: ['tests/**/*.test.{ts,tsx}'], environment: 'node', testTimeout: 60_000 },
});
