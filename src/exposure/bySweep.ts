/**
 * Fragments by figures alone: an island that only parallel lines cross falls into slices, whose areas, outlines and
 * borders follow from the island's sweep profile. That holds where every slice is connected: one line that leaves two
 * pieces, or several lines of which each meets the island in a single chord. Vertices on a line are left to the
 * polygons, since there it matters which side an edge belongs to. Millimetres, platform coordinates.
 */
import { chords } from '../geometry/chords';
import { highest } from '../geometry/convexArea';
import { clipToConvex, untagged } from '../geometry/halfPlane';
import { crossingsOf, cutsInTwo } from '../geometry/halves';
import type { SweepProfile } from '../geometry/profile';
import { boxOverlap } from '../geometry/region';
import type { Box, HalfPlane, Region, TaggedRegion } from '../geometry/types';
import type { Mm } from '../units/types';
import type { Cell } from '../zoning/types';
import type { IslandSweep, PlacedIsland } from './placed';
import type { Between, Border, BorderLine, Fragment } from './types';

interface Slice {
  readonly cell: Cell;
  readonly from: Mm;
  readonly to: Mm;
}
interface Slicing {
  readonly nx: number;
  readonly ny: number;
  readonly slices: readonly Slice[];
}

/** Same direction or opposite: 1 or −1; 0 where the lines are not parallel. */
const sense = (a: HalfPlane, nx: number, ny: number): number =>
  a.nx === nx && a.ny === ny ? 1 : a.nx === -nx && a.ny === -ny ? -1 : 0;

/** The slices in which cells meet an island's box; null where lines of more than one direction cross it. */
function slicingOf(box: Box, cells: readonly Cell[]): Slicing | null {
  let nx = 0;
  let ny = 0;
  const slices: Slice[] = [];
  for (const cell of cells) {
    if (!cell.convex) return null;
    let from = -Infinity;
    let to = Infinity;
    for (const h of cell.convex) {
      if (highest(box, h) <= 0) continue;
      if (nx === 0 && ny === 0)
        [nx, ny] = h.nx > 0 || (h.nx === 0 && h.ny > 0) ? [h.nx, h.ny] : [-h.nx, -h.ny];
      const way = sense(h, nx, ny);
      if (way === 0) return null;
      if (way > 0) to = Math.min(to, h.c);
      else from = Math.max(from, -h.c);
    }
    slices.push({ cell, from, to });
  }
  return { nx, ny, slices: slices.sort((a, b) => a.from - b.from) };
}

const ON_LINE_MM = 1e-6;

/** True where a vertex of the island lies on the line. */
function meetsVertex(profile: SweepProfile, c: Mm): boolean {
  const { levels } = profile;
  let low = 0;
  let high = levels.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (levels[middle] < c - ON_LINE_MM) low = middle + 1;
    else high = middle;
  }
  return low < levels.length && levels[low] <= c + ON_LINE_MM;
}

/** True where lines at these places, in the island's own coordinates, leave every slice connected. */
function slicesConnected(island: PlacedIsland, sweep: IslandSweep, places: readonly Mm[]): boolean {
  const { section } = island.local;
  for (const c of places) if (meetsVertex(sweep.section, c)) return false;
  if (sweep.hatch) for (const c of places) if (meetsVertex(sweep.hatch, c)) return false;
  const line = (c: Mm): HalfPlane => ({ nx: sweep.nx, ny: sweep.ny, c });
  if (places.length === 1) return cutsInTwo(section, line(places[0]));
  return places.every((c) => crossingsOf(section, line(c)) === 2);
}

/** One slice as a fragment; outlines are cut when somebody looks. */
class SliceFragment implements Fragment {
  readonly set: number;
  readonly cell: number;
  readonly box: Box;
  readonly area_mm2: number;
  readonly hatch_mm2: number;
  readonly outline_mm: number;
  readonly between: Between;
  private regionMade: TaggedRegion | null = null;
  private hatchMade: Region | null = null;

  constructor(
    private readonly home: Cell,
    island: PlacedIsland,
    sweep: IslandSweep,
    from: Mm,
    to: Mm,
  ) {
    const offset = sweep.nx * island.x + sweep.ny * island.y;
    // Past the island's own ends, so that rounding loses no edge that lies there.
    const low = from - offset <= sweep.section.min + ON_LINE_MM ? -Infinity : from - offset;
    const high = to - offset >= sweep.section.max - ON_LINE_MM ? Infinity : to - offset;
    const within = (f: (c: Mm) => number): number => f(high) - f(low);
    this.set = home.set;
    this.cell = home.index;
    this.box = boxOverlap(island.box, home.box);
    this.area_mm2 = within((c) => sweep.section.area(c));
    this.outline_mm = within((c) => sweep.section.outline(c));
    this.hatch_mm2 = sweep.hatch ? within((c) => sweep.hatch!.area(c)) : 0;
    this.between = { island, sweep, offset, low, high };
  }
  get region(): TaggedRegion {
    return (this.regionMade ??= clipToConvex(untagged(this.between.island.section), this.home.convex!));
  }
  get hatch(): Region {
    if (this.between.island.hatch === this.between.island.section) return this.region.rings;
    return (this.hatchMade ??= clipToConvex(untagged(this.between.island.hatch), this.home.convex!).rings);
  }
}

/** The border along one line; its segments are the chords of the island. */
class LineBorder implements Border {
  private made: Float64Array | null = null;
  constructor(
    readonly a: number,
    readonly b: number,
    readonly length_mm: Mm,
    readonly line: BorderLine,
    private readonly island: PlacedIsland,
  ) {}
  get segments(): Float64Array {
    return (this.made ??= segmentsOn(this.line, chords(this.island.section, this.line)));
  }
}

/** Intervals along a line as segments x0, y0, x1, y1. */
function segmentsOn({ nx, ny, c }: BorderLine, ends: Float64Array): Float64Array {
  const segments = new Float64Array(ends.length * 2);
  for (let i = 0; i < ends.length; i++) {
    segments[2 * i] = c * nx - ends[i] * ny;
    segments[2 * i + 1] = c * ny + ends[i] * nx;
  }
  return segments;
}

/** What the division makes of one island. */
export interface IslandFragments {
  readonly fragments: readonly Fragment[];
  /** Indices count within this island. */
  readonly borders: readonly Border[];
}

/** The fragments of an island that only parallel lines cross; null where polygons have to tell. */
export function fragmentsBySweep(island: PlacedIsland, cells: readonly Cell[]): IslandFragments | null {
  const slicing = slicingOf(island.box, cells);
  if (!slicing || (slicing.nx === 0 && slicing.ny === 0)) return null;
  const { nx, ny } = slicing;
  const sweep = island.local.sweep(nx, ny);
  const offset = nx * island.x + ny * island.y;
  const min = sweep.section.min + offset;
  const max = sweep.section.max + offset;
  const slices = slicing.slices.filter(({ from, to }) => from < max && to > min && from < to);
  const inside = (c: Mm): boolean => c > min && c < max;
  const places = [...new Set(slices.flatMap(({ from, to }) => [from, to]).filter(inside))];
  if (
    !slicesConnected(
      island,
      sweep,
      places.map((c) => c - offset),
    )
  )
    return null;
  const fragments = slices.map(({ cell, from, to }) => new SliceFragment(cell, island, sweep, from, to));
  const borders: Border[] = [];
  for (let i = 0; i + 1 < slices.length; i++) {
    const c = slices[i].to;
    if (c !== slices[i + 1].from) continue;
    borders.push(new LineBorder(i, i + 1, sweep.section.chord(c - offset), { nx, ny, c }, island));
  }
  return { fragments, borders };
}
