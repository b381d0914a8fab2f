/**
 * Shapes made ready once, parts set in their place once. A shape's sections are cleaned and its hatch areas inset once
 * per shape and inset, and turned once per angle; a part is such a turned shape and an offset. Outlines are moved only
 * when somebody looks at them; parts that did not change keep their objects, which is what every cache further on
 * goes by. Millimetres; shape coordinates before, platform coordinates after.
 */
import { CHORD_ERROR_MM } from '../geometry/circle';
import { clean, inset } from '../geometry/clipper';
import { uniteNearlyAlike } from '../geometry/cover';
import { area, boxOf, components, outlineLength, turnAndMove } from '../geometry/region';
import { ringFromLayout } from '../geometry/ring';
import type { Box, Region } from '../geometry/types';
import type { Layout, Part, PartId, Shape, Slab } from '../layout/types';
import type { Degrees, Mm } from '../units/types';
import { Island, moved, PlacedSlab } from './placed';

/** One slab of a shape; cleaned and inset, or turned, when somebody first asks for more than its heights. */
class PreparedSlab {
  private made: Prepared | null = null;
  constructor(
    readonly from_mm: Mm,
    readonly to_mm: Mm,
    private readonly prepare: () => Prepared,
  ) {}
  private get own(): Prepared {
    return (this.made ??= this.prepare());
  }
  get islands(): readonly Island[] {
    return this.own.islands();
  }
  /** The cleaned section. */
  get region(): Region {
    return this.own.region;
  }
  get box(): Box {
    return this.own.box;
  }
  /** An outline crossed itself and was repaired by the even-odd rule. */
  get repaired(): boolean {
    return this.own.repaired;
  }
}
interface Prepared {
  readonly region: Region;
  /** Insets take most of the time: a slab that is only seen from above needs none. */
  readonly islands: () => readonly Island[];
  readonly box: Box;
  readonly repaired: boolean;
}
/** A shape in its own coordinates, turned or not. */
interface PreparedShape {
  readonly slabs: readonly PreparedSlab[];
  readonly height_mm: Mm;
  /** Union of all sections seen from above, within the chord error of circles. */
  readonly footprint: () => Region;
  /** An outline of one of its slabs was repaired; looks at all of them. */
  readonly repaired: () => boolean;
}
/** A part where it stands, in platform coordinates. */
export interface PlacedPart {
  readonly part: Part;
  readonly id: PartId;
  readonly height_mm: Mm;
  /** Sections by slab. */
  readonly sections: readonly PlacedSlab[];
  readonly footprint: Region;
  readonly repaired: boolean;
}

/** Islands of a section, each with its own hatch area: an inset never joins islands. */
function islandsOf(section: Region, inset_mm: Mm): Island[] {
  return components(section).map((island) => {
    const hatch = inset_mm === 0 ? island : inset(island, inset_mm);
    return new Island(island, hatch, {
      area_mm2: area(island),
      hatch_mm2: area(hatch),
      outline_mm: outlineLength(island),
    });
  });
}

function prepareSlab({ rings }: Slab, inset_mm: Mm): Prepared {
  const { region, repaired } = clean(rings.map(ringFromLayout), 'evenOdd');
  return { region, islands: once(() => islandsOf(region, inset_mm)), box: boxOf(region), repaired };
}

function prepareShape(shape: Shape, inset_mm: Mm): PreparedShape {
  const slabs = shape.slabs.map((slab, i) => {
    const from_mm = shape.slabs[i - 1]?.to_mm ?? 0;
    return new PreparedSlab(from_mm, slab.to_mm, () => prepareSlab(slab, inset_mm));
  });
  const united = (): Region =>
    uniteNearlyAlike(
      slabs.map(({ region }) => region),
      CHORD_ERROR_MM,
    );
  return {
    slabs,
    height_mm: slabs.at(-1)?.to_mm ?? 0,
    footprint: once(() => footprints.get(shape) ?? united()),
    repaired: once(() => slabs.some((slab) => slab.repaired)),
  };
}

/** Worked out on first use. */
function once<T>(make: () => T): () => T {
  let made: T | null = null;
  return () => (made ??= make());
}

const footprints = new WeakMap<Shape, Region>();

/** Footprint of a shape of its own: all its sections united. A shape of thousands of sections is better asked in a worker. */
export const footprintOf = (shape: Shape): Region => prepareShape(shape, 0).footprint();

/** Takes over a footprint that was worked out elsewhere, so that nobody has to unite the sections here. */
export const knowFootprint = (shape: Shape, footprint: Region): void => void footprints.set(shape, footprint);

const shapes = new WeakMap<Shape, Map<Mm, PreparedShape>>();
const INSETS_KEPT = 4;
const TURNS_KEPT = 64;

function keep<K, V>(map: Map<K, V>, key: K, limit: number, make: () => V): V {
  let value = map.get(key);
  if (value !== undefined) return value;
  if (map.size >= limit) map.delete(map.keys().next().value as K);
  map.set(key, (value = make()));
  return value;
}

/** A shape's sections, hatch areas and footprint in its own coordinates. */
function preparedShape(shape: Shape, inset_mm: Mm): PreparedShape {
  let byInset = shapes.get(shape);
  if (!byInset) shapes.set(shape, (byInset = new Map()));
  return keep(byInset, inset_mm, INSETS_KEPT, () => prepareShape(shape, inset_mm));
}

function turnShape(shape: PreparedShape, turn_deg: Degrees): PreparedShape {
  const turn = (region: Region): Region => turnAndMove(region, turn_deg, 0, 0);
  const turnSlab = (slab: PreparedSlab): Prepared => {
    const region = turn(slab.region);
    const islands = once(() => slab.islands.map((island) => island.turned(turn)));
    return { region, islands, box: boxOf(region), repaired: slab.repaired };
  };
  const slabs = shape.slabs.map((slab) => new PreparedSlab(slab.from_mm, slab.to_mm, () => turnSlab(slab)));
  return { ...shape, slabs, footprint: once(() => turn(shape.footprint())) };
}

const turned = new WeakMap<PreparedShape, Map<Degrees, PreparedShape>>();

function turnedShape(shape: PreparedShape, turn_deg: Degrees): PreparedShape {
  if (turn_deg === 0) return shape;
  let byTurn = turned.get(shape);
  if (!byTurn) turned.set(shape, (byTurn = new Map()));
  return keep(byTurn, turn_deg, TURNS_KEPT, () => turnShape(shape, turn_deg));
}

class Placed implements PlacedPart {
  readonly sections: readonly PlacedSlab[];
  private made: Region | null = null;
  constructor(
    readonly part: Part,
    private readonly local: PreparedShape,
  ) {
    const [x, y] = part.at_mm;
    this.sections = local.slabs.map((slab) => new PlacedSlab(slab, x, y));
  }
  get id(): PartId {
    return this.part.id;
  }
  get height_mm(): Mm {
    return this.local.height_mm;
  }
  get repaired(): boolean {
    return this.local.repaired();
  }
  get footprint(): Region {
    const [x, y] = this.part.at_mm;
    return (this.made ??= moved(this.local.footprint(), x, y));
  }
}

const placed = new WeakMap<Part, { shape: PreparedShape; placed: PlacedPart }>();

/** A part as it stands; the same part and shape objects give the same PlacedPart object. */
export function placedPart(layout: Layout, part: Part): PlacedPart {
  const shape = preparedShape(layout.shapes[part.shape], layout.process.hatchInset_mm);
  const known = placed.get(part);
  if (known && known.shape === shape) return known.placed;
  const fresh = new Placed(part, turnedShape(shape, part.turn_deg));
  placed.set(part, { shape, placed: fresh });
  return fresh;
}
