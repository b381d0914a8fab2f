/**
 * Pairs of parts that stand too close together or overlap, by their footprints. Boxes decide where they can. A crowded plate
 * has millions of pairs: once enough are listed the rest is counted by boxes only, and an entry of its own says how many
 * were not compared, so that looking always ends soon. Outcomes are kept by the identity of the parts' views. Millimetres.
 */
import { CHORD_ERROR_MM } from '../geometry/circle';
import { gap, overlapArea } from '../geometry/distance';
import type { Mm, Mm2 } from '../units/types';
import { boxOverHeight, heightsOfOverlap, type HeightRange } from './footprints';
import { problem, shownArea, shownLength } from './problem';
import type { PartView, Problem } from './types';

/** Circles stand for themselves within the chord error; nothing nearer than it is a fault. */
export const SLACK_MM: Mm = CHORD_ERROR_MM;
/** Common areas below this are such slivers too. */
export const SLIVER_MM2: Mm2 = 0.05;
/** Pairs listed at most; nobody reads more, and each costs a comparison of outlines. */
export const MOST_PAIRS = 500;

interface PairOutcome {
  readonly spacing_mm: Mm;
  readonly gap_mm: Mm;
  readonly overlap_mm2: Mm2;
  /** Where the sections themselves overlap, too; null where they never do. */
  readonly heights: HeightRange | null;
}
export interface PairChecks {
  readonly problems: readonly Problem[];
  /** Pairs that were decided, by their boxes or their outlines. */
  readonly checks: number;
}

/** Boxes of parts, four numbers each, grown towards the front and the left by the spacing. */
function boxesOf(parts: readonly PartView[], spacing_mm: Mm): Float64Array {
  const boxes = new Float64Array(4 * parts.length);
  parts.forEach((part, i) => {
    const { minX, minY, maxX, maxY } = boxOverHeight(part);
    boxes.set([minX - spacing_mm, minY - spacing_mm, maxX, maxY], 4 * i);
  });
  return boxes;
}

const apart = (boxes: Float64Array, i: number, j: number): boolean =>
  boxes[i] > boxes[j + 2] ||
  boxes[j] > boxes[i + 2] ||
  boxes[i + 1] > boxes[j + 3] ||
  boxes[j + 1] > boxes[i + 3];

/** Compares every pair until `MOST_PAIRS` are listed; yields between parts and after each comparison of outlines. */
export function* pairSteps(
  parts: readonly PartView[],
  spacing_mm: Mm,
): Generator<undefined, PairChecks, undefined> {
  const boxes = boxesOf(parts, spacing_mm);
  const problems: Problem[] = [];
  let left = 0;
  for (let i = 0; i < boxes.length; i += 4) {
    for (let j = i + 4; j < boxes.length; j += 4) {
      if (apart(boxes, i, j)) continue;
      if (problems.length >= MOST_PAIRS) left++;
      else {
        problems.push(...together(parts[i >> 2], parts[j >> 2], spacing_mm));
        yield;
      }
    }
    yield;
  }
  const checks = (parts.length * (parts.length - 1)) / 2 - left;
  if (left > 0) problems.push(problem('pairs-not-compared', { listed: MOST_PAIRS, left }, []));
  return { problems, checks };
}

const pairsKnown = new WeakMap<PartView, WeakMap<PartView, PairOutcome>>();

function together(a: PartView, b: PartView, spacing_mm: Mm): Problem[] {
  const { gap_mm, overlap_mm2, heights } = outcomeOf(a, b, spacing_mm);
  const pair = { part: a.id, other: b.id };
  if (overlap_mm2 > SLIVER_MM2) {
    const params = { ...pair, area: shownArea(overlap_mm2) };
    if (heights === null) return [problem('footprints-overlap', params, [a.id, b.id])];
    const [from, to] = [shownLength(heights.from_mm), shownLength(heights.to_mm)];
    return [problem('parts-overlap', { ...params, from, to }, [a.id, b.id])];
  }
  if (gap_mm >= spacing_mm - 2 * SLACK_MM) return [];
  const params = { ...pair, gap: shownLength(gap_mm), spacing: shownLength(spacing_mm) };
  return [problem('parts-too-close', params, [a.id, b.id])];
}

function outcomeOf(a: PartView, b: PartView, spacing_mm: Mm): PairOutcome {
  let others = pairsKnown.get(a);
  if (others === undefined) pairsKnown.set(a, (others = new WeakMap()));
  const known = others.get(b);
  if (known?.spacing_mm === spacing_mm) return known;
  const gap_mm = gap(a.footprint, b.footprint, spacing_mm);
  const overlap_mm2 = gap_mm === 0 ? overlapArea(a.footprint, b.footprint) : 0;
  const heights = overlap_mm2 > SLIVER_MM2 ? heightsOfOverlap(a, b, SLIVER_MM2) : null;
  const outcome = { spacing_mm, gap_mm, overlap_mm2, heights };
  others.set(b, outcome);
  return outcome;
}
