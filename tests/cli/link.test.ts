/**
 * A layout file goes into a link and comes back through the terminal as the same file; what is none is one line on
 * standard error and exit code 2. Expected files are the examples themselves.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { layoutCommand } from '../../src/cli/layout';
import { linkCommand } from '../../src/cli/link';
import { readLayout } from '../../src/layout/read';
import { ok } from '../../src/layout/result';

const EXAMPLES = 'shared/examples';
const RING = `${EXAMPLES}/ring.json`;
const folder = mkdtempSync(join(tmpdir(), 'evenplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

const linkOf = (file: string): string => {
  const { exitCode, text } = linkCommand([file]);
  expect(exitCode).toBe(0);
  return text;
};
const ring = linkOf(RING).trim();

describe('there and back', () => {
  test.each(readdirSync(EXAMPLES).filter((name) => name.endsWith('.json')))(
    '%s is the same layout',
    (name) => {
      const { exitCode, text } = layoutCommand([linkOf(`${EXAMPLES}/${name}`).trim()]);
      expect(exitCode).toBe(0);
      const file = readLayout(readFileSync(`${EXAMPLES}/${name}`, 'utf8'));
      expect(file.ok).toBe(true);
      expect(readLayout(text)).toEqual(file);
    },
  );

  test('the link is one line, its first characters say kind and version', () => {
    expect(linkOf(RING)).toMatch(/^L1\.[0-9a-z]+\.[\w-]+\n$/);
  });

  test.each([
    ['a whole address', `https://plates.example/yard/#${ring}`],
    ['a line break of a mail program in it', `${ring.slice(0, 76)}\r\n${ring.slice(76)}`],
  ])('%s is understood', (_, link) => {
    expect(layoutCommand([link])).toEqual(layoutCommand([ring]));
  });

  test('"-" takes the link from standard input', () => {
    expect(layoutCommand(['-'], () => ok(`${ring}\n`))).toEqual(layoutCommand([ring]));
  });
});

const inFolder = (name: string, content: string): string => {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
};

describe('what is refused', () => {
  test.each([
    [[], 'no file is given'],
    [[RING, RING], '2 files'],
    [[RING, '--height', '3'], '--height'],
    [[join(folder, 'nowhere.json')], 'no such file'],
    [[inFolder('words.json', 'a plate\nwith parts\n')], 'not JSON'],
    [[inFolder('other.json', '{"format":"report"}')], '"report"'],
  ] as [string[], string][])('as a file: %j', (given, words) => {
    expectRefused(linkCommand(given), words);
  });

  test.each([
    [[], 'no link is given'],
    [[ring, ring], '2 links'],
    [['--file', ring], '--file'],
    [[RING], 'holds no plate'],
    [[ring.slice(0, -1)], 'was cut'],
    [[ring.slice(0, 6)], 'was cut'],
    [[`${ring.slice(0, 40)}${ring[40] === 'A' ? 'B' : 'A'}${ring.slice(41)}`], 'was altered'],
    [[ring.replace('L1', 'L9')], 'newer version'],
    [[ring.replace('L1', 'C1')], 'other kind'],
  ] as [string[], string][])('as a link: %j', (given, words) => {
    expectRefused(layoutCommand(given), words);
  });
});

function expectRefused({ exitCode, text }: { exitCode: number; text: string }, words: string): void {
  expect(exitCode).toBe(2);
  expect(text).toContain(words);
  expect(text).toMatch(/^[^\n]+\n$/);
}

test('the processes themselves: link, layout from an argument and from standard input, a refusal', () => {
  const npm = (command: string, word: string, input = '') =>
    spawnSync('npm', ['run', '--silent', command, '--', word], { encoding: 'utf8', input });
  const link = npm('link', RING);
  expect([link.status, link.stderr, link.stdout.trim()]).toEqual([0, '', ring]);
  const layout = npm('layout', ring);
  expect([layout.status, layout.stderr]).toEqual([0, '']);
  expect(readLayout(layout.stdout)).toEqual(readLayout(readFileSync(RING, 'utf8')));
  expect(npm('layout', '-', ring).stdout).toBe(layout.stdout);
  const cut = npm('layout', ring.slice(0, -9));
  expect([cut.status, cut.stdout]).toEqual([2, '']);
  expect(cut.stderr).toMatch(/^[^\n]*was cut[^\n]*\n$/);
});
