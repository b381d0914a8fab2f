/**
 * A table as a file. UTF-8; where it holds letters beyond ASCII a byte order mark stands in front, without which
 * spreadsheets misread them (common practice, no source).
 */
import type { FileMade } from './types';

const BYTE_ORDER_MARK = '\ufeff';

export const csvFile = (name: string, text: string): FileMade => ({
  name,
  mime: 'text/csv;charset=utf-8',
  content: /\P{ASCII}/u.test(text) ? BYTE_ORDER_MARK + text : text,
});
