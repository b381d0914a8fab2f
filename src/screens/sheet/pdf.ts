/**
 * Pages of the sheet as a PDF: vectors stay vectors, words stay words, in the sheet's own font. A page is as large as its
 * paper takes it, in the middle. Millimetres.
 */
import { jsPDF } from 'jspdf';
import { svg2pdf } from 'svg2pdf.js';
import { PAGE } from '../../export/sheet/drawing/sheetSvg';
import type { Mm } from '../../units/types';
import { FONT, type SheetFonts } from './fonts';

export const PAPERS = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
  A3: { width: 297, height: 420 },
} as const satisfies Record<string, { width: Mm; height: Mm }>;
export type Paper = keyof typeof PAPERS;

function emptyPdf(paper: Paper, fonts: Pick<SheetFonts, 'regular' | 'bold'>): jsPDF {
  const { width, height } = PAPERS[paper];
  const pdf = new jsPDF({ unit: 'mm', format: [width, height], orientation: 'portrait', compress: true });
  for (const style of ['regular', 'bold'] as const) {
    pdf.addFileToVFS(`${style}.ttf`, fonts[style]);
    pdf.addFont(`${style}.ttf`, FONT, style === 'regular' ? 'normal' : 'bold');
  }
  return pdf;
}

/** Where a page of the sheet lies on a paper. */
export function placeOn(paper: Paper) {
  const { width, height } = PAPERS[paper];
  const scale = Math.min(width / PAGE.width, height / PAGE.height);
  const [w, h] = [PAGE.width * scale, PAGE.height * scale];
  return { x: (width - w) / 2, y: (height - h) / 2, width: w, height: h };
}

/** The writer scales letters into their place, but not the width of the lines around them: it is done here. */
function scaleHalos(page: SVGSVGElement, scale: number): void {
  for (const plan of page.querySelectorAll<SVGSVGElement>('svg[viewBox]')) {
    const inside = Number(plan.getAttribute('width')) / plan.viewBox.baseVal.width;
    for (const words of plan.querySelectorAll('text[stroke-width]')) {
      const width = Number(words.getAttribute('stroke-width')) * inside * scale;
      words.setAttribute('stroke-width', width.toFixed(3));
    }
  }
}

/** @param pages copies, which are changed */
export async function sheetPdf(
  pages: readonly SVGSVGElement[],
  title: string,
  paper: Paper,
  fonts: Pick<SheetFonts, 'regular' | 'bold'>,
): Promise<Uint8Array<ArrayBuffer>> {
  const pdf = emptyPdf(paper, fonts);
  pdf.setProperties({ title, creator: 'Evenplate' });
  for (const [i, page] of pages.entries()) {
    if (i > 0) pdf.addPage();
    const place = placeOn(paper);
    scaleHalos(page, place.width / PAGE.width);
    await svg2pdf(page, pdf, place);
  }
  return new Uint8Array(pdf.output('arraybuffer'));
}
