// How the page is built and the unit tests are run. dist/ is static with relative addresses: any file
// server, any sub-path.
import react from '@vitejs/plugin-react';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

// sw.js keeps every built file, by relative addresses; src/screens/offline.ts registers it after the first paint. A newer
// one waits until no window shows the older (no skipWaiting), and takes no page over that it did not load (no clientsClaim).
const offline = VitePWA({
  strategies: 'generateSW',
  filename: 'sw.js',
  injectRegister: false,
  manifest: false,
  workbox: {
    globPatterns: ['**/*.{html,js,css,svg,wasm,ttf,woff2}'],
    maximumFileSizeToCacheInBytes: 20_000_000,
    ignoreURLParametersMatching: [/./],
    navigateFallback: null,
    skipWaiting: false,
    clientsClaim: false,
    cleanupOutdatedCaches: true,
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
});

export default defineConfig({
  base: './',
  plugins: [react(), offline],
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
