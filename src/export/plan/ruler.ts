/**
 * Ruler ticks that adapt to the zoom: steps of 1, 2 or 5 times a power of ten, wide enough apart for their numbers.
 * Any axis: millimetres, seconds.
 */
import type { Px } from '../../units/types';

export interface Tick {
  readonly value: number;
  /** Carries a number. */
  readonly major: boolean;
}

/** The smallest of 1, 2, 5 × 10^n that takes at least `least_px` on screen. */
export const tickStep = (pxPerUnit: number, least_px: Px): number => {
  const raw = least_px / pxPerUnit;
  const power = 10 ** Math.floor(Math.log10(raw));
  const factor = [1, 2, 5, 10].find((candidate) => candidate * power >= raw * (1 - 1e-12)) ?? 10;
  return factor * power;
};

/** Parts of a major step: five where it begins with 1 or 5, four where it begins with 2. */
const partsOf = (step: number): number =>
  Math.round(step / 10 ** Math.floor(Math.log10(step) + 1e-9)) === 2 ? 4 : 5;

/** Ticks from `from` to `to`, numbers at least `least_px` apart, minor ticks between. Ascending. */
export const ticks = (from: number, to: number, pxPerUnit: number, least_px: Px): readonly Tick[] => {
  const step = tickStep(pxPerUnit, least_px);
  const parts = partsOf(step);
  const minor = step / parts;
  const list: Tick[] = [];
  for (let k = Math.ceil(from / minor - 1e-9); k * minor <= to + minor * 1e-9; k++) {
    list.push({ value: k * minor + 0, major: k % parts === 0 });
  }
  return list;
};

/** The number at a tick, without rounding noise and with a true minus sign. */
export const tickLabel = (value: number): string =>
  String(Number(value.toPrecision(10)) + 0).replace('-', '−');
