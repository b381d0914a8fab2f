/**
 * Strategy → zones → cells. A cell is a region of the platform that the same set of lasers may expose: lasers whose
 * zone holds it, that are on, and that reach it. Zones end at the platform. What no laser may expose is in no cell;
 * neighbours never grow by themselves. Millimetres, platform coordinates.
 */
import { clipToConvex, planesOfBox, untagged } from '../geometry/halfPlane';
import { clean, intersect, subtract, unite } from '../geometry/clipper';
import { area, boxOf } from '../geometry/region';
import { ringFromLayout } from '../geometry/ring';
import type { HalfPlane, Region } from '../geometry/types';
import type { LayoutRing, Machine, Zoning, ZoningStep } from '../layout/types';
import { has, lasersOn, membersOf, setOf } from './lasers';
import { stripPlanes, zoneLines, above, below } from './lines';
import type { Cell, Division, LaserSet, Zone } from './types';

/** Below this a region is rounding of the polygon engine, not a cell. */
const DUST_MM2 = 1e-4;

interface DraftZone extends Zone {
  readonly planes: readonly HalfPlane[] | null;
}
interface DraftCell {
  readonly set: LaserSet;
  readonly region: Region;
  readonly convex: readonly HalfPlane[] | null;
}

const regionOf = (rings: readonly LayoutRing[]): Region => clean(rings.map(ringFromLayout), 'evenOdd').region;

/** The platform as a rectangle about the origin. */
const platformRegion = (machine: Machine): Region => {
  const w = machine.platform.width_mm / 2;
  const d = machine.platform.depth_mm / 2;
  return [Float64Array.of(-w, -d, w, -d, w, d, -w, d)];
};

const clipPlatform = (platform: Region, planes: readonly HalfPlane[]): Region =>
  planes.length === 0 ? platform : clipToConvex(untagged(platform), planes).rings;

/** Zones of a strategy made of lines, with their half-planes. */
function lineZones(machine: Machine, zoning: Zoning, platform: Region): DraftZone[] {
  const make = (lasers: LaserSet, planes: HalfPlane[]): DraftZone => ({
    lasers,
    planes,
    region: clipPlatform(platform, planes),
  });
  if (zoning.strategy === 'quadrants') {
    const [x, y] = zoning.at_mm;
    const half = zoning.sharedBand_mm / 2;
    return zoning.lasers.map((id, index) =>
      make(setOf(machine, [id]), [
        index % 2 === 0 ? below(1, 0, x + half) : above(1, 0, x - half),
        index < 2 ? below(0, 1, y + half) : above(0, 1, y - half),
      ]),
    );
  }
  if (zoning.strategy === 'strips') {
    return zoning.lasers.map((id, index) => make(setOf(machine, [id]), stripPlanes(zoning, index)));
  }
  return machine.lasers.map((laser) => make(setOf(machine, [laser.id]), []));
}

/** A point well inside a convex region: the mean of its vertices. */
function middleOf(region: Region): readonly [number, number] {
  const ring = region[0];
  let x = 0;
  let y = 0;
  for (let i = 0; i < ring.length; i += 2) {
    x += ring[i];
    y += ring[i + 1];
  }
  const n = ring.length / 2;
  return [x / n, y / n];
}

const insideAll = (planes: readonly HalfPlane[], x: number, y: number): boolean =>
  planes.every((h) => h.nx * x + h.ny * y <= h.c);

/** Positions along one normal where the set of zones can change: every line ± half the band, ascending. */
function breaksAlong(lines: readonly number[], half: number): number[] {
  const all = lines.flatMap((c) => [c - half, c + half]).sort((a, b) => a - b);
  return all.filter((c, i) => i === 0 || c > all[i - 1]);
}

const intervalPlanes = (nx: number, ny: number, breaks: readonly number[]): HalfPlane[][] =>
  Array.from({ length: breaks.length + 1 }, (_, i) => [
    ...(i > 0 ? [above(nx, ny, breaks[i - 1])] : []),
    ...(i < breaks.length ? [below(nx, ny, breaks[i])] : []),
  ]);

/** All intervals of the strategy's normals, multiplied: the arrangement of its lines. */
function arrangement(zoning: Zoning): HalfPlane[][] {
  if (zoning.strategy === 'wholeField' || zoning.strategy === 'drawn') return [[]];
  const half = zoning.sharedBand_mm / 2;
  const lines = zoneLines(zoning);
  const normals = zoning.strategy === 'strips' ? [lines] : lines.map((line) => [line]);
  return normals.reduce<HalfPlane[][]>(
    (cells, along) => {
      const { nx, ny } = along[0];
      const intervals = intervalPlanes(
        nx,
        ny,
        breaksAlong(
          along.map((line) => line.c),
          half,
        ),
      );
      return cells.flatMap((cell) => intervals.map((interval) => [...cell, ...interval]));
    },
    [[]],
  );
}

/** Cells of a strategy made of lines: convex, each with the lasers whose zone holds its middle. */
function lineCells(zoning: Zoning, zones: readonly DraftZone[], platform: Region): DraftCell[] {
  const edge = planesOfBox(boxOf(platform));
  const cells: DraftCell[] = [];
  for (const planes of arrangement(zoning)) {
    const region = clipPlatform(platform, planes);
    if (area(region) <= DUST_MM2) continue;
    const [x, y] = middleOf(region);
    let set = 0;
    for (const zone of zones) if (insideAll(zone.planes!, x, y)) set |= zone.lasers;
    cells.push({ set, region, convex: [...planes, ...edge] });
  }
  return cells;
}

/** Splits every cell by a region: inside it `within` decides the set, outside `without`. */
function refine(
  cells: readonly DraftCell[],
  by: Region,
  within: (set: LaserSet) => LaserSet,
  without: (set: LaserSet) => LaserSet,
): DraftCell[] {
  return cells.flatMap((cell) => {
    if (within(cell.set) === without(cell.set)) return [{ ...cell, set: within(cell.set) }];
    const outside = subtract(cell.region, by);
    if (area(outside) <= DUST_MM2) return [{ ...cell, set: within(cell.set) }];
    const inside = intersect(cell.region, by);
    if (area(inside) <= DUST_MM2) return [{ ...cell, set: without(cell.set) }];
    return [
      { set: within(cell.set), region: inside, convex: null },
      { set: without(cell.set), region: outside, convex: null },
    ];
  });
}

function drawnCells(zones: readonly Zone[], platform: Region): DraftCell[] {
  let cells: DraftCell[] = [{ set: 0, region: platform, convex: planesOfBox(boxOf(platform)) }];
  for (const zone of zones) {
    cells = refine(
      cells,
      zone.region,
      (set) => set | zone.lasers,
      (set) => set,
    );
  }
  return cells;
}

/** Cells of one set that are not convex become one cell. */
function mergeBySet(cells: readonly DraftCell[]): DraftCell[] {
  const loose = new Map<LaserSet, Region[]>();
  for (const cell of cells)
    if (!cell.convex) loose.set(cell.set, [...(loose.get(cell.set) ?? []), cell.region]);
  const merged = [...loose].map(([set, regions]) => ({
    set,
    region: regions.length === 1 ? regions[0] : unite(regions),
    convex: null,
  }));
  return [...cells.filter((cell) => cell.convex), ...merged];
}

function reachOf(machine: Machine, platform: Region): Region[] {
  return machine.lasers.map((laser) =>
    laser.reach ? intersect(platform, regionOf([laser.reach])) : platform,
  );
}

function ownRegions(machine: Machine, cells: readonly Cell[]): Region[] {
  return machine.lasers.map((_, index) => {
    const mine = cells.filter((cell) => has(cell.set, index)).map((cell) => cell.region);
    return mine.length <= 1 ? (mine[0] ?? []) : unite(mine);
  });
}

function draftCells(
  machine: Machine,
  zoning: Zoning,
  platform: Region,
): { zones: Zone[]; cells: DraftCell[] } {
  if (zoning.strategy !== 'drawn') {
    const zones = lineZones(machine, zoning, platform);
    return { zones, cells: lineCells(zoning, zones, platform) };
  }
  const zones = zoning.zones.map((zone) => ({
    lasers: setOf(machine, zone.lasers),
    region: intersect(platform, regionOf(zone.rings)),
  }));
  return { zones, cells: drawnCells(zones, platform) };
}

/**
 * The division of a machine's platform under a zoning; its cells count from `firstCell`. Pure; `divide` below
 * remembers it.
 */
function computeDivision(machine: Machine, zoning: Zoning, firstCell = 0): Division {
  const platform = platformRegion(machine);
  const on = lasersOn(machine);
  const reach = reachOf(machine, platform);
  const draft = draftCells(machine, zoning, platform);
  let cells = draft.cells.map((cell) => ({ ...cell, set: cell.set & on }));
  for (const laser of membersOf(on)) {
    if (!machine.lasers[laser].reach) continue;
    cells = refine(
      cells,
      reach[laser],
      (set) => set,
      (set) => set & ~(1 << laser),
    );
  }
  const final: Cell[] = mergeBySet(cells)
    .filter((cell) => cell.set !== 0)
    .map((cell, index) => ({ ...cell, index: firstCell + index, box: boxOf(cell.region) }));
  return {
    laserIds: machine.lasers.map((laser) => laser.id),
    platform,
    on,
    zones: draft.zones.map(({ lasers, region }) => ({ lasers, region })),
    cells: final,
    lines: zoneLines(zoning),
    sharedBand_mm: 'sharedBand_mm' in zoning ? zoning.sharedBand_mm : 0,
    reach,
    own: ownRegions(machine, final),
  };
}

const remembered = new WeakMap<Machine, WeakMap<Zoning, Map<number, Division>>>();
const CELLS_PER_STEP = 1 << 16;

/** As computeDivision; the same machine and zoning objects give the same Division object. */
export function divide(machine: Machine, zoning: Zoning, firstCell = 0): Division {
  let perZoning = remembered.get(machine);
  if (!perZoning) remembered.set(machine, (perZoning = new WeakMap()));
  let perNumber = perZoning.get(zoning);
  if (!perNumber) perZoning.set(zoning, (perNumber = new Map()));
  let division = perNumber.get(firstCell);
  if (!division) perNumber.set(firstCell, (division = computeDivision(machine, zoning, firstCell)));
  return division;
}

/** The divisions over height, one per step; no two cells of a layout have the same number. */
export const divideSteps = (machine: Machine, steps: readonly ZoningStep[]): Division[] =>
  steps.map(({ zoning }, step) => divide(machine, zoning, step * CELLS_PER_STEP));
