// SVG outlines held against closed forms of plane geometry [mathematics] and against rules of SVG 2 (W3C) and CSS
// Values and Units 4 (1 in = 96 px = 25.4 mm).
import { describe, expect, test } from 'vitest';
import type { LayoutRing } from '../../src/layout/types';
import { areas, fixture, leftOut, only, opened, svg } from './drawing';

const INCH = 25.4;
const isCircle = (ring: LayoutRing): boolean => 'circle_mm' in ring;
/** Pentagram of circumradius R: ten corners at R and R/φ² in turn; the pentagon inside has circumradius R/φ². */
const PHI = (1 + Math.sqrt(5)) / 2;
const pentagram = (R: number): { whole: number; core: number } => {
  const r = R / PHI ** 2;
  return { whole: 5 * R * r * Math.sin(Math.PI / 5), core: 2.5 * r * r * Math.sin((2 * Math.PI) / 5) };
};
const starPath = (R: number): string =>
  `M${[0, 2, 4, 1, 3]
    .map((i) => (2 * Math.PI * i) / 5)
    .map((a) => `${50 + R * Math.sin(a)},${50 - R * Math.cos(a)}`)
    .join('L')}z`;

describe('units', () => {
  test.each([
    ['without a size the viewBox counts as pixels of 1/96 in', 'viewBox="0 0 96 96"', INCH / 96, 'px'],
    [
      'a width in mm over the viewBox sets the scale',
      'width="50mm" height="50mm" viewBox="0 0 100 100"',
      0.5,
      'mm',
    ],
    ['a width in inches', 'width="2in" height="2in" viewBox="0 0 100 100"', (2 * INCH) / 100, 'in'],
    ['points are 1/72 in', 'width="72pt" height="72pt" viewBox="0 0 36 36"', INCH / 36, 'pt'],
    ['a plain number is pixels', 'width="192" height="192" viewBox="0 0 192 192"', INCH / 96, 'px'],
    ['no size and no viewBox is pixels', '', INCH / 96, 'px'],
    ['percentages are no size', 'width="100%" height="100%" viewBox="0 0 10 10"', INCH / 96, 'px'],
    ['one size sets both directions', 'width="40mm" viewBox="0 0 20 10"', 2, 'mm'],
  ])('%s', (_, attributes, scale, unit) => {
    const imported = opened(svg('<rect x="1" y="2" width="10" height="5"/>', attributes));
    expect(imported.unit?.unit).toBe(unit);
    expect(imported.unit?.scale).toBeCloseTo(scale, 9);
    expect(only(imported).width_mm).toBeCloseTo(10 * scale, 9);
    expect(only(imported).area_mm2).toBeCloseTo(50 * scale * scale, 9);
  });

  test('a unit chosen by the user overrides the file', () => {
    const imported = opened(svg('<rect width="10" height="5"/>'), { unit: 'in' });
    expect(imported.unit).toEqual({ unit: 'in', scale: INCH, from: 'chosen' });
    expect(only(imported).area_mm2).toBeCloseTo(50 * INCH * INCH, 6);
  });

  test('lengths within the drawing carry units and percentages', () => {
    const text = svg('<rect x="10mm" y="0" width="50%" height="1in"/>', 'viewBox="0 0 96 96"');
    expect(only(opened(text)).width_mm).toBeCloseTo(INCH / 2, 9);
    expect(only(opened(text)).height_mm).toBeCloseTo(INCH, 9);
  });
});

describe('basic shapes', () => {
  test('a circle stays a circle and has the area π r²', () => {
    const shape = only(opened(svg('<circle cx="30" cy="20" r="12.5"/>')));
    expect(shape.rings).toEqual([{ circle_mm: [30, -20, 12.5].map((v) => expect.closeTo(v, 9)) }]);
    expect(shape.area_mm2).toBeCloseTo(Math.PI * 12.5 ** 2, 6);
    expect([shape.width_mm, shape.height_mm]).toEqual([expect.closeTo(25, 9), expect.closeTo(25, 9)]);
  });

  test('a turned, moved and mirrored circle stays a circle, a squeezed one does not', () => {
    const circle = '<circle cx="5" cy="5" r="4"/>';
    const round = only(opened(svg(`<g transform="translate(40,40) rotate(30) scale(-2,2)">${circle}</g>`)));
    expect(isCircle(round.rings[0])).toBe(true);
    expect(round.area_mm2).toBeCloseTo(Math.PI * 64, 6);
    const oval = only(opened(svg(`<g transform="scale(2,1)">${circle}</g>`)));
    expect(isCircle(oval.rings[0])).toBe(false);
    expect(oval.area_mm2).toBeCloseTo(Math.PI * 8 * 4, 6);
  });

  test('a circle drawn as two arcs of a path is kept as a circle', () => {
    const shape = only(opened(svg('<path d="M10 50a40 40 0 1 0 80 0a40 40 0 1 0-80 0z"/>')));
    expect(isCircle(shape.rings[0])).toBe(true);
    expect(shape.area_mm2).toBeCloseTo(Math.PI * 1600, 6);
  });

  test('an ellipse has the area π a b, turned or not', () => {
    for (const turn of [0, 33, 90])
      expect(
        only(opened(svg(`<ellipse cx="9" cy="4" rx="20" ry="7" transform="rotate(${turn})"/>`))).area_mm2,
      ).toBeCloseTo(Math.PI * 140, 6);
  });

  test('rounded corners take (4 − π) r² away; a radius is at most half the side', () => {
    const rounded = only(opened(svg('<rect width="60" height="40" rx="8"/>')));
    expect(rounded.area_mm2).toBeCloseTo(2400 - (4 - Math.PI) * 64, 6);
    expect([rounded.width_mm, rounded.height_mm]).toEqual([expect.closeTo(60, 9), expect.closeTo(40, 9)]);
    const oval = only(opened(svg('<rect width="60" height="40" rx="99" ry="5"/>')));
    expect(oval.area_mm2).toBeCloseTo(2400 - (4 - Math.PI) * 30 * 5, 6);
  });

  test('polygons and polylines are filled as if closed', () => {
    expect(areas(opened(svg('<polygon points="0,0 30 0 0,40"/>')))).toEqual([expect.closeTo(600, 9)]);
    expect(areas(opened(svg('<polyline points="0,0 30,0 30,10"/>')))).toEqual([expect.closeTo(150, 9)]);
  });
});

describe('paths', () => {
  test('a cubic curve encloses what its Bernstein polynomial encloses', () => {
    // Green's theorem on a cubic from (0, 0) to (60, 0) with controls (0, 40) and (60, 40):
    // ∫ y dx with y = 120 t(1−t), x' = 360 t(1−t): 43200 ∫ t²(1−t)² dt = 43200 · B(3,3) = 43200 / 30.
    const shape = only(opened(svg('<path d="M0 0C0 40 60 40 60 0z"/>')));
    expect(shape.area_mm2 / (43200 / 30)).toBeCloseTo(1, 5);
  });

  test('a parabola encloses two thirds of its box; a smooth command mirrors its control point', () => {
    // A quadratic Bézier over chord 60 with its control 40 above: 2/3 · 60 · 20 = 800; "t" mirrors the control.
    expect(only(opened(svg('<path d="m10 50q30-40 60 0z"/>'))).area_mm2 / 800).toBeCloseTo(1, 5);
    const wave = opened(svg('<path d="M0 50q15-20 30 0t30 0z"/>'));
    expect(areas(wave).reduce((sum, area) => sum + area) / 400).toBeCloseTo(1, 4);
    expect(wave.box.maxY - wave.box.minY).toBeCloseTo(20, 2);
  });

  test('an arc whose radii are too small is scaled up until it reaches (SVG 2, B.2.5)', () => {
    expect(only(opened(svg('<path d="M20 50A1 1 0 0 1 60 50z"/>'))).area_mm2).toBeCloseTo(
      (Math.PI * 400) / 2,
      6,
    );
  });

  test('large and sweep flags choose among the four arcs', () => {
    // Chord 20 of a circle r 20: the segment is r²(θ − sin θ)/2 with θ = 60° or 300°.
    const segment = (deg: number): number => 200 * ((deg * Math.PI) / 180 - Math.sin((deg * Math.PI) / 180));
    const area = (flags: string): number =>
      only(opened(svg(`<path d="M40 50A20 20 0 ${flags} 60 50z"/>`))).area_mm2;
    expect(area('0 1')).toBeCloseTo(segment(60), 6);
    expect(area('1 1')).toBeCloseTo(segment(300), 6);
    expect(area('00')).toBeCloseTo(segment(60), 6);
    expect(area('10')).toBeCloseTo(segment(300), 6);
  });

  test('a subpath after "z" begins where the last one began', () => {
    expect(areas(opened(svg('<path d="M10 10h10v10h-10zl-5 0v-5z"/>')))).toEqual([
      expect.closeTo(100, 9),
      expect.closeTo(12.5, 9),
    ]);
  });

  test('a star is whole under the non-zero rule and hollow under even-odd', () => {
    const { whole, core } = pentagram(40);
    const nonZero = only(opened(svg(`<path d="${starPath(40)}"/>`)));
    expect(nonZero.area_mm2 / whole).toBeCloseTo(1, 5);
    const evenOdd = opened(svg(`<path style="fill-rule:evenodd" d="${starPath(40)}"/>`));
    expect(areas(evenOdd).reduce((a, b) => a + b) / (whole - core)).toBeCloseTo(1, 5);
    expect(evenOdd.repaired).toBe(1);
  });

  test('an inner ring of the same sense is filled by non-zero and a hole by even-odd', () => {
    const rings = 'M0 0H50V50H0zM10 10H40V40H10z';
    expect(only(opened(svg(`<path d="${rings}"/>`))).area_mm2).toBeCloseTo(2500, 9);
    const hollow = only(opened(svg(`<path fill-rule="evenodd" d="${rings}"/>`)));
    expect([hollow.area_mm2, hollow.holes]).toEqual([expect.closeTo(1600, 9), 1]);
    const opposite = only(opened(svg('<path d="M0 0H50V50H0zM10 10V40H40V10z"/>')));
    expect([opposite.area_mm2, opposite.holes]).toEqual([expect.closeTo(1600, 9), 1]);
  });

  test('every path follows its own rule, inherited from its group or set by a style sheet', () => {
    const rings = 'M0 0H50V50H0zM10 10H40V40H10z';
    const inGroup = svg(`<g fill-rule="evenodd"><path d="${rings}"/></g>`);
    expect(only(opened(inGroup)).holes).toBe(1);
    const sheet = svg(
      `<style>/* rims */ .rim, #x { fill-rule: evenodd }</style><path class="rim" d="${rings}"/>`,
    );
    expect(only(opened(sheet)).holes).toBe(1);
    const own = svg(`<g fill-rule="evenodd"><path style="fill-rule:nonzero" d="${rings}"/></g>`);
    expect(only(opened(own)).holes).toBe(0);
  });
});

describe('arrangement', () => {
  test('y is turned over: the foot of an L stays at the bottom right', () => {
    const imported = opened(fixture('angle.svg'), {}, 'angle.svg');
    const shape = only(imported);
    expect(shape.area_mm2).toBeCloseTo(500, 9);
    const { minX, minY, maxX, maxY } = imported.box;
    const corners = (shape.rings[0] as readonly (readonly [number, number])[]).map(([x, y]) => [
      Math.round((x - minX) * 1e6) / 1e6,
      Math.round((y - minY) * 1e6) / 1e6,
    ]);
    expect([maxX - minX, maxY - minY]).toEqual([expect.closeTo(20, 9), expect.closeTo(40, 9)]);
    expect(corners).toContainEqual([20, 0]);
    expect(corners).toContainEqual([20, 10]);
    expect(corners).not.toContainEqual([20, 40]);
  });

  test('nested transforms apply from the inside out', () => {
    // (1,0) → ×2 → turned by 90° (down the screen) → moved: the square lies at x −2…0 + 50, y 0…2 + 10, y turned over.
    const imported = opened(
      svg(
        '<g transform="translate(50 10)"><g transform="rotate(90)"><rect width="1" height="1" transform="scale(2)"/></g></g>',
      ),
    );
    expect(imported.box).toEqual({
      minX: expect.closeTo(48, 9),
      maxX: expect.closeTo(50, 9),
      minY: expect.closeTo(-12, 9),
      maxY: expect.closeTo(-10, 9),
    });
  });

  test('matrix, skew and numbers without separators are understood', () => {
    expect(areas(opened(svg('<rect width="4" height="5" transform="matrix(2 1 0 3 0 0)"/>')))).toEqual([
      expect.closeTo(120, 9),
    ]);
    expect(areas(opened(svg('<rect width="4" height="5" transform="skewX(45)\ntranslate(10-5)"/>')))).toEqual(
      [expect.closeTo(20, 9)],
    );
  });

  test('use repeats an element or a symbol at its place; one that uses itself is left out', () => {
    const twice = opened(
      svg(
        '<defs><rect id="r" width="4" height="4"/></defs><use href="#r" x="10"/><use href="#r" transform="scale(2)"/>',
      ),
    );
    expect(areas(twice)).toEqual([expect.closeTo(16, 9), expect.closeTo(64, 9)]);
    const symbol = svg(
      '<symbol id="s" viewBox="0 0 10 10"><rect width="10" height="10"/></symbol><use href="#s" width="30" height="30"/>',
    );
    expect(areas(opened(symbol))).toEqual([expect.closeTo(900, 9)]);
    const loop = opened(svg('<g id="g"><rect width="4" height="4"/><use href="#g"/></g>'));
    expect(leftOut(loop)).toMatchObject({ missing: 1 });
  });

  test('a nested svg is fitted into its window', () => {
    const text = svg(
      '<svg x="10" y="10" width="40" height="20" viewBox="0 0 10 10"><rect width="10" height="10"/></svg>',
    );
    // meet: scale 2, centred along x: 20 × 20 at x 20 … 40.
    expect(opened(text).box).toMatchObject({ minX: expect.closeTo(20, 9), maxX: expect.closeTo(40, 9) });
    const stretched = text.replace('viewBox="0 0 10 10"', 'viewBox="0 0 10 10" preserveAspectRatio="none"');
    expect(areas(opened(stretched))).toEqual([expect.closeTo(800, 9)]);
  });

  test('a ring inside another is a hole, an island inside the hole is a shape of its own', () => {
    const imported = opened(
      svg(
        '<circle cx="50" cy="50" r="40"/><circle cx="50" cy="50" r="30"/><circle cx="50" cy="50" r="10"/><rect x="1" y="1" width="5" height="5"/>',
      ),
    );
    expect(imported.shapes.map(({ holes }) => holes)).toEqual([1, 0, 0]);
    expect(areas(imported)).toEqual([
      expect.closeTo(Math.PI * 700, 6),
      expect.closeTo(Math.PI * 100, 6),
      expect.closeTo(25, 9),
    ]);
  });

  test('the gasket has its area and five round holes', () => {
    const shape = only(opened(fixture('gasket.svg'), {}, 'gasket.svg'));
    expect(shape.area_mm2).toBeCloseTo(
      90 * 60 - (4 - Math.PI) * 100 - Math.PI * 18 ** 2 - 4 * Math.PI * 3.5 ** 2,
      6,
    );
    expect(shape.rings.filter(isCircle)).toHaveLength(5);
    expect([shape.name, shape.holes]).toEqual(['gasket', 5]);
  });
});

describe('what is left out', () => {
  test('every kind is counted under its own word, the disc is read', () => {
    const imported = opened(fixture('left-out.svg'), {}, 'left-out.svg');
    expect(areas(imported)).toEqual([expect.closeTo(Math.PI * 400, 6)]);
    expect(imported.leftOut.map(({ kind, what, count }) => [kind, what, count])).toEqual([
      ['stroke', 'centre-line', 1],
      ['stroke', 'frame', 1],
      ['text', 'text', 1],
      ['image', 'image', 1],
      ['hidden', 'old-version', 1],
      ['broken', 'torn', 1],
      ['missing', 'use #lost', 1],
    ]);
  });

  test('clips, invisible elements and elements without an area are named', () => {
    const imported = opened(
      svg(
        '<rect width="9" height="9" clip-path="url(#c)"/><rect x="20" width="9" height="9" visibility="hidden"/>' +
          '<path d="M0 0L5 5"/><clipPath id="c"><rect width="1" height="1"/></clipPath><rect fill="none" width="3" height="3"/>',
      ),
    );
    expect(areas(imported)).toEqual([expect.closeTo(81, 9)]);
    expect(leftOut(imported)).toEqual({ clip: 1, hidden: 2, 'no-area': 1 });
  });

  test('the same outline drawn twice is kept once', () => {
    const imported = opened(svg('<rect width="9" height="9"/><path d="M0 0H9V9H0z"/>'));
    expect(areas(imported)).toEqual([expect.closeTo(81, 9)]);
    expect(leftOut(imported)).toEqual({ duplicate: 1 });
  });
});
