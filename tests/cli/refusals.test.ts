// A bad file gives one line on standard error and exit code 2; nothing on standard output.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { analyseCommand } from '../../src/cli/analyse';

const folder = mkdtempSync(join(tmpdir(), 'evenplate-'));
afterAll(() => rmSync(folder, { recursive: true }));
const inFolder = (name: string, content: string | Uint8Array): string => {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
};
const large = inFolder('large.json', '');
truncateSync(large, 100_000_000);

const files: readonly [string, string, string][] = [
  ['a file that is not there', join(folder, 'nowhere.json'), 'no such file'],
  ['a folder', folder, 'folder'],
  ['a file of 100 MB', large, '100 MB'],
  ['an empty file', inFolder('empty.json', ''), 'empty'],
  ['text that is not JSON', inFolder('words.json', 'a plate\nwith parts\n'), 'not JSON'],
  ['bytes that are not UTF-8', inFolder('bytes.json', Uint8Array.of(0x7b, 0xff, 0xfe, 0x7d)), 'UTF-8'],
  ['another format', inFolder('other.json', '{"format":"report"}'), '"report"'],
  ['a newer version', inFolder('newer.json', '{"format":"evenplate-layout","version":4}'), 'version 4'],
  [
    'a key with a line break in it',
    inFolder('break.json', '{"format":"evenplate-layout","version":1,"name":"a","x\\ny":1}'),
    'lacks the key',
  ],
];

describe('a bad file is refused in one line that names it', () => {
  test.each(files)('%s', (_, file, words) => {
    const { exitCode, text } = analyseCommand([file]);
    expect(exitCode).toBe(2);
    expect(text).toContain(words);
    expect(text).toContain(file);
    expect(text).toMatch(/^[^\n]+\n$/);
  });
});

test(
  'the process itself writes that line to standard error, nothing to standard output, and exits 2',
  { timeout: 60_000 },
  () => {
    const run = spawnSync('npm', ['run', '--silent', 'analyse', '--', files[4]?.[1] ?? ''], {
      encoding: 'utf8',
    });
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr).toMatch(/^[^\n]*not JSON[^\n]*\n$/);
  },
);
