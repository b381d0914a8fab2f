/**
 * Words and lines of the sheet as SVG text. Millimetres from the page's upper left corner, +y down; sizes of words are
 * font sizes in mm. Who draws says how wide words are, so that screen, paper and PDF break lines alike.
 */
import type { Mm } from '../../../units/types';
import { escapeXml } from '../../plan/marks';

/** Width of words at a font size. */
export type Measure = (words: string, size_mm: Mm, bold: boolean) => Mm;

export const INK = '#000000';
export const NOTE = '#404040';
export const THIN: Mm = 0.18;
export const THICK: Mm = 0.5;
/** From one line of words to the next, in font sizes. */
export const LINE = 1.25;

const mm = (value: Mm): string => String(Math.round(value * 1000) / 1000 + 0);

export interface WordStyle {
  readonly size: Mm;
  readonly bold?: boolean;
  readonly align?: 'start' | 'middle' | 'end';
  readonly colour?: string;
}

/** One line of words; `y` is its base line. */
export function words(text: string, x: Mm, y: Mm, style: WordStyle): string {
  if (text === '') return '';
  const { size, bold = false, align = 'start', colour = INK } = style;
  const weight = bold ? ' font-weight="bold"' : '';
  return `<text x="${mm(x)}" y="${mm(y)}" font-size="${mm(size)}"${weight} text-anchor="${align}" fill="${colour}">${escapeXml(text)}</text>`;
}

export const rule = (x0: Mm, y0: Mm, x1: Mm, y1: Mm, width = THIN): string =>
  `<path d="M${mm(x0)} ${mm(y0)}L${mm(x1)} ${mm(y1)}" fill="none" stroke="${INK}" stroke-width="${mm(width)}"/>`;

export const frame = (x: Mm, y: Mm, width: Mm, height: Mm, line = THIN, fill = 'none'): string =>
  `<rect x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}" fill="${fill}" stroke="${INK}" stroke-width="${mm(line)}"/>`;

/** Large grey words across the page, through which what is under them stays readable. */
export function stamp(text: string, x: Mm, y: Mm, size: Mm, turn_deg: number): string {
  const place = `transform="translate(${mm(x)} ${mm(y)}) rotate(${turn_deg})"`;
  return `<g ${place}><text x="0" y="${mm(size * 0.36)}" font-size="${mm(size)}" font-weight="bold" text-anchor="middle" fill="${INK}" fill-opacity="0.1">${escapeXml(text)}</text></g>`;
}

/** An SVG picture set into a place of the page, in the page's font, which has two weights. */
export function inset(picture: string, x: Mm, y: Mm, width: Mm, height: Mm): string {
  const place = `x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}"`;
  return picture
    .replace(/^<svg xmlns="[^"]*" width="[^"]*" height="[^"]*"/, `<svg ${place}`)
    .replace(/font-family="[^"]*"/, '')
    .replaceAll('font-weight="600"', 'font-weight="bold"');
}

/** Pieces of one word that is wider than its column. */
function broken(word: string, fits: (part: string) => boolean): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && !fits(piece + letter)) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}

/** Words broken into lines no wider than `width`; at least one line. */
export function wrap(text: string, width: Mm, size: Mm, bold: boolean, measure: Measure): string[] {
  const fits = (line: string): boolean => measure(line, size, bold) <= width + 1e-6;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n\t]+/)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = broken(word, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1)!;
  }
  return [...lines, line];
}

/** As many lines as there is room for; the last one ends in "…" where some are left out. */
export function wrapWithin(
  text: string,
  width: Mm,
  most: number,
  style: { readonly size: Mm; readonly bold: boolean },
  measure: Measure,
): string[] {
  const lines = wrap(text, width, style.size, style.bold, measure);
  if (lines.length <= most) return lines;
  // whole characters: half of one would stand as a box
  const letters = [...lines[most - 1]!];
  const last = (): string => `${letters.join('')} …`;
  while (letters.length > 0 && measure(last(), style.size, style.bold) > width) letters.pop();
  return [...lines.slice(0, most - 1), last()];
}
