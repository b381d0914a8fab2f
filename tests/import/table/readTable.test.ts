/** Tables as people write them. Expected values: by hand; 1 in = 25.4 mm (agreement of 1959). */
import { describe, expect, it } from 'vitest';
import { AS_TOLD, readTable, type TableChoices } from '../../../src/import/table/readTable';

function read(text: string, choices: Partial<TableChoices> = {}) {
  const reading = readTable(text, { ...AS_TOLD, ...choices });
  if (!reading.ok) throw new Error(reading.fault.code);
  return reading.value;
}
const entries = (text: string, choices: Partial<TableChoices> = {}) =>
  read(text, choices).rows.map(({ entry }) => (entry.ok ? entry.value : entry.fault));
const fields = (text: string) => read(text).columns.map(({ field }) => field);

describe('columns', () => {
  it('are told by English and German headings, in any order, with units', () => {
    expect(
      entries('y [in];X (mm);Form;Nr.;Drehung °;Laser;Nähte;Zeitfaktor\n1;2,5;block;P01;90;L2;keine;1,2'),
    ).toEqual([
      { y: 25.4, x: 2.5, shape: 'block', id: 'P01', turn: 90, laser: 'L2', seams: 'none', timeFactor: 1.2 },
    ]);
    expect(entries('part,shape,x_cm,y in mm,turn_deg,time factor\nP01,block,1.5,-3,370,2')).toEqual([
      { id: 'P01', shape: 'block', x: 15, y: -3, turn: 10, timeFactor: 2 },
    ]);
    expect(entries('Teil\tx "\nP01\t1/4')).toEqual([{ id: 'P01', x: 6.35 }]);
  });

  it('stand under a title, too', () => {
    expect(entries('Parts of hall 3;;\n\nBauteil-Nr;x-Koordinate;y-Koordinate\nP01;1,5;2')).toEqual([
      { id: 'P01', x: 1.5, y: 2 },
    ]);
    expect(entries('P07\nP01\tblock\t1\t2')[0]).toEqual({ id: 'P07' });
  });

  it('are told by position where there are no headings', () => {
    expect(entries('P01\tblock\t10\t-20\t45\tL1\tfree\t1')).toEqual([
      { id: 'P01', shape: 'block', x: 10, y: -20, turn: 45, laser: 'L1', seams: 'free', timeFactor: 1 },
    ]);
  });

  it('are left out where nothing is known of them, stand twice, or tell who exposes beside who is pinned', () => {
    expect(fields('id;colour;x;x;y stone;laser;pinned')).toEqual([
      'id',
      null,
      'x',
      null,
      null,
      null,
      'laser',
    ]);
  });

  it('may be chosen: then no other column holds the same', () => {
    const text = 'id;x;mid\nP01;1;2';
    expect(entries(text, { fields: { 2: 'x' } })).toEqual([{ id: 'P01', x: 2 }]);
    expect(entries(text, { fields: { 1: null } })).toEqual([{ id: 'P01' }]);
  });
});

describe('numbers', () => {
  it('that may as well set thousands apart are told of, unless one of them cannot', () => {
    expect(read('id,x,y\nP01,"1,234",7\nP02,"-12,500",8')).toMatchObject({ decimal: ',', thousands: true });
    expect(read('id;x;y\nP01;1.234;2').thousands).toBe(true);
    for (const x of ['12,34', '0,123', '1234,567'])
      expect(read(`id;x\nP01;1,234\nP02;${x}`).thousands).toBe(false);
    expect(read('id;x\nP01;5').thousands).toBe(false);
  });

  it('have the decimal sign that most of them have; the others are refused', () => {
    const text = 'id;x;y\nA;1,5;2,5\nB;1.5;2,5';
    expect(read(text)).toMatchObject({ decimal: ',', mixed: true });
    expect(entries(text)).toEqual([
      { id: 'A', x: 1.5, y: 2.5 },
      { code: 'table-value', params: { column: 'x', found: '1.5' } },
    ]);
    expect(entries(text, { decimal: '.' })[1]).toMatchObject({
      code: 'table-value',
      params: { found: '2,5' },
    });
  });

  it('with a unit of their own do not take the one of the heading', () => {
    expect(entries('id;x in\nA;2 cm\nB;-0.5')).toEqual([
      { id: 'A', x: 20 },
      { id: 'B', x: -12.7 },
    ]);
  });

  it.each(['abc', '1e300', '1.234,5', 'NaN', 'Infinity', '200 m', '#REF!', '1 1'])(
    'x is not read from %s',
    (cell) => {
      expect(entries(`id;x\nA;${cell}`)).toEqual([
        { code: 'table-value', params: { column: 'x', found: cell } },
      ]);
    },
  );

  it.each(['0', '-1', '1001', '20 %'])('time factor is not read from %s', (cell) => {
    expect(entries(`id;time factor\nA;${cell}`)[0]).toMatchObject({ code: 'table-value' });
  });
});

describe('rows', () => {
  it('with more cells than columns are refused, for their commas may be decimal ones', () => {
    expect(entries('id,shape,x,y\nA,block,1,5,2,5')).toEqual([
      { code: 'table-cells', params: { found: 6, expected: 4 } },
    ]);
    expect(entries('id,x\nA,1,,')).toEqual([{ id: 'A', x: 1 }]);
  });

  it('say nothing where a cell is empty, and take a pin away with a dash', () => {
    expect(entries('id;x;laser\nA;;-\nB;1')).toEqual([
      { id: 'A', laser: null },
      { id: 'B', x: 1 },
    ]);
  });

  it('lose the apostrophe that keeps a text from being a formula, and a mark of byte order', () => {
    expect(entries("\uFEFFid;shape\n'=A1;'block")).toEqual([{ id: '=A1', shape: "'block" }]);
  });
});

it('a text beyond all tables is refused by its length', () => {
  expect(readTable('x'.repeat(2_000_001))).toMatchObject({ ok: false, fault: { code: 'table-too-long' } });
});
