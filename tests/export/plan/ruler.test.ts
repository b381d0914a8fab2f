/**
 * The rulers' ticks and numbers. Expected values: mathematics; steps of 1, 2 and 5 times a power of ten are common practice
 * (no source). Millimetres along the ruler, px on screen.
 */
import { describe, expect, it } from 'vitest';
import { drawRulers } from '../../../src/canvas/draw/rulers';
import type { Ctx } from '../../../src/canvas/draw/pen';
import { GROUNDS } from '../../../src/export/plan/palette';
import { tickLabel, tickStep, ticks } from '../../../src/export/plan/ruler';

interface Written {
  readonly text: string;
  readonly left: number;
  readonly top: number;
}
/** A canvas that only keeps what is written on it. */
const sheetOfPaper = (written: Written[]): Ctx =>
  new Proxy({} as Ctx, {
    get: (_, name) =>
      name === 'fillText'
        ? (text: string, left: number, top: number) => written.push({ text, left, top })
        : () => undefined,
    set: () => true,
  });

describe('ruler', () => {
  it('steps by 1, 2 or 5 times a power of ten, never closer than asked and never 2.5 times wider', () => {
    for (let zoom = 0.02; zoom < 400; zoom *= 1.037) {
      const step = tickStep(zoom, 50);
      const mantissa = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
      expect([1, 2, 5].some((m) => Math.abs(mantissa - m) < 1e-9)).toBe(true);
      expect(step * zoom).toBeGreaterThanOrEqual(50 - 1e-6);
      expect(step * zoom).toBeLessThanOrEqual(125 + 1e-6);
    }
  });

  it('numbers every 50 mm of a 340 mm platform at 1.4 px a millimetre, and ticks every 10 mm', () => {
    const list = ticks(-170, 170, 1.4, 50);
    expect(list.filter((tick) => tick.major).map((tick) => tick.value)).toEqual([
      -150, -100, -50, 0, 50, 100, 150,
    ]);
    expect(list).toHaveLength(35);
  });

  it('always passes through zero', () => {
    for (const zoom of [0.3, 1, 3.7, 22, 180]) {
      expect(ticks(-40, 40, zoom, 60).some((tick) => tick.value === 0 && tick.major)).toBe(true);
    }
  });

  it('writes numbers without rounding noise and with a minus sign', () => {
    expect(tickLabel(0.1 + 0.2)).toBe('0.3');
    expect(tickLabel(-150)).toBe('−150');
    expect(tickLabel(-0)).toBe('0');
  });

  it('writes no number whose minus sign or last digit would be cut off', () => {
    // digits of the typeface at 12 px are 6.7 px wide [common practice, no source]
    const digit = 6.7;
    const platform = { width_mm: 340, depth_mm: 340, margin_mm: 0, keepOuts: [] };
    for (let width = 300; width < 420; width++) {
      const written: Written[] = [];
      const size = { width, height: 300 };
      const camera = { centreX_mm: 0, centreY_mm: 0, pxPerMm: 1 };
      drawRulers(sheetOfPaper(written), { camera, size, ground: GROUNDS.light }, platform);
      const numbers = written.filter(({ text, top }) => text !== 'mm' && top > size.height - 20);
      expect(numbers.map(({ text }) => text)).toContain('0');
      for (const { text, left } of numbers) {
        const half = (text.length * digit) / 2;
        expect(left - half).toBeGreaterThanOrEqual(40);
        expect(left + half).toBeLessThanOrEqual(width);
      }
    }
  });
});
