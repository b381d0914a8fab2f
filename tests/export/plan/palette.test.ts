/**
 * Colours of lasers and grounds. Expected values: WCAG 2.2 for contrast, Okabe and Ito for hues; the names of the custom
 * properties are read from the style sheet. Contrast is a ratio, angles are degrees.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FONT } from '../../../src/canvas/draw/pen';
import { GROUNDS, HUES, hatchBackground, laserStyle, type Theme } from '../../../src/export/plan/palette';

// WCAG 2.2, definitions of relative luminance and contrast ratio; thresholds 1.4.3 (text 4.5:1), 1.4.11 (graphics 3:1).
const linear = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
const luminance = (hex: string) => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => linear(parseInt(hex.slice(at, at + 2), 16) / 255));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string) => {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((p, q) => q - p);
  return (high + 0.05) / (low + 0.05);
};
const THEMES: readonly Theme[] = ['light', 'dark'];
const LASERS = Array.from({ length: 31 }, (_, i) => i);

describe('palette', () => {
  it('measures contrast as WCAG defines it: black on white is 21:1, #767676 on white 4.54:1', () => {
    expect(contrast('#000000', '#FFFFFF')).toBeCloseTo(21, 6);
    expect(contrast('#767676', '#FFFFFF')).toBeCloseTo(4.54, 2);
  });

  it('uses the seven Okabe-Ito hues without black', () => {
    // RGB values of Okabe and Ito, "Color Universal Design" (2008) [memory]
    const okabeIto = ['e69f00', '56b4e9', '009e73', 'f0e442', '0072b2', 'd55e00', 'cc79a7'];
    expect(HUES.map((hue) => hue.slice(1).toLowerCase()).sort()).toEqual(okabeIto.sort());
  });

  it.each(THEMES)(
    'draws every laser at 3:1 or better on the %s paper, platform and its own tint',
    (theme) => {
      for (const index of LASERS) {
        const { stroke, tint } = laserStyle(index, theme);
        for (const ground of [GROUNDS[theme].paper, GROUNDS[theme].sheet, tint]) {
          expect(contrast(stroke, ground), `laser ${index} on ${ground}`).toBeGreaterThanOrEqual(3);
        }
      }
    },
  );

  it.each(THEMES)('keeps words at 4.5:1 and lines at 3:1 on the %s ground', (theme) => {
    const { paper, sheet, ink, note, warning, line } = GROUNDS[theme];
    for (const ground of [paper, sheet]) {
      for (const words of [ink, note, warning]) expect(contrast(words, ground)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(line, ground)).toBeGreaterThanOrEqual(3);
    }
    for (const index of LASERS)
      expect(contrast(ink, laserStyle(index, theme).tint)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(THEMES)('keeps the warning colour apart from every stroke of a laser on the %s ground', (theme) => {
    const strokes = LASERS.map((index) => laserStyle(index, theme).stroke.toLowerCase());
    expect(strokes).not.toContain(GROUNDS[theme].warning.toLowerCase());
    expect(HUES.map((hue) => hue.toLowerCase())).not.toContain(GROUNDS[theme].warning.toLowerCase());
  });

  it('gives no two of 31 lasers the same hue with the same hatching, and repeats a hue only from the eighth on', () => {
    const key = (index: number) => {
      const { hue, hatching } = laserStyle(index, 'light');
      return `${hue} ${hatching.angle_deg} ${hatching.dash_px.join('-')}`;
    };
    expect(new Set(LASERS.map(key)).size).toBe(31);
    expect(new Set(LASERS.slice(0, 7).map((index) => laserStyle(index, 'light').hue)).size).toBe(7);
    expect(laserStyle(7, 'light').hue).toBe(laserStyle(0, 'light').hue);
  });

  it('gives the first seven lasers seven different angles, so that a grey print tells them apart', () => {
    expect(
      new Set(LASERS.slice(0, 7).map((index) => laserStyle(index, 'light').hatching.angle_deg)).size,
    ).toBe(7);
  });

  it.each(THEMES)('stands on the same %s ground as the page around it', (theme) => {
    const css = readFileSync(new URL('../../../src/panels/tokens.css', import.meta.url), 'utf8');
    const block = css.slice(css.indexOf(theme === 'light' ? ':root {' : ":root[data-theme='dark'] {"));
    const token = (name: string) =>
      new RegExp(`--${name}:\\s*(#[0-9a-f]{6})`, 'i').exec(block)?.[1]?.toLowerCase();
    const { paper, sheet, ink, note, line, faint, warning } = GROUNDS[theme];
    expect([paper, sheet, ink, note, line, faint, warning]).toEqual(
      ['paper', 'sheet', 'ink', 'quiet', 'rule', 'faint', 'warn'].map(token),
    );
  });

  it('letters the drawing in the typeface of the page', () => {
    const css = readFileSync(new URL('../../../src/panels/tokens.css', import.meta.url), 'utf8');
    expect(FONT).toBe(/--sans:\s*([^;]+);/.exec(css)?.[1].replace(/\s+/g, ' '));
  });

  it('refuses an index that is no laser', () => {
    expect(() => laserStyle(-1, 'light')).toThrow(RangeError);
    expect(() => hatchBackground(0.5, 'dark')).toThrow(RangeError);
  });
});
