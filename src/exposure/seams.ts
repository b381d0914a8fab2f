/**
 * Seams of one part: borders between two lasers, joined where they touch, one seam per laser pair and connected segment.
 * Witness lines are the crossings of seams with the true outline: ends on platform or reach edges are none,
 * several at one outline point are one. Millimetres, platform coordinates.
 */
import type { Region } from '../geometry/types';
import type { Mm } from '../units/types';

/** One seam: a pair of lasers and one connected run of segments. */
export interface PartSeam {
  /** The lower laser index first. */
  readonly lasers: readonly [number, number];
  /** x0, y0, x1, y1 per segment. */
  readonly path: Float64Array;
  readonly length_mm: Mm;
  readonly witnessLines: number;
}
/** The seams of one part in one layer. */
export interface PartSeams {
  readonly seams: readonly PartSeam[];
  /** Outline points with a seam end, each counted once. */
  readonly witnessLines: number;
}
/** A border between two given fragments, by the lasers on its sides; x0, y0, x1, y1 per segment. */
export interface LaserBorder {
  readonly lasers: readonly [number, number];
  readonly segments: Float64Array;
}

/** Points nearer than this are one point. */
const SAME_POINT_MM = 1e-3;

interface End {
  readonly x: Mm;
  readonly y: Mm;
}

const near = (a: End, b: End): boolean =>
  Math.abs(a.x - b.x) < SAME_POINT_MM && Math.abs(a.y - b.y) < SAME_POINT_MM;

interface Chain {
  segments: number[][];
  ends: End[];
}

const endsOf = (s: readonly number[]): [End, End] => [
  { x: s[0], y: s[1] },
  { x: s[2], y: s[3] },
];

/** Adds b's segments to a, so that a run of segments stays in order where one continues the other. */
function join(a: Chain, b: Chain): Chain {
  return { segments: [...a.segments, ...b.segments], ends: [...a.ends, ...b.ends] };
}

/** Groups of segments that touch end to end. */
function connect(segments: readonly number[][]): Chain[] {
  let chains: Chain[] = [];
  for (const segment of segments) {
    let merged: Chain = { segments: [segment], ends: endsOf(segment) };
    const rest: Chain[] = [];
    for (const chain of chains) {
      const touches = chain.ends.some((p) => merged.ends.some((q) => near(p, q)));
      if (touches) merged = join(chain, merged);
      else rest.push(chain);
    }
    chains = [...rest, merged];
  }
  return chains;
}

/** Points that end exactly one segment of the chain. */
function openEnds(chain: Chain): End[] {
  return chain.ends.filter((p, i) => !chain.ends.some((q, j) => i !== j && near(p, q)));
}

/** Distance test against the true outline. */
export function onOutline(section: Region, p: End): boolean {
  for (const ring of section) {
    let x0 = ring[ring.length - 2];
    let y0 = ring[ring.length - 1];
    for (let i = 0; i < ring.length; i += 2) {
      const x1 = ring[i];
      const y1 = ring[i + 1];
      if (nearSegment(x0, y0, x1, y1, p)) return true;
      x0 = x1;
      y0 = y1;
    }
  }
  return false;
}

function nearSegment(x0: Mm, y0: Mm, x1: Mm, y1: Mm, p: End): boolean {
  if (p.x < Math.min(x0, x1) - SAME_POINT_MM || p.x > Math.max(x0, x1) + SAME_POINT_MM) return false;
  if (p.y < Math.min(y0, y1) - SAME_POINT_MM || p.y > Math.max(y0, y1) + SAME_POINT_MM) return false;
  const dx = x1 - x0;
  const dy = y1 - y0;
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - x0) * dx + (p.y - y0) * dy) / length2));
  return Math.hypot(p.x - x0 - t * dx, p.y - y0 - t * dy) < SAME_POINT_MM;
}

function quads(segments: Float64Array): number[][] {
  const out: number[][] = [];
  for (let i = 0; i < segments.length; i += 4) out.push(Array.from(segments.subarray(i, i + 4)));
  return out;
}

const lengthOf = (segments: readonly number[][]): Mm =>
  segments.reduce((sum, s) => sum + Math.hypot(s[2] - s[0], s[3] - s[1]), 0);

function byPair(
  borders: readonly LaserBorder[],
): Map<string, { lasers: [number, number]; segments: number[][] }> {
  const pairs = new Map<string, { lasers: [number, number]; segments: number[][] }>();
  for (const border of borders) {
    const [a, b] = border.lasers;
    const lasers: [number, number] = a < b ? [a, b] : [b, a];
    const key = lasers.join();
    const pair = pairs.get(key) ?? { lasers, segments: [] };
    pair.segments.push(...quads(border.segments));
    pairs.set(key, pair);
  }
  return pairs;
}

/** The seams of one part from its borders between different lasers. */
export function seamsOf(borders: readonly LaserBorder[], section: Region): PartSeams {
  const seams: PartSeam[] = [];
  const witness: End[] = [];
  for (const { lasers, segments } of byPair(borders).values()) {
    for (const chain of connect(segments)) {
      const ends = openEnds(chain).filter((end) => onOutline(section, end));
      for (const end of ends) if (!witness.some((known) => near(known, end))) witness.push(end);
      seams.push({
        lasers,
        path: Float64Array.from(chain.segments.flat()),
        length_mm: lengthOf(chain.segments),
        witnessLines: ends.length,
      });
    }
  }
  return { seams, witnessLines: witness.length };
}
