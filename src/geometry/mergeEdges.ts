/**
 * Tidies what a round offset leaves at the vertices of finely divided arcs: two points a hair apart where the offset
 * edges meet. Such a short edge is replaced by the point where its neighbours meet; area changes by less than
 * (edge length)² · (turn angle) / 4. Millimetres.
 */
import type { Mm } from '../units/types';
import type { Ring } from './types';

/** Area that replacing one short edge may cost, and the turn of the outline over it. */
const MOST_AREA_MM2 = 1e-6;
const MOST_TURN = 0.15;

/** The ring without the short edges that an offset put at flat corners. */
export function mergeShortEdges(ring: Ring): Ring {
  const n = ring.length;
  if (n < 10) return ring;
  const out = new Float64Array(n);
  let m = 0;
  for (let i = 0; i < n; i += 2) {
    const j = (i + 2) % n;
    const met = j === 0 ? null : meeting(ring, (i + n - 2) % n, i, j, (i + 4) % n);
    if (met === null) {
      out[m++] = ring[i];
      out[m++] = ring[i + 1];
      continue;
    }
    out[m++] = met[0];
    out[m++] = met[1];
    i += 2;
  }
  return m === n ? ring : out.slice(0, m);
}

/** Where the edges before and after the short edge i → j meet; null where that edge has to stay. */
function meeting(r: Ring, h: number, i: number, j: number, k: number): [Mm, Mm] | null {
  const ex = r[j] - r[i];
  const ey = r[j + 1] - r[i + 1];
  const short = Math.hypot(ex, ey);
  if (short === 0) return null;
  const ax = r[i] - r[h];
  const ay = r[i + 1] - r[h + 1];
  const bx = r[k] - r[j];
  const by = r[k + 1] - r[j + 1];
  const la = Math.hypot(ax, ay);
  const lb = Math.hypot(bx, by);
  if (la < 3 * short || lb < 3 * short) return null;
  const cross = ax * by - ay * bx;
  const sine = cross / (la * lb);
  if (Math.abs(sine) > MOST_TURN || Math.abs(sine) < 1e-7 || ax * bx + ay * by < 0) return null;
  if (short * short * Math.abs(sine) > 4 * MOST_AREA_MM2) return null;
  // i + u·a lies on the line through j along b; it has to lie ahead of i, within the short edge.
  const u = (ex * by - ey * bx) / cross;
  if (u < 0 || u * la > short) return null;
  return [r[i] + u * ax, r[i + 1] + u * ay];
}
