/**
 * Open outlines of one cut joined end to start, nearest first, over gaps up to a limit; what comes back to its own start is
 * a ring. Joining nearest first means: with the limit raised to `widestGap`, everything closes. Millimetres.
 */
import type { Ring } from '../../../geometry/types';
import type { Mm } from '../../../units/types';

export interface Closed {
  readonly rings: Ring[];
  /** The widest gap that stayed open; null where none did. */
  readonly widestGap: Mm | null;
}
interface Join {
  readonly end: number;
  readonly start: number;
  readonly gap: Mm;
}
/** With more open outlines than this only near ends are compared, and the gap is not known. */
const MOST_COMPARED = 1000;
/** Narrower cells would not be told apart. */
const LEAST_CELL_mm: Mm = 0.001;

const gapOf = (chains: readonly Ring[], end: number, start: number): Mm => {
  const from = chains[end];
  return Math.hypot(from[from.length - 2] - chains[start][0], from[from.length - 1] - chains[start][1]);
};

/** All pairs of an end and a start within the limit, by cells at least as wide as the limit. */
function nearJoins(chains: readonly Ring[], limit: Mm): Join[] {
  const cells = new Cells(Math.max(limit, LEAST_CELL_mm));
  chains.forEach((chain, i) => cells.add(i, chain[0], chain[1]));
  const joins: Join[] = [];
  chains.forEach((chain, end) => {
    cells.around(chain[chain.length - 2], chain[chain.length - 1], (start) => {
      const gap = gapOf(chains, end, start);
      if (gap <= limit) joins.push({ end, start, gap });
    });
  });
  return joins;
}

/** Places kept by square cells. */
class Cells {
  private readonly members = new Map<number, number[]>();
  constructor(private readonly width: Mm) {}

  /** Cells far apart may share a key; whoever asks compares distances anyhow. */
  private keyOf(x: number, y: number): number {
    return x * 0x2000000 + y;
  }
  add(index: number, x: Mm, y: Mm): void {
    const key = this.keyOf(Math.floor(x / this.width), Math.floor(y / this.width));
    const found = this.members.get(key);
    if (found) found.push(index);
    else this.members.set(key, [index]);
  }
  /** Everything in the nine cells around a place. */
  around(x: Mm, y: Mm, take: (index: number) => void): void {
    const cx = Math.floor(x / this.width);
    const cy = Math.floor(y / this.width);
    for (let n = 0; n < 9; n++)
      this.members.get(this.keyOf(cx + (n % 3) - 1, cy + Math.floor(n / 3) - 1))?.forEach(take);
  }
}

const allJoins = (chains: readonly Ring[], ends: readonly number[], starts: readonly number[]): Join[] =>
  ends.flatMap((end) => starts.map((start) => ({ end, start, gap: gapOf(chains, end, start) })));

/** Takes joins from the narrowest on, each end and each start once. */
function takeNearest(joins: Join[], next: Int32Array, taken: Uint8Array): Mm {
  let widest = 0;
  joins.sort((a, b) => a.gap - b.gap || a.end - b.end || a.start - b.start);
  for (const { end, start, gap } of joins) {
    if (next[end] >= 0 || taken[start] === 1) continue;
    next[end] = start;
    taken[start] = 1;
    widest = gap;
  }
  return widest;
}

/** Rings out of chains that follow each other in a circle. */
function circles(chains: readonly Ring[], next: Int32Array): Ring[] {
  const rings: Ring[] = [];
  const seen = new Uint8Array(chains.length);
  for (let first = 0; first < chains.length; first++) {
    const members: Ring[] = [];
    let at = first;
    for (; at >= 0 && seen[at] === 0; at = next[at]) {
      seen[at] = 1;
      members.push(chains[at]);
    }
    if (at === first && members.length > 0) rings.push(joined(members));
  }
  return rings;
}

/** One ring without points that repeat where two chains meet. */
function joined(members: readonly Ring[]): Ring {
  const flat: number[] = [];
  for (const chain of members)
    for (let i = 0; i < chain.length; i += 2)
      if (chain[i] !== flat[flat.length - 2] || chain[i + 1] !== flat[flat.length - 1])
        flat.push(chain[i], chain[i + 1]);
  while (flat.length > 2 && flat[0] === flat[flat.length - 2] && flat[1] === flat[flat.length - 1])
    flat.length -= 2;
  return Float64Array.from(flat);
}

/** Open outlines that begin a row: nothing leads to them, so a circle cannot hold them. */
function rowStarts(next: Int32Array, taken: Uint8Array): { ends: number[]; starts: number[] } {
  const ends: number[] = [];
  const starts: number[] = [];
  next.forEach((to, i) => {
    if (to < 0) ends.push(i);
    if (taken[i] === 0) starts.push(i);
  });
  return { ends, starts };
}

/** Closes what can be closed. */
export function closeChains(chains: readonly Ring[], limit: Mm): Closed {
  if (chains.length === 0) return { rings: [], widestGap: null };
  const next = new Int32Array(chains.length).fill(-1);
  const taken = new Uint8Array(chains.length);
  takeNearest(nearJoins(chains, limit), next, taken);
  const rings = circles(chains, next).filter((ring) => ring.length >= 6);
  const { ends, starts } = rowStarts(next, taken);
  if (ends.length === 0) return { rings, widestGap: null };
  if (ends.length > MOST_COMPARED) return { rings, widestGap: Infinity };
  return { rings, widestGap: takeNearest(allJoins(chains, ends, starts), next, taken) };
}
