/**
 * What the schema cannot see because it concerns more than one value: ids that repeat, names that point nowhere, a
 * number of lasers that does not fit the zones, values that do not ascend, outlines without area. Looks at a layout
 * whose every single value is sound and gives back the first fault, null where there is none.
 * What is well formed but unwise (off the platform, overlapping, all lasers off) is no fault here.
 */
import { differentPoints, enclosesArea } from './outlineChecks';
import { pathText, type Path } from './path';
import type { Text } from '../language/index';
import type { Fault, Params, Words } from './result';
import type { ClockRange, LaserId, Layout, LayoutRing, Schedule, Zoning, ZoningStep } from './types';

const QUADRANTS = 4;

/** The first fault that `check` finds among the entries. */
function first<T>(entries: readonly T[], check: (entry: T, index: number) => Fault | null): Fault | null {
  for (const [index, entry] of entries.entries()) {
    const fault = check(entry, index);
    if (fault) return fault;
  }
  return null;
}

function duplicate(entries: readonly { readonly id: string }[], path: Path, kind: Text): Fault | null {
  const seen = new Set<string>();
  return first(entries, ({ id }, index) => {
    if (seen.has(id)) {
      return {
        code: 'layout-duplicate-id',
        params: { path: pathText([...path, index]), id, kind: { text: kind } },
      };
    }
    seen.add(id);
    return null;
  });
}

function ascending(values: readonly number[], path: (index: number) => Path): Fault | null {
  return first(values, (value, index) => {
    const before = values[index - 1];
    if (before === undefined || value > before) return null;
    return { code: 'layout-not-ascending', params: { path: pathText(path(index)), found: value, before } };
  });
}

function ringFault(ring: LayoutRing, path: Path): Fault | null {
  if ('circle_mm' in ring) return null;
  const found = differentPoints(ring);
  if (found < 3) return { code: 'layout-few-points', params: { path: pathText(path), found } };
  return enclosesArea(ring) ? null : { code: 'layout-zero-area', params: { path: pathText(path) } };
}
const ringsFault = (rings: readonly LayoutRing[], path: Path): Fault | null =>
  first(rings, (ring, index) => ringFault(ring, [...path, index]));

function shapeFault(layout: Layout): Fault | null {
  return first(Object.entries(layout.shapes), ([id, shape]) => {
    const path = ['shapes', id];
    if (shape.slabs.every((slab) => slab.rings.length === 0)) {
      return { code: 'layout-empty-shape', params: { path: pathText(path) } };
    }
    const tops = shape.slabs.map((slab) => slab.to_mm);
    return (
      ascending(tops, (index) => [...path, 'slabs', index, 'to_mm']) ??
      first(shape.slabs, (slab, index) => ringsFault(slab.rings, [...path, 'slabs', index, 'rings']))
    );
  });
}

type LaserCheck = (id: LaserId, path: Path) => Fault | null;

function laserCheck(layout: Layout): LaserCheck {
  const known = new Set(layout.machine.lasers.map(({ id }) => id));
  return (id, path) =>
    known.has(id)
      ? null
      : { code: 'layout-unknown-laser', params: { path: pathText(path), id, known: [...known].join(', ') } };
}

function partFault(layout: Layout, check: LaserCheck): Fault | null {
  return first(layout.parts, (part, index) => {
    if (!Object.hasOwn(layout.shapes, part.shape)) {
      const path = pathText(['parts', index, 'shape']);
      return { code: 'layout-unknown-shape', params: { path, id: part.shape } };
    }
    return part.laser === null ? null : check(part.laser, ['parts', index, 'laser']);
  });
}

function laserListFault(
  lasers: readonly LaserId[],
  zones: number,
  path: Path,
  check: LaserCheck,
): Fault | null {
  if (lasers.length !== zones) {
    return { code: 'layout-laser-count', params: { path: pathText(path), found: lasers.length, zones } };
  }
  return first(lasers, (id, index) => check(id, [...path, index]));
}

function zoningFault(zoning: Zoning, at: Path, check: LaserCheck): Fault | null {
  const lasers = [...at, 'lasers'];
  switch (zoning.strategy) {
    case 'quadrants':
      return laserListFault(zoning.lasers, QUADRANTS, lasers, check);
    case 'strips':
      return (
        ascending(zoning.lines_mm, (index) => [...at, 'lines_mm', index]) ??
        laserListFault(zoning.lasers, zoning.lines_mm.length + 1, lasers, check)
      );
    case 'wholeField':
      return null;
    case 'drawn':
      return first(zoning.zones, (zone, index) => {
        const path = [...at, 'zones', index];
        return (
          laserListFault(zone.lasers, zone.lasers.length, [...path, 'lasers'], check) ??
          ringsFault(zone.rings, [...path, 'rings'])
        );
      });
  }
}

/** A file of version 1 has one division where later ones have a list. */
function stepsFault(steps: readonly ZoningStep[], version: number, check: LaserCheck): Fault | null {
  if (version === 1) return zoningFault(steps[0]!.zoning, ['zoning'], check);
  const path = (index: number) => ['zoning', index, 'from_mm'];
  const lowest = steps[0]!.from_mm;
  if (lowest !== 0) {
    const params: Params = {
      path: pathText(path(0)),
      found: lowest,
      accepted: { text: '0: the first division starts at the platform' },
    };
    return { code: 'layout-wrong-value', params };
  }
  return (
    ascending(
      steps.map((step) => step.from_mm),
      path,
    ) ?? first(steps, ({ zoning }, index) => zoningFault(zoning, ['zoning', index, 'zoning'], check))
  );
}

function attendedFault(ranges: readonly ClockRange[], path: Path): Fault | null {
  return first(ranges, ([from, to], index) => {
    const before = ranges[index - 1]?.[1] ?? '00:00';
    if (from >= before && to > from) return null;
    const accepted: Words = {
      text: 'ranges of the day that ascend and do not overlap, such as {example}',
      values: { example: '["06:00", "22:00"]' },
    };
    return {
      code: 'layout-wrong-value',
      params: { path: pathText([...path, index]), found: `["${from}", "${to}"]`, accepted },
    };
  });
}
const scheduleFault = (schedule: Schedule | null): Fault | null =>
  schedule &&
  first(Object.entries(schedule.attended), ([day, ranges]) =>
    attendedFault(ranges, ['schedule', 'attended', day]),
  );

function machineFault(layout: Layout): Fault | null {
  const { lasers, platform } = layout.machine;
  return (
    duplicate(lasers, ['machine', 'lasers'], 'laser ¦ kind') ??
    ringsFault(platform.keepOuts, ['machine', 'platform', 'keepOuts']) ??
    first(lasers, ({ reach }, index) =>
      reach === null ? null : ringFault(reach, ['machine', 'lasers', index, 'reach']),
    )
  );
}

/** The first fault of a layout whose single values are sound, its place as in a file of `version`; null where there is none. */
export function semanticFault(layout: Layout, version: number): Fault | null {
  const check = laserCheck(layout);
  return (
    machineFault(layout) ??
    shapeFault(layout) ??
    duplicate(layout.parts, ['parts'], 'part ¦ kind') ??
    partFault(layout, check) ??
    stepsFault(layout.zoning, version, check) ??
    scheduleFault(layout.schedule)
  );
}
