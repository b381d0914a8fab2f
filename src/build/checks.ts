/**
 * Problems of parts standing on the platform, over footprints seen from above, the union of all sections: off the
 * platform, in its margin, on a keep-out, too high, out of every working laser's reach, too close together, overlapping.
 * Boxes decide where they can, so that footprints are united only where parts come near something. Millimetres.
 * Outcomes are kept by the identity of the parts' views, so that moving one part checks only what concerns it.
 */
import { clean, intersect, subtract, unite } from '../geometry/clipper';
import { CHORD_ERROR_MM } from '../geometry/circle';
import { gap, overlapArea } from '../geometry/distance';
import { areaInConvex } from '../geometry/halfPlane';
import { area, boxesMeet, boxOf, rectangle } from '../geometry/region';
import { ringFromLayout } from '../geometry/ring';
import type { HalfPlane, Region } from '../geometry/types';
import type { Layout, Machine } from '../layout/types';
import type { Mm, Mm2 } from '../units/types';
import { boxOverHeight, heightsOfOverlap, type HeightRange } from './footprints';
import { problem, shownArea } from './problem';
import type { PartView, Problem } from './types';

/** Circles stand for themselves within the chord error; nothing nearer than it is a fault. */
const SLACK_MM: Mm = CHORD_ERROR_MM;
/** Common areas below this are such slivers too. */
const SLIVER_MM2: Mm2 = 0.05;

/** What the platform of one machine forbids, made once per machine. */
interface Site {
  readonly planes: readonly HalfPlane[];
  readonly platform: Region;
  readonly keepOuts: readonly Region[];
  /** Union of the working lasers' reach on the platform; null: all of it. */
  readonly reach: Region | null;
}
interface PairOutcome {
  readonly spacing_mm: Mm;
  readonly gap_mm: Mm;
  readonly overlap_mm2: Mm2;
  /** Where the sections themselves overlap, too; null where they never do. */
  readonly heights: HeightRange | null;
}

export interface PlateChecks {
  readonly problems: readonly Problem[];
  /** Number of checks the problems stand for. */
  readonly checks: number;
}

/** Checks every part against the platform and every pair of parts. */
export function checkPlate(layout: Layout, parts: readonly PartView[]): PlateChecks {
  const { machine, limits } = layout;
  const problems = parts.flatMap((part) => alone(part, machine));
  problems.push(...pairProblems(parts, limits.spacing_mm));
  const perPart = 4 + machine.platform.keepOuts.length;
  return { problems, checks: parts.length * perPart + (parts.length * (parts.length - 1)) / 2 };
}

const shownLength = (value: Mm): string => String(Number(value.toFixed(2)));

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

const pairsKnown = new WeakMap<PartView, WeakMap<PartView, PairOutcome>>();

function pairProblems(parts: readonly PartView[], spacing_mm: Mm): Problem[] {
  const boxes = new Float64Array(4 * parts.length);
  parts.forEach((part, i) => {
    const { minX, minY, maxX, maxY } = boxOverHeight(part);
    boxes.set([minX - spacing_mm, minY - spacing_mm, maxX, maxY], 4 * i);
  });
  const problems: Problem[] = [];
  for (let i = 0; i < boxes.length; i += 4)
    for (let j = i + 4; j < boxes.length; j += 4) {
      if (boxes[i] > boxes[j + 2] || boxes[j] > boxes[i + 2]) continue;
      if (boxes[i + 1] > boxes[j + 3] || boxes[j + 1] > boxes[i + 3]) continue;
      problems.push(...together(parts[i >> 2], parts[j >> 2], spacing_mm));
    }
  return problems;
}

function together(a: PartView, b: PartView, spacing_mm: Mm): Problem[] {
  const { gap_mm, overlap_mm2, heights } = outcomeOf(a, b, spacing_mm);
  const pair = { part: a.id, other: b.id };
  if (overlap_mm2 > SLIVER_MM2) {
    const params = { ...pair, area: shownArea(overlap_mm2) };
    if (heights === null) return [problem('footprints-overlap', params, [a.id, b.id])];
    const [from, to] = [shownLength(heights.from_mm), shownLength(heights.to_mm)];
    return [problem('parts-overlap', { ...params, from, to }, [a.id, b.id])];
  }
  if (gap_mm >= spacing_mm - 2 * SLACK_MM) return [];
  const params = { ...pair, gap: shownLength(gap_mm), spacing: shownLength(spacing_mm) };
  return [problem('parts-too-close', params, [a.id, b.id])];
}

function outcomeOf(a: PartView, b: PartView, spacing_mm: Mm): PairOutcome {
  let others = pairsKnown.get(a);
  if (others === undefined) pairsKnown.set(a, (others = new WeakMap()));
  const known = others.get(b);
  if (known?.spacing_mm === spacing_mm) return known;
  const gap_mm = gap(a.footprint, b.footprint, spacing_mm);
  const overlap_mm2 = gap_mm === 0 ? overlapArea(a.footprint, b.footprint) : 0;
  const heights = overlap_mm2 > SLIVER_MM2 ? heightsOfOverlap(a, b, SLIVER_MM2) : null;
  const outcome = { spacing_mm, gap_mm, overlap_mm2, heights };
  others.set(b, outcome);
  return outcome;
}
