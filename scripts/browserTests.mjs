/**
 * The browser tests: finds (or installs) a Chromium, builds and serves the page, runs Playwright with the arguments
 * given, and leaves with Playwright's exit code.
 */
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { findChromium } from './findChromium.mjs';
import { servePage } from './servePage.mjs';

const cli = createRequire(import.meta.url).resolve('@playwright/test/cli');

const playwright = (env) =>
  new Promise((resolve) => {
    const args = [cli, 'test', ...process.argv.slice(2)];
    const child = spawn(process.execPath, args, { stdio: 'inherit', env: { ...process.env, ...env } });
    child.once('exit', (code) => resolve(code ?? 1));
  });

const CHROMIUM_PATH = findChromium();
console.log(`browser: ${CHROMIUM_PATH}`);
const page = await servePage();
const code = await playwright({ CHROMIUM_PATH, PAGE_URL: page.url, PAGE_DIR: page.folder });
await page.close();
process.exit(code);
