// What is malformed in a file of version 2, or does not belong into one of version 1, is refused: what was found, where,
// and what is accepted. Dates by the Gregorian calendar [mathematics].
import { describe, expect, test } from 'vitest';
import { messageAdvice, messageText } from '../../src/layout/messages';
import { readLayoutValue } from '../../src/layout/read';
import type { Fault } from '../../src/layout/result';
import { changed, FIELD, QUADRANTS, sample2 } from './sample';

function fault(json: unknown): Fault {
  const result = readLayoutValue(json);
  if (result.ok) throw new Error('the layout was accepted');
  return result.fault;
}
const sentences = ({ code, params }: Fault): string =>
  `${messageText(code, params)} ${messageAdvice(code, params)}`;

const DATE = '"2026-11-27T16:00"';
const CLOCK = '"00:00" to "24:00"';
const RANGES = 'ascend and do not overlap';
const start = ['schedule', 'start'];
const monday = ['schedule', 'attended', 'mon'];
const steps = (...heights: unknown[]) => heights.map((from_mm) => ({ from_mm, zoning: FIELD }));
// One row per kind of malformed file: the change, the code, and words the sentences have to hold.
const refusals: readonly [string, readonly (string | number)[], unknown, string, readonly string[]][] = [
  ['29 February of a common year', start, '2026-02-29T16:00', 'layout-wrong-value', [DATE, '2026-02-29']],
  ['29 February 1900', start, '1900-02-29T16:00', 'layout-wrong-value', [DATE]],
  ['31 April', start, '2026-04-31T16:00', 'layout-wrong-value', [DATE]],
  ['month 13', start, '2026-13-01T16:00', 'layout-wrong-value', [DATE]],
  ['day 0', start, '2026-11-00T16:00', 'layout-wrong-value', [DATE]],
  ['hour 24 of a date', start, '2026-11-27T24:00', 'layout-wrong-value', [DATE]],
  ['a date alone', start, '2026-11-27', 'layout-wrong-value', [DATE]],
  ['a date with a zone', start, '2026-11-27T16:00Z', 'layout-wrong-value', [DATE]],
  ['a date with seconds', start, '2026-11-27T16:00:00', 'layout-wrong-value', [DATE]],
  ['a date as a number', start, 1795795200, 'layout-wrong-value', ['schedule.start', DATE]],
  [
    '24:01',
    [...monday, 0, 1],
    '24:01',
    'layout-wrong-value',
    ['schedule.attended.mon[0][1]', '24:01', CLOCK],
  ],
  ['6:00', [...monday, 0, 0], '6:00', 'layout-wrong-value', ['schedule.attended.mon[0][0]', CLOCK]],
  ['12:60', [...monday, 0, 0], '12:60', 'layout-wrong-value', [CLOCK]],
  ['a range of one time', [...monday, 0], ['06:00'], 'layout-wrong-value', ['schedule.attended.mon[0]']],
  [
    'a range that runs backwards',
    monday,
    [['22:00', '06:00']],
    'layout-wrong-value',
    ['schedule.attended.mon[0]', '["22:00", "06:00"]', RANGES],
  ],
  ['a range without length', monday, [['06:00', '06:00']], 'layout-wrong-value', [RANGES]],
  [
    'ranges that overlap',
    monday,
    [
      ['06:00', '14:00'],
      ['13:59', '22:00'],
    ],
    'layout-wrong-value',
    ['schedule.attended.mon[1]', '["13:59", "22:00"]', RANGES],
  ],
  [
    'ranges that descend',
    monday,
    [
      ['14:00', '22:00'],
      ['06:00', '12:00'],
    ],
    'layout-wrong-value',
    ['schedule.attended.mon[1]', RANGES],
  ],
  [
    'an unknown day',
    ['schedule', 'attended', 'day'],
    [],
    'layout-unknown-key',
    ['"day"', 'schedule.attended'],
  ],
  ['a missing correction', ['schedule', 'correction'], undefined, 'layout-missing-key', ['correction']],
  [
    'a factor of 0',
    ['schedule', 'correction', 'factor'],
    0,
    'layout-wrong-value',
    ['correction.factor', '0'],
  ],
  [
    'a filling below 0',
    ['schedule', 'feedFilled_l'],
    -1,
    'layout-wrong-value',
    ['schedule.feedFilled_l', '-1'],
  ],
  ['a list as schedule', ['schedule'], [], 'layout-wrong-value', ['schedule', 'an object']],
  ['a list as attended days', ['schedule', 'attended'], [], 'layout-wrong-value', ['schedule.attended']],
  ['no step', ['zoning'], [], 'layout-wrong-value', ['zoning', 'at least one']],
  [
    'a first step above the platform',
    ['zoning'],
    steps(5, 9),
    'layout-wrong-value',
    ['zoning[0].from_mm', '5', '0'],
  ],
  [
    'steps that descend',
    ['zoning'],
    steps(0, 60, 20),
    'layout-not-ascending',
    ['zoning[2].from_mm', '20', '60'],
  ],
  ['steps at one height', ['zoning'], steps(0, 60, 60), 'layout-not-ascending', ['zoning[2].from_mm']],
  [
    'steps within half a micrometre',
    ['zoning'],
    steps(0, 60, 60.0004),
    'layout-not-ascending',
    ['zoning[2]'],
  ],
  ['a step below the platform', ['zoning'], steps(0, -1), 'layout-wrong-value', ['zoning[1].from_mm', '-1']],
  ['a height as text', ['zoning'], steps(0, '60'), 'layout-wrong-value', ['zoning[1].from_mm', '"60"']],
  [
    'a step without a height',
    ['zoning'],
    [{ zoning: FIELD }],
    'layout-missing-key',
    ['from_mm', 'zoning[0]'],
  ],
  ['one division as in version 1', ['zoning'], FIELD, 'layout-wrong-value', ['zoning', 'list']],
  [
    'an unknown strategy',
    ['zoning', 1, 'zoning', 'strategy'],
    'rings',
    'layout-wrong-value',
    ['zoning[1]', '"rings"'],
  ],
  [
    'a laser nobody knows',
    ['zoning', 0, 'zoning', 'lasers', 2],
    'L9',
    'layout-unknown-laser',
    ['zoning[0].zoning.lasers[2]', '"L9"'],
  ],
  [
    'a laser too few in the upper step',
    ['zoning', 1, 'zoning'],
    { ...QUADRANTS, lasers: ['L1', 'L2', 'L3'] },
    'layout-laser-count',
    ['zoning[1].zoning.lasers', '3 lasers for 4 zones'],
  ],
];

describe('what is malformed in version 2 is refused with what, where and what is accepted', () => {
  test.each(refusals)('%s', (_, path, replacement, code, words) => {
    const found = fault(changed(path, replacement, sample2()));
    expect(found.code).toBe(code);
    for (const word of words) expect(sentences(found)).toContain(word);
    expect(sentences(found)).not.toMatch(/[?{}]|undefined/);
  });
});

describe('a file of version 1', () => {
  test('knows no schedule', () => {
    const found = fault(changed(['schedule'], null));
    expect(found.code).toBe('layout-unknown-key');
    expect(sentences(found)).toContain('"schedule"');
  });

  test('knows no steps', () => {
    const found = fault(changed(['zoning'], [{ from_mm: 0, zoning: FIELD }]));
    expect(found).toMatchObject({ code: 'layout-wrong-value', params: { path: 'zoning' } });
    expect(sentences(found)).toContain('version 2');
  });

  test('has its faults reported where they stand in it', () => {
    const found = fault(changed(['zoning', 'lasers', 2], 'L9'));
    expect(found).toMatchObject({ code: 'layout-unknown-laser', params: { path: 'zoning.lasers[2]' } });
  });
});
