/**
 * How one part stands to the blade over its whole height, and what turning it would change. A part turned by d about
 * itself meets the blade as the part unturned meets a blade turned by −d. Millimetres; degrees counter-clockwise.
 * Turns are tried in steps of 5° (common practice, no source), small ones first.
 */
import type { PlacedSlab } from '../exposure/placed';
import type { PlacedPart } from '../exposure/prepared';
import { cosSin } from '../geometry/region';
import type { Region } from '../geometry/types';
import type { Recoater } from '../layout/types';
import type { Degrees, Mm } from '../units/types';
import { riseOf, settingsOf, slabContact } from './blade';
import { sweepOf } from './bladeProfile';
import { sidesMet, type Side, type SideRule } from './bladeSides';
import { lastLayerBelow } from './layers';

const STEP_DEG: Degrees = 5;
/** A turn that gains less than this is not worth naming. */
const LEAST_GAIN_MM: Mm = 0.1;

interface Blade {
  readonly recoater: Recoater;
  readonly layer_mm: Mm;
}
export interface TurnAdvice {
  readonly turn_deg: Degrees;
  /** The part's own steepest rise over its height, as it stands and after the turn. */
  readonly now_mm: Mm;
  readonly then_mm: Mm;
}
export interface LongSide {
  readonly side: Side;
  readonly from_mm: Mm;
  readonly to_mm: Mm;
}

/** Slabs that the middle of some layer cuts. */
const builtSlabs = ({ sections }: PlacedPart, layer_mm: Mm): PlacedSlab[] =>
  sections.filter((slab) => lastLayerBelow(slab.to_mm, layer_mm) > lastLayerBelow(slab.from_mm, layer_mm));

/** The steepest rise that the part makes by itself. */
const ownRise = (part: PlacedPart, { recoater, layer_mm }: Blade): Mm =>
  builtSlabs(part, layer_mm).reduce(
    (worst, slab) => Math.max(worst, slabContact(slab, recoater.towards_deg, settingsOf(recoater)).rise_mm),
    0,
  );

/** Turns by size: 5, −5, 10, −10 … 180. */
const TURNS: readonly Degrees[] = Array.from({ length: 360 / STEP_DEG - 1 }, (_, i) => {
  const size = STEP_DEG * (1 + (i >> 1));
  return i % 2 === 0 ? size : -size;
});

const ownSection = ({ islands }: PlacedSlab): Region => islands.flatMap(({ local }) => [...local.section]);

/** Slabs looked at between two pauses. */
const SLABS_A_STEP = 64;

/**
 * The turn that lowers the part's own steepest rise the most, the smallest of nearly equal ones; null where none lowers
 * it by 0.1 mm. Pauses now and then, so that who runs it may stay answerable. The slab that ruled out the last turn is
 * looked at first for the next: most turns are out at once.
 */
export function* findTurn(
  part: PlacedPart,
  { recoater, layer_mm }: Blade,
): Generator<undefined, TurnAdvice | null> {
  const settings = settingsOf(recoater);
  const now_mm = ownRise(part, { recoater, layer_mm });
  const regions = coarseToFine(builtSlabs(part, layer_mm)).map(ownSection);
  let best: TurnAdvice | null = null;
  for (const turn_deg of TURNS) {
    const limit = (best?.then_mm ?? now_mm) - LEAST_GAIN_MM;
    const [ux, uy] = cosSin(recoater.towards_deg - turn_deg);
    let then_mm = 0;
    for (let i = 0; i < regions.length && then_mm <= limit; i++) {
      then_mm = Math.max(then_mm, riseOf(sweepOf(regions[i], ux, uy), settings));
      if (then_mm > limit) regions.unshift(...regions.splice(i, 1));
      if (i % SLABS_A_STEP === SLABS_A_STEP - 1) yield;
    }
    if (then_mm <= limit) best = { turn_deg, now_mm, then_mm };
    yield;
  }
  return best;
}

/** Neighbouring slabs are alike: every 64th first, then those between. */
const coarseToFine = <T>(slabs: readonly T[]): T[] =>
  Array.from({ length: SLABS_A_STEP }, (_, offset) =>
    slabs.filter((__, i) => i % SLABS_A_STEP === offset),
  ).flat();

/** The longest side nearly parallel to the blade that a part shows it, over `least_mm`; null where there is none. */
export function longestSide(part: PlacedPart, { recoater, layer_mm }: Blade, least_mm: Mm): LongSide | null {
  let longest: LongSide | null = null;
  for (const slab of builtSlabs(part, layer_mm))
    for (const side of slabContact(slab, recoater.towards_deg, settingsOf(recoater)).sides)
      if (side.length_mm > (longest?.side.length_mm ?? least_mm))
        longest = { side, from_mm: slab.from_mm, to_mm: slab.to_mm };
  return longest;
}

/** The smallest turn after which no side over `least_mm` is nearly parallel to the blade; null where there is none. */
export function turnWithoutSides(
  part: PlacedPart,
  { recoater, layer_mm }: Blade,
  least_mm: Mm,
): Degrees | null {
  const { side_deg, bothWays } = settingsOf(recoater);
  const rule: SideRule = { most_deg: side_deg, least_mm, bothWays };
  const regions = builtSlabs(part, layer_mm).map(ownSection);
  const clear = (turn_deg: Degrees): boolean => {
    const [ux, uy] = cosSin(recoater.towards_deg - turn_deg);
    return regions.every((region) =>
      sidesMet(region, ux, uy, rule).every((side) => side.length_mm <= least_mm),
    );
  };
  return TURNS.find(clear) ?? null;
}
