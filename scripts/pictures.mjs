/**
 * `npm run pictures`: takes README's pictures anew from the built page, at 1440 × 900 and twice the pixels, on the
 * demo plate as a newcomer sees it.
 */
import { mkdirSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { findChromium, LAUNCH_ARGS } from './findChromium.mjs';
import { servePage } from './servePage.mjs';

const executablePath = findChromium();
const served = await servePage();
const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
mkdirSync('docs', { recursive: true });

const page = await browser.newPage({
  viewport: { width: 1440, height: 900 },
  deviceScaleFactor: 2,
  colorScheme: 'light',
  reducedMotion: 'reduce',
});
await page.goto(served.url);
await page.getByTestId('layer-time').waitFor();
await page.evaluate(() => document.fonts.ready);
await page.waitForTimeout(500);
await page.screenshot({ path: 'docs/workbench.png' });
console.log('docs/workbench.png');

await browser.close();
await served.close();
process.exit(0);
