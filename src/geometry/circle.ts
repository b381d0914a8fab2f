/**
 * A circle as a polygon. Millimetres. Of all regular n-gons the one with the circle's own area is taken, so areas agree
 * to rounding; its vertices lie r·x²/3 outside and its edge middles r·x²/6 inside the circle (x = π/n), and n is the
 * smallest multiple of four that keeps both within 0.005 mm. Edge middles lie on the axes: the polygon's box never
 * exceeds the circle's, and it is unchanged by quarter turns and mirroring.
 */
import type { Mm } from '../units/types';
import type { Ring } from './types';

/** Largest distance between polygon and circle. */
export const CHORD_ERROR_MM: Mm = 0.005;
const FEWEST_SIDES = 16;

/** Factor from the circle's radius to that of the n-gon of equal area: √(2π / (n·sin(2π/n))). */
const equalAreaFactor = (n: number): number => Math.sqrt((2 * Math.PI) / (n * Math.sin((2 * Math.PI) / n)));

function sidesFor(r: Mm): number {
  let n = Math.max(FEWEST_SIDES, 4 * Math.floor(Math.PI / Math.sqrt((3 * CHORD_ERROR_MM) / r) / 4));
  while (r * (equalAreaFactor(n) - 1) > CHORD_ERROR_MM) n += 4;
  return n;
}

/** Counter-clockwise polygon of area π r² about (x, y), everywhere within CHORD_ERROR_MM of the circle. */
export function circleRing(x: Mm, y: Mm, r: Mm): Ring {
  const n = sidesFor(r);
  const ring = new Float64Array(2 * n);
  const radius = r * equalAreaFactor(n);
  const quarter = n / 4;
  for (let i = 0; i < quarter; i++) {
    const angle = ((2 * i + 1) * Math.PI) / n;
    const dx = radius * Math.cos(angle);
    const dy = radius * Math.sin(angle);
    ring.set([x + dx, y + dy], 2 * i);
    ring.set([x - dy, y + dx], 2 * (i + quarter));
    ring.set([x - dx, y - dy], 2 * (i + 2 * quarter));
    ring.set([x + dy, y - dx], 2 * (i + 3 * quarter));
  }
  return ring;
}
