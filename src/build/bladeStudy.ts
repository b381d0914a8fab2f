/**
 * What a screen tells of the blade: the layer that is looked at, and, in steps that may be paused or dropped, the worst
 * of the whole build, the turn that would help the part which rises most steeply, and the long sides along the blade.
 * Millimetres, degrees.
 */
import { placedPart } from '../exposure/prepared';
import type { Layout, ZoningStep } from '../layout/types';
import { contactOfSlabs, settingsOf, type BladeContact } from './blade';
import { bladeBuild, mainPart, type BladeBuild, type RiseOfPart } from './bladeBuild';
import { bladeProblems } from './bladeProblems';
import { findTurn, type TurnAdvice } from './bladeTurn';
import { layerCount, rangeAt } from './layers';
import type { Problem } from './types';

export interface BladeAt {
  readonly contact: BladeContact;
  readonly steepest: RiseOfPart;
}
export interface BladeStudy {
  readonly build: BladeBuild;
  /** For the part that adds most to the build's steepest rise; null where no turn helps it. */
  readonly advice: TurnAdvice | null;
  readonly sides: readonly Problem[];
}

const ONE_STEP: readonly ZoningStep[] = [{ from_mm: 0, zoning: { strategy: 'wholeField' } }];

/** What the blade meets in one layer; null outside the build. */
export function bladeAt(layout: Layout, layer: number): BladeAt | null {
  const { recoater } = layout.machine;
  const t = layout.process.layer_mm;
  const placed = layout.parts.map((part) => placedPart(layout, part));
  const top_mm = placed.reduce((top, { height_mm }) => Math.max(top, height_mm), 0);
  if (!(layer >= 1 && layer <= layerCount(top_mm, t))) return null;
  const { slabs } = rangeAt(placed, ONE_STEP, t, layer);
  const settings = settingsOf(recoater);
  const contact = contactOfSlabs(slabs, recoater.towards_deg, settings);
  return { contact, steepest: mainPart(slabs, contact.steepest, recoater.towards_deg, settings) };
}

/** True where nothing differs that the blade meets: zones, times and lasers do not. */
export const sameForBlade = (a: Layout, b: Layout): boolean =>
  a.parts === b.parts &&
  a.shapes === b.shapes &&
  a.machine.recoater === b.machine.recoater &&
  a.process.layer_mm === b.process.layer_mm;

/** Of the steps, the heights are about this share. */
const HEIGHTS = 0.9;

/** Yields how far it is, 0 to 1. */
export function* bladeStudy(layout: Layout): Generator<number, BladeStudy> {
  const heights = bladeBuild(layout);
  let step = heights.next();
  for (; !step.done; step = heights.next()) yield HEIGHTS * step.value;
  const build = step.value;
  yield HEIGHTS;
  const part = layout.parts[build.steepest.value.part];
  let advice: TurnAdvice | null = null;
  if (part) {
    const blade = { recoater: layout.machine.recoater, layer_mm: layout.process.layer_mm };
    const turns = findTurn(placedPart(layout, part), blade);
    let turn = turns.next();
    for (; !turn.done; turn = turns.next()) yield HEIGHTS;
    advice = turn.value;
  }
  return { build, advice, sides: bladeProblems(layout) };
}
