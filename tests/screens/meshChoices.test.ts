// What the check page for meshes makes of its choices, and the words it finds for what a body is like.
import { expect, test } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import {
  chosenPlaces,
  cuttablePlaces,
  firstChoices,
  newShapes,
  scaleFor,
  settingsFor,
  withBody,
} from '../../src/screens/meshCheck/choices';
import { crackText, fitOf, layersOf, outcomeLines, sizeText } from '../../src/screens/meshCheck/meshText';
import type { MeshLook } from '../../src/worker/meshes';
import type { MeshBodyCut, MeshFileFound } from '../../src/worker/meshMessages';

const stl: MeshFileFound = {
  name: 'spares.stl',
  kind: 'stl',
  unit: null,
  bodies: [
    { name: 'impeller', copies: 1, items: [], middle_mm: [0, 0], triangles: 12 },
    { name: 'bracket', copies: 3, items: [], middle_mm: [0, 0], triangles: 12 },
  ],
  findings: [],
};
const square = [[0, 0], [1, 0], [1, 1]] as const; // prettier-ignore
const cutBody: MeshBodyCut = {
  slabCount: 4,
  layers: 40,
  height_mm: 2,
  volume_mm3: 999,
  largest_mm2: 500,
  openLayers: 0,
  widestGap_mm: null,
  unitedLayers: 0,
  emptyLayers: 0,
  firstEmpty: null,
  equalLayers: 36,
  firstEqual: [2, 10],
  topCovered: false,
  problems: [],
  meshVolume_mm3: 1000,
};

// The inch is 25.4 mm (1959), the foot twelve of them.
test.each([
  [null, null, 1],
  [null, 'inch', 25.4],
  ['inch', null, 1],
  ['inch', 'millimeter', 1 / 25.4],
  ['meter', 'micron', 1e-6],
  ['foot', 'inch', 1 / 12],
] as const)('a file in %s taken as %s is scaled by %d', (unit, chosen, factor) => {
  expect(scaleFor({ ...stl, unit }, chosen) / factor).toBeCloseTo(1, 12);
});

test('bodies that are not taken are not cut, and the others keep their names and copies', () => {
  const first = firstChoices(0.01);
  expect(chosenPlaces(stl, first)).toEqual([0, 1]);
  const choices = withBody(withBody(first, stl, 0, { use: false }), stl, 1, { name: 'bracket left' });
  expect(chosenPlaces(stl, choices)).toEqual([1]);
  const shape = { slabs: [{ to_mm: 2, rings: [square] }] };
  const shapes = newShapes(stl, { ...choices, seams: 'none' }, [1], [{ ok: true, cut: cutBody, shape }]);
  expect(shapes).toEqual([{ name: 'bracket left', copies: 3, shape, seams: 'none', sound: true }]);
  expect(newShapes(stl, choices, [1], [{ ok: false, fault: { code: 'mesh-flat', params: {} } }])).toEqual([]);
});

test('a body larger than a part can be is not cut; the others are', () => {
  const first = firstChoices(0.01);
  const sized = (...largest: number[]) =>
    ({ bodies: largest.map((x) => ({ size_mm: [x, 20, 20] })) }) as unknown as MeshLook;
  expect(cuttablePlaces(stl, first, sized(10_000, 10_000.1))).toEqual([0]);
  expect(cuttablePlaces(stl, first, sized(20_000, 20_000))).toEqual([]);
  expect(cuttablePlaces(stl, withBody(first, stl, 0, { use: false }), sized(30, 30))).toEqual([1]);
});

test('unit and turns go to the worker as one placement', () => {
  const choices = {
    ...firstChoices(0.02),
    unit: 'inch',
    turns: { turnX_deg: 90, turnY_deg: 0, turnZ_deg: 5 },
  } as const;
  expect(settingsFor(stl, choices)).toEqual({
    placement: { turnX_deg: 90, turnY_deg: 0, turnZ_deg: 5, scale: 25.4 },
    joinCracks: false,
    chainGap_mm: 0.02,
  });
});

test('a body fits the machine by its height and by its footprint, turned by a quarter where need be', () => {
  const { machine } = demoLayout();
  const long = { ...machine, platform: { ...machine.platform, width_mm: 100, depth_mm: 340, margin_mm: 8 } };
  expect(fitOf([20, 20, 20], machine).fits).toBe(true);
  expect(fitOf([20, 20, machine.buildHeight_mm + 0.01], machine)).toMatchObject({ fits: false });
  expect(fitOf([20, 20, machine.buildHeight_mm + 0.01], machine).text).toContain('too high');
  expect(fitOf([300, 50, 20], long).fits).toBe(true);
  expect(fitOf([300, 85, 20], long).text).toContain('too large');
});

test('layers are counted up, and a rounding error makes none', () => {
  expect(layersOf(120, 0.06)).toBe(2000);
  expect(layersOf(120.01, 0.06)).toBe(2001);
  expect(layersOf(0.3, 0.1)).toBe(3);
  expect(layersOf(0.01, 0.06)).toBe(1);
  // An excess below the grid of a layout makes none either.
  expect(layersOf(20.00001, 0.05)).toBe(400);
  expect(layersOf(20.001, 0.05)).toBe(401);
});

test('what came out is said with its share of the mesh, and only what there is', () => {
  const lines = outcomeLines(cutBody).join('\n');
  expect(lines).toContain('4 slabs of 40 layers');
  expect(lines).toContain('99.90 % of the mesh');
  expect(lines).not.toContain('open');
  const oneEmpty = { emptyLayers: 1, firstEmpty: [12, 12] } as const;
  const torn = { ...cutBody, meshVolume_mm3: null, openLayers: 3, widestGap_mm: 0.2501, ...oneEmpty };
  const words = outcomeLines(torn).join('\n');
  expect(words).toContain('not watertight');
  // up, so that typing it closes the gap
  expect(words).toContain('3 layers with open outlines, left out there; the widest gap is 0.251 mm');
  expect(words).toContain('1 layer with nothing solid: layer 12');
});

test('which layers are equal or empty is said', () => {
  expect(outcomeLines(cutBody)).toContain('36 layers equal to the one below, first in layers 2 to 10');
  const most = { ...cutBody, slabCount: 1599, layers: 1600, equalLayers: 1, topCovered: false } as const;
  expect(outcomeLines({ ...most, firstEqual: [7, 8] })).toContain('layers 7 to 8 are equal');
  const top = outcomeLines({ ...most, equalLayers: 0, firstEqual: null, topCovered: true });
  expect(top).toContain('layer 1600 is empty at its middle: the slab below reaches the top');
  const gaps = outcomeLines({ ...cutBody, emptyLayers: 5, firstEmpty: [12, 14] });
  expect(gaps).toContain('5 layers with nothing solid, first layers 12 to 14');
});

test('a crack below the grid of a layout gets no figure', () => {
  expect(crackText(7e-15)).toBe('under 0.001 mm');
  expect(crackText(0.004)).toBe('up to 0.0040 mm');
});

test('a size is three lengths and one unit', () => {
  expect(sizeText([20, 20.5, 100])).toBe('20.00 × 20.50 × 100.0 mm');
});
