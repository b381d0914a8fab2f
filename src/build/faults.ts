/**
 * Problems that only dividing the plate shows: section area that no laser exposes, parts that should stay whole and are
 * cut, pins that cannot be kept, outlines that were repaired. Millimetres.
 */
import type { PlacedPart } from '../exposure/prepared';
import type { DividedSection } from '../exposure/types';
import { intersect, unite } from '../geometry/clipper';
import { areaInConvex, planesOfBox } from '../geometry/halfPlane';
import { area, boxOf } from '../geometry/region';
import type { Layout, PartId } from '../layout/types';
import type { Mm2 } from '../units/types';
import { membersOf } from '../zoning/lasers';
import type { Division } from '../zoning/types';
import { problem, shownArea } from './problem';
import type { PartSections } from './rules';
import type { Problem } from './types';

/** Remainders below this are rounding of outlines. */
const SLIVER_MM2: Mm2 = 0.05;

function largestUnassigned(sections: PartSections): Mm2 {
  return sections.reduce((most, section) => Math.max(most, section?.unassigned_mm2 ?? 0), 0);
}

/** Area of a section that some working laser reaches; what stands off the platform no laser does. */
function reachedArea(division: Division): (section: DividedSection) => Mm2 {
  const { platform, reach, on } = division;
  const whole = area(platform);
  const working = membersOf(on).map((laser) => reach[laser]);
  if (working.some((region) => Math.abs(area(region) - whole) < SLIVER_MM2)) {
    const planes = planesOfBox(boxOf(platform));
    return ({ section }) => areaInConvex(section, planes);
  }
  const all = unite(working);
  return ({ section }) => area(intersect(section, all));
}

/**
 * The same without what no working laser reaches: for a part that is listed as off the platform or out of reach already,
 * so that one cause is one entry.
 */
function unassignedWithinReach(sections: PartSections, reached: (section: DividedSection) => Mm2): Mm2 {
  let most = 0;
  for (const section of sections) {
    if (!section || section.unassigned_mm2 <= most) continue;
    most = Math.max(most, section.unassigned_mm2 - (section.area_mm2 - reached(section)));
  }
  return most > SLIVER_MM2 ? most : 0;
}

/** The fault of a part with section area that no laser exposes, `missing` at most in one section. */
function unassignedFault(layout: Layout, index: number, missing: Mm2): Problem[] {
  const part = layout.parts[index];
  if (missing === 0) return [];
  const params = { part: part.id, area: shownArea(missing) };
  if (part.laser === null) return [problem('part-unassigned', params, [part.id])];
  const laser = layout.machine.lasers.find((l) => l.id === part.laser)!;
  const code = laser.on ? 'pinned-out-of-reach' : 'pinned-laser-off';
  return [problem(code, { ...params, laser: laser.id }, [part.id])];
}

/**
 * Faults of the division, in the order of the parts, and how many checks they stand for.
 * @param beyond parts that are listed as off the platform or out of reach: what is missing there is not told twice
 */
export function divisionFaults(
  layout: Layout,
  division: Division,
  placed: readonly PlacedPart[],
  sections: readonly PartSections[],
  heldByNoZone: readonly number[],
  beyond: ReadonlySet<PartId>,
): { problems: Problem[]; checks: number } {
  const problems: Problem[] = [];
  const ids = layout.parts.map((part) => part.id);
  if (division.on === 0 && ids.length > 0) problems.push(problem('all-lasers-off', {}, ids));
  const reached = reachedArea(division);
  layout.parts.forEach((part, i) => {
    // A pin to a laser that is off is a cause of its own.
    const pinnedOff = layout.machine.lasers.some(({ id, on }) => id === part.laser && !on);
    const missing =
      beyond.has(part.id) && !pinnedOff
        ? unassignedWithinReach(sections[i], reached)
        : largestUnassigned(sections[i]);
    if (division.on !== 0) problems.push(...unassignedFault(layout, i, missing));
    if (heldByNoZone.includes(i) && division.on !== 0) {
      problems.push(problem('part-held-by-no-zone', { part: part.id }, [part.id]));
    }
  });
  const repaired = new Map<string, string[]>();
  layout.parts.forEach((part, i) => {
    if (placed[i].repaired) repaired.set(part.shape, [...(repaired.get(part.shape) ?? []), part.id]);
  });
  for (const [shape, parts] of repaired) problems.push(problem('outline-repaired', { shape }, parts));
  return { problems, checks: 1 + 3 * layout.parts.length };
}
