/**
 * Contrast of the page's colours, computed from tokens.css itself by WCAG 2.2 (relative luminance and contrast ratio as
 * defined there; text 4.5:1, lines that carry meaning 3:1).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { GROUNDS, laserStyle } from '../../src/export/plan/palette';

const css = readFileSync(new URL('../../src/panels/tokens.css', import.meta.url), 'utf8');

function tokens(selector: string): Record<string, string> {
  const block = css.slice(css.indexOf(`${selector} {`));
  const body = block.slice(0, block.indexOf('}'));
  return Object.fromEntries([...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map((m) => [m[1], m[2]]));
}
const channel = (value: number): number =>
  value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => channel(parseInt(hex.slice(at, at + 2), 16) / 255));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

const LIGHT = tokens(':root');
const THEMES = { light: LIGHT, dark: { ...LIGHT, ...tokens(":root[data-theme='dark']") } };

describe.each(Object.entries(THEMES))('on the %s ground', (theme, colours) => {
  const grounds = ['paper', 'sheet', 'hold'];
  test.each(grounds.flatMap((ground) => ['ink', 'quiet', 'warn'].map((text) => [text, ground])))(
    'text in %s on %s is 4.5:1 or better',
    (text, ground) => {
      expect(contrast(colours[text]!, colours[ground]!)).toBeGreaterThanOrEqual(4.5);
    },
  );
  // Pressed and main buttons, their hover, chosen entries of menus, and the words of what failed.
  test.each([
    ['paper', 'ink'],
    ['paper', 'quiet'],
    ['ink', 'warn-ground'],
    ['warn', 'warn-ground'],
  ])('text in %s on a ground of %s is 4.5:1 or better', (text, ground) => {
    expect(contrast(colours[text]!, colours[ground]!)).toBeGreaterThanOrEqual(4.5);
  });
  test('every laser’s hatching and the warning stand 3:1 or better on what they are drawn on', () => {
    const on = GROUNDS[theme as 'light' | 'dark'];
    for (let laser = 0; laser < 7; laser++) {
      const { stroke, tint } = laserStyle(laser, theme as 'light' | 'dark');
      for (const ground of [colours['paper']!, colours['sheet']!, colours['hold']!, tint])
        expect(contrast(stroke, ground), `laser ${laser} on ${ground}`).toBeGreaterThanOrEqual(3);
      for (const line of [on.ink, on.warning])
        expect(contrast(line, tint), `${line} on the tint of laser ${laser}`).toBeGreaterThanOrEqual(3);
    }
  });
  test.each(['paper', 'sheet'])('rules and warnings on %s are 3:1 or better', (ground) => {
    expect(contrast(colours['rule']!, colours[ground]!)).toBeGreaterThanOrEqual(3);
    expect(contrast(colours['warn']!, colours[ground]!)).toBeGreaterThanOrEqual(3);
  });
  test('the plan is drawn in the same colours as the page', () => {
    const ground = GROUNDS[theme as 'light' | 'dark'];
    expect([ground.paper, ground.sheet, ground.ink]).toEqual(
      ['paper', 'sheet', 'ink'].map((name) => colours[name]),
    );
    expect(ground.warning).toBe(colours['warn']);
  });
});

test('black on white is 21:1 by this computation (WCAG 2.2)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
});
