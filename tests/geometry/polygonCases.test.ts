// 1,750 public polygon operations with areas computed in exact rational arithmetic (from the test data of Boost.Geometry,
// Clipper2, GEOS/JTS, polygon-clipping and martinez). The file is not part of the project: it is read where
// POLYGON_CASES says, else from a place beside the repository.
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { clean, intersect, subtract, unite } from '../../src/geometry/clipper';
import { area, boxOfRing, boxUnion } from '../../src/geometry/region';
import { ringOf } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';

interface Case {
  readonly id: string;
  readonly op: 'intersection' | 'union' | 'difference' | 'xor' | 'identity';
  readonly fill: 'evenodd' | 'nonzero' | 'positive' | 'negative';
  readonly a: [number, number][][];
  readonly b: [number, number][][];
  readonly exact: number | null;
}
const FILE =
  process.env['POLYGON_CASES'] ??
  fileURLToPath(new URL('../../../shared/data/polygon-cases.json', import.meta.url));
const FILLS = { evenodd: 'evenOdd', nonzero: 'nonZero', positive: 'positive', negative: 'negative' } as const;
const ALLOWED = 1e-6;

const ringsOf = (points: [number, number][][]) => points.map(ringOf);

function boxAreaOf(one: Case): number {
  const rings = ringsOf([...one.a, ...one.b]).filter((ring) => ring.length > 0);
  const box = rings.map(boxOfRing).reduce(boxUnion);
  return (box.maxX - box.minX) * (box.maxY - box.minY);
}

function measured(op: Case['op'], a: Region, b: Region): number {
  if (op === 'intersection') return area(intersect(a, b));
  if (op === 'union') return area(unite([a, b]));
  if (op === 'difference') return area(subtract(a, b));
  return area(subtract(a, b)) + area(subtract(b, a));
}

/** Relative error of one case: of the exact area, or (identity, no exact area) of A = A∩B + A−B and A∪B = A + B − A∩B. */
function errorOf(one: Case): number {
  const a = clean(ringsOf(one.a), FILLS[one.fill]).region;
  const b = clean(ringsOf(one.b), FILLS[one.fill]).region;
  const scale = boxAreaOf(one);
  if (one.exact !== null) return Math.abs(measured(one.op, a, b) - one.exact) / scale;
  const both = area(intersect(a, b));
  const split = Math.abs(both + area(subtract(a, b)) - area(a));
  const joined = Math.abs(area(unite([a, b])) + both - area(a) - area(b));
  return Math.max(split, joined) / scale;
}

if (!existsSync(FILE))
  process.stdout.write(`Left out: public polygon operations; there is no file ${FILE}.\n`);

it.skipIf(!existsSync(FILE))(
  'public polygon operations have their exact areas to 1e-6 of the box (skipped where the shared data file is absent)',
  () => {
    const cases = JSON.parse(readFileSync(FILE, 'utf8')) as Case[];
    expect(cases.length).toBe(1750);
    const wrong = cases
      .map((one) => ({ id: one.id, error: errorOf(one) }))
      .filter(({ error }) => !(error <= ALLOWED));
    expect(wrong).toEqual([]);
  },
  60_000,
);
