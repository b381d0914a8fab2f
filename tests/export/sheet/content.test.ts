/**
 * The words of the sheet. Tall one was computed by hand (process numbers common practice, no source): quadrants 109.113 h;
 * each of L1 to L3 exposes four blocks of 50 × 50 × 60 mm (600 cm³), L4 one of 100 × 100 × 240 (2400 cm³).
 */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { sheetContent } from '../../../src/export/sheet/content';
import { sheetFacts } from '../../../src/export/sheet/facts';
import type { SheetContent } from '../../../src/export/sheet/types';
import { rangeWords } from '../../../src/export/sheet/words';
import { checksum } from '../../../src/layout/checksum';
import type { Layout, Revision, Schedule } from '../../../src/layout/types';
import { divided, example, WHOLE_FIELD } from './plates';

/** Narrow no-break spaces before units read as spaces. */
const plain = (content: SheetContent): SheetContent =>
  JSON.parse(JSON.stringify(content).replaceAll('\u202f', ' ')) as SheetContent;
const contentOf = (layout: Layout): SheetContent =>
  plain(sheetContent(analyse(layout), sheetFacts(layout), '2026-11-25 22:00'));
const tallOne = example('tall-one');
const always = [['00:00', '24:00']] as const;
const schedule: Schedule = {
  start: '2026-11-27T16:00',
  attended: { mon: always, tue: always, wed: [], thu: always, fri: always, sat: always, sun: always },
  feedFilled_l: 1,
  overflowFilled_l: 0,
  residue_laserH: 0,
  correction: { factor: 1.25, spread_pct: 8 },
};
const revision: Revision = {
  name: 'B',
  date: '2026-11-26',
  reason: 'tall one moved',
  state: 'released',
  author: 'A. Müller',
  reviewer: 'K. Ødegård',
  derivedFrom: null,
};
const valueOf = (content: SheetContent, label: string): string | undefined =>
  content.facts.find(([name]) => name === label)?.[1];
const switchedOff = (layout: Layout, id: string): Layout => {
  const lasers = layout.machine.lasers.map((laser) => (laser.id === id ? { ...laser, on: false } : laser));
  return { ...layout, machine: { ...layout.machine, lasers } };
};

describe('identity', () => {
  it('says name, revision, state, checksum and who planned and reviewed', () => {
    const content = contentOf({ ...tallOne, revision });
    expect(content.name).toBe(tallOne.name);
    expect(content.state).toBe('RELEASED');
    expect(content.blocked).toBe(false);
    expect(content.reasons).toEqual([]);
    expect(content.revision).toBe('revision B, released 2026-11-26: tall one moved');
    expect(content.checksum).toBe(checksum(tallOne));
    expect(content.signatures.slice(0, 2)).toEqual([
      ['planned', 'A. Müller'],
      ['reviewed', 'K. Ødegård'],
    ]);
  });

  it('a layout that nobody filed is a draft; a superseded one is not for use', () => {
    expect(contentOf(tallOne).state).toBe('DRAFT, NOT RELEASED');
    const old = contentOf({ ...tallOne, revision: { ...revision, state: 'superseded' } });
    expect(old.state).toBe('NOT FOR USE');
    expect(old.reasons).toEqual(['Revision B is superseded.']);
  });

  it('a plate whose L4 is off is not for use, whatever its revision says: 2400 cm³ are exposed by nobody', () => {
    const content = contentOf(switchedOff({ ...tallOne, revision }, 'L4'));
    expect(content.state).toBe('NOT FOR USE');
    expect(content.blocked).toBe(true);
    expect(content.reasons.join(' ')).toContain(tallOne.parts[12]!.id);
    expect(valueOf(content, 'build, estimate')).toContain('without 2400 cm³');
    expect(valueOf(content, 'lasers on')).toBe('L1, L2, L3 (off: L4)');
    expect(content.parts.rows[12]!.body).toBe('NO LASER 0–240');
  });

  it('what nobody has checked is not for use', () => {
    const unchecked = { ...analyse(tallOne), checks: 0, problems: [] };
    const content = sheetContent(unchecked, sheetFacts(tallOne), '');
    expect(content.state).toBe('NOT FOR USE');
    expect(content.reasons).toEqual(['The plate has not been checked.']);
  });
});

describe('hours', () => {
  it('carry factor and spread: 109.113 h × 1.25 = 136.39 h, 8 % of it 10.91 h; from Friday 16:00 on', () => {
    const content = contentOf({ ...tallOne, schedule });
    expect(valueOf(content, 'build, estimate')).toBe('136.4 h ± 10.91 h');
    expect(valueOf(content, 'start')).toBe('Fri 2026-11-27 16:00');
    // 136 h 23 min after it
    expect(valueOf(content, 'end, estimate')).toBe('Thu 2026-12-03 08:23');
    expect(content.events.rows.at(-1)).toEqual({
      head: 'End of the build',
      body: 'Thu 2026-12-03 08:23, after layer 4000, 136.4 h ± 10.91 h',
      tick: true,
    });
  });

  it('without a calendar have no spread, and no events are known', () => {
    const content = contentOf({ ...tallOne, schedule: null });
    expect(valueOf(content, 'build, estimate')).toBe('109.1 h, spread unknown');
    expect(valueOf(content, 'start')).toBe('not planned');
    expect(content.events.rows).toEqual([]);
    expect(content.events.hint).toContain('No start is planned');
    expect(content.cautions.rows.length).toBeGreaterThanOrEqual(3);
  });

  it('an event in hours when nobody is there says so', () => {
    const night = { ...schedule, attended: { ...schedule.attended, thu: [] } };
    expect(contentOf({ ...tallOne, schedule: night }).events.rows.at(-1)!.body).toContain('NOBODY THERE');
  });
});

describe('tables', () => {
  it('one row per part: which laser from where to where', () => {
    const { rows } = contentOf(tallOne).parts;
    expect(rows).toHaveLength(13);
    expect(rows[0]).toEqual({ head: tallOne.parts[0]!.id, body: 'L1 0–60' });
    expect(rows[12]).toEqual({ head: tallOne.parts[12]!.id, body: 'L4 0–240' });
  });

  it('a part that changes hands at 60 mm says each laser’s heights', () => {
    const stepped = { ...tallOne, zoning: [...tallOne.zoning, { from_mm: 60, zoning: WHOLE_FIELD }] };
    expect(contentOf(stepped).parts.rows[12]!.body).toBe('L1 60–240; L2 60–240; L3 60–240; L4 0–240');
  });

  it('the ring is cut four times across its wall of 30 mm', () => {
    const ring = example('ring');
    const { seams } = contentOf(ring);
    expect(seams.rows).toHaveLength(1);
    expect(seams.rows[0]!.body.split('; ')).toEqual([
      'L1/L2 30.00 mm, z 0–120',
      'L1/L3 30.00 mm, z 0–120',
      'L2/L4 30.00 mm, z 0–120',
      'L3/L4 30.00 mm, z 0–120',
    ]);
    expect(seams.hint).toContain('1 part is cut; at most 4 seams and 120.0 mm in one layer');
    expect(contentOf(tallOne).seams.hint).toBe('No part is cut.');
  });

  it('many ranges are told by their number', () => {
    const ranges = [0, 10, 20, 30].map((from_mm) => ({ from_mm, to_mm: from_mm + 5 }));
    expect(rangeWords(ranges)).toBe('0–35 in 4 ranges');
    expect(rangeWords(ranges.slice(0, 2))).toBe('0–5 and 10–15');
    expect(rangeWords([])).toBe('');
  });
});

describe('if a laser fails', () => {
  const bodies = (layout: Layout): string[] => contentOf(layout).outages.rows.map(({ body }) => body);

  it('says what stays unexposed and what dividing anew comes to: 68.37 to 68.38 h', () => {
    const [first, , , last] = bodies(tallOne);
    const names = tallOne.parts.map(({ id }) => id);
    expect(first).toContain(`Unexposed as zoned: ${names.slice(0, 4).join(', ')} (600.0 cm³).`);
    expect(last).toContain(`${names[12]} (2400 cm³)`);
    expect(first).toMatch(/all exposed: about 68\.3[78] h\./);
  });

  it('corrects the hours: 68.37 h × 1.25 = 85.47 h', () => {
    expect(bodies({ ...tallOne, schedule })[0]).toContain('about 85.47 h');
  });

  it('the zones may stay where everybody reaches all; the only laser on leaves nobody', () => {
    expect(bodies(divided(tallOne, WHOLE_FIELD))[0]).toMatch(
      /^The others expose all within the present zones/,
    );
    const only = ['L2', 'L3', 'L4'].reduce(switchedOff, tallOne);
    expect(bodies(only)).toEqual(['No other laser is on: the plate must stop.']);
  });

  it('the plate must stop where the others do not reach what is left', () => {
    const near = (x: number, y: number) => ({ circle_mm: [x, y, 150] as const });
    const reaches = [near(-100, -100), near(100, -100), near(-100, 100), near(100, 100)];
    const lasers = tallOne.machine.lasers.map((laser, l) => ({ ...laser, reach: reaches[l]! }));
    const [, , , last] = bodies({ ...tallOne, machine: { ...tallOne.machine, lasers } });
    expect(last).toMatch(/The plate must stop\.$/);
  });
});

it('says that figures for several lasers are unvalidated, and who decides', () => {
  const notes = contentOf(tallOne).notes.join(' ');
  expect(notes).toContain('unvalidated by measurement');
  expect(notes).toContain('trained people decide');
});
