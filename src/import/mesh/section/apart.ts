/**
 * A quick certificate that rings keep apart: no edge meets another one but its neighbours. Edges are swept along x in as
 * many columns as there are edges; each new one is compared with those that still reach into its column. Where this says no,
 * the rings may still be apart. Millimetres.
 */
import { edgesOf, type Edges } from '../../../geometry/edges';
import type { Ring } from '../../../geometry/types';
import type { Mm } from '../../../units/types';

/** Nearer than this counts as meeting. */
const TOUCH_mm: Mm = 1e-6;

/** Edges and the range of x they span. */
interface SpannedEdges extends Edges {
  readonly minX: Mm;
  readonly maxX: Mm;
}

function spannedEdges(rings: readonly Ring[]): SpannedEdges {
  const { ends, next } = edgesOf(rings);
  let minX = Infinity;
  let maxX = -Infinity;
  for (let i = 0; i < ends.length; i += 4) {
    if (ends[i] < minX) minX = ends[i];
    if (ends[i] > maxX) maxX = ends[i];
  }
  return { ends, next, minX, maxX };
}

/** Edges in the order of the column in which they begin, and where each column begins among them. */
function byColumn({ ends, next, minX, maxX }: SpannedEdges): { order: Int32Array; begins: Int32Array } {
  const count = next.length;
  const perMm = (count - 1) / (maxX - minX || 1);
  const column = new Int32Array(count);
  const begins = new Int32Array(count + 1);
  for (let e = 0; e < count; e++) {
    const left = ends[4 * e] < ends[4 * e + 2] ? ends[4 * e] : ends[4 * e + 2];
    column[e] = Math.floor((left - minX) * perMm);
    begins[column[e] + 1] += 1;
  }
  for (let c = 0; c < count; c++) begins[c + 1] += begins[c];
  const filled = begins.slice();
  const order = new Int32Array(count);
  for (let e = 0; e < count; e++) {
    order[filled[column[e]]] = e;
    filled[column[e]] += 1;
  }
  return { order, begins };
}

/** True where the rings surely neither cross nor touch themselves or each other. */
export function areApart(rings: readonly Ring[]): boolean {
  const edges = spannedEdges(rings);
  const { ends, next, minX, maxX } = edges;
  const count = next.length;
  if (count === 0) return true;
  const { order, begins } = byColumn(edges);
  const width = (maxX - minX || 1) / (count - 1);
  const active = new Int32Array(count);
  let size = 0;
  for (let c = 0; c < count; c++) {
    if (begins[c] === begins[c + 1]) continue;
    const left = minX + c * width - 2 * TOUCH_mm;
    let kept = 0;
    for (let i = 0; i < size; i++) {
      const e = active[i];
      if (ends[4 * e] >= left || ends[4 * e + 2] >= left) active[kept++] = e;
    }
    size = kept;
    for (let i = begins[c]; i < begins[c + 1]; i++) {
      const e = order[i];
      for (let k = 0; k < size; k++) if (mayMeet(ends, next, e, active[k])) return false;
      active[size++] = e;
    }
  }
  return true;
}

function mayMeet(ends: Float64Array, next: Int32Array, e: number, f: number): boolean {
  const a = 4 * e;
  const b = 4 * f;
  const lowA = ends[a + 1] < ends[a + 3] ? ends[a + 1] : ends[a + 3];
  const highB = ends[b + 1] > ends[b + 3] ? ends[b + 1] : ends[b + 3];
  if (lowA > highB + TOUCH_mm) return false;
  const highA = ends[a + 1] > ends[a + 3] ? ends[a + 1] : ends[a + 3];
  const lowB = ends[b + 1] < ends[b + 3] ? ends[b + 1] : ends[b + 3];
  if (lowB > highA + TOUCH_mm) return false;
  const rightA = ends[a] > ends[a + 2] ? ends[a] : ends[a + 2];
  const leftB = ends[b] < ends[b + 2] ? ends[b] : ends[b + 2];
  if (leftB > rightA + TOUCH_mm) return false;
  const rightB = ends[b] > ends[b + 2] ? ends[b] : ends[b + 2];
  const leftA = ends[a] < ends[a + 2] ? ends[a] : ends[a + 2];
  if (leftA > rightB + TOUCH_mm) return false;
  if (next[e] === f) return next[f] === e || foldsBack(ends, a, b);
  if (next[f] === e) return foldsBack(ends, b, a);
  return !separates(ends, a, b) && !separates(ends, b, a);
}

/** Does the line through edge a leave edge b on one side of it, clear of touching? */
function separates(ends: Float64Array, a: number, b: number): boolean {
  const dx = ends[a + 2] - ends[a];
  const dy = ends[a + 3] - ends[a + 1];
  const clear = TOUCH_mm * (Math.abs(dx) + Math.abs(dy));
  const one = dx * (ends[b + 1] - ends[a + 1]) - dy * (ends[b] - ends[a]);
  const other = dx * (ends[b + 3] - ends[a + 1]) - dy * (ends[b + 2] - ends[a]);
  return (one > clear && other > clear) || (one < -clear && other < -clear);
}

/** Does edge b run back along edge a, which ends where b begins? */
function foldsBack(ends: Float64Array, a: number, b: number): boolean {
  const dx = ends[a + 2] - ends[a];
  const dy = ends[a + 3] - ends[a + 1];
  const ex = ends[b + 2] - ends[b];
  const ey = ends[b + 3] - ends[b + 1];
  if (dx * ex + dy * ey >= 0) return false;
  return (
    Math.abs(dx * ey - dy * ex) <= TOUCH_mm * (Math.abs(dx) + Math.abs(dy) + Math.abs(ex) + Math.abs(ey))
  );
}
