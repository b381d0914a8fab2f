/**
 * The operator's sheet as pages of SVG text, A4 upright; other paper shows the same page as large as it fits. Black on
 * white; what matters most reads from a metre away. One page; only rows that have no room on it at the least size of words
 * go to a next one, and the page says so. Millimetres.
 */
import { t } from '../../../language/index';
import type { Analysis } from '../../../build/types';
import { escapeXml } from '../../plan/marks';
import type { Mm } from '../../../units/types';
import type { SheetContent, SheetTable } from '../types';
import { drawBelow, drawInColumns } from './flow';
import { drawFoot, FOOT } from './foot';
import { drawHead } from './head';
import { stamp, words, wrapWithin, type Measure } from './pen';
import { drawPlans } from './plans';
import { setTable, tableHeight } from './table';

export const PAGE = { width: 210, height: 297, margin: 10 } as const;
const LEFT: Mm = 116;
const GAP: Mm = 5;
/** The plan gives way to the table under it, down to this share of the column's height. */
const PLAN_SHARE = 0.68;
/** Head of a further page. */
const BRIEF: Mm = 14;

export interface SheetDrawing {
  readonly content: SheetContent;
  readonly analysis: Analysis;
  /** Height at which the plan is cut. */
  readonly height_mm: Mm;
  /** Of all words, as a font family is named in CSS. */
  readonly font: string;
  readonly measure: Measure;
}
interface Page {
  readonly marks: readonly string[];
  readonly left: readonly SheetTable[];
}

const INSIDE = { x: PAGE.margin, width: PAGE.width - 2 * PAGE.margin } as const;

function firstPage({ content, analysis, height_mm, measure }: SheetDrawing): Page & { crowded: boolean } {
  const head = drawHead(content, { ...INSIDE, y: PAGE.margin }, measure);
  const top = head.bottom + 3;
  const bottom = PAGE.height - PAGE.margin - FOOT;
  const room = bottom - top;
  const plan = { x: PAGE.margin, y: top, width: LEFT, height: room * PLAN_SHARE };
  const plans = drawPlans(analysis, height_mm, plan);
  const under = { x: PAGE.margin, y: plans.bottom + 2, width: LEFT, height: bottom - plans.bottom - 2 };
  const beside = { x: PAGE.margin + LEFT + GAP, y: top, width: INSIDE.width - LEFT - GAP, height: room };
  const { events, cautions, outages, seams, parts } = content;
  const crowded = plans.unnamed > 0;
  const below = drawInColumns(parts, under, measure);
  const aside = drawBelow([events, cautions, outages, seams], [3, 2, 0], beside, measure);
  const foot = drawFoot(content, { ...INSIDE, y: bottom }, measure);
  return {
    marks: [...head.marks, ...plans.marks, ...below.marks, ...aside.marks, ...foot],
    left: [...below.left, ...aside.left],
    crowded,
  };
}

/** Height that a table takes across a page, at most all of what is there. */
function heightAcross(table: SheetTable, room: Mm, measure: Measure): Mm {
  const set = setTable(table, { size: 2.9, columns: 2, width: INSIDE.width, measure });
  // Columns of rows that differ in height end unevenly: one row more.
  const longest = set.rows.reduce((most, { height }) => Math.max(most, height), 0);
  return Math.min(room, tableHeight(set) / 2 + longest + 8);
}

/** Rows that had no room before, across the page; tables that do not fit go to the next. */
function nextPage(tables: readonly SheetTable[], measure: Measure): Page {
  const marks: string[] = [];
  const left: SheetTable[] = [];
  const bottom = PAGE.height - PAGE.margin;
  let y = PAGE.margin + BRIEF;
  for (const table of tables) {
    const height = left.length > 0 ? 0 : heightAcross(table, bottom - y, measure);
    if (height < BRIEF * 2 && y > PAGE.margin + BRIEF) {
      left.push(table);
      continue;
    }
    const drawn = drawInColumns(table, { ...INSIDE, y, height }, measure);
    marks.push(...drawn.marks);
    left.push(...drawn.left);
    y += height + 2;
  }
  return { marks, left };
}

/** What belongs to every page: whose it is, which of how many, and across it that it is not for use. */
function everyPage({ content, measure }: SheetDrawing, page: number, pages: number): string[] {
  const { name, state, checksum, blocked } = content;
  const { width, height, margin } = PAGE;
  const number = t('page {page} of {pages}', { page, pages });
  const [line = ''] = wrapWithin(name, INSIDE.width, 1, { size: 5, bold: true }, measure);
  const brief = [
    words(line, margin, margin + 5, { size: 5, bold: true }),
    words(t('{state}, checksum {checksum}', { state, checksum }), margin, margin + 10, {
      size: 3.4,
      bold: true,
    }),
  ];
  return [
    ...(page > 1 ? brief : []),
    ...(pages > 1
      ? [words(number, width - margin, height - 5.5, { size: 3, bold: true, align: 'end' })]
      : []),
    ...(blocked ? [stamp(state, width / 2, height / 2, 30, -55)] : []),
  ];
}

function pageSvg({ content, font }: SheetDrawing, marks: readonly string[], of: string): string {
  const { width, height } = PAGE;
  const title = escapeXml(t('Sheet of {name}{of}', { name: content.name, of }));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" font-family="${font}" role="img" aria-label="${title}">`,
    `<title>${title}</title>`,
    `<rect x="0" y="0" width="${width}" height="${height}" fill="#ffffff"/>`,
    ...marks.filter((mark) => mark !== ''),
    '</svg>',
  ].join('\n');
}

/** The plan across a page of its own, where the first page has no room for all part numbers. */
function planPage({ analysis, height_mm }: SheetDrawing): readonly string[] {
  const y = PAGE.margin + BRIEF;
  return drawPlans(analysis, height_mm, { ...INSIDE, y, height: PAGE.height - PAGE.margin - y }, true).marks;
}

/** A plate has at most thousands of parts; each page takes dozens of rows. */
const MOST_PAGES = 40;

/** The pages, the first of which is the sheet itself. */
export function sheetPages(drawing: SheetDrawing): string[] {
  const { crowded, ...first } = firstPage(drawing);
  const pages: (readonly string[])[] = [first.marks];
  if (crowded) pages.push(planPage(drawing));
  for (let { left } = first; left.length > 0 && pages.length < MOST_PAGES;) {
    const next = nextPage(left, drawing.measure);
    pages.push(next.marks);
    ({ left } = next);
  }
  return pages.map((marks, i) => {
    const all = [...marks, ...everyPage(drawing, i + 1, pages.length)];
    return pageSvg(
      drawing,
      all,
      pages.length > 1 ? t(', page {number} of {pages}', { number: i + 1, pages: pages.length }) : '',
    );
  });
}
