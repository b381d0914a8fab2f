/**
 * Where a line runs inside a region. Millimetres; t runs along (−ny, nx), so a point of the line is
 * c·(nx, ny) + t·(−ny, nx).
 */
import type { HalfPlane, Region } from './types';

/**
 * Intervals t0, t1, t2, t3 … ascending in which the line nx·x + ny·y = c is inside the region. Where an outline edge lies
 * on the line, the side n·p < c decides.
 */
export function chords(region: Region, h: HalfPlane): Float64Array {
  const { nx, ny, c } = h;
  const found: number[] = [];
  for (const ring of region) {
    const n = ring.length;
    let px = ring[n - 2];
    let py = ring[n - 1];
    let dp = nx * px + ny * py - c;
    for (let i = 0; i < n; i += 2) {
      const qx = ring[i];
      const qy = ring[i + 1];
      const dq = nx * qx + ny * qy - c;
      if (dp < 0 !== dq < 0) {
        const tp = nx * py - ny * px;
        found.push(tp + (dp / (dp - dq)) * (nx * qy - ny * qx - tp));
      }
      px = qx;
      py = qy;
      dp = dq;
    }
  }
  return joined(Float64Array.from(found).sort());
}

/** Drops the border between intervals that only touch. */
function joined(ends: Float64Array): Float64Array {
  let n = 0;
  for (let i = 0; i < ends.length; i += 2) {
    if (ends[i] === ends[i + 1]) continue;
    if (n > 0 && ends[n - 1] === ends[i]) n--;
    else ends[n++] = ends[i];
    ends[n++] = ends[i + 1];
  }
  return n === ends.length ? ends : ends.slice(0, n);
}
