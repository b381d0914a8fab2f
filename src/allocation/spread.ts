/**
 * Shares that even out what was realised (DESIGN 5.5: "solved again on what was realised"). Lasers joined by cuts end at
 * one load: the mean of all they hold together. The shares follow by taking away, again and again, a laser or a cut with
 * one open share; where cuts form a cycle, one share keeps its planned value. A share that would fall to zero or below
 * is dropped and the rest is spread again. Seconds.
 */
import type { Seconds } from '../units/types';

export interface Spreadable {
  readonly lasers: readonly number[];
  readonly total_s: Seconds;
  /** Planned shares, in the order of `lasers`; 0 where the laser was dropped. */
  readonly shares_s: readonly Seconds[];
}

interface Edge {
  readonly cut: number;
  readonly slot: number;
  readonly laser: number;
}

function openEdges(cuts: readonly Spreadable[], dropped: ReadonlySet<string>): Edge[] {
  return cuts.flatMap((cut, c) =>
    cut.lasers.flatMap((laser, slot) =>
      cut.shares_s[slot] > 0 && !dropped.has(`${c}/${slot}`) ? [{ cut: c, slot, laser }] : [],
    ),
  );
}

/** Mean load of each laser's group, by laser. */
function targets(
  edges: readonly Edge[],
  cuts: readonly Spreadable[],
  rest_s: readonly Seconds[],
): Map<number, Seconds> {
  const group = new Map<number, number>();
  const find = (k: number): number => (group.get(k) === k ? k : find(group.get(k)!));
  for (const { laser } of edges) if (!group.has(laser)) group.set(laser, laser);
  const firstOf = new Map<number, number>();
  for (const { cut, laser } of edges) {
    const first = firstOf.get(cut);
    if (first === undefined) firstOf.set(cut, laser);
    else group.set(find(laser), find(first));
  }
  const sums = new Map<number, { load: number; count: number }>();
  const at = (root: number) => sums.get(root) ?? sums.set(root, { load: 0, count: 0 }).get(root)!;
  for (const laser of group.keys()) {
    const sum = at(find(laser));
    sum.load += rest_s[laser];
    sum.count++;
  }
  for (const [cut, laser] of firstOf) at(find(laser)).load += cuts[cut].total_s;
  return new Map([...group.keys()].map((k) => [k, at(find(k)).load / at(find(k)).count]));
}

/** Index of an edge whose laser or cut has no other open edge; −1 where all lie on cycles. */
function leaf(edges: readonly Edge[]): number {
  return edges.findIndex(
    (e) =>
      !edges.some((o) => o !== e && o.laser === e.laser) || !edges.some((o) => o !== e && o.cut === e.cut),
  );
}

function solveForest(
  edges: readonly Edge[],
  cuts: readonly Spreadable[],
  rest_s: readonly Seconds[],
  target: ReadonlyMap<number, Seconds>,
): Map<Edge, Seconds> {
  const supply = cuts.map((cut) => cut.total_s);
  const need = new Map([...target].map(([laser, load]) => [laser, load - rest_s[laser]]));
  const solved = new Map<Edge, Seconds>();
  let open = [...edges];
  while (open.length > 0) {
    const found = leaf(open);
    const edge = open[found < 0 ? open.length - 1 : found];
    const lastOfCut = !open.some((o) => o !== edge && o.cut === edge.cut);
    const share =
      found < 0 ? cuts[edge.cut].shares_s[edge.slot] : lastOfCut ? supply[edge.cut] : need.get(edge.laser)!;
    solved.set(edge, share);
    supply[edge.cut] -= share;
    need.set(edge.laser, need.get(edge.laser)! - share);
    open = open.filter((o) => o !== edge);
  }
  return solved;
}

/** New shares for every cut; `rest_s` is each laser's load outside these cuts. */
export function spread(cuts: readonly Spreadable[], rest_s: readonly Seconds[]): Seconds[][] {
  const dropped = new Set<string>();
  for (;;) {
    const edges = openEdges(cuts, dropped);
    const solved = solveForest(edges, cuts, rest_s, targets(edges, cuts, rest_s));
    const bad = edges.find(
      (edge) => solved.get(edge)! <= 0 && edges.some((o) => o !== edge && o.cut === edge.cut),
    );
    if (!bad) {
      const shares = cuts.map((cut) => cut.lasers.map(() => 0));
      for (const [edge, share] of solved) shares[edge.cut][edge.slot] = Math.max(0, share);
      return shares;
    }
    dropped.add(`${bad.cut}/${bad.slot}`);
  }
}
