/**
 * Units of drawings in millimetres. CSS: 1 in = 96 px = 72 pt = 6 pc = 101.6 Q (CSS Values and Units 4, 6.2). DXF's
 * $INSUNITS numbers: DXF Reference, header section [memory].
 */
import type { ImportUnit } from './types';

export const MM_PER_UNIT: Readonly<Record<ImportUnit, number>> = {
  um: 0.001,
  mm: 1,
  cm: 10,
  dm: 100,
  m: 1000,
  mil: 0.0254,
  in: 25.4,
  ft: 304.8,
  yd: 914.4,
  px: 25.4 / 96,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
  Q: 0.25,
};

/** Units that a drawing measured in lengths (not in pixels) may be in; for the choice on the check page. */
export const DRAWING_UNITS: readonly ImportUnit[] = ['mm', 'cm', 'm', 'in', 'ft', 'px', 'pt'];

const INSUNITS: Readonly<Record<number, ImportUnit>> = {
  1: 'in',
  2: 'ft',
  4: 'mm',
  5: 'cm',
  6: 'm',
  9: 'mil',
  10: 'yd',
  13: 'um',
  14: 'dm',
};

/** The unit behind a $INSUNITS number; null for 0 and for units no part is drawn in. */
export const insUnit = (number: number): ImportUnit | null => INSUNITS[number] ?? null;

const CSS_UNITS: Readonly<Record<string, ImportUnit>> = {
  '': 'px',
  px: 'px',
  mm: 'mm',
  cm: 'cm',
  in: 'in',
  pt: 'pt',
  pc: 'pc',
  q: 'Q',
};

export interface CssLength {
  readonly px: number;
  readonly unit: ImportUnit;
}

/**
 * A CSS length such as "12.5mm"; percentages are shares of `whole` px, em and ex of a 16 px typeface. Null where the
 * text is no length.
 */
export function cssLength(text: string | undefined, whole: number | null = null): CssLength | null {
  const match = /^\s*([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)\s*([a-z%]*)\s*$/i.exec(text ?? '');
  if (match === null) return null;
  const value = Number(match[1]);
  const suffix = match[2].toLowerCase();
  if (!Number.isFinite(value)) return null;
  if (suffix === '%') return whole === null ? null : { px: (value / 100) * whole, unit: 'px' };
  if (suffix === 'em' || suffix === 'rem') return { px: value * 16, unit: 'px' };
  if (suffix === 'ex' || suffix === 'ch') return { px: value * 8, unit: 'px' };
  const unit = CSS_UNITS[suffix];
  if (unit === undefined) return null;
  return { px: (value * MM_PER_UNIT[unit]) / MM_PER_UNIT.px, unit };
}
