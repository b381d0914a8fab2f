/**
 * Tables: what is written reads back as it was. RFC 4180 [published]; cells that a spreadsheet would run: OWASP, "CSV
 * Injection" [memory]; volumes and areas of rectangles [mathematics].
 */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { finished } from '../../../src/build/finished';
import { stateWords } from '../../../src/export/forUse';
import { csvText } from '../../../src/export/table/csv';
import { layersTable } from '../../../src/export/table/layersTable';
import { partsTable } from '../../../src/export/table/partsTable';
import type { Layout } from '../../../src/layout/types';
import { block, blocked, partAt, readCsv, recordsOf, strips } from '../plates';

const partsOf = (layout: Layout) =>
  recordsOf(csvText(finished(partsTable(layout, stateWords(analyse(layout))))));
const layersOf = (layout: Layout) => recordsOf(csvText(layersTable(analyse(layout))));

/** What a reader does that knows of the apostrophe. */
const bare = (cell: string): string => cell.replace(/^'/, '');

describe('CSV', () => {
  it('quotes as RFC 4180 says', () => {
    const text = csvText({
      header: ['a', 'b'],
      rows: [
        ['x, "y"', 1],
        ['line\r\nbreak', null],
      ],
    });
    expect(text).toBe('a,b\r\n"x, ""y""",1\r\n"line\r\nbreak",\r\n');
  });

  it('keeps a spreadsheet from running what a user typed, and numbers as numbers', () => {
    const cells = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', "'x", '＝1'];
    const text = csvText({ header: ['a'], rows: [...cells.map((cell) => [cell]), [-1]] });
    const read = readCsv(text).slice(1).flat();
    for (const cell of read.slice(0, -1)) expect(cell).toMatch(/^'/);
    expect(read.slice(0, -1).map(bare)).toEqual(cells);
    expect(read.at(-1)).toBe('-1');
  });

  it('gives back every text and, to the last digit, every number', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('=', '""', ',', '\r\n', ' a ', "'", '-'),
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(cell, fc.double({ noNaN: true, noDefaultInfinity: true })), { minLength: 1 }),
        (rows) => {
          const read = readCsv(csvText({ header: ['text', 'number'], rows })).slice(1);
          expect(read.map(([text]) => bare(text!))).toEqual(rows.map(([text]) => text));
          expect(read.map(([, number]) => Number(number) + 0)).toEqual(rows.map(([, number]) => number + 0));
        },
      ),
    );
  });
});

describe('the table of parts', () => {
  it('has a row for each laser and its range of heights', () => {
    const rows = partsOf(block());
    expect(
      rows.map(({ laser, from_mm, to_mm, first_layer, last_layer }) => [
        laser,
        from_mm,
        to_mm,
        first_layer,
        last_layer,
      ]),
    ).toEqual([
      ['L1', '0', '20', '1', '400'],
      ['L2', '0', '12', '1', '240'],
    ]);
    // 40 × 60 × 12 + 60 × 60 × 8 mm³, 20 × 60 × 12 mm³
    expect(Number(rows[0]!['volume_cm3'])).toBeCloseTo(57.6, 9);
    expect(Number(rows[1]!['volume_cm3'])).toBeCloseTo(14.4, 9);
    expect(rows[0]).toMatchObject({
      part: 'P01',
      shape: 'block',
      x_mm: '-30',
      y_mm: '-30',
      turn_deg: '0',
      height_mm: '20',
      state: 'draft',
    });
  });

  it('begins a new row where a laser leaves a part and comes back', () => {
    const zoning = [
      { from_mm: 0, zoning: strips(10) },
      { from_mm: 5, zoning: strips(40) },
      { from_mm: 10, zoning: strips(0) },
    ];
    const rows = partsOf(block({ zoning })).filter(({ laser }) => laser === 'L2');
    expect(rows.map(({ from_mm, to_mm }) => [from_mm, to_mm])).toEqual([
      ['0', '5'],
      ['10', '20'],
    ]);
    expect(Number(rows[1]!['volume_cm3'])).toBeCloseTo((30 * 60 * 10) / 1000, 9);
  });

  it('names what no laser exposes, and says that the plate is not for use', () => {
    const rows = partsOf(blocked());
    expect(rows.map(({ laser, from_mm, to_mm, state }) => [laser, from_mm, to_mm, state])).toEqual([
      ['unassigned', '0', '12', 'NOT FOR USE'],
      ['L1', '0', '20', 'NOT FOR USE'],
    ]);
    expect(Number(rows[0]!['volume_cm3'])).toBeCloseTo(14.4, 9);
  });

  it('survives names that are formulas', () => {
    const rows = partsOf(block({ parts: [partAt('=HYPERLINK("x")', 'block', -30, -30)] }));
    expect(rows[0]!['part']).toBe(`'=HYPERLINK("x")`);
  });

  test('of an empty plate is its header', () => {
    expect(partsOf(block({ parts: [] }))).toEqual([]);
  });
});

describe('the table of layers', () => {
  it('has a row for each layer with the area of each laser', () => {
    const rows = layersOf(block());
    expect(rows).toHaveLength(400);
    expect(rows.map(({ layer }) => Number(layer))).toEqual(Array.from({ length: 400 }, (_, i) => i + 1));
    expect(rows[239]!['z_mm']).toBe('12');
    // Half of 0.1 mm of overlap along a seam of 60 mm goes to either side.
    expect(Number(rows[0]!['L1 area_mm2'])).toBeCloseTo(40 * 60 + 3, 6);
    expect(Number(rows[0]!['L2 area_mm2'])).toBeCloseTo(20 * 60 + 3, 6);
    expect(Number(rows[0]!['double_mm2'])).toBeCloseTo(6, 6);
    expect(Number(rows[240]!['L1 area_mm2'])).toBeCloseTo(3600, 6);
    expect(Number(rows[240]!['L2 area_mm2'])).toBe(0);
  });

  it('balances its books in every row', () => {
    for (const layout of [block(), blocked()])
      for (const row of layersOf(layout)) {
        const scanned = layout.machine.lasers.reduce((sum, { id }) => sum + Number(row[`${id} area_mm2`]), 0);
        const booked = scanned - Number(row['double_mm2']) + Number(row['unassigned_mm2']);
        expect(booked).toBeCloseTo(3600, 3);
        expect(Number(row['section_mm2'])).toBeCloseTo(3600, 3);
      }
  });
});
