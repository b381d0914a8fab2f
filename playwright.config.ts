// Browser tests in e2e/. `npm run e2e` builds and serves the page and names it in PAGE_URL; CHROMIUM_PATH is the browser.
import { defineConfig } from '@playwright/test';
import { LAUNCH_ARGS } from './scripts/findChromium.mjs';

export default defineConfig({
  testDir: 'e2e',
  outputDir: 'test-results',
  workers: 2,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  forbidOnly: true,
  reporter: [['list'], ['json', { outputFile: 'node_modules/.cache/counts/e2e.json' }]],
  use: {
    baseURL: process.env.PAGE_URL,
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    launchOptions: { executablePath: process.env.CHROMIUM_PATH, args: LAUNCH_ARGS },
    screenshot: 'only-on-failure',
  },
});
