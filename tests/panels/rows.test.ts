/** The copies form: counts are whole numbers from 1 to 100, lengths as everywhere, and the button says what it will do. */
import { describe, expect, test } from 'vitest';
import { messageAdvice, messageText } from '../../src/layout/messages';
import { MOST_PARTS } from '../../src/layout/limits';
import { copiesOf, placeFault, placeWords, readRows, rowTexts } from '../../src/panels/parts/rows';

const sound = { countX: '3', countY: '2', pitchX_mm: '1 in', pitchY_mm: '-30,5' };
const rows = (countX: number, countY: number) => ({ countX, countY, pitchX_mm: 10, pitchY_mm: 10 });

test('sound texts are rows', () => {
  expect(readRows(sound)).toEqual({
    rows: { countX: 3, countY: 2, pitchX_mm: 25.4, pitchY_mm: -30.5 },
    faults: {},
  });
  expect(readRows(rowTexts(rows(100, 1))).rows).toEqual(rows(100, 1));
});

describe('a count', () => {
  test.each(['1000', '101', '0', '-3', '2.5', '1/2', 'abc', '1e1', '', ' ', 'NaN', '3 mm'])(
    'of “%s” is refused, and the message says what is accepted',
    (text) => {
      for (const key of ['countX', 'countY'] as const) {
        const read = readRows({ ...sound, [key]: text });
        expect(read.rows).toBeNull();
        expect(Object.keys(read.faults)).toEqual([key]);
        const fault = read.faults[key]!;
        const words = `${messageText(fault.code, fault.params)} ${messageAdvice(fault.code, fault.params)}`;
        expect(words).toContain('a whole number, 1 to 100');
      }
    },
  );
});

test.each(['1001', '-1000,001', '1e2', '2 m', 'wide'])('a pitch of “%s” is refused', (text) => {
  expect(Object.keys(readRows({ ...sound, pitchX_mm: text }).faults)).toEqual(['pitchX_mm']);
});

test('every field that cannot be read has its own fault', () => {
  const texts = { countX: '1000', countY: '-3', pitchX_mm: 'abc', pitchY_mm: '' };
  expect(Object.keys(readRows(texts).faults).sort()).toEqual(['countX', 'countY', 'pitchX_mm', 'pitchY_mm']);
});

test('the button counts copies without the original, in the singular for one', () => {
  expect(copiesOf(rows(3, 2))).toBe(5);
  expect(placeWords(rows(2, 1), 1)).toBe('Place 1 copy');
  expect(placeWords(rows(3, 2), 1)).toBe('Place 5 copies');
  expect(placeWords(rows(1, 2), 4)).toBe('Place 1 copy of each part');
  expect(placeWords(rows(1, 1), 1)).toBe('No copy to place');
  expect(placeWords(null, 1)).toBe('Place copies');
});

test('more parts than a layout may hold are refused before they are placed', () => {
  expect(placeFault(rows(11, 1), 1, MOST_PARTS - 10)).toBeNull();
  expect(placeFault(rows(12, 1), 1, MOST_PARTS - 10)?.params).toEqual({
    found: MOST_PARTS + 1,
    limit: MOST_PARTS,
  });
  expect(placeFault(rows(3, 1), 6, MOST_PARTS - 11)?.code).toBe('too-many-parts');
  expect(placeFault(null, 1, MOST_PARTS)).toBeNull();
});
