/**
 * What was left out of a drawing, in words: how many of what, why, and where.
 */
import { t, withDecimalSign, type Text } from '../../language/index';
import type { LeftOut, LeftOutKind } from '../../import/types';
import { formatMm } from '../../units/format';

/** For one and for several. */
const REASONS: Readonly<Record<LeftOutKind, Text>> = {
  open: '{count} × [chain whose ends do not meet|chains whose ends do not meet]',
  branch: '{count} × [line left over where three or more meet|lines left over where three or more meet]',
  duplicate: '{count} × [line drawn twice|lines drawn twice]',
  'no-area': '{count} × [outline that encloses nothing|outlines that enclose nothing]',
  stroke: '{count} × [line without a fill|lines without a fill]',
  text: '{count} × [text|texts]',
  dimension: '{count} × [dimension|dimensions]',
  hatch: '{count} × [hatching|hatchings]',
  image: '{count} × [image|images]',
  point: '{count} × [point|points]',
  mesh: '{count} × [face or mesh|faces and meshes]',
  hidden: '{count} × [invisible object|invisible objects]',
  'layer-off': '{count} × [object on a layer that is off|objects on a layer that is off]',
  'layer-frozen': '{count} × [object on a frozen layer|objects on a frozen layer]',
  paper: '{count} × [object of a printed sheet|objects of a printed sheet]',
  tilted: '{count} × [object not parallel to the drawing|objects not parallel to the drawing]',
  missing:
    '{count} × [reference to something the file does not hold|references to something the file does not hold]',
  far: '{count} × [object that reaches further than 100 m from the origin|objects that reach further than 100 m from the origin]',
  clip: '{count} × [clip path or mask, not applied|clip paths or masks, not applied]',
  broken: '{count} × [object that cannot be read|objects that cannot be read]',
  other: '{count} × [object that holds no outline|objects that hold no outline]',
};
const plain = (value: number): string => withDecimalSign(String(Number(value.toFixed(3))));

/** One line for the check page. */
export function leftOutText({ kind, what, count, places, gap_mm }: LeftOut): string {
  const [place] = places;
  const where =
    place === undefined ? '' : t(', first at x {x}, y {y} mm', { x: plain(place[0]), y: plain(place[1]) });
  const gap = gap_mm === null ? '' : t(', narrowest gap {gap}', { gap: formatMm(gap_mm) });
  return `${t(REASONS[kind], { count })} (${what})${gap}${where}`;
}
