/**
 * Which Chromium the browser tests, the pictures and the browser bench use: the one CHROMIUM_PATH names, else
 * Playwright's own, else the system's; where there is none, one is installed. A candidate counts only if it starts.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from '@playwright/test';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];
const PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** For every browser started here: no sandbox (root in containers), no GPU, nothing that talks to the network. */
export const LAUNCH_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Windows programs print no version; there, being present has to do. */
const starts = (path) =>
  existsSync(path) &&
  (process.platform === 'win32' ||
    /\d+\.\d+/.test(
      spawnSync(path, ['--version', '--no-sandbox'], { timeout: 30_000, encoding: 'utf8' }).stdout ?? '',
    ));

const candidates = () => [
  chromium.executablePath(),
  ...(process.env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => NAMES.map((name) => join(folder, name))),
  ...PLACES,
];

const isRoot = () => process.getuid?.() === 0;
const run = (command, args) => {
  console.log(`> ${command} ${args.join(' ')}`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return (
    spawnSync(command, args, { stdio: 'inherit', env, shell: process.platform === 'win32' }).status === 0
  );
};

/** Debian's packages where we are root, Playwright's own download elsewhere or where that fails. */
const install = () => {
  const packages = ['install', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation'];
  const debian = isRoot() && existsSync('/usr/bin/apt-get');
  if (debian && run('apt-get', ['update']) && run('apt-get', packages)) return;
  run('npx', ['playwright', 'install', 'chromium']);
};

/**
 * @returns {string} the path of a Chromium that starts
 * @throws where CHROMIUM_PATH names none, or none is found and none can be installed
 */
export const findChromium = () => {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (starts(named)) return named;
    throw new Error(`CHROMIUM_PATH names "${named}", which is no browser that starts`);
  }
  const found = () => candidates().find(starts);
  const first = found();
  if (first !== undefined) return first;
  install();
  const second = found();
  if (second !== undefined) return second;
  throw new Error('no Chromium found and none could be installed; set CHROMIUM_PATH to one');
};
