/**
 * Whether a line leaves both sides of a connected region in one piece, told from its crossings alone. Every loop made of
 * outline chains on one side and of stretches of the line is the outer ring of one piece on that side, so pieces are
 * counted by following crossings: along the ring on that side to the next one, along the line to its partner.
 * Millimetres.
 */
import type { HalfPlane, Region } from './types';

const t: number[] = [];
const ringStart: number[] = [];
/** Crossing k goes from n·p ≤ c to n·p > c. */
const leaves: boolean[] = [];

/** Crossings ring by ring, in the order of each ring. */
function collect(region: Region, { nx, ny, c }: HalfPlane): void {
  t.length = ringStart.length = leaves.length = 0;
  for (const ring of region) {
    ringStart.push(t.length);
    const n = ring.length;
    let px = ring[n - 2];
    let py = ring[n - 1];
    let dp = nx * px + ny * py - c;
    for (let i = 0; i < n; i += 2) {
      const qx = ring[i];
      const qy = ring[i + 1];
      const dq = nx * qx + ny * qy - c;
      if (dp <= 0 !== dq <= 0) {
        const tp = nx * py - ny * px;
        t.push(tp + (dp / (dp - dq)) * (nx * qy - ny * qx - tp));
        leaves.push(dp <= 0);
      }
      px = qx;
      py = qy;
      dp = dq;
    }
  }
  ringStart.push(t.length);
}

/** Crossing k's partner along its ring, on the low or the high side. */
function alongRing(k: number, low: boolean): number {
  let r = 0;
  while (ringStart[r + 1] <= k) r++;
  const from = ringStart[r];
  const count = ringStart[r + 1] - from;
  const forward = leaves[k] !== low;
  return from + ((k - from + (forward ? 1 : count - 1)) % count);
}

/** Number of pieces on one side. */
function loops(partner: readonly number[], low: boolean): number {
  const seen = partner.map(() => false);
  let count = 0;
  for (let start = 0; start < partner.length; start++) {
    if (seen[start]) continue;
    count++;
    for (let k = start; !seen[k];) {
      seen[k] = true;
      const next = alongRing(k, low);
      seen[next] = true;
      k = partner[next];
    }
  }
  return count;
}

/** How often the outlines of a region cross a line. */
export function crossingsOf(region: Region, line: HalfPlane): number {
  collect(region, line);
  return t.length;
}

/** True where the line cuts a connected region into exactly two connected pieces. */
export function cutsInTwo(region: Region, line: HalfPlane): boolean {
  collect(region, line);
  if (t.length === 2) return true;
  if (t.length === 0) return false;
  const order = t.map((_, k) => k).sort((a, b) => t[a] - t[b]);
  const partner: number[] = [];
  for (let i = 0; i < order.length; i += 2) {
    partner[order[i]] = order[i + 1];
    partner[order[i + 1]] = order[i];
  }
  return loops(partner, true) === 1 && loops(partner, false) === 1;
}
