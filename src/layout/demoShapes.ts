/**
 * The parts of the demo plate: spares for harbour ferries, invented for this purpose. Millimetres; each shape's origin
 * is the middle of its footprint; z from the platform upward. Total heights 30, 48 and 90 mm.
 */
import { boltCircle, circle, rotor, roundedRectangle, slot } from './outlines';
import type { Outline, Shape } from './types';

const LOW_mm = 30;
const MIDDLE_mm = 48;
const HIGH_mm = 90;

/** Pump impeller: back plate, six swept blades on a hub, hub alone; bore right through. */
const impeller: Shape = {
  slabs: [
    { to_mm: 5, rings: [circle(0, 0, 42), circle(0, 0, 8)] },
    {
      to_mm: 34,
      rings: [
        rotor({ hubRadius: 15, tipRadius: 41, blades: 6, thickness: 4.2, sweep: 0.9 }),
        circle(0, 0, 8),
      ],
    },
    { to_mm: MIDDLE_mm, rings: [circle(0, 0, 15), circle(0, 0, 8)] },
  ],
};

const blockBody: Outline = roundedRectangle(0, 0, 56, 44, 4);
const blockBolts = [circle(-22, -16, 3.3), circle(22, -16, 3.3), circle(-22, 16, 3.3), circle(22, 16, 3.3)];
/** Valve block: two ports and four bolt holes; a chamber joins the ports at half height. */
const valveBlock: Shape = {
  slabs: [
    { to_mm: 18, rings: [blockBody, circle(-12, 0, 6), circle(12, 0, 6), ...blockBolts] },
    { to_mm: 30, rings: [blockBody, slot(0, 0, 40, 16), ...blockBolts] },
    { to_mm: MIDDLE_mm, rings: [blockBody, circle(0, 0, 9), ...blockBolts] },
  ],
};

const wall = (ribLength: number): Outline => [
  [-32, 20],
  [-32, 20 - ribLength],
  [-27, 20 - ribLength],
  [-27, 13],
  [27, 13],
  [27, 20 - ribLength],
  [32, 20 - ribLength],
  [32, 20],
];
/** Mounting bracket: foot with two slots and a dowel hole, wall with two ribs that step back. */
const bracket: Shape = {
  slabs: [
    {
      to_mm: 8,
      rings: [
        roundedRectangle(0, 0, 64, 40, 3),
        slot(-16, -6, 16, 6.6),
        slot(16, -6, 16, 6.6),
        circle(0, -6, 3),
      ],
    },
    { to_mm: 18, rings: [wall(32)] },
    { to_mm: LOW_mm, rings: [wall(18)] },
  ],
};

/** Bearing housing: flange with eight bolt holes, then a collar. */
const housing: Shape = {
  slabs: [
    { to_mm: 12, rings: [circle(0, 0, 45), circle(0, 0, 26), ...boltCircle(38, 3.5, 8, Math.PI / 8)] },
    { to_mm: LOW_mm, rings: [circle(0, 0, 32), circle(0, 0, 26)] },
  ],
};

const manifoldBores = [circle(-28, 0, 7), circle(0, 0, 7), circle(28, 0, 7)];
/** Cooling manifold: a body with three ports, then a neck around each outer one. */
const manifold: Shape = {
  slabs: [
    { to_mm: MIDDLE_mm, rings: [slot(0, 0, 90, 30), ...manifoldBores] },
    { to_mm: HIGH_mm, rings: [circle(-28, 0, 12), circle(-28, 0, 7), circle(28, 0, 12), circle(28, 0, 7)] },
  ],
};

/** Tensile bar built upright: grip, gauge length, grip. */
const testBar: Shape = {
  slabs: [
    { to_mm: 25, rings: [circle(0, 0, 6)] },
    { to_mm: 65, rings: [circle(0, 0, 4)] },
    { to_mm: HIGH_mm, rings: [circle(0, 0, 6)] },
  ],
};

/** Shaft seal carrier: a thin ring with a lip. */
const sealRing: Shape = {
  slabs: [
    { to_mm: 6, rings: [circle(0, 0, 21), circle(0, 0, 15)] },
    { to_mm: LOW_mm, rings: [circle(0, 0, 18), circle(0, 0, 15)] },
  ],
};

export const DEMO_SHAPES = {
  impeller,
  'valve block': valveBlock,
  bracket,
  housing,
  manifold,
  'test bar': testBar,
  'seal ring': sealRing,
} as const;
