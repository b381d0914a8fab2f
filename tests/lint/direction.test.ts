/**
 * The lint rule of scripts/lint/house.mjs, run by the linter itself with the project's own configuration over small
 * files in a temporary folder. The expected verdicts are written from README's map of folders, not from the rule's.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const ORDER =
  'units layout geometry zoning exposure allocation build import link cli worker store commands canvas panels screens';
const FOLDERS = ORDER.split(' ');
const ENGINE = [...FOLDERS.slice(0, 9), 'export'];
const SCREEN = ['react', 'react-dom/client', 'konva', 'konva/lib/Core', 'react-konva', 'radix-ui'];

interface Snippet {
  readonly file: string;
  readonly code: string;
  readonly refused: boolean;
}
const usesType = (path: string): string => `import type { A } from '${path}';\nexport type B = A;\n`;
const usesValue = (path: string): string => `import { a } from '${path}';\nexport const b = a;\n`;
const imports = (from: string, to: string): boolean =>
  to !== 'cli' && FOLDERS.indexOf(to) < FOLDERS.indexOf(from);

const everyPair: Snippet[] = FOLDERS.flatMap((from) =>
  FOLDERS.filter((to) => to !== from).flatMap((to) => [
    { file: `src/${from}/type-${to}.ts`, code: usesType(`../${to}/types`), refused: !imports(from, to) },
    { file: `src/${from}/value-${to}.ts`, code: usesValue(`../${to}/x`), refused: !imports(from, to) },
  ]),
);
const enginePackages: Snippet[] = ENGINE.flatMap((folder) =>
  [...SCREEN, 'zustand', 'zustand/vanilla', 'zundo', 'node:fs'].map((name, k) => ({
    file: `src/${folder}/package-${k}.ts`,
    code: usesType(name),
    refused: true,
  })),
);
const otherWays: Snippet[] = [
  { file: 'src/geometry/export.ts', code: "export type { A } from '../store/types';\n", refused: true },
  { file: 'src/geometry/all.ts', code: "export * from '../store/types';\n", refused: true },
  { file: 'src/geometry/later.ts', code: "export const a = () => import('../panels/x');\n", refused: true },
  { file: 'src/geometry/inType.ts', code: "export type A = import('../store/types').View;\n", refused: true },
  { file: 'src/geometry/deep/er.ts', code: usesType('../../store/types'), refused: true },
  { file: 'src/geometry/detour.ts', code: usesType('../units/../store/types'), refused: true },
  { file: 'src/geometry/out.ts', code: usesType('../../src/store/types'), refused: true },
  { file: 'src/geometry/tests.ts', code: usesValue('../../tests/helper'), refused: true },
  { file: 'src/geometry/shared.ts', code: usesValue('../../shared/table.json'), refused: false },
  { file: 'src/allocation/solver/own.ts', code: usesType('../types'), refused: false },
  { file: 'src/allocation/solver/up.ts', code: usesType('../../build/types'), refused: true },
  { file: 'src/import/side.ts', code: usesType('../export/report'), refused: true },
  { file: 'src/export/side.ts', code: usesType('../import/types'), refused: true },
  { file: 'src/export/above.ts', code: usesType('../build/types'), refused: false },
  { file: 'src/elsewhere/new.ts', code: usesType('../units/types'), refused: true },
  { file: 'src/main.tsx', code: usesValue('./screens/x'), refused: false },
  { file: 'src/canvas/stage.ts', code: usesType('react-konva'), refused: false },
  { file: 'src/store/history.ts', code: usesType('zustand/vanilla'), refused: false },
  { file: 'src/store/hooks.ts', code: usesType('react'), refused: true },
  { file: 'src/commands/button.ts', code: usesType('react'), refused: true },
];
const snippets = [...everyPair, ...enginePackages, ...otherWays];

let folder = '';
let refused = new Set<string>();

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'house-'));
  for (const { file, code } of snippets) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), code);
  }
  const run = spawnSync(
    process.execPath,
    [join(ROOT, 'node_modules/oxlint/bin/oxlint'), '-c', join(ROOT, '.oxlintrc.json'), '-f', 'json', folder],
    { encoding: 'utf8', maxBuffer: 1e8 },
  );
  const { diagnostics } = JSON.parse(run.stdout) as { diagnostics: { code: string; filename: string }[] };
  const mine = diagnostics.filter(({ code }) => code === 'house(direction)');
  refused = new Set(mine.map(({ filename }) => filename.slice(filename.lastIndexOf('src/'))));
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const faults = (list: readonly Snippet[]): string[] =>
  list
    .filter((snippet) => refused.has(snippet.file) !== snippet.refused)
    .map(({ file, code }) => `${file}: ${code}`);

describe('the direction between folders', () => {
  it('holds for every pair of folders, for types as for values', () => {
    expect(everyPair.filter((snippet) => snippet.refused).length).toBeGreaterThan(200);
    expect(faults(everyPair)).toEqual([]);
  });
  it('keeps screens, state and Node out of every engine folder', () => {
    expect(faults(enginePackages)).toEqual([]);
  });
  it.each(otherWays)('$file is judged by where its import leads', (snippet) => {
    expect(faults([snippet])).toEqual([]);
  });
});

describe('the types of the engine', () => {
  const compile = (code: string): string => {
    const file = join(folder, 'src/geometry/dom.ts');
    writeFileSync(file, code);
    const settings = {
      extends: join(ROOT, 'tsconfig.engine.json'),
      compilerOptions: { noEmit: true, composite: false, incremental: false, rootDir: folder },
      include: [],
      files: [file],
    };
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(settings));
    try {
      execFileSync(process.execPath, [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', folder], {
        encoding: 'utf8',
      });
      return '';
    } catch (error) {
      return (error as { stdout: string }).stdout;
    }
  };
  it('accept plain code', () => expect(compile('export const a = Math.hypot(3, 4);\n')).toBe(''));
  it.each(['document', 'window', 'localStorage', 'requestAnimationFrame', 'process', 'Buffer'])(
    'do not know %s',
    (name) => expect(compile(`export const a = ${name};\n`)).toContain(`'${name}'`),
  );
});
