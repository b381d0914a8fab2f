// DXF outlines held against closed forms of plane geometry [mathematics] and against the DXF Reference's own rules
// (bulge, polyline flags, knots and weights, units) [memory].
import { describe, expect, test } from 'vitest';
import {
  dxf,
  dxfCircle,
  dxfLine,
  dxfObject,
  dxfOldPolyline,
  dxfPolyline,
  fixture,
  leftOut,
  only,
  opened,
} from './drawing';

const INCH = 25.4;
const square = (x: number, y: number, side: number, layer = 'A'): string =>
  dxfLine(x, y, x + side, y, layer) +
  dxfLine(x + side, y, x + side, y + side, layer) +
  dxfLine(x, y + side, x + side, y + side, layer) +
  dxfLine(x, y + side, x, y, layer);

describe('single objects', () => {
  test('a circle stays a circle', () => {
    const shape = only(opened(dxf(dxfCircle(10, 20, 7.5))));
    expect(shape.rings).toEqual([{ circle_mm: [10, 20, 7.5] }]);
    expect(shape.area_mm2).toBeCloseTo(Math.PI * 56.25, 6);
  });

  test('bulges are tangents of a quarter of the angle, positive counter-clockwise', () => {
    // Bulge 1 is a half circle. A 40 × 10 slot: 40·10 + π·5²; with bulge −1 the ends go inwards: 40·10 − π·5².
    const slot = (bulge: number): string =>
      dxf(
        dxfPolyline([
          [0, 0],
          [40, 0, bulge],
          [40, 10],
          [0, 10, bulge],
        ]),
      );
    expect(only(opened(slot(1))).area_mm2).toBeCloseTo(400 + Math.PI * 25, 6);
    expect(only(opened(slot(-1))).area_mm2).toBeCloseTo(400 - Math.PI * 25, 6);
    // A chord 21 with rise 6 has the area 89.254148 (help.matheass.eu, Circular sections); bulge = 2 · rise / chord.
    const segment = dxf(
      dxfPolyline([
        [0, 0, 12 / 21],
        [21, 0],
      ]),
    );
    expect(only(opened(segment)).area_mm2).toBeCloseTo(89.254148, 5);
  });

  test('two vertices with bulge 1 are a circle', () => {
    const shape = only(
      opened(
        dxf(
          dxfPolyline([
            [-3, 0, 1],
            [3, 0, 1],
          ]),
        ),
      ),
    );
    expect(shape.rings).toEqual([
      { circle_mm: [expect.closeTo(0, 9), expect.closeTo(0, 9), expect.closeTo(3, 9)] },
    ]);
  });

  test('a light polyline keeps its vertices when each carries an identifier (group 91)', () => {
    const corners = [
      [0, 0],
      [20, 0],
      [20, 10],
      [0, 10],
    ];
    const text =
      dxfObject(0, 'LWPOLYLINE', 8, 'A', 90, 4, 70, 1) +
      corners.map(([x, y], i) => dxfObject(10, x, 20, y, 91, i)).join('');
    expect(only(opened(dxf(text))).area_mm2).toBeCloseTo(200, 9);
  });

  test('polylines of release 12 close by their flag; control vertices of smoothed ones are no corners', () => {
    const plain = dxfOldPolyline([
      [0, 0],
      [20, 0],
      [20, 10, 1],
      [0, 10],
    ]);
    expect(only(opened(dxf(plain, { insUnits: null }))).area_mm2).toBeCloseTo(200 + (Math.PI * 100) / 2, 6);
    const smoothed =
      dxfObject(0, 'POLYLINE', 8, 'A', 66, 1, 70, 5) +
      [
        [0, 0, 8],
        [99, 99, 16],
        [20, 0, 8],
        [20, 10, 8],
        [0, 10, 8],
      ]
        .map(([x, y, flag]) => dxfObject(0, 'VERTEX', 8, 'A', 10, x, 20, y, 70, flag))
        .join('') +
      dxfObject(0, 'SEQEND');
    expect(only(opened(dxf(smoothed))).area_mm2).toBeCloseTo(200, 9);
  });

  test('a polyline that is not closed is chained with what meets it', () => {
    const text =
      dxfPolyline(
        [
          [0, 0],
          [20, 0],
          [20, 10],
        ],
        false,
      ) +
      dxfLine(0, 10, 0, 0) +
      dxfLine(0, 10, 20, 10);
    expect(only(opened(dxf(text))).area_mm2).toBeCloseTo(200, 9);
  });

  test('an ellipse has the area π a b; half of one closes with its axis', () => {
    const whole = dxfObject(
      0,
      'ELLIPSE',
      8,
      'A',
      10,
      5,
      20,
      5,
      11,
      12,
      21,
      16,
      40,
      0.35,
      41,
      0,
      42,
      2 * Math.PI,
    );
    expect(only(opened(dxf(whole))).area_mm2).toBeCloseTo(Math.PI * 20 * 7, 6);
    const half = dxfObject(0, 'ELLIPSE', 8, 'A', 10, 0, 20, 0, 11, 20, 21, 0, 40, 0.35, 41, 0, 42, Math.PI);
    const shape = only(opened(dxf(half + dxfLine(-20, 0, 20, 0))));
    expect(shape.area_mm2).toBeCloseTo((Math.PI * 140) / 2, 6);
    expect(shape.height_mm).toBeCloseTo(7, 9);
  });
});

describe('splines', () => {
  const circleSpline = (r: number): string => {
    // The exact circle as a rational quadratic in four quarters (Piegl and Tiller, The NURBS Book, 7.5 [memory]).
    const knots = [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4].map((knot) => dxfObject(40, knot)).join('');
    const corners = [
      [1, 0],
      [1, 1],
      [0, 1],
      [-1, 1],
      [-1, 0],
      [-1, -1],
      [0, -1],
      [1, -1],
      [1, 0],
    ];
    const weights = corners.map((_, i) => dxfObject(41, i % 2 === 0 ? 1 : Math.SQRT1_2)).join('');
    const points = corners.map(([x, y]) => dxfObject(10, r * x, 20, r * y, 30, 0)).join('');
    return dxfObject(0, 'SPLINE', 8, 'A', 70, 5, 71, 2, 72, 12, 73, 9) + knots + weights + points;
  };

  test('the rational circle has the area π r²', () => {
    for (const r of [2, 10, 60])
      expect(only(opened(dxf(circleSpline(r)))).area_mm2 / (Math.PI * r * r)).toBeCloseTo(1, 4);
  });

  test('a spline through points on a circle nearly is the circle', () => {
    const points = Array.from({ length: 24 }, (_, i) => (Math.PI * i) / 12)
      .map((a) => dxfObject(11, 10 * Math.cos(a), 21, 10 * Math.sin(a)))
      .join('');
    const text = dxfObject(0, 'SPLINE', 8, 'A', 70, 1, 71, 3, 74, 24) + points;
    expect(only(opened(dxf(text))).area_mm2 / (Math.PI * 100)).toBeCloseTo(1, 4);
  });

  test('a spline through two points leaves and arrives along its tangents', () => {
    // The Hermite cubic from (0, 0) to (10, 0) with slopes (1, ±1)/√2 per unit of chord length. With its chord it
    // encloses ∫ y x' dt; both are polynomials of t, so Simpson's rule on 1000 steps is exact to rounding.
    const m = 10 * Math.SQRT1_2;
    const y = (t: number): number => m * (t * (1 - t) ** 2 + t * t * (1 - t));
    const dx = (t: number): number =>
      m * (1 - 4 * t + 3 * t * t) + m * (3 * t * t - 2 * t) + 60 * (t - t * t);
    const weight = (i: number): number => (i === 0 || i === 1000 ? 1 : i % 2 === 1 ? 4 : 2);
    const terms = Array.from({ length: 1001 }, (_, i) => weight(i) * y(i / 1000) * dx(i / 1000));
    const expected = terms.reduce((sum, term) => sum + term) / 3000;
    const text =
      dxfObject(0, 'SPLINE', 8, 'A', 70, 8, 71, 3, 74, 2, 12, Math.SQRT1_2, 22, Math.SQRT1_2) +
      dxfObject(13, Math.SQRT1_2, 23, -Math.SQRT1_2, 11, 0, 21, 0, 11, 10, 21, 0);
    const shape = only(opened(dxf(text + dxfLine(10, 0, 0, 0))));
    expect(shape.area_mm2 / expected).toBeCloseTo(1, 3);
  });

  test('a spline whose knots do not fit its points is left out', () => {
    const text = dxfObject(0, 'SPLINE', 8, 'A', 70, 8, 71, 3, 40, 0, 40, 1, 10, 0, 20, 0, 10, 5, 20, 5);
    expect(leftOut(opened(dxf(text)))).toEqual({ broken: 1 });
  });
});

describe('units', () => {
  test.each([
    [1, 'in', INCH],
    [2, 'ft', 12 * INCH],
    [4, 'mm', 1],
    [5, 'cm', 10],
    [6, 'm', 1000],
    [9, 'mil', INCH / 1000],
    [13, 'um', 0.001],
  ])('$INSUNITS %d is %s', (insUnits, unit, scale) => {
    const imported = opened(dxf(square(0, 0, 4 / scale), { insUnits }));
    expect(imported.unit).toEqual({ unit, scale: expect.closeTo(scale, 12), from: 'file' });
    expect(only(imported).area_mm2).toBeCloseTo(16, 6);
  });

  test('$INSUNITS 0 or none leaves the unit open and takes millimetres; a chosen unit scales', () => {
    const imported = opened(fixture('no-units.dxf'), {}, 'no-units.dxf');
    expect(imported.unit).toBeNull();
    expect(only(imported).area_mm2).toBeCloseTo(2 - Math.PI / 16, 6);
    expect(opened(dxf(square(0, 0, 4), { insUnits: null })).unit).toBeNull();
    const inches = opened(fixture('no-units.dxf'), { unit: 'in' }, 'no-units.dxf');
    expect(only(inches).area_mm2).toBeCloseTo((2 - Math.PI / 16) * INCH ** 2, 6);
  });

  test('the ring in inches keeps both circles', () => {
    const shape = only(opened(fixture('ring-inch.dxf'), {}, 'ring-inch.dxf'));
    expect(shape.area_mm2).toBeCloseTo(3 * Math.PI * INCH ** 2, 6);
    expect(shape.rings).toHaveLength(2);
    expect(shape.rings.every((ring) => 'circle_mm' in ring)).toBe(true);
  });
});
