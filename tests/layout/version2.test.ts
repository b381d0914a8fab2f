/**
 * Version 2 of the layout file: divisions over height and a schedule. What it may hold, its written form, and what
 * stays of version 1: its form and its checksum. Dates by the Gregorian calendar [mathematics].
 */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checksum } from '../../src/layout/checksum';
import { messageText } from '../../src/layout/messages';
import { readLayout, readLayoutValue } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { writeLayout } from '../../src/layout/write';
import { changed, FIELD, QUADRANTS, sample, sample2, SCHEDULE } from './sample';

type Loose = Record<string, unknown>;

function value(json: unknown): Layout {
  const result = readLayoutValue(json);
  if (!result.ok) throw new Error(messageText(result.fault.code, result.fault.params));
  return result.value;
}
describe('a file of version 2', () => {
  test('holds divisions over height and a schedule', () => {
    const layout = value(sample2());
    expect(layout.version).toBe(3);
    expect(layout.revision).toBeNull();
    expect(layout.zoning).toEqual([
      { from_mm: 0, zoning: QUADRANTS },
      { from_mm: 60, zoning: FIELD },
    ]);
    expect(layout.schedule).toEqual(SCHEDULE);
  });

  test('needs no schedule, and days without hours may be left out', () => {
    expect(value(changed(['schedule'], undefined, sample2())).schedule).toBeNull();
    expect(value(changed(['schedule'], null, sample2())).schedule).toBeNull();
    const json = changed(['schedule', 'attended'], { fri: [['06:00', '22:00']] }, sample2());
    expect(value(json).schedule?.attended).toEqual({
      mon: [],
      tue: [],
      wed: [],
      thu: [],
      fri: [['06:00', '22:00']],
      sat: [],
      sun: [],
    });
  });

  test('keeps heights to 1 µm', () => {
    const json = changed(['zoning', 1, 'from_mm'], 59.99951, sample2());
    expect(value(json).zoning[1]?.from_mm).toBe(60);
  });

  test('gives every division its defaults', () => {
    const { sharedBand_mm: _band, ...bare } = QUADRANTS;
    const json = changed(['zoning', 0, 'zoning'], bare, sample2());
    expect(value(json).zoning[0]?.zoning).toMatchObject({ sharedBand_mm: 0 });
  });

  test('may divide by one step only, or alike in two', () => {
    const one = changed(['zoning'], [{ from_mm: 0, zoning: FIELD }], sample2());
    expect(value(one).zoning).toHaveLength(1);
    const twice = [
      { from_mm: 0, zoning: FIELD },
      { from_mm: 0.001, zoning: FIELD },
    ];
    expect(value(changed(['zoning'], twice, sample2())).zoning).toEqual(twice);
  });

  test.each(['2024-02-29T00:00', '2000-02-29T23:59', '2026-02-28T12:30', '2026-12-31T23:59'])(
    'may start at %s',
    (start) => {
      expect(value(changed(['schedule', 'start'], start, sample2())).schedule?.start).toBe(start);
    },
  );

  test.each([
    ['all day', [['00:00', '24:00']]],
    [
      'that touch',
      [
        ['06:00', '14:00'],
        ['14:00', '22:00'],
      ],
    ],
    ['of a minute', [['23:59', '24:00']]],
  ])('may be attended in hours %s', (_, ranges) => {
    const json = changed(['schedule', 'attended', 'sun'], ranges, sample2());
    expect(value(json).schedule?.attended.sun).toEqual(ranges);
  });
});

describe('a file of version 1', () => {
  test('is the same layout as the file of version 2 that says the same', () => {
    const json = sample();
    const steps1 = [{ from_mm: 0, zoning: json['zoning'] }];
    expect(value(json)).toEqual(value({ ...json, version: 2, zoning: steps1, schedule: null }));
  });
});

describe('a written file', () => {
  const written = (json: unknown): Loose => JSON.parse(writeLayout(value(json))) as Loose;

  test('has version 1 where version 1 can hold it', () => {
    const one = changed(['zoning'], [{ from_mm: 0, zoning: QUADRANTS }], sample2());
    const file = written({ ...one, schedule: null });
    expect(file).toMatchObject({ version: 1, zoning: QUADRANTS });
    expect(file).not.toHaveProperty('schedule');
  });

  test('has version 2 for a second step or a schedule', () => {
    expect(written(changed(['schedule'], null, sample2()))['version']).toBe(2);
    const one = changed(['zoning'], [{ from_mm: 0, zoning: QUADRANTS }], sample2());
    expect(written(one)).toMatchObject({ version: 2, zoning: [{ from_mm: 0 }], schedule: SCHEDULE });
  });

  test('keeps the order of keys from one reading to the next', () => {
    const keys = ['format', 'version', 'name', 'note', 'machine', 'process', 'shapes', 'parts', 'zoning'];
    expect(Object.keys(written(sample()))).toEqual([...keys, 'allocation', 'limits']);
    expect(Object.keys(written(sample2()))).toEqual([...keys, 'allocation', 'limits', 'schedule']);
  });

  const zoning = fc.constantFrom<Loose>(
    FIELD,
    QUADRANTS,
    { strategy: 'strips', run_deg: 30, lines_mm: [-20, 55.5], sharedBand_mm: 0, lasers: ['L3', 'L1', 'L1'] },
    { strategy: 'drawn', zones: [{ lasers: ['L2'], rings: [{ circle_mm: [0, 10, 40] }] }] },
  );
  const heights = fc
    .uniqueArray(fc.integer({ min: 1, max: 400_000 }), { maxLength: 6 })
    .map((micrometres) => [0, ...micrometres.sort((a, b) => a - b)].map((um) => um / 1000));
  const manySteps = heights.chain((all) =>
    fc.tuple(...all.map((from_mm) => fc.record({ from_mm: fc.constant(from_mm), zoning }))),
  );
  const minutes = (n: number): string =>
    `${String(Math.floor(n / 60)).padStart(2, '0')}:${String(n % 60).padStart(2, '0')}`;
  const day = fc
    .uniqueArray(fc.integer({ min: 0, max: 1440 }), { maxLength: 8 })
    .map((all) => all.sort((a, b) => a - b).map(minutes))
    .map((all) => Array.from({ length: all.length >> 1 }, (_, i) => [all[2 * i], all[2 * i + 1]]));
  const schedule = fc.record({
    start: fc
      .date({ min: new Date('1901-01-01T00:00Z'), max: new Date('2998-12-31T00:00Z'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 16)),
    attended: fc.record({ mon: day, tue: day, wed: day, thu: day, fri: day, sat: day, sun: day }),
    feedFilled_l: fc.double({ min: 0, max: 100, noNaN: true }),
    overflowFilled_l: fc.double({ min: 0, max: 100, noNaN: true }),
    residue_laserH: fc.double({ min: 0, max: 1000, noNaN: true }),
    correction: fc.record({
      factor: fc.double({ min: 0.5, max: 2, noNaN: true }),
      spread_pct: fc.double({ min: 0, max: 50, noNaN: true }),
    }),
  });

  test('brings back what was written, whatever the steps and the schedule', () => {
    fc.assert(
      fc.property(manySteps, fc.option(schedule), (all, when) => {
        const layout = value({ ...sample2(), zoning: all, schedule: when });
        expect(layout.zoning).toEqual(all);
        const text = writeLayout(layout);
        const again = readLayout(text);
        expect(again).toEqual({ ok: true, value: layout });
        expect(again.ok && writeLayout(again.value)).toBe(text);
        expect(again.ok && checksum(again.value)).toBe(checksum(layout));
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  test('has another checksum for another height, division or start', () => {
    const of = (json: unknown): string => checksum(value(json));
    const all = [
      of(sample2()),
      of(changed(['zoning', 1, 'from_mm'], 60.001, sample2())),
      of(changed(['zoning', 1, 'zoning'], QUADRANTS, sample2())),
      of(changed(['schedule', 'start'], '2026-11-27T16:01', sample2())),
      of(changed(['schedule'], null, sample2())),
    ];
    expect(new Set(all).size).toBe(all.length);
    expect(of(changed(['note'], 'other', sample2()))).toBe(all[0]);
  });
});

// As the program reported them when version 1 was the only version of the file.
describe('examples keep the checksum that they had under version 1', () => {
  test.each([
    ['demo', '4532415f99f5'],
    ['downwind', 'ac21d40b1df8'],
    ['equal-totals', '7775dd293fdb'],
    ['mushroom', '61558a967ae2'],
    ['nist-plate', '5af0848ba04f'],
    ['nist-strips-x', '55285b91d84c'],
    ['nist-strips-y', '0bd6142dbc17'],
    ['ring', '81dcc34fe8fe'],
    ['ring-strips', '4648724d0580'],
    ['tall-one', 'fa17219f6e22'],
    ['tall-one-strips', '7e160c444413'],
    ['thin-walls', '52f68f499b56'],
    ['whole-parts', 'e7034e181f83'],
  ])('%s', (name, expected) => {
    const text = readFileSync(new URL(`../../shared/examples/${name}.json`, import.meta.url), 'utf8');
    const result = readLayout(text);
    expect(result.ok && checksum(result.value)).toBe(expected);
  });
});
