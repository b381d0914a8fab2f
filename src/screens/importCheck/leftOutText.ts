/**
 * What was left out of a drawing, in words: how many of what, why, and where.
 */
import type { LeftOut, LeftOutKind } from '../../import/types';
import { formatMm } from '../../units/format';

const REASONS: Readonly<Record<LeftOutKind, string>> = {
  open: 'chains whose ends do not meet',
  branch: 'lines left over where three or more meet',
  duplicate: 'lines drawn twice',
  'no-area': 'outlines that enclose nothing',
  stroke: 'lines without a fill',
  text: 'texts',
  dimension: 'dimensions',
  hatch: 'hatchings',
  image: 'images',
  point: 'points',
  mesh: 'faces and meshes',
  hidden: 'invisible objects',
  'layer-off': 'objects on a layer that is off',
  'layer-frozen': 'objects on a frozen layer',
  paper: 'objects of a printed sheet',
  tilted: 'objects not parallel to the drawing',
  missing: 'references to something the file does not hold',
  far: 'objects that reach further than 100 m from the origin',
  clip: 'clip paths or masks, not applied',
  broken: 'objects that cannot be read',
  other: 'objects that hold no outline',
};

/** One line for the check page. */
export function leftOutText({ kind, what, count, places, gap_mm }: LeftOut): string {
  const where =
    places[0] === undefined ? '' : `, first at ${formatMm(places[0][0])}, ${formatMm(places[0][1])}`;
  const gap = gap_mm === null ? '' : `, narrowest gap ${formatMm(gap_mm)}`;
  return `${count} × ${REASONS[kind]} (${what})${gap}${where}`;
}
