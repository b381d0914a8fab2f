/**
 * The operator's sheet as one page of SVG text: A4 upright, and A3 as the same page √2 times as large (ISO 216). Black on
 * white; what matters most reads from a metre away. Nothing on it ever runs onto a second page. Millimetres.
 */
import type { Analysis } from '../../../build/types';
import { escapeXml } from '../../plan/marks';
import type { Mm } from '../../../units/types';
import type { SheetContent } from '../types';
import { drawBelow, drawInColumns } from './flow';
import { drawFoot, FOOT } from './foot';
import { drawHead } from './head';
import { stamp, type Measure } from './pen';
import { drawPlans } from './plans';

export type Paper = 'A4' | 'A3';
export const PAGE = { width: 210, height: 297, margin: 10 } as const;
export const PAPERS: Readonly<Record<Paper, { readonly width: Mm; readonly height: Mm }>> = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
};
const LEFT: Mm = 110;
const GAP: Mm = 5;
/** The plan gives way to the table under it, down to this share of the column's height. */
const PLAN_SHARE = 0.66;

export interface SheetDrawing {
  readonly content: SheetContent;
  readonly analysis: Analysis;
  /** Height at which the plan is cut. */
  readonly height_mm: Mm;
  readonly paper: Paper;
  /** Of all words, as a font family is named in CSS. */
  readonly font: string;
  readonly measure: Measure;
}

/** Without its ground the page shows the paper's. */
function marksOf({ content, analysis, height_mm, font, measure }: SheetDrawing): string[] {
  const { width, height, margin } = PAGE;
  const inside = { x: margin, width: width - 2 * margin };
  const head = drawHead(content, { ...inside, y: margin }, measure);
  const top = head.bottom + 3;
  const bottom = height - margin - FOOT;
  const room = bottom - top;
  const plan = { x: margin, y: top, width: LEFT, height: room * PLAN_SHARE };
  const plans = drawPlans(analysis, height_mm, plan, font);
  const under = { x: margin, y: plans.bottom + 2, width: LEFT, height: bottom - plans.bottom - 2 };
  const beside = { x: margin + LEFT + GAP, y: top, width: inside.width - LEFT - GAP, height: room };
  const { events, cautions, outages, seams, parts, blocked, state } = content;
  return [
    ...head.marks,
    ...plans.marks,
    ...drawInColumns(parts, under, measure),
    ...drawBelow([events, cautions, outages, seams], [3, 0, 2], beside, measure),
    ...drawFoot(content, { ...inside, y: bottom }, measure),
    ...(blocked ? [stamp(state, width / 2, height / 2, 30, -55)] : []),
  ];
}

export function sheetSvg(drawing: SheetDrawing): string {
  const { width, height } = PAPERS[drawing.paper];
  const title = escapeXml(`Sheet of ${drawing.content.name}`);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${PAGE.width} ${PAGE.height}" font-family="${drawing.font}" role="img" aria-label="${title}">`,
    `<title>${title}</title>`,
    `<rect x="0" y="0" width="${PAGE.width}" height="${PAGE.height}" fill="#ffffff"/>`,
    ...marksOf(drawing).filter((mark) => mark !== ''),
    '</svg>',
  ].join('\n');
}
