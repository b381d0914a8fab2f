/**
 * Which ends of lines and arcs belong together. Millimetres. Ends at the same place are one node at once; then ends
 * that are still alone join the nearest lonely end within the gap, nearest pairs first; then what is still alone joins
 * the nearest node at all. So an exact drawing never loses edges shorter than the gap, and a rough one still closes.
 */

/** Ends this close are at the same place: half the last of five decimals of a millimetre. */
const SAME_mm = 5e-6;
/** Ends looked at around one end; more lie there only in a drawing made to be slow. */
const MOST_NEIGHBOURS = 32;

/** Pairs kept; a drawing with loose ends has about one per end. */
const MOST_PAIRS = 1_000_000;

/** Ends by number: end 2e is where edge e begins, end 2e + 1 where it stops. */
export interface Ends {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Length of each edge. */
  readonly length: Float64Array;
}

class Groups {
  private readonly parent: Int32Array;
  readonly size: Int32Array;
  constructor(count: number) {
    this.parent = Int32Array.from({ length: count }, (_, i) => i);
    this.size = new Int32Array(count).fill(1);
  }
  of(i: number): number {
    let root = i;
    while (this.parent[root] !== root) root = this.parent[root];
    for (let at = i; this.parent[at] !== root;) {
      const up = this.parent[at];
      this.parent[at] = root;
      at = up;
    }
    return root;
  }
  join(i: number, j: number): void {
    const [a, b] = [this.of(i), this.of(j)];
    if (a === b) return;
    this.parent[b] = a;
    this.size[a] += this.size[b];
  }
}

const NEXT = [-1, 0, 1] as const;
const NONE = -1;

/** Two squares may share a number: that only adds points to look at. */
const squareNumber = (column: number, row: number): number =>
  Math.imul(column, 0x9e3779b1) ^ Math.imul(row, 0x85ebca6b);

/** Points sorted into squares of the reach's size; those of one square are linked, newest first. */
class Squares {
  private readonly newest = new Map<number, number>();
  private readonly before: Int32Array;
  constructor(
    private readonly ends: Ends,
    private readonly reach: number,
  ) {
    this.before = new Int32Array(ends.x.length).fill(NONE);
  }
  add(i: number): void {
    const square = squareNumber(this.column(i), this.row(i));
    this.before[i] = this.newest.get(square) ?? NONE;
    this.newest.set(square, i);
  }
  /** Visits points in the nine squares around a point, at most MOST_NEIGHBOURS of them. */
  around(i: number, visit: (j: number) => void): void {
    const [column, row] = [this.column(i), this.row(i)];
    let looked = 0;
    // Counted by step: adding 1 to a very large number would not change it.
    for (const dx of NEXT) {
      for (const dy of NEXT) {
        let j = this.newest.get(squareNumber(column + dx, row + dy)) ?? NONE;
        for (; j !== NONE; j = this.before[j]) {
          if (++looked > MOST_NEIGHBOURS) return;
          visit(j);
        }
      }
    }
  }
  private column(i: number): number {
    return Math.floor(this.ends.x[i] / this.reach);
  }
  private row(i: number): number {
    return Math.floor(this.ends.y[i] / this.reach);
  }
}

/** Visits the pairs that lie within reach of each other, each pair once. */
function eachPair(ends: Ends, members: readonly number[], reach: number, visit: PairVisitor): void {
  const squares = new Squares(ends, reach);
  for (const i of members) {
    squares.around(i, (j) => {
      const [dx, dy] = [ends.x[i] - ends.x[j], ends.y[i] - ends.y[j]];
      const d = Math.sqrt(dx * dx + dy * dy);
      if (d <= reach) visit(j, i, d);
    });
    squares.add(i);
  }
}
type PairVisitor = (i: number, j: number, distance: number) => void;

interface Pair {
  readonly i: number;
  readonly j: number;
  readonly d: number;
}

function pairsWithin(ends: Ends, members: readonly number[], gap: number): Pair[] {
  const pairs: Pair[] = [];
  eachPair(ends, members, gap, (i, j, d) => {
    const sameEdge = i >> 1 === j >> 1;
    if (pairs.length < MOST_PAIRS && (!sameEdge || ends.length[i >> 1] > 3 * gap)) pairs.push({ i, j, d });
  });
  return pairs.sort((a, b) => a.d - b.d || a.i - b.i || a.j - b.j);
}

/** For every end the number of its node; ends of one node have the same number. */
export function nodesOf(ends: Ends, gap_mm: number): Int32Array {
  const count = ends.x.length;
  const groups = new Groups(count);
  const all = Array.from({ length: count }, (_, i) => i);
  eachPair(ends, all, SAME_mm, (i, j) => groups.join(i, j));
  const lonely = (i: number): boolean => groups.size[groups.of(i)] === 1;
  if (gap_mm > SAME_mm) {
    for (const { i, j } of pairsWithin(ends, all.filter(lonely), gap_mm))
      if (lonely(i) && lonely(j)) groups.join(i, j);
    if (all.some(lonely)) {
      // One end stands for each node.
      const nodes = all.filter((i) => groups.of(i) === i);
      for (const { i, j } of pairsWithin(ends, nodes, gap_mm)) if (lonely(i) || lonely(j)) groups.join(i, j);
    }
  }
  return Int32Array.from(all, (i) => groups.of(i));
}
