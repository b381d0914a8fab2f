/**
 * Section ∩ cells → fragments and borders. Cells made of lines are cut by half-planes, exactly and with
 * connectivity; other cells by the polygon engine. A box test first: most sections stand in one cell. The hatch area
 * is cut by the same cell and shared out among the fragments it lies in (an inset lies inside its section). Millimetres, platform coordinates.
 */
import { sharedBorder } from '../geometry/borders';
import { intersect } from '../geometry/clipper';
import { boxInConvex, planesOfBox } from '../geometry/convexArea';
import { clipToConvex, untagged } from '../geometry/halfPlane';
import { area, boxesMeet, boxOf, components } from '../geometry/region';
import { tagCutEdges } from '../geometry/tag';
import type { Box, Region, TaggedRegion } from '../geometry/types';
import type { Mm, Mm2 } from '../units/types';
import type { Cell, Division, LaserSet } from '../zoning/types';
import { fragmentsBySweep, type IslandFragments } from './bySweep';
import type { PlacedIsland, PlacedSlab } from './placed';
import { outlineOf, shareOut, taggedComponents } from './tagged';
import type { Border, BorderLine, DividedSection, Fragment } from './types';

/** Rounding of the polygon engine: smaller regions are neither fragments nor unassigned area. */
const DUST_MM2 = 1e-5;
/** The polygon engine moves an outline by up to half its unit of about 8e-6 mm: so much along an outline is not unassigned. */
const ROUNDING_MM = 4e-6;

/** A fragment that is a whole island. */
class WholeIsland implements Fragment {
  readonly between = null;
  private made: TaggedRegion | null = null;
  constructor(
    private readonly island: PlacedIsland,
    readonly set: LaserSet,
    readonly cell: number,
  ) {}
  get box(): Box {
    return this.island.box;
  }
  get area_mm2(): Mm2 {
    return this.island.measures.area_mm2;
  }
  get hatch_mm2(): Mm2 {
    return this.island.measures.hatch_mm2;
  }
  get outline_mm(): Mm {
    return this.island.measures.outline_mm;
  }
  get region(): TaggedRegion {
    return (this.made ??= untagged(this.island.section));
  }
  get hatch(): Region {
    return this.island.hatch;
  }
}

function clipToCell(region: Region, cell: Cell): Region {
  return cell.convex ? clipToConvex(untagged(region), cell.convex).rings : intersect(region, cell.region);
}

function sectionInCell(island: PlacedIsland, cell: Cell): TaggedRegion {
  if (cell.convex) return clipToConvex(untagged(island.section), cell.convex);
  return tagCutEdges(intersect(island.section, cell.region), island.section);
}

/** Hatch of each of a section's parts in one cell; without an inset the hatch of a part is the part. */
function hatchOfParts(island: PlacedIsland, cell: Cell, parts: readonly TaggedRegion[]): Region[] {
  if (island.hatch === island.section) return parts.map((part) => part.rings);
  // Parts of a cell that was united from several may touch, and hatch then runs from one into the other.
  if (parts.length > 1 && !cell.convex) return parts.map((part) => intersect(island.hatch, part.rings));
  const hatch = clipToCell(island.hatch, cell);
  if (parts.length === 1) return [hatch];
  return shareOut(components(hatch), parts).map((own) => own.flat());
}

function islandInCell(island: PlacedIsland, cell: Cell): Fragment[] {
  const clipped = sectionInCell(island, cell);
  if (clipped.rings.length === 0) return [];
  const parts = taggedComponents(clipped).filter((part) => area(part.rings) > DUST_MM2);
  const hatches = hatchOfParts(island, cell, parts);
  return parts.map((region, i) => ({
    set: cell.set,
    cell: cell.index,
    region,
    box: boxOf(region.rings),
    area_mm2: area(region.rings),
    hatch: hatches[i],
    hatch_mm2: area(hatches[i]),
    outline_mm: outlineOf(region),
    between: null,
  }));
}

/** Fragments and borders of one island; indices count within it. */
function divideIsland(island: PlacedIsland, cells: readonly Cell[]): IslandFragments {
  const { box } = island;
  const near = cells.filter((cell) => boxesMeet(cell.box, box));
  const home = near.find((cell) => cell.convex && boxInConvex(box, cell.convex) === 1);
  if (home) return { fragments: [new WholeIsland(island, home.set, home.index)], borders: [] };
  const sliced = fragmentsBySweep(island, near);
  if (sliced) return sliced;
  const fragments = near.flatMap((cell) => islandInCell(island, cell));
  // Fragments of one line-made cell lie apart; a cell united from several may leave a rounding error between its halves.
  const apart = new Set(near.filter((cell) => cell.convex).map((cell) => cell.index));
  const mayTouch = (a: number, b: number): boolean =>
    fragments[a].cell !== fragments[b].cell || !apart.has(fragments[a].cell);
  return { fragments, borders: bordersBetween(fragments, mayTouch) };
}

const TOUCH_MM = 1e-4;

/** Length of all segments x0, y0, x1, y1. */
function segmentsLength(segments: Float64Array): Mm {
  let sum = 0;
  for (let i = 0; i < segments.length; i += 4) {
    const dx = segments[i + 2] - segments[i];
    const dy = segments[i + 3] - segments[i + 1];
    sum += Math.sqrt(dx * dx + dy * dy);
  }
  return sum;
}

/** Borders between fragments a given pair test lets through. */
export function bordersBetween(
  fragments: readonly Pick<Fragment, 'region' | 'box'>[],
  mayTouch: (a: number, b: number) => boolean,
): Border[] {
  const borders: Border[] = [];
  for (let a = 0; a < fragments.length; a++) {
    for (let b = a + 1; b < fragments.length; b++) {
      if (!mayTouch(a, b) || !boxesMeet(fragments[a].box, fragments[b].box, TOUCH_MM)) continue;
      const segments = sharedBorder(fragments[a].region, fragments[b].region);
      if (segments.length === 0) continue;
      borders.push({ a, b, segments, length_mm: segmentsLength(segments), line: null });
    }
  }
  return borders;
}

class Divided implements DividedSection {
  kept: unknown = null;
  readonly area_mm2: Mm2;
  readonly unassigned_mm2: Mm2;
  constructor(
    private readonly slab: PlacedSlab,
    readonly cells: readonly Cell[],
    readonly fragments: readonly Fragment[],
    readonly borders: readonly Border[],
  ) {
    this.area_mm2 = slab.area_mm2;
    let missing = slab.area_mm2;
    for (const fragment of fragments) missing -= fragment.area_mm2;
    let outline_mm = 0;
    for (const island of slab.islands) outline_mm += island.measures.outline_mm;
    this.unassigned_mm2 = missing > DUST_MM2 + ROUNDING_MM * outline_mm ? missing : 0;
  }
  get section(): Region {
    return this.slab.section;
  }
}

function computeDivided(slab: PlacedSlab, cells: readonly Cell[]): Divided {
  if (slab.islands.length === 1) {
    const { fragments, borders } = divideIsland(slab.islands[0], cells);
    return new Divided(slab, cells, fragments, borders);
  }
  const fragments: Fragment[] = [];
  const borders: Border[] = [];
  for (const island of slab.islands) {
    const divided = divideIsland(island, cells);
    const first = fragments.length;
    fragments.push(...divided.fragments);
    for (const border of divided.borders) borders.push(new ShiftedBorder(border, first));
  }
  return new Divided(slab, cells, fragments, borders);
}

/** A border whose fragments count from further on. */
class ShiftedBorder implements Border {
  readonly a: number;
  readonly b: number;
  constructor(
    private readonly border: Border,
    by: number,
  ) {
    this.a = border.a + by;
    this.b = border.b + by;
  }
  get length_mm(): Mm {
    return this.border.length_mm;
  }
  get segments(): Float64Array {
    return this.border.segments;
  }
  get line(): BorderLine | null {
    return this.border.line;
  }
}

/** A slab that stands in several steps of the zoning is divided once for each. */
const DIVISIONS_KEPT = 3;
const NONE: readonly Divided[] = [];

/** A section divided by cells; the same slab and cell objects give the same DividedSection object. */
export function divideSection(slab: PlacedSlab, cells: readonly Cell[]): DividedSection {
  const known = (slab.kept ?? NONE) as readonly Divided[];
  const found = known.find((divided) => divided.cells === cells);
  if (found) return found;
  const divided = computeDivided(slab, cells);
  slab.kept = [divided, ...known.slice(0, DIVISIONS_KEPT - 1)];
  return divided;
}

const pinnedCells = new WeakMap<Division, Map<number, readonly Cell[]>>();

/** The cells of a part pinned to one laser: all that this laser reaches, none where it is off. */
export function cellsOfPinned(division: Division, laser: number): readonly Cell[] {
  let byLaser = pinnedCells.get(division);
  if (!byLaser) pinnedCells.set(division, (byLaser = new Map()));
  let cells = byLaser.get(laser);
  if (!cells) byLaser.set(laser, (cells = pinnedTo(division, laser)));
  return cells;
}

function pinnedTo(division: Division, laser: number): Cell[] {
  const set = division.on & (1 << laser);
  const region = division.reach[laser];
  if (set === 0 || region.length === 0) return [];
  const convex = region === division.platform ? planesOfBox(boxOf(region)) : null;
  return [{ index: -1, set, region, box: boxOf(region), convex }];
}
