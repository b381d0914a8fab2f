// Chaining of loose lines and arcs. Areas by closed forms [mathematics]; the drawings are shuffled, reversed and shaken
// by seeded random numbers, which must not change what they show.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areas, dxf, dxfArc, dxfCircle, dxfLine, fixture, leftOut, only, opened } from './drawing';

const PLATE_mm2 = 120 * 80 - (4 - Math.PI) * 64 - 2 * (300 + 25 * Math.PI) - 225 * Math.PI;

type Segment = readonly [number, number, number, number];
const loop = (...corners: readonly (readonly [number, number])[]): Segment[] =>
  corners.map(([x, y], i) => [x, y, ...corners[(i + 1) % corners.length]]);
const drawn = (segments: readonly Segment[], layer = 'A'): string =>
  segments.map((segment) => dxfLine(...segment, layer)).join('');
const rectangle = (x: number, y: number, w: number, h: number): Segment[] =>
  loop([x, y], [x + w, y], [x + w, y + h], [x, y + h]);

describe('loose lines and arcs', () => {
  test('the slotted plate closes to one shape with three holes', () => {
    const imported = opened(fixture('slotted-plate.dxf'), {}, 'slotted-plate.dxf');
    const shape = only(imported);
    expect(shape.area_mm2).toBeCloseTo(PLATE_mm2, 5);
    expect([shape.holes, shape.width_mm, shape.height_mm]).toEqual([
      3,
      expect.closeTo(120, 6),
      expect.closeTo(80, 6),
    ]);
    expect(imported.leftOut).toEqual([]);
  });

  test('order, direction and gaps below the limit change nothing', () => {
    // Ends shaken by up to 0.003 mm each: gaps of at most 0.0085 mm, area within outline · 0.003 mm.
    const slot = (x: number, y: number): string[] => [
      dxfArc(x, y, 5, 90, 270),
      dxfArc(x + 30, y, 5, 270, 90),
    ];
    const lines: Segment[] = [...rectangle(-20, -20, 70, 40), [0, 5, 30, 5], [30, -5, 0, -5]];
    const shake = fc.double({ min: -0.003, max: 0.003, noNaN: true });
    const order = fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7], { minLength: 8 });
    fc.assert(
      fc.property(
        order,
        fc.array(shake, { minLength: 24, maxLength: 24 }),
        fc.nat(63),
        (places, shakes, flips) => {
          const shaken = lines.map(([a, b, c, d], i) => {
            const [p, q, r, s] = shakes.slice(4 * i, 4 * i + 4);
            const moved: Segment = [a + p, b + q, c + r, d + s];
            return (flips >> i) & 1 ? ([moved[2], moved[3], moved[0], moved[1]] as const) : moved;
          });
          const objects = [...shaken.map((segment) => dxfLine(...segment)), ...slot(0, 0)];
          const shape = only(opened(dxf(places.map((i) => objects[i]).join(''))));
          expect(shape.holes).toBe(1);
          expect(Math.abs(shape.area_mm2 - (2800 - 300 - 25 * Math.PI))).toBeLessThan(0.003 * (220 + 100));
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });

  test('any set of separate polygons comes back, whatever the order of its edges', () => {
    const polygon = fc.record({
      corners: fc.integer({ min: 3, max: 9 }),
      radii: fc.array(fc.double({ min: 1, max: 4, noNaN: true }), { minLength: 9, maxLength: 9 }),
    });
    fc.assert(
      fc.property(fc.array(polygon, { minLength: 1, maxLength: 12 }), fc.integer(), (polygons, seed) => {
        const rings = polygons.map(({ corners, radii }, k) =>
          Array.from({ length: corners }, (_, i): readonly [number, number] => {
            const a = (2 * Math.PI * i) / corners;
            return [10 * (k % 4) + radii[i] * Math.cos(a), 10 * Math.floor(k / 4) + radii[i] * Math.sin(a)];
          }),
        );
        const segments = rings.flatMap((ring) => loop(...ring));
        const mixed = segments
          .map((segment, i) => ({ segment, rank: Math.abs(Math.sin(seed + 1) * 1e4 * (i + 1)) % 1 }))
          .sort((a, b) => a.rank - b.rank)
          .map(({ segment: [a, b, c, d], rank }): Segment => (rank > 0.5 ? [c, d, a, b] : [a, b, c, d]));
        const expected = rings.map((ring) => Math.abs(shoelace(ring))).sort((a, b) => a - b);
        const found = areas(opened(dxf(drawn(mixed)))).sort((a, b) => a - b);
        expect(found).toEqual(expected.map((area) => expect.closeTo(area, 6)));
      }),
      { seed: 20261126, numRuns: 100 },
    );
  });

  const shoelace = (ring: readonly (readonly [number, number])[]): number =>
    ring.reduce((sum, [x, y], i) => {
      const [p, q] = ring[(i + 1) % ring.length];
      return sum + (x * q - p * y) / 2;
    }, 0);

  test('edges shorter than the gap survive where their ends meet exactly', () => {
    const points = Array.from({ length: 1000 }, (_, i): readonly [number, number] => {
      const a = (2 * Math.PI * i) / 1000;
      return [Math.cos(a), Math.sin(a)];
    });
    // Steps of 0.0063 mm with a limit of 0.01 mm: the polygon of 1000 sides, n/2 · sin(2π/n).
    const shape = only(opened(dxf(drawn(loop(...points)))));
    expect(shape.area_mm2).toBeCloseTo(500 * Math.sin((2 * Math.PI) / 1000), 9);
  });

  test('a gap closes only within the limit that is set', () => {
    const gapped = dxf(
      drawn([
        [0, 0, 10, 0],
        [10, 0, 10, 10],
        [10, 10, 0, 10],
        [0, 10, 0, 0.2],
      ]),
    );
    expect(leftOut(opened(gapped))).toEqual({ open: 1 });
    expect(areas(opened(gapped, { chainGap_mm: 0.25 }))).toEqual([expect.closeTo(100, 9)]);
  });

  test('an arc that almost closes by itself is a circle', () => {
    const shape = only(opened(dxf(dxfArc(0, 0, 10, 0, 359.99))));
    expect(shape.area_mm2 / (100 * Math.PI)).toBeCloseTo(1, 5);
  });

  test('lines drawn twice are counted once, also backwards', () => {
    const imported = opened(dxf(drawn([...rectangle(0, 0, 10, 10), [10, 0, 0, 0]])));
    expect(areas(imported)).toEqual([expect.closeTo(100, 9)]);
    expect(leftOut(imported)).toEqual({ duplicate: 1 });
  });
});

describe('where three or more lines meet', () => {
  test('a line across a frame is left over, the frame closes', () => {
    const imported = opened(dxf(drawn([...rectangle(0, 0, 10, 10), [0, 0, 10, 10]])));
    expect(areas(imported)).toEqual([expect.closeTo(100, 9)]);
    expect(leftOut(imported)).toEqual({ branch: 1 });
  });

  test('a spur is left over, the frame closes', () => {
    const imported = opened(dxf(drawn([...rectangle(0, 0, 10, 10), [10, 10, 15, 15], [15, 15, 15, 20]])));
    expect(areas(imported)).toEqual([expect.closeTo(100, 9)]);
    expect(leftOut(imported)).toEqual({ open: 1 });
  });

  test('two frames that meet in a corner are two shapes', () => {
    const imported = opened(dxf(drawn([...rectangle(0, 0, 10, 10), ...rectangle(10, 10, 5, 5)])));
    expect(areas(imported).sort((a, b) => a - b)).toEqual([expect.closeTo(25, 9), expect.closeTo(100, 9)]);
    expect(imported.leftOut).toEqual([]);
  });

  test('a hole that touches the frame in a corner stays a hole', () => {
    const imported = opened(dxf(drawn([...rectangle(0, 0, 10, 10), ...loop([0, 0], [4, 2], [2, 4])])));
    expect(only(imported).area_mm2).toBeCloseTo(100 - 6, 9);
    expect(only(imported).holes).toBe(1);
  });

  test('two frames joined by a line are two shapes, the line is left over', () => {
    const imported = opened(
      dxf(drawn([...rectangle(0, 0, 10, 10), ...rectangle(20, 0, 10, 10), [10, 10, 20, 10]])),
    );
    expect(areas(imported)).toEqual([expect.closeTo(100, 9), expect.closeTo(100, 9)]);
    expect(leftOut(imported)).toEqual({ branch: 1 });
  });

  test('an arc and its chord between the same corners are told apart', () => {
    // A square with a half disc on its right side and the side itself: the contour includes the half disc.
    const imported = opened(dxf(drawn(rectangle(0, 0, 10, 10)) + dxfArc(10, 5, 5, 270, 90)));
    expect(areas(imported)).toEqual([expect.closeTo(100 + 12.5 * Math.PI, 6)]);
    expect(leftOut(imported)).toEqual({ branch: 1 });
  });

  test('lines of another layer do not disturb an outline', () => {
    const imported = opened(
      dxf(drawn(rectangle(0, 0, 10, 10)) + dxfLine(0, 0, 10, 10, 'AXES') + dxfLine(10, 0, 25, -3, 'AXES')),
    );
    expect(areas(imported)).toEqual([expect.closeTo(100, 9)]);
    expect(leftOut(imported)).toEqual({ open: 2 });
  });

  test('an outline drawn on two layers still closes', () => {
    const [a, b, c, d] = rectangle(0, 0, 10, 10);
    expect(areas(opened(dxf(drawn([a, b]) + drawn([c, d], 'B'))))).toEqual([expect.closeTo(100, 9)]);
  });
});

test('a plate with 3600 holes of loose half circles is one shape with 3600 circles', () => {
  const holes = Array.from(
    { length: 3600 },
    (_, i) => [4 * (i % 60) + 3, 4 * Math.floor(i / 60) + 3] as const,
  );
  const text = dxf(
    drawn(rectangle(0, 0, 242, 242)) +
      holes.map(([x, y]) => dxfArc(x, y, 1, 0, 180) + dxfArc(x, y, 1, 180, 0)).join(''),
  );
  const shape = only(opened(text));
  expect(shape.holes).toBe(3600);
  expect(shape.area_mm2 / (242 * 242 - 3600 * Math.PI)).toBeCloseTo(1, 9);
  expect(shape.rings.filter((ring) => 'circle_mm' in ring)).toHaveLength(3600);
});

test('circles inside circles nest by depth', () => {
  const imported = opened(dxf([50, 40, 30, 20, 10].map((r) => dxfCircle(0, 0, r)).join('')));
  expect(areas(imported)).toEqual([900, 500, 100].map((a) => expect.closeTo(a * Math.PI, 6)));
});
