/**
 * What a failing laser leaves: the whole build with this laser off, once with the zones as they are and, where that leaves
 * something unexposed, once with the whole field among the others. From the first layer on: a build that has begun also
 * keeps what was exposed before. Hours are uncorrected.
 */
import { plateOf } from '../../build/plate';
import { scaled, Stacks, type Stack } from '../../build/stack';
import type { Layout } from '../../layout/types';
import { LEAST_AREA_MM2, sharesOf, type SharesOfLayer } from './holdings';
import type { Outage, Rest } from './types';

const MM3_PER_CM3 = 1000;

/** The layout with one laser off. */
export const without = (layout: Layout, laser: number): Layout => {
  const { machine } = layout;
  const lasers = machine.lasers.with(laser, { ...machine.lasers[laser], on: false });
  return { ...layout, machine: { ...machine, lasers } };
};

/** The same with the whole field among the others, and the parts that were pinned to it set free. */
export function dividedAnew(layout: Layout, laser: number): Layout {
  const off = without(layout, laser);
  const { id } = layout.machine.lasers[laser];
  const parts = layout.parts.map((part) => (part.laser === id ? { ...part, laser: null } : part));
  return { ...off, parts, zoning: [{ from_mm: 0, zoning: { strategy: 'wholeField' } }] };
}

function restOf({ stretches, build }: Stack<SharesOfLayer>): Rest {
  const parts = new Set<number>();
  let volume = 0;
  for (const { from_mm, to_mm, figures } of stretches) {
    if (figures.unassigned_mm2 < LEAST_AREA_MM2) continue;
    volume += (to_mm - from_mm) * figures.unassigned_mm2;
    for (const { part, laser, area_mm2 } of figures.held)
      if (laser < 0 && area_mm2 >= LEAST_AREA_MM2) parts.add(part);
  }
  return {
    parts: [...parts].sort((a, b) => a - b),
    volume_cm3: volume / MM3_PER_CM3,
    time_h: build.time_h,
  };
}

function* buildOf(layout: Layout): Generator<number, Rest, undefined> {
  return restOf(yield* new Stacks(sharesOf).run(plateOf(layout)));
}

/** What one laser's failing leaves. Yields how far it is. */
export function* outageOf(layout: Layout, laser: number): Generator<number, Outage, undefined> {
  const { machine, parts } = layout;
  const { id } = machine.lasers[laser];
  const pinned = parts.flatMap((part, p) => (part.laser === id ? [p] : []));
  if (machine.lasers.every(({ on }, l) => !on || l === laser))
    return { laser, pinned, asZoned: null, anew: null };
  const asZoned = yield* scaled(buildOf(without(layout, laser)), 0, 0.5);
  const anew = asZoned.parts.length === 0 ? null : yield* scaled(buildOf(dividedAnew(layout, laser)), 0.5, 1);
  return { laser, pinned, asZoned, anew };
}
