// The arguments of `analyse -- FILE [--height MM]`; anything else is one sentence.
import { describe, expect, test } from 'vitest';
import { analyseArguments } from '../../src/cli/arguments';
import { refusal } from '../../src/cli/output';

describe('what is understood', () => {
  test.each<[string[], string, number | null]>([
    [['plate.json'], 'plate.json', null],
    [['plate.json', '--height', '12.5'], 'plate.json', 12.5],
    [['--height', '25,4 mm', 'plate.json'], 'plate.json', 25.4],
    [['plate.json', '--height=1 in'], 'plate.json', 25.4],
    [['plate.json', '--height', '0'], 'plate.json', 0],
    [['plate.json', '--height', '-1'], 'plate.json', -1],
    [['--height', '3', '--', '--odd.json'], '--odd.json', 3],
  ])('%j', (given, file, height_mm) => {
    expect(analyseArguments(given)).toEqual({ ok: true, value: { file, height_mm } });
  });
});

describe('what is refused', () => {
  test.each<[string[], string]>([
    [[], 'no file is named'],
    [['--height', '3'], 'no file is named'],
    [['a.json', 'b.json'], '2 files are named'],
    [['a.json', '--layer', '3'], '--layer'],
    [['a.json', '--height', '1', '--height', '2'], '2 heights'],
    [['a.json', '--height', 'high'], 'high'],
    [['a.json', '--height'], 'not a length'],
    [['a.json', '--height', '1e300'], '1e300'],
  ])('%j names %j', (given, words) => {
    const parsed = analyseArguments(given);
    const said = parsed.ok ? { exitCode: 0, text: '' } : refusal(parsed.fault);
    expect(said.exitCode).toBe(2);
    expect(said.text).toContain(words);
    expect(said.text).toMatch(/^[^\n]+\n$/);
  });
});
