/**
 * The plan as SVG text: well formed whatever a user typed, plain vectors, true to scale, grey on paper. Expected areas are
 * those of rectangles [mathematics]; the sum of hatch lengths times their spacing is the hatched area (Cavalieri)
 * [mathematics]; contrast 4.5:1 for words (WCAG 2.2, 1.4.3) [published]. The reader is saxes, no code of ours.
 */
import { SaxesParser } from 'saxes';
import { describe, expect, it, test } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { planInk } from '../../../src/export/plan/ink';
import { planPictureOf, planSvg, type PlanStyle } from '../../../src/export/plan/planSvg';
import { emptyLayout } from '../../../src/layout/defaults';
import type { Layout } from '../../../src/layout/types';

interface Mark {
  readonly name: string;
  readonly is: Readonly<Record<string, string>>;
  text: string;
}

/** All elements of an SVG text; throws where it is not well formed. */
function marksOf(svg: string): Mark[] {
  const marks: Mark[] = [];
  const open: Mark[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const mark = { name, is: attributes as Record<string, string>, text: '' };
    marks.push(mark);
    open.push(mark);
  });
  parser.on('text', (text) => {
    const last = open.at(-1);
    if (last) last.text += text;
  });
  parser.on('closetag', () => open.pop());
  parser.write(svg).close();
  return marks;
}

const square = (side: number) =>
  [
    [0, 0],
    [side, 0],
    [side, side],
    [0, side],
  ] as const;

/** One square of 60 mm across the middle line of two strips, 20 mm high, on a plate of 340 mm. */
function plate(change: Partial<Layout> = {}): Layout {
  const base = emptyLayout();
  return {
    ...base,
    name: 'Two strips',
    shapes: { block: { slabs: [{ to_mm: 20, rings: [square(60)] }] } },
    parts: [
      {
        id: 'P01',
        shape: 'block',
        at_mm: [-30, -30],
        turn_deg: 0,
        seams: 'free',
        laser: null,
        timeFactor: 1,
      },
    ],
    zoning: [
      {
        from_mm: 0,
        zoning: { strategy: 'strips', run_deg: 90, lines_mm: [10], sharedBand_mm: 0, lasers: ['L1', 'L2'] },
      },
    ],
    ...change,
  };
}

const STYLE: PlanStyle = { width_px: 700, ground: 'light', labels: true, rulers: true, zoneNumbers: true };
const svgOf = (layout: Layout, style: Partial<PlanStyle> = {}, height_mm = 5): string =>
  planSvg(planPictureOf(analyse(layout), height_mm), { ...STYLE, ...style });

const numbers = (text: string): number[] => (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

function ringArea(d: string): number {
  const flat = numbers(d);
  let doubled = 0;
  for (let i = 0; i < flat.length; i += 2) {
    const j = (i + 2) % flat.length;
    doubled += flat[i]! * flat[j + 1]! - flat[j]! * flat[i + 1]!;
  }
  return Math.abs(doubled) / 2;
}
/** Lengths of M…L… segments. */
function lengthOf(d: string): number {
  const flat = numbers(d);
  let sum = 0;
  for (let i = 0; i < flat.length; i += 4)
    sum += Math.hypot(flat[i + 2]! - flat[i]!, flat[i + 3]! - flat[i + 1]!);
  return sum;
}

/** px per mm of a picture with rulers: 50 px of room on both sides and a ruler of 40 px on the left. */
const pxPerMm = (700 - 50 - 50 - 40) / 340;

describe('the plan as SVG', () => {
  it('shows each piece in the size and place it has on the plate', () => {
    const { tint } = planInk('light').laser(0);
    const pieces = marksOf(svgOf(plate())).filter(({ is }) => is['fill'] === tint && is['d']);
    // 40 of the 60 mm lie left of the line at 10 mm.
    expect(pieces).toHaveLength(1);
    expect(ringArea(pieces[0]!.is['d']!) / pxPerMm ** 2).toBeCloseTo(40 * 60, 0);
    const xs = numbers(pieces[0]!.is['d']!).filter((_, i) => i % 2 === 0);
    const centre = (90 + 650) / 2;
    expect(Math.min(...xs)).toBeCloseTo(centre - 30 * pxPerMm, 1);
    expect(Math.max(...xs)).toBeCloseTo(centre + 10 * pxPerMm, 1);
  });

  it('hatches a piece with segments whose lengths times spacing make its area', () => {
    const { stroke, hatching } = planInk('light').laser(0);
    const lines = marksOf(svgOf(plate())).filter(
      ({ is }) =>
        is['stroke'] === stroke && (is['d']?.match(/M/g)?.length ?? 0) > 5 && !is['d']?.includes('Z'),
    );
    expect(lines).toHaveLength(1);
    const flat = numbers(lines[0]!.is['d']!);
    // Distance of neighbouring parallel lines, taken from the picture itself.
    const angle = Math.atan2(flat[3]! - flat[1]!, flat[2]! - flat[0]!);
    const offsets = Array.from(
      { length: flat.length / 4 },
      (_, i) => flat[4 * i + 1]! * Math.cos(angle) - flat[4 * i]! * Math.sin(angle),
    ).sort((a, b) => a - b);
    const spacing = (offsets.at(-1)! - offsets[0]!) / (offsets.length - 1);
    expect(Math.abs(spacing / hatching.spacing_px - 1)).toBeLessThan(0.1);
    const area = lengthOf(lines[0]!.is['d']!) * spacing;
    expect(Math.abs(area / (40 * 60 * pxPerMm ** 2) - 1)).toBeLessThan(0.02);
  });

  it('stays well formed and harmless whatever names say', () => {
    const evil = `</text><script>alert("1")</script>&'\u0000\ud800`;
    const base = plate();
    const layout = {
      ...base,
      name: evil,
      parts: [{ ...base.parts[0]!, id: `<b>&"` }],
    };
    const marks = marksOf(svgOf(layout, { caption: evil, stamp: evil, legend: true }));
    expect(marks.some(({ name }) => name === 'script' || name === 'b')).toBe(false);
    expect(marks.some(({ text }) => text === `<b>&"`)).toBe(true);
    expect(marks.find(({ name }) => name === 'title')?.text).toContain(
      '<script>alert("1")</script>&\'\ufffd\ufffd',
    );
  });

  it('is plain vectors: nothing refers to anything', () => {
    const svg = svgOf(plate(), { legend: true, caption: 'a', stamp: 'b' });
    expect(new Set(marksOf(svg).map(({ name }) => name))).toEqual(
      new Set(['svg', 'title', 'rect', 'path', 'text', 'g']),
    );
    expect(svg).not.toMatch(/url\(|href|style=|id="/);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('marks what no laser exposes in the warning colour', () => {
    const base = plate();
    const lasers = base.machine.lasers.map((laser) => (laser.id === 'L2' ? { ...laser, on: false } : laser));
    const { warning } = planInk('light').ground;
    const crossed = (layout: Layout) =>
      marksOf(svgOf(layout)).filter(({ is }) => is['stroke'] === warning && is['d']).length;
    expect(crossed({ ...base, machine: { ...base.machine, lasers } })).toBe(2);
    expect(crossed(base)).toBe(0);
  });

  it('has no colour on paper, and other hatching for every one of seven lasers', () => {
    const svg = svgOf(plate(), { ground: 'print', legend: true });
    const colours = new Set(svg.match(/#[0-9a-f]{6}/gi));
    for (const colour of colours) expect(colour.slice(1, 3)).toBe(colour.slice(3, 5));
    for (const colour of colours) expect(colour.slice(1, 3)).toBe(colour.slice(5, 7));
    const { laser } = planInk('print');
    const kinds = Array.from({ length: 7 }, (_, i) => JSON.stringify([laser(i).hatching, laser(i).tint]));
    expect(new Set(kinds).size).toBe(7);
    expect(new Set(Array.from({ length: 7 }, (_, i) => laser(i).hatching.angle_deg)).size).toBe(7);
  });

  it('writes the words asked for, none smaller than 12 px', () => {
    const texts = marksOf(svgOf(plate(), { stamp: 'NOT FOR USE', caption: 'at 5 mm', legend: true })).filter(
      ({ name }) => name === 'text',
    );
    const words = texts.map(({ text }) => text);
    for (const word of ['P01', 'L1', 'L2', 'FRONT', 'GAS', 'BLADE', 'NOT FOR USE', 'at 5 mm', '−100', '100'])
      expect(words).toContain(word);
    for (const { is } of texts) expect(Number(is['font-size'])).toBeGreaterThanOrEqual(12);
    const bare = marksOf(svgOf(plate(), { labels: false, rulers: false, zoneNumbers: false }));
    expect(bare.filter(({ name }) => name === 'text')).toEqual([]);
  });
});

describe('the picture of a height', () => {
  test('is of the layer there, and of the nearest one outside the build', () => {
    const analysis = analyse(plate());
    expect(planPictureOf(analysis, 5).layer).not.toBeNull();
    expect(planPictureOf(analysis, 999).layer).toBe(planPictureOf(analysis, 20).layer);
    expect(planPictureOf(analysis, -5).layer).toBe(planPictureOf(analysis, 0).layer);
  });

  test('of an empty plate has no layer', () => {
    const analysis = analyse({ ...plate(), parts: [] });
    expect(planPictureOf(analysis, 0).layer).toBeNull();
    expect(() => planSvg(planPictureOf(analysis, 0), STYLE)).not.toThrow();
  });

  test('takes the division that holds at that height', () => {
    const layout = plate();
    const analysis = analyse({
      ...layout,
      zoning: [...layout.zoning, { from_mm: 10, zoning: { strategy: 'wholeField' } }],
    });
    expect(planPictureOf(analysis, 9).division).toBe(analysis.divisions[0]);
    expect(planPictureOf(analysis, 12).division).toBe(analysis.divisions[1]);
  });
});

/** Contrast by WCAG 2.2. */
function contrast(a: string, b: string): number {
  const light = [a, b].map((hex) => {
    const [r = 0, g = 0, blue = 0] = [1, 3, 5].map((at) => {
      const value = parseInt(hex.slice(at, at + 2), 16) / 255;
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
  });
  return (Math.max(...light) + 0.05) / (Math.min(...light) + 0.05);
}

test('words and lines on paper keep their contrast', () => {
  const { ground, laser } = planInk('print');
  for (const word of [ground.ink, ground.note, ground.warning])
    expect(contrast(word, ground.sheet)).toBeGreaterThanOrEqual(4.5);
  expect(contrast(ground.line, ground.sheet)).toBeGreaterThanOrEqual(3);
  for (let i = 0; i < 12; i++) expect(contrast(laser(i).stroke, laser(i).tint)).toBeGreaterThanOrEqual(4.5);
});
