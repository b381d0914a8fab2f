/** The head of the sheet: name, state, checksum, revision, why it is not for use, and the figures. Millimetres. */
import { t } from '../../../language/index';
import type { Mm } from '../../../units/types';
import type { SheetContent } from '../types';
import { frame, INK, LINE, NOTE, rule, THICK, words, wrapWithin, type Measure } from './pen';

const STATE_WIDTH: Mm = 70;
const STATE_HEIGHT: Mm = 13;
const NAME: Mm = 6;
const CELL: Mm = 9.6;
const LABEL: Mm = 2.5;
const VALUE: Mm = 3.3;
const LEAST: Mm = 2.5;
const REASON: Mm = 3;
/** Cells in a row, as shares of the width. */
const CELLS = [0.27, 0.27, 0.18, 0.28] as const;
const MOST_REASONS = 3;

interface Strip {
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
}
export interface Drawn {
  readonly marks: readonly string[];
  readonly bottom: Mm;
}

/** Size at which one line of words fits a width. */
const fitted = (text: string, size: Mm, width: Mm, measure: Measure): Mm =>
  Math.min(size, (size * width) / Math.max(1e-6, measure(text, size, true)));

/** White on black where it is not for use, so that no grey print can hide it. */
function stateBox({ state, blocked, checksum }: SheetContent, x: Mm, y: Mm, measure: Measure): string[] {
  const size = fitted(state, 8, STATE_WIDTH - 6, measure);
  const middle = x + STATE_WIDTH / 2;
  return [
    frame(x, y, STATE_WIDTH, STATE_HEIGHT, THICK, blocked ? INK : 'none'),
    words(state, middle, y + STATE_HEIGHT / 2 + size * 0.36, {
      size,
      bold: true,
      align: 'middle',
      colour: blocked ? '#ffffff' : INK,
    }),
    words(t('checksum {checksum}', { checksum }), x + STATE_WIDTH, y + STATE_HEIGHT + 5, {
      size: 4,
      bold: true,
      align: 'end',
    }),
  ];
}

function identity({ name, revision }: SheetContent, { x, y, width }: Strip, measure: Measure): string[] {
  const room = width - STATE_WIDTH - 5;
  const names = wrapWithin(name, room, 2, { size: NAME, bold: true }, measure);
  const size = 3.4;
  const lines = wrapWithin(revision, room, 3 - names.length + 1, { size, bold: false }, measure);
  const under = y + names.length * NAME * LINE - 1;
  return [
    ...names.map((line, i) => words(line, x, y + NAME * 0.8 + i * NAME * LINE, { size: NAME, bold: true })),
    ...lines.slice(0, 2).map((line, i) => words(line, x, under + size + i * size * LINE, { size })),
  ];
}

/** The first reasons, one line each, and how many more there are. */
function reasonLines({ reasons }: SheetContent, width: Mm, measure: Measure): string[] {
  const first = reasons.slice(0, MOST_REASONS);
  const more = reasons.length - first.length;
  return first.flatMap((reason, i) => {
    const last = i === first.length - 1 && more > 0 ? t(' (and {more} more)', { more }) : '';
    return wrapWithin(
      t('Not for use: {reason}{more}', { reason, more: last }),
      width,
      2,
      { size: REASON, bold: true },
      measure,
    );
  });
}

interface ValueLine {
  readonly line: string;
  readonly size: Mm;
  /** Below the top of its cell. */
  readonly down: Mm;
}

/** One line, smaller where it is long; two lines of the least size where it is longer still. */
function valueLines(value: string, room: Mm, measure: Measure): ValueLine[] {
  const size = fitted(value, VALUE, room, measure);
  if (size >= LEAST) return [{ line: value, size, down: 7.4 }];
  const lines = wrapWithin(value, room, 2, { size: LEAST, bold: true }, measure);
  return lines.map((line, i) => ({
    line,
    size: LEAST,
    down: (lines.length > 1 ? 6.1 : 7.4) + i * LEAST * 1.1,
  }));
}

function factCells({ facts }: SheetContent, { x, y, width }: Strip, measure: Measure): Drawn {
  const marks: string[] = [];
  facts.forEach(([label, value], i) => {
    const column = i % CELLS.length;
    const left = x + width * CELLS.slice(0, column).reduce((sum, share) => sum + share, 0);
    const top = y + Math.floor(i / CELLS.length) * CELL;
    const room = width * CELLS[column]! - 2;
    marks.push(words(label, left + 1, top + 3.2, { size: LABEL, colour: NOTE }));
    marks.push(
      ...valueLines(value, room - 1, measure).map(({ line, size, down }) =>
        words(line, left + 1, top + down, { size, bold: true }),
      ),
    );
  });
  const rows = Math.ceil(facts.length / CELLS.length);
  const bottom = y + rows * CELL;
  for (let row = 0; row <= rows; row++)
    marks.push(rule(x, y + row * CELL, x + width, y + row * CELL, row % rows === 0 ? THICK / 2 : 0.1));
  return { marks, bottom };
}

export function drawHead(content: SheetContent, strip: Strip, measure: Measure): Drawn {
  const { x, y, width } = strip;
  const reasons = reasonLines(content, width, measure);
  const top = y + STATE_HEIGHT + 7.5;
  const cells = factCells(content, { x, width, y: top + reasons.length * REASON * LINE }, measure);
  return {
    marks: [
      ...identity(content, strip, measure),
      ...stateBox(content, x + width - STATE_WIDTH, y, measure),
      ...reasons.map((line, i) =>
        words(line, x, top + REASON * 0.7 + i * REASON * LINE, { size: REASON, bold: true }),
      ),
      ...cells.marks,
    ],
    bottom: cells.bottom,
  };
}
