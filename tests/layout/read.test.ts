// What reading gives for a sound file: defaults, rounding, and what is unwise but opens.
import { describe, expect, test } from 'vitest';
import { messageText } from '../../src/layout/messages';
import { readLayout, readLayoutValue } from '../../src/layout/read';
import type { Fault } from '../../src/layout/result';
import type { Layout } from '../../src/layout/types';
import { changed, sample } from './sample';

function value(json: unknown): Layout {
  const result = readLayoutValue(json);
  if (!result.ok) throw new Error(messageText(result.fault.code, result.fault.params));
  return result.value;
}
const sentence = (found: Fault): string => messageText(found.code, found.params);

describe('defaults of the file format', () => {
  test('a missing optional key gets the value written there', () => {
    const json = sample();
    delete json['note'];
    delete json['limits'];
    const machine = json['machine'] as Record<string, unknown>;
    delete machine['powder'];
    machine['platform'] = { width_mm: 340, depth_mm: 340 };
    machine['lasers'] = [{ id: 'L1', power_W: 400, foot_mm: [0, 0], workingHeight_mm: 500 }];
    json['zoning'] = { strategy: 'strips', run_deg: 90, lines_mm: [0], lasers: ['L1', 'L1'] };
    json['parts'] = [{ id: 'P01', shape: 'block', at_mm: [0, 0] }];
    const layout = value(json);
    expect(layout.note).toBe('');
    expect(layout.limits).toEqual({
      crumbArea_mm2: 4,
      crumbWidth_mm: 1.5,
      plumeHalfWidth_mm: 10,
      spacing_mm: 3,
      chainGap_mm: 0.01,
    });
    expect(layout.machine.powder).toEqual({ feed_l: 60, overflow_l: 25, residueInterval_laserH: 240 });
    expect(layout.machine.platform).toEqual({ width_mm: 340, depth_mm: 340, margin_mm: 0, keepOuts: [] });
    expect(layout.machine.lasers[0]).toMatchObject({ reach: null, on: true });
    expect(layout.zoning).toMatchObject([{ from_mm: 0, zoning: { sharedBand_mm: 0 } }]);
    expect(layout.parts[0]).toMatchObject({ turn_deg: 0, seams: 'free', laser: null, timeFactor: 1 });
  });

  test('a limit that is given leaves the others at their default', () => {
    expect(value(changed(['limits'], { spacing_mm: 5 })).limits).toMatchObject({
      spacing_mm: 5,
      crumbArea_mm2: 4,
    });
  });

  test('a powder store may be left open with null', () => {
    expect(value(changed(['machine', 'powder'], null)).machine.powder).toBeNull();
  });
});

describe('rounding on entry (1 µm and 0.001°)', () => {
  test('lengths are kept to the nearest micrometre', () => {
    const layout = value(changed(['parts', 0, 'at_mm'], [-60.00049, 12.3456789]));
    expect(layout.parts[0]?.at_mm).toEqual([-60, 12.346]);
  });
  test('angles are kept to 0.001° within one turn', () => {
    expect(value(changed(['parts', 0, 'turn_deg'], -90)).parts[0]?.turn_deg).toBe(270);
    expect(value(changed(['parts', 0, 'turn_deg'], 359.9999)).parts[0]?.turn_deg).toBe(0);
    expect(value(changed(['parts', 0, 'turn_deg'], 12.34567)).parts[0]?.turn_deg).toBe(12.346);
  });
  test('no −0 survives', () => {
    const at = value(changed(['parts', 0, 'at_mm'], [-0, -0.0001])).parts[0]?.at_mm;
    expect(at?.map((x) => Object.is(x, 0))).toEqual([true, true]);
  });
});

describe('what is well formed and unwise opens', () => {
  const off = (sample()['machine'] as { lasers: object[] }).lasers.map((laser) => ({ ...laser, on: false }));
  test.each<[string, readonly (string | number)[], unknown]>([
    ['a part off the platform', ['parts', 0, 'at_mm'], [5000, 0]],
    ['parts on top of each other', ['parts', 0, 'at_mm'], [30, 40]],
    ['all lasers off', ['machine', 'lasers'], off],
    [
      'a crossing outline (bow tie) of signed area 0',
      ['shapes', 'block', 'slabs', 0, 'rings', 0],
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
    ],
    [
      'an outline closed by repeating its first point',
      ['shapes', 'block', 'slabs', 0, 'rings', 0],
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 0],
      ],
    ],
    ['no drawn zone yet', ['zoning'], { strategy: 'drawn', zones: [] }],
    ['a laser that serves every zone', ['zoning', 'lasers'], ['L1', 'L1', 'L1', 'L1']],
    ['a part higher than the machine builds', ['shapes', 'block', 'slabs', 1, 'to_mm'], 5000],
    [
      '31 lasers',
      ['machine', 'lasers'],
      [...Array(31).keys()].map((i) => ({
        id: `L${i}`,
        power_W: 400,
        foot_mm: [0, 0],
        workingHeight_mm: 500,
      })),
    ],
  ])('%s', (_, path, replacement) => {
    expect(readLayoutValue(changed(path, replacement)).ok).toBe(true);
  });
});

describe('text that is no layout', () => {
  const code = (text: string): string => {
    const result = readLayout(text);
    return result.ok ? 'ok' : `${result.fault.code}: ${sentence(result.fault)}`;
  };
  test('an empty text, broken JSON and plain words say where reading stops', () => {
    expect(code('')).toContain('layout-not-json');
    expect(code('{\n "format": evenplate }')).toMatch(/layout-not-json.*evenplate|layout-not-json.*line 2/);
    expect(code('{"format": "evenplate-layout",')).toContain('layout-not-json');
    expect(code('ISO-10303-21;')).toContain('layout-not-json');
  });
  test.each(['{}', '{"format":null}', '{"format":["evenplate-layout"]}'])('%s has no format', (text) => {
    expect(code(text)).toContain('layout-wrong-format');
  });
  test.each([
    ['null', 'null'],
    ['3', '3'],
    ['"x"', '"x"'],
    ['[]', 'a list of 0'],
    ['[[[[1]]]]', 'a list of 1'],
  ])('%s is not an object', (text, found) => {
    expect(code(text)).toBe(
      `layout-not-object: This is not a layout: the file holds ${found}, not an object.`,
    );
  });
  test('nesting a million deep is refused', () => {
    expect(code('['.repeat(1_000_000) + ']'.repeat(1_000_000))).toMatch(/layout-(not-object|not-json)/);
  });
  test('a byte order mark is skipped', () => {
    expect(readLayout(`\ufeff${JSON.stringify(sample())}`).ok).toBe(true);
  });
  test('a text of 100 MB is refused in one sentence', () => {
    expect(code(' '.repeat(100_000_000))).toMatch(/^file-too-large: The file holds 100 MB\.$/);
  });
});
