// A layout that went to another thread and back is the same layout: shapes packed and unpacked, files read and written there.
import { expect, test } from 'vitest';
import { area } from '../../src/geometry/region';
import { footprintOf } from '../../src/exposure/prepared';
import { demoLayout } from '../../src/layout/demo';
import { readLayout } from '../../src/layout/read';
import type { Layout, LayoutRing } from '../../src/layout/types';
import { writeLayout } from '../../src/layout/write';
import {
  buffersOf,
  putTogether,
  putTogetherSlowly,
  readApart,
  takeApart,
  writeApart,
} from '../../src/worker/layoutApart';

/** A regular polygon of n corners about the origin. */
const polygon = (radius: number, n: number): LayoutRing =>
  Array.from({ length: n }, (_, i) => {
    const angle = (2 * Math.PI * i) / n;
    const rounded = (value: number) => Math.round(value * 1000) / 1000 + 0;
    return [rounded(radius * Math.cos(angle)), rounded(radius * Math.sin(angle))] as const;
  });
/** The demo plate with a cone of 60 slabs of 300 corners: enough to be written a slab a line. */
const withCone = (): Layout => {
  const demo = demoLayout();
  const slabs = Array.from({ length: 60 }, (_, k) => ({ to_mm: k + 1, rings: [polygon(40 - k / 2, 300)] }));
  return { ...demo, shapes: { ...demo.shapes, cone: { slabs } } };
};

test('taken apart and put together it is equal, its keys in their order', async () => {
  const layout = withCone();
  const apart = takeApart(layout, true);
  expect(apart.rest.shapes).toEqual({});
  expect(buffersOf(apart)).toHaveLength(Object.keys(layout.shapes).length);
  expect(JSON.stringify(putTogether(apart))).toBe(JSON.stringify(layout));
  let pauses = 0;
  const slowly = await putTogetherSlowly(
    apart,
    () => true,
    async () => void (pauses += 1),
  );
  expect(slowly).toEqual(layout);
  expect(pauses).toBe(Object.values(layout.shapes).reduce((sum, { slabs }) => sum + slabs.length, 0));
});

test('the footprint of a shape of many slabs comes along: that of the cone is its foot', async () => {
  const apart = takeApart(withCone(), true);
  const cone = apart.shapes.find(({ id }) => id === 'cone')!;
  // n/2 · r² · sin(2π/n): area of a regular polygon [mathematics]; corners are rounded to 1 µm
  const foot = 150 * 40 ** 2 * Math.sin((2 * Math.PI) / 300);
  expect(area(cone.footprint!)).toBeCloseTo(foot, 0);
  const { shapes } = await putTogetherSlowly(
    apart,
    () => false,
    async () => undefined,
  );
  expect(footprintOf(shapes['cone']!)).toBe(cone.footprint);
});

test('a file written over there is the file written here, and reads back as the layout', () => {
  const layout = withCone();
  const text = new TextDecoder().decode(writeApart(takeApart(layout, false)));
  expect(text).toBe(writeLayout(layout));
  expect(readLayout(text)).toEqual({ ok: true, value: layout });
  const read = readApart(text);
  expect(read.ok && putTogether(read.value)).toEqual(layout);
});

test('sections of a mesh are written a slab a line', () => {
  const lines = writeLayout(withCone()).split('\n');
  expect(lines.filter((line) => line.includes('"to_mm":') && line.length > 3000)).toHaveLength(60);
});

test('a file that is no layout is the same fault over there', () => {
  expect(readApart('{"format":"evenplate-layout"')).toEqual(readLayout('{"format":"evenplate-layout"'));
});
