/**
 * Which laser takes which side of a cut: lasers stand along the cut's normal in the order of their own borders with the
 * fragment, of their territory where they have none, of their foot where territories coincide. Millimetres.
 */
import { boxOf } from '../geometry/region';
import type { Border, DividedSection } from '../exposure/types';
import type { Machine } from '../layout/types';
import type { Mm } from '../units/types';
import { singleOf } from '../zoning/lasers';
import type { Division } from '../zoning/types';

type Normal = readonly [number, number];

/** Mean position along a normal of a border; its length is the weight. */
function positionOf(border: Border, [nx, ny]: Normal): Mm {
  const { line } = border;
  if (line && line.nx === nx && line.ny === ny) return line.c;
  const { segments } = border;
  let sum = 0;
  let total = 0;
  for (let i = 0; i < segments.length; i += 4) {
    const [x0, y0, x1, y1] = segments.subarray(i, i + 4);
    const length = Math.hypot(x1 - x0, y1 - y0);
    sum += (length * (nx * (x0 + x1) + ny * (y0 + y1))) / 2;
    total += length;
  }
  return sum / total;
}

/** Mean position along the normal of the fragment's borders with each laser's fixed fragments. */
function borderPositions(section: DividedSection, fragment: number, normal: Normal): Map<number, Mm> {
  const sums = new Map<number, { sum: number; length: number }>();
  for (const border of section.borders) {
    if (border.a !== fragment && border.b !== fragment) continue;
    const other = border.a === fragment ? border.b : border.a;
    const laser = singleOf(section.fragments[other].set);
    if (laser < 0) continue;
    const entry = sums.get(laser) ?? { sum: 0, length: 0 };
    entry.sum += border.length_mm * positionOf(border, normal);
    entry.length += border.length_mm;
    sums.set(laser, entry);
  }
  return new Map([...sums].map(([laser, { sum, length }]) => [laser, sum / length]));
}

function territoryPosition(division: Division, laser: number, [nx, ny]: Normal): Mm {
  const own = division.own[laser];
  if (own.length === 0) return 0;
  const box = boxOf(own);
  return (nx * (box.minX + box.maxX) + ny * (box.minY + box.maxY)) / 2;
}

const SAME_PLACE_MM = 1e-3;

/** The lasers in the order of their sides along the normal. */
export function orderAlong(
  { machine, division }: { readonly machine: Machine; readonly division: Division },
  section: DividedSection,
  fragment: number,
  normal: Normal,
  lasers: readonly number[],
): number[] {
  const border = borderPositions(section, fragment, normal);
  const place = new Map(lasers.map((k) => [k, border.get(k) ?? territoryPosition(division, k, normal)]));
  const foot = (k: number): Mm =>
    normal[0] * machine.lasers[k].foot_mm[0] + normal[1] * machine.lasers[k].foot_mm[1];
  return [...lasers].sort((a, b) => {
    const apart = place.get(a)! - place.get(b)!;
    if (Math.abs(apart) > SAME_PLACE_MM) return apart;
    return foot(a) - foot(b) || a - b;
  });
}
