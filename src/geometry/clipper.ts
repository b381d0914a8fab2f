/**
 * Union, intersection, difference, repair and insets by clipper-lib. Millimetres, mm². Every call centres its input and
 * scales it by a power of two so that the half-width stays within 4e7 (beyond that clipper-lib leaves plain doubles and
 * is several times slower); on a 400 mm platform one unit is 8e-6 mm. Vertices that come back unmoved get their given
 * coordinates bit for bit. ctXor is never used: its rings come back with mixed orientation.
 */
import ClipperLib from 'clipper-lib';
import type { Path, Paths } from 'clipper-lib';
import type { Mm, Mm2 } from '../units/types';
import { checkOutlines } from './outlines';
import { mergeShortEdges } from './mergeEdges';
import { area, boxOfRings } from './region';
import { nested, type Fill } from './nesting';
import { signedArea } from './ring';
import type { Region, Ring } from './types';

export type { Fill } from './nesting';

const FILLS: Readonly<Record<Fill, ClipperLib.PolyFillType>> = {
  evenOdd: ClipperLib.PolyFillType.pftEvenOdd,
  nonZero: ClipperLib.PolyFillType.pftNonZero,
  positive: ClipperLib.PolyFillType.pftPositive,
  negative: ClipperLib.PolyFillType.pftNegative,
};

const HALF_WIDTH = 4e7;
/** Steps of a round join stay this near to the true arc. */
const ARC_ERROR_MM = 1e-4;
const ARC_ERROR_SHARE = 1e-5;
/** Share of the box's area by which two ways to measure a touching outline may differ. */
const TOUCH_SHARE = 1e-7;

interface Frame {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

const SIDE = 2 * HALF_WIDTH + 1;
const keyOf = (x: number, y: number): number => (x + HALF_WIDTH) * SIDE + (y + HALF_WIDTH);

function frameFor(rings: readonly Ring[], grown: Mm): Frame {
  const box = boxOfRings(rings);
  const half = Math.max(box.maxX - box.minX, box.maxY - box.minY) / 2 + grown;
  const scale = half > 0 ? 2 ** Math.floor(Math.log2((HALF_WIDTH - 2) / half)) : 1;
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2, scale };
}

/** Rings to clipper's integers and back; remembers which integer point stands for which given point. */
class Converter {
  private readonly given = new Map<number, number>();
  private readonly points: number[] = [];

  constructor(private readonly frame: Frame) {}

  toPath(ring: Ring): Path {
    const { x, y, scale } = this.frame;
    const path: Path = [];
    for (let i = 0; i < ring.length; i += 2) {
      const X = Math.round((ring[i] - x) * scale);
      const Y = Math.round((ring[i + 1] - y) * scale);
      path.push({ X, Y });
      const key = keyOf(X, Y);
      if (!this.given.has(key)) {
        this.given.set(key, this.points.length);
        this.points.push(ring[i], ring[i + 1]);
      }
    }
    return path;
  }

  toRegion(paths: Paths): Region {
    const rings: Ring[] = [];
    for (const path of paths) {
      const ring = this.toRing(path);
      if (signedArea(ring) !== 0) rings.push(ring);
    }
    return rings;
  }

  private toRing(path: Path): Ring {
    const { x, y, scale } = this.frame;
    const ring = new Float64Array(2 * path.length);
    path.forEach(({ X, Y }, i) => {
      const known = this.given.get(keyOf(X, Y));
      ring[2 * i] = known === undefined ? X / scale + x : this.points[known];
      ring[2 * i + 1] = known === undefined ? Y / scale + y : this.points[known + 1];
    });
    return ring;
  }
}

function run(type: ClipperLib.ClipType, a: readonly Ring[], b: readonly Ring[], fill: Fill): Region {
  if (a.length + b.length === 0) return [];
  const converter = new Converter(frameFor([...a, ...b], 0));
  const clipper = new ClipperLib.Clipper();
  for (const ring of a) clipper.AddPath(converter.toPath(ring), ClipperLib.PolyType.ptSubject, true);
  for (const ring of b) clipper.AddPath(converter.toPath(ring), ClipperLib.PolyType.ptClip, true);
  const filling = FILLS[fill];
  const solution: Paths = [];
  clipper.Execute(type, solution, filling, filling);
  return converter.toRegion(solution);
}

/**
 * Any rings → a clean region by a fill rule. `repaired` is true where an outline crossed or overlapped itself or
 * another; otherwise the given vertices are kept bit for bit and only the sense of turning is set.
 */
export function clean(rings: readonly Ring[], fill: Fill): { region: Region; repaired: boolean } {
  const sound = rings.filter((ring) => ring.length >= 6);
  if (sound.length === 0) return { region: [], repaired: rings.length > 0 };
  const state = checkOutlines(sound);
  if (state === 'apart') return { region: nested(sound, fill), repaired: sound.length < rings.length };
  // The second pass joins rings that the first left side by side along a common edge.
  const united = unite([run(ClipperLib.ClipType.ctUnion, sound, [], fill)]);
  if (state === 'touching') {
    const kept = nested(sound, fill);
    if (Math.abs(area(kept) - area(united)) <= TOUCH_SHARE * boxArea(sound))
      return { region: kept, repaired: sound.length < rings.length };
  }
  return { region: united, repaired: true };
}

function boxArea(rings: readonly Ring[]): Mm2 {
  const box = boxOfRings(rings);
  return (box.maxX - box.minX) * (box.maxY - box.minY);
}

/** Everything that lies in at least one of the regions. */
export function unite(regions: readonly Region[]): Region {
  return run(ClipperLib.ClipType.ctUnion, regions.flat(), [], 'nonZero');
}

/** What lies in both regions. */
export function intersect(a: Region, b: Region): Region {
  if (a.length === 0 || b.length === 0) return [];
  return run(ClipperLib.ClipType.ctIntersection, a, b, 'nonZero');
}

/** What lies in the first region and not in the second. */
export function subtract(a: Region, b: Region): Region {
  if (a.length === 0 || b.length === 0) return a;
  return run(ClipperLib.ClipType.ctDifference, a, b, 'nonZero');
}

function offset(region: Region, by: Mm): Region {
  if (region.length === 0 || by === 0) return region;
  const frame = frameFor(region, Math.max(by, 0));
  const converter = new Converter(frame);
  const size = Math.abs(by);
  const arcError = Math.max(ARC_ERROR_SHARE * size, Math.min(ARC_ERROR_MM, size / 10)) * frame.scale;
  const offsetter = new ClipperLib.ClipperOffset(2, arcError);
  for (const ring of region)
    offsetter.AddPath(
      converter.toPath(ring),
      ClipperLib.JoinType.jtRound,
      ClipperLib.EndType.etClosedPolygon,
    );
  const solution: Paths = [];
  offsetter.Execute(solution, by * frame.scale);
  return converter.toRegion(solution).map(mergeShortEdges);
}

/** The region shrunk by d ≥ 0: points at least d from the outline; round at reflex corners. */
export const inset = (region: Region, d: Mm): Region => offset(region, -d);

/** The region grown by d ≥ 0: points at most d away; round at convex corners. */
export const outset = (region: Region, d: Mm): Region => offset(region, d);
