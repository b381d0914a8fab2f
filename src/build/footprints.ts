/**
 * Footprints of parts, asked for only where they decide: the box around all sections is known without uniting them, and
 * most parts of a well-laid plate stand clear by their boxes. Where two footprints overlap: at which heights the sections
 * themselves do. Millimetres.
 *
 * Spacing, margin and collision go by footprints: two parts whose footprints overlap collide, also where their sections
 * never meet at one height. What stands under or over another part cannot be taken off the platform past it.
 */
import { overlapArea } from '../geometry/distance';
import { boxesMeet, boxOf, boxUnion } from '../geometry/region';
import type { Box } from '../geometry/types';
import type { Mm, Mm2 } from '../units/types';
import { PlacedSlab } from '../exposure/placed';
import type { PartView } from './types';

type Section = PartView['sections'][number];
const NOTHING: Box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

const boxes = new WeakMap<PartView, Box>();

/** Box around all sections of a part; no section is united or moved for it. */
export function boxOverHeight(part: PartView): Box {
  let box = boxes.get(part);
  if (!box) boxes.set(part, (box = part.sections.map(boxOfSection).reduce(boxUnion, NOTHING)));
  return box;
}

const boxOfSection = (slab: Section): Box => (slab instanceof PlacedSlab ? slab.box : boxOf(slab.section));

export interface HeightRange {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
}

/**
 * The lowest and the highest height at which the sections of two parts overlap by more than `sliver_mm2`; null where they
 * never do. Both ends are looked for from outside, so that parts which overlap all the way cost two sections.
 */
export function heightsOfOverlap(a: PartView, b: PartView, sliver_mm2: Mm2): HeightRange | null {
  const steps = commonSlabs(a, b);
  const overlaps = ([one, other]: SlabPair): boolean => sectionsOverlap(one, other, sliver_mm2);
  const lowest = steps.find(overlaps);
  if (!lowest) return null;
  const highest = steps.findLast(overlaps) ?? lowest;
  return { from_mm: commonFrom(lowest), to_mm: commonTo(highest) };
}

type SlabPair = readonly [Section, Section];
const commonFrom = ([one, other]: SlabPair): Mm => Math.max(one.from_mm, other.from_mm);
const commonTo = ([one, other]: SlabPair): Mm => Math.min(one.to_mm, other.to_mm);

/** The slabs of two parts that share some height, from the platform up. */
function commonSlabs(a: PartView, b: PartView): SlabPair[] {
  const pairs: SlabPair[] = [];
  let [i, k] = [0, 0];
  while (i < a.sections.length && k < b.sections.length) {
    const [one, other] = [a.sections[i], b.sections[k]];
    pairs.push([one, other]);
    const to_mm = Math.min(one.to_mm, other.to_mm);
    if (one.to_mm <= to_mm) i++;
    if (other.to_mm <= to_mm) k++;
  }
  return pairs;
}

function sectionsOverlap(one: Section, other: Section, sliver_mm2: Mm2): boolean {
  if (!boxesMeet(boxOfSection(one), boxOfSection(other))) return false;
  return overlapArea(one.section, other.section) > sliver_mm2;
}
