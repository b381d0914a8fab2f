/**
 * Outlines as numbers: a reach or keep-out that is a disc or a rectangle is shown by its numbers; any other outline by
 * its box. Platform millimetres.
 */
import { boxOfRing } from '../../geometry/region';
import { ringFromLayout } from '../../geometry/ring';
import type { LayoutRing } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';

export type RingForm =
  | { readonly kind: 'disc'; readonly x: Mm; readonly y: Mm; readonly r: Mm }
  | {
      readonly kind: 'rectangle';
      readonly left: Mm;
      readonly front: Mm;
      readonly right: Mm;
      readonly back: Mm;
    }
  | { readonly kind: 'outline'; readonly points: number };

/** Four corners that are the corners of their box: a rectangle. */
function isBox(ring: LayoutRing, form: readonly number[]): boolean {
  if (!Array.isArray(ring)) return false;
  const [left, front, right, back] = form;
  const corners = new Set((ring as readonly (readonly [Mm, Mm])[]).map(([x, y]) => `${x} ${y}`));
  const wanted = [`${left} ${front}`, `${right} ${front}`, `${right} ${back}`, `${left} ${back}`];
  return corners.size === 4 && wanted.every((corner) => corners.has(corner));
}

export function formOf(ring: LayoutRing): RingForm {
  if ('circle_mm' in ring) {
    const [x, y, r] = ring.circle_mm;
    return { kind: 'disc', x, y, r };
  }
  const { minX, minY, maxX, maxY } = boxOfRing(ringFromLayout(ring));
  return isBox(ring, [minX, minY, maxX, maxY])
    ? { kind: 'rectangle', left: minX, front: minY, right: maxX, back: maxY }
    : { kind: 'outline', points: ring.length };
}

/** A rectangle's ring, counter-clockwise from the front left corner. */
export const rectangleRing = (left: Mm, front: Mm, right: Mm, back: Mm): LayoutRing => [
  [roundMm(left), roundMm(front)],
  [roundMm(right), roundMm(front)],
  [roundMm(right), roundMm(back)],
  [roundMm(left), roundMm(back)],
];
export const discRing = (x: Mm, y: Mm, r: Mm): LayoutRing => ({
  circle_mm: [roundMm(x), roundMm(y), roundMm(r)],
});
