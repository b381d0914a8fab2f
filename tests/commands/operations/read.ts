/** Small readers for tests of operations. */
import type { Result } from '../../../src/layout/result';
import { layoutAt } from '../../../src/layout/steps';
import type { Layout, LayoutRing, Point, Strategy, Zoning } from '../../../src/layout/types';

export const accepted = (result: Result<Layout>): Layout => {
  if (!result.ok) throw new Error(`expected a layout, got ${JSON.stringify(result.fault)}`);
  return result.value;
};
export const at = (layout: Layout, id: string) => layout.parts.find((entry) => entry.id === id)!.at_mm;
export const zoningOf = <S extends Strategy>(layout: Layout, strategy: S) => {
  const { zoning } = layoutAt(layout, 0);
  if (zoning.strategy !== strategy) throw new Error(`expected ${strategy}, got ${zoning.strategy}`);
  return zoning as Extract<Zoning, { strategy: S }>;
};
export const corners = (ring: LayoutRing): readonly Point[] => ('circle_mm' in ring ? [] : ring);
/** Area of a ring by the shoelace formula [mathematics]. */
export const shoelace = (ring: LayoutRing): number => {
  const points = corners(ring);
  const next = (i: number) => points[(i + 1) % points.length]!;
  return Math.abs(points.reduce((sum, [x, y], i) => sum + x * next(i)[1] - next(i)[0] * y, 0)) / 2;
};
