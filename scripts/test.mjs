/**
 * `npm test`: format, types, lint, unit tests, browser tests, all of them even after one has failed. The last line
 * says how many tests passed and failed, as counted by the two test runners themselves; a check or a runner that
 * fails without a failed test counts as one.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';

const COUNTS = 'node_modules/.cache/counts';
const UNIT = `${COUNTS}/unit.json`;
const BROWSER = `${COUNTS}/e2e.json`;

const npmRun = (...args) =>
  spawnSync('npm', ['run', ...args], { stdio: 'inherit', shell: process.platform === 'win32' }).status === 0;

const report = (file) => {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
};
const unitCounts = (json) => ({
  passed: json?.numPassedTests ?? 0,
  failed: json?.numFailedTests ?? 0,
  skipped: (json?.numPendingTests ?? 0) + (json?.numTodoTests ?? 0),
});
/** A flaky test failed first and passed when run again: it counts as failed. */
const browserCounts = (json) => ({
  passed: json?.stats?.expected ?? 0,
  failed: (json?.stats?.unexpected ?? 0) + (json?.stats?.flaky ?? 0),
  skipped: json?.stats?.skipped ?? 0,
});

const check = (name) => ({ name, passed: 0, failed: npmRun(name) ? 0 : 1, skipped: 0 });
const tests = (name, good, counts) => ({
  name,
  ...counts,
  failed: good ? counts.failed : Math.max(1, counts.failed),
});

rmSync(COUNTS, { recursive: true, force: true });
mkdirSync(COUNTS, { recursive: true });
const checks = ['format', 'types', 'lint'].map(check);
const unitGood = npmRun('unit', '--', '--reporter=default', '--reporter=json', `--outputFile.json=${UNIT}`);
const unit = tests('unit', unitGood, unitCounts(report(UNIT)));
const browserGood = npmRun('e2e');
const browser = tests('e2e', browserGood, browserCounts(report(BROWSER)));

const all = [...checks, unit, browser];
const sum = (key) => all.reduce((total, step) => total + step[key], 0);
console.log('');
for (const { name, failed } of all) console.log(`${name}: ${failed === 0 ? 'good' : 'FAILED'}`);
if (sum('skipped') > 0) console.log(`${sum('skipped')} skipped`);
console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
process.exit(sum('failed') === 0 && sum('passed') > 0 ? 0 : 1);
