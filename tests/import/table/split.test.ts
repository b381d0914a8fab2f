/** Rows and cells, by hand; quoting after RFC 4180 [memory]. */
import { describe, expect, it } from 'vitest';
import { guessSeparator, splitTable } from '../../../src/import/table/split';

const cells = (text: string, separator: '\t' | ';' | ',') =>
  splitTable(text, separator).map((row) => row.cells);

describe('splitTable', () => {
  it('reads quoted separators, doubled quotes and line ends within quotes, and says where a row begins', () => {
    expect(splitTable('"a;b";"say ""x"""\r\n\r\n"two\r\nlines";2\n3;4', ';')).toEqual([
      { line: 1, cells: ['a;b', 'say "x"'] },
      { line: 3, cells: ['two\r\nlines', '2'] },
      { line: 5, cells: ['3', '4'] },
    ]);
  });

  it('keeps empty cells, leaves out empty rows, and takes blanks away', () => {
    expect(cells('a,,\n,,\n ,b , c', ',')).toEqual([
      ['a', '', ''],
      ['', 'b', 'c'],
    ]);
  });

  it('takes a quote within a cell, or one that never ends, as a letter', () => {
    expect(cells('1 1/2"\t2"\n"open\t3', '\t')).toEqual([
      ['1 1/2"', '2"'],
      ['"open', '3'],
    ]);
  });

  it('gives nothing for a text without text', () => {
    expect(cells('', ',')).toEqual([]);
    expect(cells(' \n\t\n', ',')).toEqual([]);
  });

  it('reads a long cell whose quote never ends without giving up', () => {
    expect(cells(`"${'a""'.repeat(200_000)};1`, ';')).toHaveLength(1);
  });
});

it.each([
  ['\t', 'id\tx\nP01\t1,5'],
  [';', 'id;x;y\nP01;1,5;2,5'],
  [';', 'id;x\nP01;1\nP02'],
  [';', 'P01;ring;12,5;10;0\nP02;ring;13,5;20'],
  [',', 'id,x\nP01,1.5'],
  [',', '"P;1",block\nP02,block'],
  [',', 'alone'],
])('guessSeparator: %j of %j', (separator, text) => {
  expect(guessSeparator(text)).toBe(separator);
});
