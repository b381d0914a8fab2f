/**
 * What the blade meets over the whole build: at which heights the met length, its steepest rise and the sides nearly
 * parallel to the blade are at their worst, and which parts make them. It goes range by range of layers in which nothing
 * changes, so that who runs it may pause, tell how far it is, or drop it. Millimetres; heights above the platform.
 */
import { placedPart } from '../exposure/prepared';
import type { Layout, PartId, ZoningStep } from '../layout/types';
import type { Degrees, Mm } from '../units/types';
import { contactOfSlabs, movedSweep, settingsOf, type BladeContact, type BladeSettings } from './blade';
import {
  metAt,
  NO_RISE,
  profileOf,
  sumOfSweeps,
  wayBack,
  type Largest,
  type MetProfile,
  type Rise,
} from './bladeProfile';
import { layerRanges, type LayerRange } from './layers';

/** From the bottom of the first to the top of the last layer. */
export interface Heights {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
}
/** A worst value, and the lowest heights at which it is met, layer by layer without a gap. */
export interface AtHeights<T> {
  readonly value: T;
  readonly heights: Heights;
}
export interface RiseOfPart {
  readonly rise: Rise;
  /** Index of the part that adds most to this rise; −1 where nothing rises. */
  readonly part: number;
  readonly part_mm: Mm;
}
export interface SidesTogether {
  readonly count: number;
  readonly length_mm: Mm;
  readonly parts: readonly PartId[];
}
export interface BladeBuild {
  readonly largest: AtHeights<Largest>;
  readonly steepest: AtHeights<RiseOfPart>;
  readonly sides: AtHeights<SidesTogether>;
}

/** Values nearer than this are equal. */
const EQUAL_MM: Mm = 1e-6;
/** Just this side of a jump. */
const ASIDE_MM: Mm = 1e-6;
/** Steps of the zoning change nothing for the blade. */
const ONE_STEP: readonly ZoningStep[] = [{ from_mm: 0, zoning: { strategy: 'wholeField' } }];

/** Keeps the worst of the values it is shown from the platform up, and the heights over which it goes on. */
class Worst<T> {
  private size: Mm = 0;
  private goesOn = false;
  private heights: Heights = { from_mm: 0, to_mm: 0 };
  constructor(private value: T) {}

  show(size: Mm, at: Heights, make: () => T): void {
    if (size > this.size + EQUAL_MM) {
      this.size = size;
      this.heights = at;
      this.value = make();
      this.goesOn = true;
      return;
    }
    this.goesOn = this.goesOn && size > this.size - EQUAL_MM;
    if (this.goesOn) this.heights = { from_mm: this.heights.from_mm, to_mm: at.to_mm };
  }
  get found(): AtHeights<T> {
    return { value: this.value, heights: this.heights };
  }
}

/** How much each part adds to a rise; the first of the parts that add most. */
export function mainPart(
  slabs: LayerRange['slabs'],
  rise: Rise,
  towards_deg: Degrees,
  settings: BladeSettings,
): RiseOfPart {
  const own = slabs.map((slab) => {
    if (!slab) return 0;
    const profile = profileOf(sumOfSweeps([movedSweep(slab, towards_deg, settings)]));
    if (!rise.back) return gain(profile, rise.from_mm, rise.to_mm);
    return gain(wayBack(profile), -rise.from_mm, -rise.to_mm);
  });
  const part_mm = Math.max(0, ...own);
  return { rise, part: part_mm > 0 ? own.indexOf(part_mm) : -1, part_mm };
}

/** L(to⁺) − L(from⁻) of one profile, at whichever side of a jump makes it larger. */
function gain(profile: MetProfile, from_mm: Mm, to_mm: Mm): Mm {
  const low = Math.min(metAt(profile, from_mm - ASIDE_MM), metAt(profile, from_mm));
  const high = Math.max(metAt(profile, to_mm - ASIDE_MM), metAt(profile, to_mm));
  return high - low;
}

function sidesTogether(layout: Layout, { sides, sides_mm }: BladeContact): SidesTogether {
  const parts = new Set(sides.map((side) => layout.parts[side.section].id));
  return { count: sides.length, length_mm: sides_mm, parts: [...parts] };
}

/** Yields how far it is, 0 to 1, after every range of layers. */
export function* bladeBuild(layout: Layout): Generator<number, BladeBuild> {
  const { towards_deg } = layout.machine.recoater;
  const settings = settingsOf(layout.machine.recoater);
  const t = layout.process.layer_mm;
  const placed = layout.parts.map((part) => placedPart(layout, part));
  const top_mm = placed.reduce((top, { height_mm }) => Math.max(top, height_mm), 0);
  const ranges = layerRanges(placed, ONE_STEP, t);
  const largest = new Worst<Largest>({ met_mm: 0, at_mm: 0 });
  const steepest = new Worst<RiseOfPart>({ rise: NO_RISE, part: -1, part_mm: 0 });
  const sides = new Worst<SidesTogether>({ count: 0, length_mm: 0, parts: [] });
  for (const [r, { firstLayer, lastLayer, slabs }] of ranges.entries()) {
    const at = { from_mm: (firstLayer - 1) * t, to_mm: Math.min(lastLayer * t, top_mm) };
    const met = contactOfSlabs(slabs, towards_deg, settings);
    largest.show(met.largest.met_mm, at, () => met.largest);
    steepest.show(met.steepest.rise_mm, at, () => mainPart(slabs, met.steepest, towards_deg, settings));
    sides.show(met.sides_mm, at, () => sidesTogether(layout, met));
    yield (r + 1) / ranges.length;
  }
  return { largest: largest.found, steepest: steepest.found, sides: sides.found };
}
