/**
 * Traced rings to a clean section, twice: as exact as the mesh has it (for comparing layers) and as a layout holds it (whole
 * micrometres, few points). Where a point is enclosed counts by winding: more rings around it to the left than to the right.
 * So shells that overlap are united, and a shell that faces inwards is a hole. Millimetres.
 */
import { clean } from '../../../geometry/clipper';
import { nested } from '../../../geometry/nesting';
import { checkOutlines } from '../../../geometry/outlines';
import type { Region, Ring } from '../../../geometry/types';
import type { Mm } from '../../../units/types';
import { areApart } from './apart';
import { rounded, simplified, TOLERANCE_mm } from './tidy';

export interface Section {
  /** Not rounded. */
  readonly exact: Region;
  /** For the layout. */
  readonly kept: Region;
  /** Rings crossed or overlapped and were united. */
  readonly united: boolean;
}

/** Rings simplified and rounded; those without area are gone. */
function tidied(rings: Region, tolerance: Mm): { kept: Ring[]; exact: Ring[] } {
  const kept: Ring[] = [];
  const exact: Ring[] = [];
  for (const ring of rings) {
    const tidy = rounded(tolerance > 0 ? simplified(ring, tolerance) : ring);
    if (tidy === null) continue;
    kept.push(tidy);
    exact.push(ring);
  }
  return { kept, exact };
}

/** The section that rings enclose. */
export function sectionOf(rings: readonly Ring[]): Section {
  const { kept, exact } = tidied(rings, TOLERANCE_mm);
  if (areApart(kept) || checkOutlines(kept) === 'apart') {
    const filled = new Set(nested(kept, 'positive'));
    return {
      kept: kept.filter((ring) => filled.has(ring)),
      exact: exact.filter((_, i) => filled.has(kept[i])),
      united: false,
    };
  }
  const { region, repaired } = clean(rings, 'positive');
  return { exact: region, kept: keptOf(region), united: repaired };
}

/** Simplified where that crosses nothing; else only rounded; else cleaned once more. */
function keptOf(region: Region): Region {
  for (const tolerance of [TOLERANCE_mm, 0]) {
    const { kept } = tidied(region, tolerance);
    if (checkOutlines(kept) !== 'crossing') return kept;
  }
  const { kept } = tidied(region, 0);
  return tidied(clean(kept, 'nonZero').region, 0).kept;
}
