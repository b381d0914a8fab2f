/**
 * Shares that even out what was realised. Lasers joined by cuts end at
 * one load: the mean of all they hold together. The shares follow by taking away, again and again, a laser or a cut with
 * one open share; where cuts form a cycle, one share keeps its planned value. A share that would fall to zero or below
 * is dropped and the rest is spread again. The order of taking away is found once per set of cuts. Seconds.
 */
import type { Seconds } from '../units/types';

/** One cut fragment whose load several lasers share. */
export interface Spreadable {
  readonly lasers: readonly number[];
  readonly total_s: Seconds;
  /** Shares in the order of `lasers`; 0 where the laser was dropped. */
  readonly shares_s: readonly Seconds[];
}

interface Edge {
  readonly cut: number;
  readonly slot: number;
  readonly laser: number;
}
/** How an edge's share is found when its turn comes. */
type Turn = 'what the laser needs' | 'what is left of the cut' | 'as it was';
interface Step {
  readonly edge: Edge;
  readonly turn: Turn;
}

function openEdges(cuts: readonly Spreadable[]): Edge[] {
  return cuts.flatMap(({ lasers, shares_s }, cut) =>
    lasers.flatMap((laser, slot) => (shares_s[slot] > 0 ? [{ cut, slot, laser }] : [])),
  );
}

function nextStep(open: readonly Edge[], ofLaser: readonly number[], ofCut: readonly number[]): Step {
  const edge = open.find((e) => ofCut[e.cut] === 1 || ofLaser[e.laser] === 1) ?? open[open.length - 1];
  const last = ofCut[edge.cut] === 1;
  return {
    edge,
    turn: last ? 'what is left of the cut' : ofLaser[edge.laser] === 1 ? 'what the laser needs' : 'as it was',
  };
}

/** The order in which edges are taken away. */
function stepsOf(edges: readonly Edge[], cuts: number, lasers: number): Step[] {
  const ofLaser = Array.from({ length: lasers }, () => 0);
  const ofCut = Array.from({ length: cuts }, () => 0);
  for (const { cut, laser } of edges) {
    ofCut[cut]++;
    ofLaser[laser]++;
  }
  const open = [...edges];
  const steps: Step[] = [];
  while (open.length > 0) {
    const step = nextStep(open, ofLaser, ofCut);
    steps.push(step);
    ofCut[step.edge.cut]--;
    ofLaser[step.edge.laser]--;
    open.splice(open.indexOf(step.edge), 1);
  }
  return steps;
}

/** Group number of every laser and of every cut; −1 for lasers that no cut joins. */
function groupsOf(
  edges: readonly Edge[],
  cuts: number,
  lasers: number,
): { ofLaser: number[]; ofCut: number[] } {
  const root = Array.from({ length: lasers }, (_, k) => k);
  const find = (k: number): number => (root[k] === k ? k : (root[k] = find(root[k])));
  const ofCut = Array.from({ length: cuts }, () => -1);
  const joined = new Set<number>();
  for (const { cut, laser } of edges) {
    joined.add(laser);
    if (ofCut[cut] < 0) ofCut[cut] = laser;
    else root[find(laser)] = find(ofCut[cut]);
  }
  return {
    ofLaser: root.map((_, k) => (joined.has(k) ? find(k) : -1)),
    ofCut: ofCut.map((laser) => (laser < 0 ? -1 : find(laser))),
  };
}

/** Spreads the same cuts over and over as the load outside them becomes known. */
export class Spreader {
  private readonly steps: readonly Step[];
  private readonly ofLaser: readonly number[];
  private readonly ofCut: readonly number[];
  /** Takes over once a share has been dropped. */
  private reduced: Spreader | null = null;

  constructor(
    private readonly cuts: readonly Spreadable[],
    private readonly lasers: number,
  ) {
    const edges = openEdges(cuts);
    this.steps = stepsOf(edges, cuts.length, lasers);
    ({ ofLaser: this.ofLaser, ofCut: this.ofCut } = groupsOf(edges, cuts.length, lasers));
  }

  /** Shares of every cut, in the order of its lasers; `rest_s` is each laser's load outside these cuts. */
  spread(rest_s: readonly Seconds[]): Seconds[][] {
    if (this.reduced) return this.reduced.spread(rest_s);
    const need = this.needs(rest_s);
    const left = this.cuts.map((cut) => cut.total_s);
    const shares = this.cuts.map((cut) => cut.lasers.map(() => 0));
    for (const { edge, turn } of this.steps) {
      const { cut, slot, laser } = edge;
      const kept = this.cuts[cut].shares_s[slot];
      const share = turn === 'as it was' ? kept : turn === 'what the laser needs' ? need[laser] : left[cut];
      if (share <= 0 && this.cuts[cut].shares_s.some((s, i) => s > 0 && i !== slot))
        return this.without(edge, rest_s);
      shares[cut][slot] = Math.max(0, share);
      left[cut] -= share;
      need[laser] -= share;
    }
    return shares;
  }

  /** What each laser lacks to the mean of its group. */
  private needs(rest_s: readonly Seconds[]): Seconds[] {
    const sums = rest_s.map(() => 0);
    const counts = rest_s.map(() => 0);
    this.ofLaser.forEach((group, laser) => {
      if (group < 0) return;
      sums[group] += rest_s[laser];
      counts[group]++;
    });
    this.ofCut.forEach((group, cut) => {
      if (group >= 0) sums[group] += this.cuts[cut].total_s;
    });
    return this.ofLaser.map((group, laser) => (group < 0 ? 0 : sums[group] / counts[group] - rest_s[laser]));
  }

  private without({ cut, slot }: Edge, rest_s: readonly Seconds[]): Seconds[][] {
    const cuts = this.cuts.map((c, i) =>
      i === cut ? { ...c, shares_s: c.shares_s.map((share, k) => (k === slot ? 0 : share)) } : c,
    );
    this.reduced = new Spreader(cuts, this.lasers);
    return this.reduced.spread(rest_s);
  }
}
