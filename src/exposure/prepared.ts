/**
 * Shapes made ready once, parts set in their place once. A shape's sections are cleaned and its hatch areas inset once
 * per shape and inset, turned once per angle, and moved once per part; parts that did not change keep their objects,
 * which is what every cache further on goes by. Millimetres; shape coordinates before, platform coordinates after.
 */
import { clean, inset, unite } from '../geometry/clipper';
import { area, boxOf, components, outlineLength, turnAndMove } from '../geometry/region';
import { ringFromLayout } from '../geometry/ring';
import type { Box, Region } from '../geometry/types';
import type { Layout, Part, Shape } from '../layout/types';
import type { Degrees, Mm, Mm2 } from '../units/types';

/** A connected part of a section with the hatch area inside it. */
export interface Island {
  readonly section: Region;
  readonly hatch: Region;
  readonly area_mm2: Mm2;
  readonly hatch_mm2: Mm2;
  readonly outline_mm: Mm;
}
export interface PreparedSlab {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  readonly section: Region;
  readonly islands: readonly Island[];
  readonly area_mm2: Mm2;
}
export interface PreparedShape {
  readonly slabs: readonly PreparedSlab[];
  readonly height_mm: Mm;
  /** Union of all sections seen from above. */
  readonly footprint: Region;
  /** An outline crossed itself and was repaired by the even-odd rule. */
  readonly repaired: boolean;
}
export interface PlacedSlab {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  readonly area_mm2: Mm2;
  readonly box: Box;
  readonly section: Region;
  readonly islands: readonly Island[];
}
export interface PlacedPart {
  readonly part: Part;
  readonly height_mm: Mm;
  readonly slabs: readonly PlacedSlab[];
  readonly footprint: Region;
  readonly repaired: boolean;
}

/** Islands of a section, each with its own hatch area: an inset never joins islands. */
function prepareSection(section: Region, inset_mm: Mm): Island[] {
  return components(section).map((island) => {
    const hatch = inset_mm === 0 ? island : inset(island, inset_mm);
    return {
      section: island,
      hatch,
      area_mm2: area(island),
      hatch_mm2: area(hatch),
      outline_mm: outlineLength(island),
    };
  });
}

function prepareShape(shape: Shape, inset_mm: Mm): PreparedShape {
  let repaired = false;
  let from_mm = 0;
  const slabs = shape.slabs.map((slab): PreparedSlab => {
    const cleaned = clean(slab.rings.map(ringFromLayout), 'evenOdd');
    repaired ||= cleaned.repaired;
    const islands = prepareSection(cleaned.region, inset_mm);
    const prepared = {
      from_mm,
      to_mm: slab.to_mm,
      section: cleaned.region,
      islands,
      area_mm2: area(cleaned.region),
    };
    from_mm = slab.to_mm;
    return prepared;
  });
  const footprint = slabs.length === 1 ? slabs[0].section : unite(slabs.map((slab) => slab.section));
  return { slabs, height_mm: from_mm, footprint, repaired };
}

const shapes = new WeakMap<Shape, Map<Mm, PreparedShape>>();
/** Heights nearer than this are equal. */
const ROUNDING_MM = 1e-9;
const INSETS_KEPT = 4;
const TURNS_KEPT = 8;

function keep<K, V>(map: Map<K, V>, key: K, limit: number, make: () => V): V {
  let value = map.get(key);
  if (value !== undefined) return value;
  if (map.size >= limit) map.delete(map.keys().next().value as K);
  map.set(key, (value = make()));
  return value;
}

/** A shape's sections, hatch areas and footprint in its own coordinates. */
export function preparedShape(shape: Shape, inset_mm: Mm): PreparedShape {
  let byInset = shapes.get(shape);
  if (!byInset) shapes.set(shape, (byInset = new Map()));
  return keep(byInset, inset_mm, INSETS_KEPT, () => prepareShape(shape, inset_mm));
}

type Move = (region: Region) => Region;

function moveSlab(slab: PreparedSlab, move: Move): PreparedSlab {
  const islands = slab.islands.map((island) => {
    const section = move(island.section);
    return { ...island, section, hatch: island.hatch === island.section ? section : move(island.hatch) };
  });
  return { ...slab, islands, section: islands.flatMap((island) => [...island.section]) };
}

const moveShape = (shape: PreparedShape, move: Move): PreparedShape => ({
  ...shape,
  slabs: shape.slabs.map((slab) => moveSlab(slab, move)),
  footprint: move(shape.footprint),
});

const turned = new WeakMap<PreparedShape, Map<Degrees, PreparedShape>>();

function turnedShape(shape: PreparedShape, turn_deg: Degrees): PreparedShape {
  if (turn_deg === 0) return shape;
  let byTurn = turned.get(shape);
  if (!byTurn) turned.set(shape, (byTurn = new Map()));
  return keep(byTurn, turn_deg, TURNS_KEPT, () =>
    moveShape(shape, (region) => turnAndMove(region, turn_deg, 0, 0)),
  );
}

function placeSlab(slab: PreparedSlab, move: Move): PlacedSlab {
  const moved = moveSlab(slab, move);
  return { ...moved, box: boxOf(moved.section) };
}

function computePlaced(part: Part, shape: PreparedShape): PlacedPart {
  const [x, y] = part.at_mm;
  const move: Move = (region) => turnAndMove(region, 0, x, y);
  const local = turnedShape(shape, part.turn_deg);
  return {
    part,
    height_mm: shape.height_mm,
    slabs: local.slabs.map((slab) => placeSlab(slab, move)),
    footprint: local.slabs.length === 1 ? move(local.slabs[0].section) : move(local.footprint),
    repaired: shape.repaired,
  };
}

const placed = new WeakMap<Part, { shape: PreparedShape; placed: PlacedPart }>();

/** A part as it stands; the same part and shape objects give the same PlacedPart object. */
export function placedPart(layout: Layout, part: Part): PlacedPart {
  const shape = preparedShape(layout.shapes[part.shape], layout.process.hatchInset_mm);
  const known = placed.get(part);
  if (known && known.shape === shape) return known.placed;
  const fresh = computePlaced(part, shape);
  placed.set(part, { shape, placed: fresh });
  return fresh;
}

/** The slab cut at height z: a height exactly on a slab's top belongs to the upper one; null above the part. */
export function slabAt(part: PlacedPart, z_mm: Mm): PlacedSlab | null {
  return part.slabs.find((slab) => z_mm < slab.to_mm - ROUNDING_MM) ?? null;
}
