/**
 * What was left out of a drawing, in words: how many of what, why, and where.
 */
import { t } from '../../language/index';
import type { LeftOut, LeftOutKind } from '../../import/types';
import { formatMm } from '../../units/format';

/** For one and for several. */
const REASONS: Readonly<Record<LeftOutKind, readonly [one: string, several: string]>> = {
  open: ['chain whose ends do not meet', 'chains whose ends do not meet'],
  branch: ['line left over where three or more meet', 'lines left over where three or more meet'],
  duplicate: ['line drawn twice', 'lines drawn twice'],
  'no-area': ['outline that encloses nothing', 'outlines that enclose nothing'],
  stroke: ['line without a fill', 'lines without a fill'],
  text: ['text', 'texts'],
  dimension: ['dimension', 'dimensions'],
  hatch: ['hatching', 'hatchings'],
  image: ['image', 'images'],
  point: ['point', 'points'],
  mesh: ['face or mesh', 'faces and meshes'],
  hidden: ['invisible object', 'invisible objects'],
  'layer-off': ['object on a layer that is off', 'objects on a layer that is off'],
  'layer-frozen': ['object on a frozen layer', 'objects on a frozen layer'],
  paper: ['object of a printed sheet', 'objects of a printed sheet'],
  tilted: ['object not parallel to the drawing', 'objects not parallel to the drawing'],
  missing: [
    'reference to something the file does not hold',
    'references to something the file does not hold',
  ],
  far: [
    'object that reaches further than 100 m from the origin',
    'objects that reach further than 100 m from the origin',
  ],
  clip: ['clip path or mask, not applied', 'clip paths or masks, not applied'],
  broken: ['object that cannot be read', 'objects that cannot be read'],
  other: ['object that holds no outline', 'objects that hold no outline'],
};
const plain = (value: number): string => String(Number(value.toFixed(3)));

/** One line for the check page. */
export function leftOutText({ kind, what, count, places, gap_mm }: LeftOut): string {
  const [place] = places;
  const where =
    place === undefined
      ? ''
      : t(', first at x {plain}, y {plain2} mm', { plain: plain(place[0]), plain2: plain(place[1]) });
  const gap = gap_mm === null ? '' : t(', narrowest gap {gap}', { gap: formatMm(gap_mm) });
  const [one, several] = REASONS[kind];
  return `${count} × ${count === 1 ? one : several} (${what})${gap}${where}`;
}
