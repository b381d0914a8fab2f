/** Keys and choices of a layout file as words, where a reader is told that they differ: "contourSpeed" → "contour speed". */
import { t, type Text } from '../language/index';

/** Of machine, process and limits; a key that a later file adds is shown as it is spelt. */
const KNOWN: readonly Text[] = [
  'name',
  'density',
  'packing',
  'dose factor',
  'layer',
  'hatch',
  'speed',
  'hatch inset',
  'vector',
  'vector gap',
  'vector count',
  'contours',
  'contour speed',
  'piece gap',
  'min layer',
  'seam overlap',
  'crumb area',
  'crumb width',
  'plume half width',
  'spacing',
  'chain gap',
  'platform',
  'build height',
  'gas flow',
  'recoater',
  'lasers',
  'powder',
  'width',
  'depth',
  'margin',
  'keep outs',
  'towards',
  'mode',
  'one way',
  'both ways',
  'power',
  'foot',
  'working height',
  'reach',
  'on',
  'id',
  'feed',
  'overflow',
  'residue interval',
  'area and outline',
  'area',
];

/** The words of a key or choice without its unit. */
export function keyWord(key: string): string {
  const words = /^[a-z]/.test(key) ? key.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`) : key;
  const known = KNOWN.find((text) => text === words);
  return known ? t(known) : words;
}
