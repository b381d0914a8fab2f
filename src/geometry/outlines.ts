/**
 * Do outlines cross? Edges sorted by their least x are compared with those whose x range overlaps. Distances below
 * TOUCH_MM count as touching. Millimetres.
 */
import type { Mm } from '../units/types';
import { edgesOf, type Edges } from './edges';
import type { Ring } from './types';

/** Points nearer than this count as touching: far below the micrometre that layouts are kept to. */
const TOUCH_MM: Mm = 1e-6;

/** 'apart': nothing meets but neighbours. 'touching': a vertex lies on an outline. 'crossing': outlines cross or overlap. */
export type OutlineState = 'apart' | 'touching' | 'crossing';

/** How the outlines of these rings lie to each other and to themselves. */
export function checkOutlines(rings: readonly Ring[]): OutlineState {
  const edges = edgesOf(rings);
  const { ends } = edges;
  const count = edges.next.length;
  const least = new Float64Array(count);
  for (let e = 0; e < count; e++) least[e] = Math.min(ends[4 * e], ends[4 * e + 2]);
  const order = Array.from({ length: count }, (_, e) => e).sort((a, b) => least[a] - least[b]);
  let state: OutlineState = 'apart';
  for (let p = 0; p < count; p++) {
    const a = order[p];
    const end = Math.max(ends[4 * a], ends[4 * a + 2]) + TOUCH_MM;
    for (let q = p + 1; q < count && least[order[q]] <= end; q++) {
      const found = pairState(edges, a, order[q]);
      if (found === 'crossing') return found;
      if (found === 'touching') state = found;
    }
  }
  return state;
}

function pairState({ ends, next }: Edges, a: number, b: number): OutlineState {
  const i = 4 * a;
  const j = 4 * b;
  if (Math.min(ends[i + 1], ends[i + 3]) > Math.max(ends[j + 1], ends[j + 3]) + TOUCH_MM) return 'apart';
  if (Math.min(ends[j + 1], ends[j + 3]) > Math.max(ends[i + 1], ends[i + 3]) + TOUCH_MM) return 'apart';
  if (next[a] === b) return foldsBack(ends, i, j) ? 'crossing' : 'apart';
  if (next[b] === a) return foldsBack(ends, j, i) ? 'crossing' : 'apart';
  const b0 = offLine(ends, i, ends[j], ends[j + 1]);
  const b1 = offLine(ends, i, ends[j + 2], ends[j + 3]);
  if (Math.min(b0, b1) > TOUCH_MM || Math.max(b0, b1) < -TOUCH_MM) return 'apart';
  const a0 = offLine(ends, j, ends[i], ends[i + 1]);
  const a1 = offLine(ends, j, ends[i + 2], ends[i + 3]);
  if (Math.min(a0, a1) > TOUCH_MM || Math.max(a0, a1) < -TOUCH_MM) return 'apart';
  const clear = Math.min(Math.abs(a0), Math.abs(a1), Math.abs(b0), Math.abs(b1)) > TOUCH_MM;
  if (clear) return 'crossing';
  const along =
    Math.max(Math.abs(b0), Math.abs(b1)) <= TOUCH_MM || Math.max(Math.abs(a0), Math.abs(a1)) <= TOUCH_MM;
  if (along) {
    const overlap = overlapLength(ends, i, j);
    return overlap > TOUCH_MM ? 'crossing' : overlap >= -TOUCH_MM ? 'touching' : 'apart';
  }
  return 'touching';
}

/** Signed distance of a point from the line through an edge. */
function offLine(ends: Float64Array, e: number, x: Mm, y: Mm): Mm {
  const dx = ends[e + 2] - ends[e];
  const dy = ends[e + 3] - ends[e + 1];
  return (dx * (y - ends[e + 1]) - dy * (x - ends[e])) / (Math.hypot(dx, dy) || 1);
}

/** Length by which two edges on one line cover each other; negative: the gap between them. */
function overlapLength(ends: Float64Array, i: number, j: number): Mm {
  const dx = ends[i + 2] - ends[i];
  const dy = ends[i + 3] - ends[i + 1];
  const length = Math.hypot(dx, dy);
  if (length === 0) return -Infinity;
  const at = (k: number): Mm => ((ends[k] - ends[i]) * dx + (ends[k + 1] - ends[i + 1]) * dy) / length;
  const from = Math.min(at(j), at(j + 2));
  const to = Math.max(at(j), at(j + 2));
  return Math.min(to, length) - Math.max(from, 0);
}

/** The second edge runs back along the first: a spike without area. */
function foldsBack(ends: Float64Array, i: number, j: number): boolean {
  const dx = ends[i + 2] - ends[i];
  const dy = ends[i + 3] - ends[i + 1];
  const ex = ends[j + 2] - ends[j];
  const ey = ends[j + 3] - ends[j + 1];
  if (dx * ex + dy * ey >= 0) return false;
  return Math.abs(offLine(ends, i, ends[j + 2], ends[j + 3])) <= TOUCH_MM;
}
