/**
 * Best possible held against a linear program solved by HiGHS (Huangfu and Hall 2018, doi 10.1007/s12532-017-0130-5):
 * every piece of every section, measured by jsts 2.12, may be split at will among the lasers that may expose it. Seams and
 * gaps cost nothing here (vectorCount "area", no overlap, no gap per piece), so all load is divisible. Seconds.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import type { Layout, Part } from '../../src/layout/types';
import { leastTimeByLp } from '../allocation/solver/lp';
import { layouts, runs } from '../support/random';
import {
  allowedFor,
  bySetOfZones,
  platformOf,
  sectionAt,
  zonesOf,
  type Geometry,
} from '../support/secondLibrary';

interface Load {
  readonly mask: number;
  readonly load_s: number;
}
const free = { vectorCount: 'area', seamOverlap_mm: 0, pieceGap_s: 0 };

/** Zones of a part by the lasers that are on; a pinned part has one, the platform. */
function zonesFor(layout: Layout, part: Part): { set: number; region: Geometry }[] {
  const setOf = (ids: readonly string[]): number =>
    layout.machine.lasers.reduce((set, { id, on }, k) => (on && ids.includes(id) ? set | (1 << k) : set), 0);
  const zones =
    part.laser === null ? zonesOf(layout) : [{ lasers: [part.laser], region: platformOf(layout) }];
  return zones.map(({ lasers, region }) => ({ set: setOf(lasers), region }));
}

/** The time model without seams and gaps: E = A/(h·v) + t_v·A/(s·h) + contours·P/v_c, times the part's factor. */
function loadsOf(layout: Layout, part: Part, z: number): Load[] {
  const { hatch_mm, speed_mm_s, vector_mm, vectorGap_ms, contours, contourSpeed_mm_s, hatchInset_mm } =
    layout.process;
  const section = sectionAt(layout, part, z);
  const hatch = hatchInset_mm > 0 ? section.buffer(-hatchInset_mm, 32) : section;
  const loads = bySetOfZones(platformOf(layout), zonesFor(layout, part), (region) => {
    const A = hatch.intersection(region).getArea();
    const P = section.getBoundary().intersection(region).getLength();
    const lines = A / (hatch_mm * speed_mm_s) + ((vectorGap_ms / 1000) * A) / (vector_mm * hatch_mm);
    return part.timeFactor * (lines + (contours * P) / contourSpeed_mm_s);
  });
  return [...loads].map(([mask, load_s]) => ({ mask, load_s })).filter(({ mask }) => mask !== 0);
}
const heights = (layout: Layout): number[] => {
  const tops = layout.parts.flatMap(({ shape }) => layout.shapes[shape].slabs.map(({ to_mm }) => to_mm));
  return [...new Set(tops)].map((top) => top - layout.process.layer_mm / 2);
};

/** Lasers that may expose all of a part at every height. */
function holders(layout: Layout, part: Part, allowed: readonly Geometry[]): number {
  const sections = heights(layout).map((z) => sectionAt(layout, part, z));
  return allowed.reduce((set, own, k) => {
    const all = sections.every(
      (s) => s.getArea() - s.intersection(own).getArea() < 1e-6 * s.getArea() + 1e-9,
    );
    return all ? set | (1 << k) : set;
  }, 0);
}

interface Demand {
  readonly loads: readonly Load[];
  /** Loads that must stay in one piece. */
  readonly whole: readonly Load[];
}
function demandOf(layout: Layout, z: number): Demand {
  const allowed = allowedFor(layout);
  const whole: Load[] = [];
  const loads = layout.parts.flatMap((part) => {
    const own = loadsOf(layout, part, z);
    const keeps = part.laser === null && (part.seams === 'none' || layout.allocation === 'wholeParts');
    const mask = keeps ? holders(layout, part, allowed(part)) : 0;
    if (mask === 0) return own;
    whole.push({ mask, load_s: own.reduce((sum, { load_s }) => sum + load_s, 0) });
    return [whole[whole.length - 1]];
  });
  return { loads: loads.filter(({ load_s }) => load_s > 1e-9), whole };
}

function check(layout: Layout, hatchInset_mm: number): void {
  const wanted = { ...layout, process: { ...layout.process, hatchInset_mm } };
  const { stretches } = analyse(wanted);
  const stretch = stretches[stretches.length - 1];
  const { figures } = stretch;
  const { loads, whole } = demandOf(wanted, (stretch.lastLayer - 0.5) * wanted.process.layer_mm);
  const divided = leastTimeByLp(4, [0, 0, 0, 0], loads);
  const best = Math.max(divided, ...whole.map(({ load_s }) => load_s));
  expect(Math.abs(figures.bestPossible_s - best), `${figures.bestPossible_s}, HiGHS ${best}`).toBeLessThan(
    1e-5 * Math.max(1, best),
  );
  expect(figures.exposure_s).toBeGreaterThan(best - 1e-5 * Math.max(1, best));
  // The set that is named binds: what only it can expose needs that long, or it is the set of the largest whole part.
  const ids = wanted.machine.lasers.map(({ id }) => id);
  const set = figures.bestSetBy.reduce((mask, id) => mask | (1 << ids.indexOf(id)), 0);
  const only = loads.filter(({ mask }) => (mask & ~set) === 0).reduce((sum, { load_s }) => sum + load_s, 0);
  const largest = whole.filter(({ mask }) => mask === set).map(({ load_s }) => load_s);
  const reached = Math.max(figures.bestSetBy.length > 0 ? only / figures.bestSetBy.length : 0, ...largest);
  expect(Math.abs(reached - best)).toBeLessThan(1e-5 * Math.max(1, best));
}

const inset = fc.constantFrom(0, 0, 0.3);

it('best possible is the least time of the slowest laser over all splits', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(layouts({ bands: true, faults: true, reach: false, process: free }), inset, check),
    runs(50),
  );
});
it('with parts that keep one laser it is no lower than the largest of them', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(layouts({ bands: true, whole: true, spread: 120, process: free }), inset, check),
    runs(40),
  );
});
