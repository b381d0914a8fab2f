/** The foot of the sheet: blanks for actual times, lines to sign on, and what holds for every sheet. Millimetres. */
import { t, type Text } from '../../../language/index';
import type { Mm } from '../../../units/types';
import type { SheetContent } from '../types';
import { frame, LINE, NOTE, words, wrapWithin, type Measure } from './pen';

/** Height of the foot. */
export const FOOT: Mm = 54;
const BLANK: Mm = 11;
/** Blanks in a row. */
const IN_A_ROW = 5;
const SIGNATURE: Mm = 15;
const LABEL: Mm = 2.6;
const NOTES: Mm = 2.4;
const MOST_NOTE_LINES = 5;

interface Strip {
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
}

/** A row of boxes with a label in their upper corner and words under it. */
function boxes(
  cells: readonly (readonly [string, string])[],
  { x, y, width }: Strip,
  height: Mm,
  measure: Measure,
) {
  const each = width / cells.length;
  return cells.flatMap(([label, value], i) => {
    const left = x + i * each;
    const [line = ''] = wrapWithin(value, each - 3, 1, { size: 3.2, bold: false }, measure);
    return [
      frame(left, y, each, height),
      words(label, left + 1.5, y + 3.4, { size: LABEL, colour: NOTE }),
      words(line, left + 1.5, y + 7.4, { size: 3.2 }),
    ];
  });
}

/** Where a name is to be signed: name and date are written under what was typed. */
const SIGN: Text = 'signature, date';

export function drawFoot(content: SheetContent, { x, y, width }: Strip, measure: Measure): string[] {
  const top = y + 2;
  const rows = Array.from({ length: Math.ceil(content.blanks.length / IN_A_ROW) }, (_, row) =>
    content.blanks.slice(row * IN_A_ROW, (row + 1) * IN_A_ROW).map((label) => [label, ''] as const),
  );
  const sign = top + rows.length * BLANK;
  const each = width / content.signatures.length;
  const notes = sign + SIGNATURE + 1;
  const lines = wrapWithin(
    content.notes.join(' '),
    width,
    MOST_NOTE_LINES,
    { size: NOTES, bold: false },
    measure,
  );
  return [
    ...rows.flatMap((row, i) => boxes(row, { x, y: top + i * BLANK, width }, BLANK, measure)),
    ...boxes(content.signatures, { x, y: sign, width }, SIGNATURE, measure),
    ...content.signatures.map((_, i) =>
      words(t(SIGN), x + i * each + 1.5, sign + SIGNATURE - 1.2, { size: 2.2, colour: NOTE }),
    ),
    ...lines.map((line, i) => words(line, x, notes + NOTES + i * NOTES * LINE, { size: NOTES })),
  ];
}
