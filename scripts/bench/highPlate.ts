/**
 * A plate as meshes make it: 40 parts of 8 shapes, 180 mm high in layers of 0.06 mm, every layer's section another one
 * (rounded stars with a hole that grow, twist and shrink over the height). Seeded; millimetres.
 */
import { DEFAULT_LIMITS } from '../../src/layout/defaults';
import type { Layout, LayoutRing, Part, Shape } from '../../src/layout/types';
import { roundMm } from '../../src/units/round';
import { benchLayout } from './plate';
import { seeded } from './random';

const SHAPES = 8;
const PARTS = 40;
const LAYERS = 3000;
const LAYER_MM = 0.06;
/** Of each of a section's two outlines. */
const POINTS = 96;

function star(points: number, radius: number, depth: number, lobes: number, twist: number): LayoutRing {
  return Array.from({ length: points }, (_, i) => {
    const a = (2 * Math.PI * i) / points;
    const r = radius + depth * Math.sin(lobes * a + twist);
    return [roundMm(r * Math.cos(a)), roundMm(r * Math.sin(a))] as const;
  });
}

function shape(random: () => number, points: number): Shape {
  const [radius, depth, lobes, turns] = [
    13 + 4 * random(),
    1 + 2 * random(),
    3 + Math.floor(4 * random()),
    random(),
  ];
  const slabs = Array.from({ length: LAYERS }, (_, k) => {
    const share = k / LAYERS;
    const size = radius * (0.75 + 0.25 * Math.cos(2 * Math.PI * share));
    const twist = 2 * Math.PI * turns * share;
    const rings = [
      star(points, size, depth * (1 - share / 2), lobes, twist),
      star(points, size / 2, depth / 3, lobes, -twist),
    ];
    return { to_mm: roundMm((k + 1) * LAYER_MM), rings };
  });
  return { slabs };
}

const COLUMNS = 7;
const PITCH_MM = 46;

/** Zones of eight strips with shared bands, as in the other benches. */
export function highLayout(seed: number, points = POINTS): Layout {
  const random = seeded(seed);
  const base = benchLayout(seed);
  const shapes = Object.fromEntries(
    Array.from({ length: SHAPES }, (_, i) => [`mesh ${i}`, shape(random, points)]),
  );
  const parts = Array.from({ length: PARTS }, (_, i): Part => {
    const at_mm = [((i % COLUMNS) - 3) * PITCH_MM, (Math.floor(i / COLUMNS) - 2.5) * PITCH_MM] as const;
    const id = `P${String(i + 1).padStart(2, '0')}`;
    return { id, shape: `mesh ${i % SHAPES}`, at_mm, turn_deg: 0, seams: 'free', laser: null, timeFactor: 1 };
  });
  const process = { ...base.process, layer_mm: LAYER_MM };
  return { ...base, name: 'high bench plate', process, shapes, parts, limits: DEFAULT_LIMITS };
}
