/**
 * Is a layer right? Everything that must hold whatever the plate, asked of the outlines themselves: every piece lies where
 * its laser may expose, the pieces of a part do not overlap and together are its section, the plan solved again is feasible
 * and promises the same time, figures add up. The check takes milliseconds to tenths of a second: it is for idle time and for
 * tests, not for every frame. Square millimetres, seconds; platform coordinates.
 */
import { rememberedDemand } from '../allocation/remembered';
import { askedOf, compactOf } from '../allocation/plan';
import { solveBalance } from '../allocation/solver/balance';
import { allocationIsFeasible } from '../allocation/solver/check';
import type { BalanceProblem, SharedPart } from '../allocation/types';
import { areaBalance } from '../geometry/balance';
import { intersect, subtract, unite } from '../geometry/clipper';
import { overlapArea } from '../geometry/distance';
import { area, outlineLength } from '../geometry/region';
import type { Region } from '../geometry/types';
import { stepAt } from '../layout/steps';
import type { Fault } from '../layout/result';
import type { Layout, Part } from '../layout/types';
import type { Mm, Mm2 } from '../units/types';
import { has } from '../zoning/lasers';
import type { Division } from '../zoning/types';
import { coverage, figuresFault, shownBy, soundFault } from './checkers';
import { BOOKS_TOLERANCE } from './books';
import { rangeAt } from './layers';
import { plateOf, sectionsIn, type Plate } from './plate';
import { keepsLaser } from './rules';
import type { Analysis, LayerFigures, Piece } from './types';

/** The polygon engine moves outlines by up to about one unit of its grid of 8e-6 mm. */
const ROUNDING_MM: Mm = 1e-5;
const DUST_MM2: Mm2 = 2e-5;
/** Part of the platform. */
const CELLS_TOLERANCE = 1e-7;

/** Area that rounding may move along the outlines of a region. */
const rounding = (region: Region): Mm2 => DUST_MM2 + ROUNDING_MM * outlineLength(region);

/** Where a laser may expose: its zones ∩ its reach, nothing where it is off; not taken from the cells. */
function allowedRegion({ on, zones, reach }: Division, laser: number): Region {
  if (!has(on, laser)) return [];
  const own = zones.filter(({ lasers }) => has(lasers, laser)).map(({ region }) => region);
  return own.length === 0 ? [] : intersect(own.length === 1 ? own[0] : unite(own), reach[laser]);
}

/** Where its laser may expose a part: a pin overrides the zones, never the reach. */
function allowedFor(layout: Layout, division: Division): (part: Part, laser: number) => Region {
  const inZones = layout.machine.lasers.map((_, laser) => allowedRegion(division, laser));
  return (part, laser) => {
    if (part.laser === null) return inZones[laser];
    const pinned = part.laser === layout.machine.lasers[laser].id && has(division.on, laser);
    return pinned ? division.reach[laser] : [];
  };
}

/** The first piece that lies where its laser may not expose. */
function placeFault(layout: Layout, division: Division, pieces: readonly Piece[]): Fault | null {
  const allowed = allowedFor(layout, division);
  for (const { part: p, laser: k, region } of pieces) {
    if (k < 0) continue;
    const [part, laser] = [layout.parts[p], layout.machine.lasers[k].id];
    if (!has(division.on, k)) return soundFault('piece-of-laser-off', { part: part.id, laser });
    const outside = area(subtract(region, allowed(part, k)));
    if (outside > rounding(region))
      return soundFault('piece-out-of-place', { part: part.id, laser, by: shownBy(outside) });
  }
  return null;
}

/** Area that lies in two of the pieces. */
function overlapOf(pieces: readonly Piece[]): Mm2 {
  let twice = 0;
  pieces.forEach(({ region }, i) => {
    for (const other of pieces.slice(0, i)) twice += overlapArea(region, other.region);
  });
  return twice;
}

/** What is wrong with the pieces of one part, the unassigned one included, against its section. */
function partFault(part: string, pieces: readonly Piece[], section: Region): Fault | null {
  const tolerance = rounding(section);
  for (const { region, area_mm2 } of pieces) {
    const by = Math.abs(area(region) - area_mm2);
    if (!(by <= tolerance)) return soundFault('piece-area-off', { part, by: shownBy(by) });
  }
  const twice = overlapOf(pieces);
  if (twice > tolerance) return soundFault('pieces-overlap', { part, by: shownBy(twice) });
  const regions = pieces.map(({ region }) => region);
  const beyond = regions.reduce((sum, own) => sum + (own === section ? 0 : area(subtract(own, section))), 0);
  const missing = areaBalance(section, regions) * area(section);
  const by = Math.max(beyond, missing);
  return by > tolerance ? soundFault('pieces-miss-section', { part, by: shownBy(by) }) : null;
}

interface Layer {
  readonly plate: Plate;
  readonly step: number;
  /** By part; null above it. */
  readonly sections: ReturnType<typeof sectionsIn>;
  readonly figures: LayerFigures;
}

/** The layer's shared load as the solver is asked for it; parts that share none count as they were exposed. */
function problemOf({ plate, step, sections, figures }: Layer): BalanceProblem {
  const { layout } = plate;
  const { division, model } = plate.contexts[step];
  const compact = compactOf(division);
  const fixed_s = layout.machine.lasers.map(() => 0);
  const parts: SharedPart[] = [];
  const asked = new Set<number>();
  sections.forEach((section, p) => {
    const part = layout.parts[p];
    if (!section || keepsLaser(layout, part)) return;
    const demand = rememberedDemand(section, model, part.timeFactor);
    if (demand.decided) return;
    asked.add(p);
    for (const [laser, load_s] of demand.fixed) fixed_s[laser] += load_s;
    parts.push(askedOf(compact, part.id, demand));
  });
  for (const { part, laser, load_s } of figures.pieces)
    if (laser >= 0 && !asked.has(part)) fixed_s[laser] += load_s;
  return { laserCount: compact.lasers.length, fixed_s: compact.lasers.map((k) => fixed_s[k]), parts };
}

/** The plan solved again: its answer has to be feasible, and to promise what the figures say was planned. */
function planFault(layer: Layer): Fault | null {
  const problem = problemOf(layer);
  if (problem.laserCount === 0) return null;
  const solution = solveBalance(problem);
  const detail = allocationIsFeasible(problem, solution);
  if (detail !== null) return soundFault('plan-not-feasible', { detail });
  const { exposure_s, costOfCutting_s } = layer.figures;
  const by = Math.abs(exposure_s - costOfCutting_s - solution.best_s);
  return by <= BOOKS_TOLERANCE * Math.max(1, exposure_s)
    ? null
    : soundFault('plan-differs', { by: shownBy(by) });
}

function cellsFault(division: Division): Fault | null {
  const { covered, twice } = coverage(division);
  const by = Math.max(twice, covered - 1);
  if (by <= CELLS_TOLERANCE) return null;
  return soundFault('cells-not-apart', { by: shownBy(by * area(division.platform)) });
}

/**
 * All checks on one layer of an analysis, the cheap ones first.
 * @param figures a layer of this analysis, as its `layer` or its stretches gave it
 * @returns the first thing that is wrong, always a fault of the program and none of the plate; null where all holds
 */
export function layerIsSound({ layout, divisions }: Analysis, figures: LayerFigures): Fault | null {
  const plate = plateOf(layout);
  const step = stepAt(layout.zoning, figures.height_mm);
  const range = rangeAt(plate.placed, layout.zoning, layout.process.layer_mm, figures.layer);
  const sections = sectionsIn(plate, range);
  const partsFault = (): Fault | null => {
    for (const [p, { id }] of layout.parts.entries()) {
      const own = figures.pieces.filter((piece) => piece.part === p);
      const fault = partFault(id, own, range.slabs[p]?.section ?? []);
      if (fault) return fault;
    }
    return null;
  };
  return (
    figuresFault(figures, layout.process) ??
    planFault({ plate, step, sections, figures }) ??
    cellsFault(divisions[step]) ??
    placeFault(layout, divisions[step], figures.pieces) ??
    partsFault()
  );
}
