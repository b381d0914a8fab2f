/**
 * The four-bridge plate of AM-Bench AMB2018-01 (public domain): Heigel, Lane, Levine, Phan, Whiting (2020), J. Res.
 * NIST 125:125005, doi 10.6028/jres.125.005; data doi 10.18434/M31935; outlines measured from the published STL.
 * IN625, infill 195 W 800 mm/s, contour 900 mm/s, hatch 0.100 mm, layer 0.020 mm, plate 100 × 100 mm. Millimetres.
 * Between z = 5 and 7 the twelve gaps of 2 mm between the legs close evenly, 60 mm² per mm and part; each layer there is
 * a slab of its own, cut at the layer's middle. That both sides of a gap close alike is assumed; the area does not
 * depend on it. vector_mm and vectorGap_ms are 637 vectors a leg layer and their mean gap, derived from the gaps recorded
 * in the paper; the time without scanning, 34.3 s of 52 s a layer, stands as the recoater's.
 */
import { roundMm } from '../../src/units/round';
import type { Layout, Outline, Slab, Zoning } from '../../src/layout/types';
import { example, fromCorner, HAND_PROCESS, machine, part, QUADRANTS, rectangle, strips } from './common';

const PLATE_mm = 100;
const LAYER_mm = 0.02;
const DEPTH_mm = 5;
const LEGS_TOP_mm = 5;
const OVERHANG_TOP_mm = 7;
const BRIDGE_TOP_mm = 12;
const RIDGE_TOP_mm = 12.5;

/** From … to along x of the legs of constant width; the thirteenth leg ends in the tip. */
const LEGS: readonly (readonly [number, number])[] = [
  [0, 5],
  [7, 7.5],
  [9.5, 12],
  [14, 19],
  [21, 21.5],
  [23.5, 26],
  [28, 33],
  [35, 35.5],
  [37.5, 40],
  [42, 47],
  [49, 49.5],
  [51.5, 54],
];
const TIP_LEG_FROM_mm = 56;
const RIDGE_WIDTH_mm = 1;
const RIDGE_PITCH_mm = 7;
const RIDGES = 11;
/** Front-left corners from the plate's front-left corner. */
const PLACES: readonly (readonly [number, number])[] = [
  [21.74, 17.03],
  [21.24, 37.03],
  [20.74, 57.03],
  [20.34, 77.03],
];

const leg = (from: number, to: number): Outline =>
  rectangle(roundMm(to - from), DEPTH_mm).map(([x, y]) => [roundMm(x + from), y] as const);
const tipped = (from: number): Outline => [
  [from, 0],
  [72.5, 0],
  [75, 2.5],
  [72.5, 5],
  [from, 5],
];

/** The legs with each side that faces a gap moved out by `lean`. */
const legs = (lean: number): readonly Outline[] => [
  ...LEGS.map(([from, to], index) => leg(index === 0 ? from : from - lean, to + lean)),
  tipped(roundMm(TIP_LEG_FROM_mm - lean)),
];

const OVERHANG_LAYERS = Math.round((OVERHANG_TOP_mm - LEGS_TOP_mm) / LAYER_mm);
const overhang: readonly Slab[] = Array.from({ length: OVERHANG_LAYERS }, (_, index) => ({
  to_mm: roundMm(LEGS_TOP_mm + (index + 1) * LAYER_mm),
  rings: legs(roundMm(((index + 0.5) * LAYER_mm) / 2)),
}));
const ridges: readonly Outline[] = Array.from({ length: RIDGES }, (_, index) =>
  leg(index * RIDGE_PITCH_mm, index * RIDGE_PITCH_mm + RIDGE_WIDTH_mm),
);

const at = fromCorner(PLATE_mm);
const nistPlate = (name: string, zoning: Zoning): Layout =>
  example({
    name,
    note: 'AM-Bench AMB2018-01, public domain; doi 10.6028/jres.125.005. Divided here among four lasers; it was built with one.',
    machine: machine(PLATE_mm, 4, 34.3, 34.3),
    process: {
      ...HAND_PROCESS,
      name: 'IN625, 0.02 mm',
      density_g_cm3: 8.44,
      layer_mm: LAYER_mm,
      hatch_mm: 0.1,
      speed_mm_s: 800,
      vector_mm: 3.905,
      vectorGap_ms: 1.569,
      contourSpeed_mm_s: 900,
      pieceGap_s: 0,
    },
    shapes: {
      bridge: {
        slabs: [
          { to_mm: LEGS_TOP_mm, rings: legs(0) },
          ...overhang,
          { to_mm: BRIDGE_TOP_mm, rings: [tipped(0)] },
          { to_mm: RIDGE_TOP_mm, rings: ridges },
        ],
      },
    },
    parts: PLACES.map(([x, y], index) => part(`B${index + 1}`, 'bridge', at(x, y))),
    zoning,
  });

/** File name → layout. */
export const NIST_PLATES: Readonly<Record<string, Layout>> = {
  'nist-plate.json': nistPlate('Four bridges, quadrants', QUADRANTS),
  'nist-strips-x.json': nistPlate('Four bridges, strips side by side', strips(90, PLATE_mm)),
  'nist-strips-y.json': nistPlate('Four bridges, strips one behind the other', strips(0, PLATE_mm)),
};
