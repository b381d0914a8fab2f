/**
 * Problems of parts standing on the platform, over footprints seen from above, the union of all sections: off the
 * platform, in its margin, on a keep-out, too high, out of every working laser's reach, too close together, overlapping.
 * Boxes decide where they can, so that footprints are united only where parts come near something. Millimetres.
 * Outcomes are kept by the identity of the parts' views, so that moving one part checks only what concerns it. Pairs of
 * parts stand in pairs.ts.
 */
import { clean, intersect, subtract, unite } from '../geometry/clipper';
import { overlapArea } from '../geometry/distance';
import { areaInConvex } from '../geometry/halfPlane';
import { area, boxesMeet, boxOf, rectangle } from '../geometry/region';
import { ringFromLayout } from '../geometry/ring';
import type { HalfPlane, Region } from '../geometry/types';
import type { Layout, Machine } from '../layout/types';
import { finished } from './finished';
import { boxOverHeight } from './footprints';
import { pairSteps, SLACK_MM, SLIVER_MM2 } from './pairs';
import { problem, shownArea, shownLength } from './problem';
import type { PartView, Problem } from './types';

/** What the platform of one machine forbids, made once per machine. */
interface Site {
  readonly planes: readonly HalfPlane[];
  readonly platform: Region;
  readonly keepOuts: readonly Region[];
  /** Union of the working lasers' reach on the platform; null: all of it. */
  readonly reach: Region | null;
}

export interface PlateChecks {
  readonly problems: readonly Problem[];
  /** Number of checks the problems stand for. */
  readonly checks: number;
}

/** Checks every part against the platform and every pair of parts, as far as `pairSteps` compares them; yields between them. */
export function* plateSteps(
  layout: Layout,
  parts: readonly PartView[],
): Generator<undefined, PlateChecks, undefined> {
  const { machine, limits } = layout;
  const problems: Problem[] = [];
  for (const part of parts) {
    problems.push(...alone(part, machine));
    yield;
  }
  const pairs = yield* pairSteps(parts, limits.spacing_mm);
  const perPart = 4 + machine.platform.keepOuts.length;
  return { problems: [...problems, ...pairs.problems], checks: parts.length * perPart + pairs.checks };
}

/** The same at once. */
export const checkPlate = (layout: Layout, parts: readonly PartView[]): PlateChecks =>
  finished(plateSteps(layout, parts));

const sites = new WeakMap<Machine, Site>();

function siteOf(machine: Machine): Site {
  let site = sites.get(machine);
  if (site === undefined) sites.set(machine, (site = makeSite(machine)));
  return site;
}

function makeSite(machine: Machine): Site {
  const { width_mm, depth_mm, keepOuts } = machine.platform;
  const [w, d] = [width_mm / 2, depth_mm / 2];
  const platform = rectangle(-w, -d, w, d);
  const working = machine.lasers.filter((laser) => laser.on);
  const all = working.length === 0 || working.some((laser) => laser.reach === null);
  const reach = (): Region => unite(working.map((laser) => regionOf([laser.reach!])));
  return {
    planes: [
      { nx: 1, ny: 0, c: w },
      { nx: -1, ny: 0, c: w },
      { nx: 0, ny: 1, c: d },
      { nx: 0, ny: -1, c: d },
    ],
    platform,
    keepOuts: keepOuts.map((ring) => regionOf([ring])),
    reach: all ? null : intersect(reach(), platform),
  };
}

const regionOf = (rings: readonly Parameters<typeof ringFromLayout>[0][]): Region =>
  clean(rings.map(ringFromLayout), 'evenOdd').region;

const aloneKnown = new WeakMap<PartView, { machine: Machine; problems: readonly Problem[] }>();

/** Problems of one part by itself. */
function alone(part: PartView, machine: Machine): readonly Problem[] {
  const known = aloneKnown.get(part);
  if (known?.machine === machine) return known.problems;
  const site = siteOf(machine);
  const problems = [
    ...edgeProblems(part, machine, site),
    ...keepOutProblems(part, site),
    ...heightProblems(part, machine),
    ...reachProblems(part, site),
  ];
  aloneKnown.set(part, { machine, problems });
  return problems;
}

function edgeProblems(part: PartView, machine: Machine, site: Site): Problem[] {
  const { width_mm, depth_mm, margin_mm } = machine.platform;
  const box = boxOverHeight(part);
  const past = Math.max(
    Math.max(box.maxX, -box.minX) - width_mm / 2,
    Math.max(box.maxY, -box.minY) - depth_mm / 2,
  );
  if (past > SLACK_MM) {
    const off = area(part.footprint) - areaInConvex(part.footprint, site.planes);
    return [problem('part-off-platform', { part: part.id, area: shownArea(off) }, [part.id])];
  }
  const by = past + margin_mm;
  if (margin_mm === 0 || !(by > SLACK_MM)) return [];
  const params = { part: part.id, by: shownLength(by), margin: shownLength(margin_mm) };
  return [problem('part-in-margin', params, [part.id])];
}

function keepOutProblems(part: PartView, site: Site): Problem[] {
  return site.keepOuts.flatMap((keepOut) => {
    if (!boxesMeet(boxOverHeight(part), boxOf(keepOut))) return [];
    const covered = overlapArea(part.footprint, keepOut);
    if (covered <= SLIVER_MM2) return [];
    return [problem('part-in-keep-out', { part: part.id, area: shownArea(covered) }, [part.id])];
  });
}

function heightProblems(part: PartView, { buildHeight_mm }: Machine): Problem[] {
  if (part.height_mm <= buildHeight_mm) return [];
  const params = { part: part.id, height: shownLength(part.height_mm), limit: shownLength(buildHeight_mm) };
  return [problem('part-too-high', params, [part.id])];
}

function reachProblems(part: PartView, site: Site): Problem[] {
  if (site.reach === null) return [];
  const beyond = area(subtract(intersect(part.footprint, site.platform), site.reach));
  if (beyond <= SLIVER_MM2) return [];
  return [problem('part-out-of-reach', { part: part.id, area: shownArea(beyond) }, [part.id])];
}
