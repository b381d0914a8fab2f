// How the page is built and the unit tests are run. dist/ is static with relative addresses: any file
// server, any sub-path.
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

/**
 * What the built page may load: its own files, nothing else, and it may connect to nothing, its own server included, so
 * that no plate leaves the browser. Workers inherit it (src/worker/boundWorker.ts). Styles: dialogs lock
 * scrolling by a style element of their own. The live server of `npm run dev` needs connections and does without.
 */
const POLICY = [
  "default-src 'none'",
  "connect-src 'none'",
  "script-src 'self'",
  "worker-src 'self' blob:",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const contentSecurity: Plugin = {
  name: 'content-security',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
  ],
};

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
  plugins: [react(), contentSecurity, offline],
  build: {
    target: 'es2023',
    chunkSizeWarningLimit: 900,
    // Every browser that runs es2023 knows modulepreload.
    modulePreload: { polyfill: false },
    // What the first paint needs comes in one file: it packs better than ten.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
  },
  // A worker begins at an address of its own (boundWorker.ts), so what it loads is found beside its script, not beside itself:
  // import.meta.url, which only this format keeps.
  worker: { format: 'es' },
  test: { include: ['tests/**/*.test.{ts,tsx}'], environment: 'node', testTimeout: 60_000 },
});
