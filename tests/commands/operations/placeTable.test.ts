/** What a table does to the small plate. Expected values: by hand. */
import { describe, expect, it } from 'vitest';
import { placeTable, planTable, type OnTaken } from '../../../src/commands/operations/placeTable';
import { csvText, PLAIN_CSV, type CsvForm } from '../../../src/export/table/csv';
import { partsTable } from '../../../src/export/table/partsTable';
import { finished } from '../../../src/build/finished';
import { readTable } from '../../../src/import/table/readTable';
import { demoLayout } from '../../../src/layout/demo';
import type { Layout } from '../../../src/layout/types';
import { part, smallPlate } from '../../store/plates';

function plan(
  text: string,
  onTaken: OnTaken = 'change',
  layout: Layout = smallPlate(),
  locked: string[] = [],
) {
  const reading = readTable(text);
  if (!reading.ok) throw new Error(reading.fault.code);
  return planTable(layout, reading.value.rows, onTaken, locked);
}
const told = (text: string, onTaken: OnTaken = 'change') =>
  plan(text, onTaken).map(({ effect, part: to, remark }) => [effect, to?.id ?? null, remark?.code ?? null]);
function placed(text: string, onTaken: OnTaken = 'change', layout: Layout = smallPlate()): Layout {
  const next = placeTable(layout, plan(text, onTaken, layout));
  if (!next.ok) throw new Error(next.fault.code);
  return next.value;
}

describe('a row', () => {
  it('changes the part of its number and leaves what it does not tell', () => {
    const before = smallPlate();
    const after = placed('id;x;turn;laser\nP02;1,5;;2\nP01;-60;;', 'change', before);
    expect(after.parts).toEqual([
      before.parts[0],
      { ...part('P02', 1.5, -60), laser: 'L2' },
      before.parts[2],
    ]);
    expect(after.parts[0]).toBe(before.parts[0]);
  });

  it('adds a part under its number, or under the first free one that no other row has', () => {
    const text = 'id;shape;x;y\n;BLOCK;0;0\nP04;block;30;0\nBow 7;stepped;0;30';
    expect(placed(text).parts.slice(3)).toEqual([
      part('P05', 0, 0),
      part('P04', 30, 0),
      part('Bow 7', 0, 30, 'stepped'),
    ]);
  });

  it('gets a new number where its own is taken or used twice, and says so; the same again counts once', () => {
    const text = 'id;shape;x;y\nP01;block;0;0\nQ1;block;30;0\nQ1;block;60;0\nQ1;block;30;0';
    expect(told(text, 'add')).toEqual([
      ['add', 'P04', 'table-id-taken'],
      ['add', 'Q1', null],
      ['add', 'P05', 'table-id-twice'],
      ['repeat', null, 'table-repeated'],
    ]);
    expect(told(text)[0]).toEqual(['change', 'P01', null]);
  });

  it.each([
    ['table-unknown-shape', 'Q1;propeller;0;0;'],
    ['table-unknown-laser', 'Q1;block;0;0;L99'],
    ['table-unknown-laser', 'P01;;;;9'],
    ['table-no-shape', 'Q1;;0;0;'],
    ['table-no-place', 'Q1;block;;0;'],
    ['table-value', 'Q1;block;left;0;'],
    ['table-no-id', `${'Q'.repeat(65)};block;0;0;`],
  ])('is refused with %s: %s', (code, row) => {
    expect(told(`id;shape;x;y;laser\n${row}`)).toEqual([['refuse', null, code]]);
  });

  it('does not move a locked part, but may change its pin', () => {
    const effects = (text: string) =>
      plan(text, 'change', smallPlate(), ['P01']).map(({ effect, remark }) => [effect, remark?.code]);
    expect(effects('id;x\nP01;3')).toEqual([['refuse', 'table-locked']]);
    expect(effects('id;x;laser\nP01;-60;L1')).toEqual([['change', undefined]]);
  });
});

it('a table that changes nothing gives the very layout back', () => {
  const before = smallPlate();
  const after = placeTable(before, plan('id;x\nP01;-60', 'change', before));
  expect(after.ok && after.value).toBe(before);
});

it('more parts than a layout may hold are refused as a whole', () => {
  const rows = Array.from({ length: 4998 }, (_, i) => `Q${i};block;0;0`).join('\n');
  expect(placeTable(smallPlate(), plan(`id;shape;x;y\n${rows}`))).toEqual({
    ok: false,
    fault: { code: 'too-many-parts', params: { found: 5001, limit: 5000 } },
  });
});

describe('the table that is handed over comes back', () => {
  const forms: readonly CsvForm[] = [
    PLAIN_CSV,
    { separator: ';', decimal: '.' },
    { separator: ';', decimal: ',' },
  ];
  const pinned = (): Layout => {
    const demo = demoLayout();
    const parts = demo.parts.map((one, i) =>
      i === 1 ? { ...one, id: '=1+1', at_mm: [0.125, -31.001] as const, turn_deg: 12.345, laser: 'L2' } : one,
    );
    return { ...demo, parts };
  };
  it.each(forms)('%j', (form) => {
    const layout = pinned();
    const text = csvText(finished(partsTable(layout, 'draft')), form);
    const bare = { ...layout, parts: [] };
    const factorless = layout.parts.map((one) => ({ ...one, timeFactor: 1 }));
    expect(placed(text, 'change', bare).parts).toEqual(factorless);
    expect(plan(text, 'change', layout).filter(({ effect }) => !['same', 'repeat'].includes(effect))).toEqual(
      [],
    );
  });
});
