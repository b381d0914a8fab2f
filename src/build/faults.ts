/**
 * Problems that only dividing the plate shows: section area that no laser exposes, parts that should stay whole and are
 * cut, pins that cannot be kept, outlines that were repaired. Millimetres.
 */
import type { PlacedPart } from '../exposure/prepared';
import type { Layout } from '../layout/types';
import type { Mm2 } from '../units/types';
import type { Division } from '../zoning/types';
import { problem, shownArea } from './problem';
import type { PartSections } from './rules';
import type { Problem } from './types';

function largestUnassigned(sections: PartSections): Mm2 {
  return sections.reduce((most, section) => Math.max(most, section?.unassigned_mm2 ?? 0), 0);
}

function unassignedFault(
  layout: Layout,
  division: Division,
  index: number,
  sections: PartSections,
): Problem[] {
  const part = layout.parts[index];
  const area = largestUnassigned(sections);
  if (area === 0 || division.on === 0) return [];
  if (part.laser === null)
    return [problem('part-unassigned', { part: part.id, area: shownArea(area) }, [part.id])];
  const laser = layout.machine.lasers.find((l) => l.id === part.laser)!;
  const code = laser.on ? 'pinned-out-of-reach' : 'pinned-laser-off';
  return [problem(code, { part: part.id, laser: laser.id, area: shownArea(area) }, [part.id])];
}

/** Faults of the division, in the order of the parts, and how many checks they stand for. */
export function divisionFaults(
  layout: Layout,
  division: Division,
  placed: readonly PlacedPart[],
  sections: readonly PartSections[],
  heldByNoZone: readonly number[],
): { problems: Problem[]; checks: number } {
  const problems: Problem[] = [];
  const ids = layout.parts.map((part) => part.id);
  if (division.on === 0 && ids.length > 0) problems.push(problem('all-lasers-off', {}, ids));
  layout.parts.forEach((part, i) => {
    problems.push(...unassignedFault(layout, division, i, sections[i]));
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
