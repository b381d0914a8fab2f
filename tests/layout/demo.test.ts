// The demo plate is what the product promises to show first (at least 18 parts of 6 shapes with
// holes and curves, three heights, one part that may not be cut) and stands soundly: spacing and margin are measured by
// JTS (npm jsts), a general-purpose geometry library, on circles of 256 corners (0.003 mm inside a radius of 45 mm).
import GeoJSONReader from 'jsts/org/locationtech/jts/io/GeoJSONReader.js';
import 'jsts/org/locationtech/jts/monkey.js';
import { describe, expect, test } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import { readLayout } from '../../src/layout/read';
import type { LayoutRing, Part } from '../../src/layout/types';
import { writeLayout } from '../../src/layout/write';

const layout = demoLayout();
interface Polygon {
  distance(other: Polygon): number;
  isValid(): boolean;
}
/** The package's own types ask for a factory that its code supplies by itself. */
const reader = new (GeoJSONReader as unknown as new () => { read(geometry: object): Polygon })();

const corners = (ring: LayoutRing): [number, number][] => {
  if (!('circle_mm' in ring)) return ring.map(([x, y]) => [x, y]);
  const [cx, cy, r] = ring.circle_mm;
  return Array.from({ length: 256 }, (_, i) => {
    const angle = (i * Math.PI) / 128;
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
  });
};
const placed = (part: Part, ring: LayoutRing): [number, number][] => {
  const turn = (part.turn_deg * Math.PI) / 180;
  return corners(ring).map(([x, y]) => [
    part.at_mm[0] + x * Math.cos(turn) - y * Math.sin(turn),
    part.at_mm[1] + x * Math.sin(turn) + y * Math.cos(turn),
  ]);
};
const polygon = (points: [number, number][]): Polygon =>
  reader.read({ type: 'Polygon', coordinates: [[...points, points[0]]] });
const ringsOf = (part: Part): LayoutRing[] =>
  (layout.shapes[part.shape]?.slabs ?? []).flatMap((slab) => [...slab.rings]);

/** The outer ring of every slab comes first (housings, necks and all); necks of a manifold lie inside its body. */
const outerRings = (part: Part): LayoutRing[] =>
  (layout.shapes[part.shape]?.slabs ?? []).flatMap((slab) => slab.rings.slice(0, 1));
/** No part reaches further from its origin than this. */
const widest = Math.max(
  ...layout.parts.flatMap((part) =>
    ringsOf(part).flatMap((ring) => corners(ring).map(([x, y]) => Math.hypot(x, y))),
  ),
);

describe('the demo plate', () => {
  test('is a sound layout that its file brings back unchanged', () => {
    expect(readLayout(writeLayout(layout))).toEqual({ ok: true, value: layout });
  });

  test('has at least 18 parts of 6 shapes and three heights', () => {
    const used = new Set(layout.parts.map((part) => part.shape));
    const heights = new Set([...used].map((id) => layout.shapes[id]?.slabs.at(-1)?.to_mm));
    expect(layout.parts.length).toBeGreaterThanOrEqual(18);
    expect(used.size).toBeGreaterThanOrEqual(6);
    expect([...heights].sort((a = 0, b = 0) => a - b)).toEqual([30, 48, 90]);
  });

  test('has exactly one part that may not be cut', () => {
    expect(layout.parts.filter((part) => part.seams === 'none')).toHaveLength(1);
  });

  test('keeps every part inside the margin', () => {
    const limit = 340 / 2 - 8;
    const outside = layout.parts.filter((part) =>
      ringsOf(part).some((ring) =>
        placed(part, ring)
          .flat()
          .some((x) => Math.abs(x) > limit),
      ),
    );
    expect(outside).toEqual([]);
  });

  test('keeps 3 mm between any two parts at any pair of heights', () => {
    const near = (a: Part, b: Part): boolean =>
      Math.hypot(a.at_mm[0] - b.at_mm[0], a.at_mm[1] - b.at_mm[1]) < 2 * widest + 3;
    const outlines = layout.parts.map((part) => outerRings(part).map((ring) => polygon(placed(part, ring))));
    const gaps = layout.parts.flatMap((part, i) =>
      layout.parts.flatMap((other, k) =>
        k <= i || !near(part, other)
          ? []
          : (outlines[i] ?? []).flatMap((a) => (outlines[k] ?? []).map((b) => a.distance(b))),
      ),
    );
    expect(gaps.length).toBeGreaterThan(30);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(3);
  });

  test('has no outline that crosses itself', () => {
    const crossing = Object.entries(layout.shapes).filter(([, shape]) =>
      shape.slabs.flatMap((slab) => slab.rings).some((ring) => !polygon(corners(ring)).isValid()),
    );
    expect(crossing).toEqual([]);
  });
});
