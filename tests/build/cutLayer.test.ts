// For which thickness sections were cut: stacks on a raster of whole micrometres, mathematics.
import { expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { cutForOtherLayers, cutLayer } from '../../src/build/cutLayer';
import { sectionMesh } from '../../src/import/mesh';
import { demoLayout } from '../../src/layout/demo';
import type { Layout, Shape } from '../../src/layout/types';
import { loft, rectangle } from '../import/mesh/meshes';

const square = [[0, 0], [9, 0], [9, 9], [0, 9]] as const; // prettier-ignore
const stack = (tops: readonly number[]): Shape => ({
  slabs: tops.map((to_mm) => ({ to_mm, rings: [square] })),
});
const multiples = (layers: readonly number[], t: number): number[] =>
  layers.map((k) => Math.round(k * t * 1000) / 1000);
const upTo = (count: number): number[] => Array.from({ length: count }, (_, i) => i + 1);

const demo = demoLayout();
const withStack = (shape: Shape, layer_mm: number): Layout => ({
  ...demo,
  process: { ...demo.process, layer_mm },
  shapes: { ...demo.shapes, boss: shape },
  parts: [...demo.parts, { ...demo.parts[0]!, id: 'P99', shape: 'boss' }],
});

test.each([0.03, 0.05, 0.06, 0.047])('a mesh cut for layers of %d mm says so', (layer_mm) => {
  const cone = loft(rectangle(-9, -9, 9, 9), rectangle(-2, -2, 2, 2), 0, 7.0123);
  const cut = sectionMesh(cone, { layer_mm, chainGap_mm: 0.01 });
  if (!cut.ok) throw new Error(cut.fault.code);
  expect(cutLayer({ slabs: cut.value.slabs })).toBe(layer_mm);
});

test('a drawn shape of a few slabs was cut for no thickness', () => {
  expect(cutLayer(stack([5, 12.5, 30]))).toBeNull();
  expect(cutForOtherLayers({ ...demo, process: { ...demo.process, layer_mm: 0.07 } })).toEqual([]);
});

test('sections that change in every layer fit layers of their own thickness, and no others', () => {
  const shape = stack([...multiples(upTo(40), 0.06), 2.413]);
  expect(cutForOtherLayers(withStack(shape, 0.06))).toEqual([]);
  for (const layer_mm of [0.05, 0.12, 0.04, 0.03, 0.02])
    expect(cutForOtherLayers(withStack(shape, layer_mm))).toEqual([{ shape: 'boss', layer_mm: 0.06 }]);
});

test('steps that are many layers high may have been cut for any part of them', () => {
  const stairs = stack(multiples(upTo(30), 1));
  for (const layer_mm of [0.05, 0.04, 0.02])
    expect(cutForOtherLayers(withStack(stairs, layer_mm))).toEqual([]);
  expect(cutForOtherLayers(withStack(stairs, 0.06))).toEqual([{ shape: 'boss', layer_mm: 1 }]);
});

test('the plate is told in its problems, beside the parts concerned; handing over stays open', () => {
  const shape = stack(multiples(upTo(40), 0.06));
  const found = analyse(withStack(shape, 0.05)).problems.filter(
    ({ code }) => code === 'cut-for-other-layers',
  );
  expect(found).toEqual([
    {
      code: 'cut-for-other-layers',
      params: { shape: 'boss', cut: 0.06, layer: 0.05 },
      parts: ['P99'],
      blocks: false,
    },
  ]);
  const kept = analyse(withStack(shape, 0.06)).problems;
  expect(kept.some(({ code }) => code === 'cut-for-other-layers')).toBe(false);
});

test('joined layers leave the thickness to be told from the others', () => {
  // layers 4 to 9 are one slab
  const shape = stack(multiples([...upTo(3), ...upTo(40).slice(8)], 0.05));
  expect(cutLayer(shape)).toBe(0.05);
});

test('a shape that no part has is not told', () => {
  const layout = withStack(stack(multiples(upTo(30), 0.06)), 0.05);
  expect(cutForOtherLayers({ ...layout, parts: demo.parts })).toEqual([]);
});
