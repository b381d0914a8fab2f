/**
 * Nothing is remembered wrongly: after any history of edits, with or without looking at outlines in between, a layout's
 * figures are those of a fresh copy that the engine never saw. Much is kept by object identity between calls, so edits
 * here keep the identity of what they do not change, as the workbench does.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { downwindPlumes } from '../../src/build/downwind';
import { layerIsSound } from '../../src/build/sound';
import type { Analysis, LayerFigures } from '../../src/build/types';
import type { Layout } from '../../src/layout/types';
import { layouts, mm, runs } from '../support/random';

type Edit = (layout: Layout) => Layout;
const some = fc.nat({ max: 11 });
const onPart = (
  at: number,
  change: (part: Layout['parts'][number]) => Partial<Layout['parts'][number]>,
): Edit => {
  return (layout) => {
    const which = at % layout.parts.length;
    const parts = layout.parts.map((part, i) => (i === which ? { ...part, ...change(part) } : part));
    return { ...layout, parts };
  };
};
const process = (own: Partial<Layout['process']>): Edit => {
  return (layout) => ({ ...layout, process: { ...layout.process, ...own } });
};
const laser = (at: number, change: (l: Layout['machine']['lasers'][number]) => object): Edit => {
  return (layout) => {
    const lasers = layout.machine.lasers.map((l, k) => (k === at % 4 ? { ...l, ...change(l) } : l));
    return { ...layout, machine: { ...layout.machine, lasers } };
  };
};
const shapeNames = ['a', 'b', 'c'];

/** One edit; `other` lends its zoning, parts, lasers and shapes, so that histories go back and forth between two plates. */
const edit = (other: Layout): fc.Arbitrary<Edit> =>
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc
        .tuple(some, mm(-20, 20), mm(-20, 20))
        .map(([i, dx, dy]) => onPart(i, ({ at_mm: [x, y] }) => ({ at_mm: [x + dx, y + dy] }))),
    },
    fc.tuple(some, fc.constantFrom(0, 45, 90, 30.5)).map(([i, turn_deg]) => onPart(i, () => ({ turn_deg }))),
    fc.tuple(some, some).map(([i, s]) => onPart(i, () => ({ shape: shapeNames[s % 3] }))),
    some.map((i) => onPart(i, ({ seams }) => ({ seams: seams === 'free' ? 'none' : 'free' }))),
    fc.tuple(some, fc.constantFrom(null, 'L1', 'L3')).map(([i, pin]) => onPart(i, () => ({ laser: pin }))),
    fc.tuple(some, fc.constantFrom(1, 2)).map(([i, timeFactor]) => onPart(i, () => ({ timeFactor }))),
    some.map((k) => laser(k, ({ on }) => ({ on: !on }))),
    some.map((k) => laser(k, ({ reach }) => ({ reach: reach ? null : other.machine.lasers[k % 4].reach }))),
    fc.constantFrom(0, 0.05, 0.8).map((hatchInset_mm) => process({ hatchInset_mm })),
    fc.constantFrom(0, 0.15).map((seamOverlap_mm) => process({ seamOverlap_mm })),
    fc
      .constantFrom('area' as const, 'areaAndOutline' as const)
      .map((vectorCount) => process({ vectorCount })),
    fc.constantFrom(0.5, 2).map((layer_mm) => process({ layer_mm })),
    fc.constantFrom<Edit>(
      (layout) => ({ ...layout, zoning: other.zoning }),
      (layout) => ({ ...layout, parts: [...layout.parts.slice(1), layout.parts[0]] }),
      (layout) => (layout.parts.length > 1 ? { ...layout, parts: layout.parts.slice(1) } : layout),
      (layout) => {
        const taken = new Set(layout.parts.map(({ id }) => id));
        return { ...layout, parts: [...layout.parts, ...other.parts.filter(({ id }) => !taken.has(id))] };
      },
      (layout) => ({ ...layout, shapes: { ...layout.shapes, a: other.shapes.a } }),
      (layout) => ({ ...layout, allocation: layout.allocation === 'balanced' ? 'wholeParts' : 'balanced' }),
      (layout) => ({ ...layout, limits: { ...layout.limits, crumbWidth_mm: 8 } }),
      () => other,
    ),
  );

/** All that anyone may read, outlines included. */
const readOut = (analysis: Analysis<LayerFigures>): unknown => ({
  build: analysis.build,
  problems: analysis.problems,
  stretches: analysis.stretches.map(({ figures, ...range }) => ({
    ...range,
    lasers: figures.lasers,
    pieces: figures.pieces.map(
      ({ part, laser: l, area_mm2, hatchArea_mm2, outline_mm, seam_mm, load_s, region }) => ({
        figures: [part, l, area_mm2, hatchArea_mm2, outline_mm, seam_mm, load_s],
        region: region.map((ring) => [...ring]),
      }),
    ),
    seams: figures.seams.map((seam) => ({ ...seam, path: [...seam.path] })),
    witnessLines: figures.witnessLines,
    bestPossible_s: figures.bestPossible_s,
    bestSetBy: figures.bestSetBy,
    costOfCutting_s: figures.costOfCutting_s,
    unassigned_mm2: figures.unassigned_mm2,
    downwind: downwindPlumes(analysis, figures),
  })),
});

const histories = fc
  .tuple(layouts({ bands: true, faults: true, whole: true }), layouts({ bands: true, whole: true }))
  .chain(([start, other]) =>
    fc.record({
      start: fc.constant(start),
      edits: fc.array(fc.tuple(edit(other), fc.boolean()), { minLength: 1, maxLength: 12 }),
    }),
  );

it('figures after any history are those of a fresh copy', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(histories, ({ start, edits }) => {
      let layout = start;
      let analysis = analyse(layout);
      for (const [change, look] of edits) {
        layout = change(layout);
        analysis = analyse(layout);
        if (look) readOut(analysis);
      }
      for (const { figures } of analysis.stretches) expect(layerIsSound(analysis, figures)).toBeNull();
      expect(readOut(analysis)).toEqual(readOut(analyse(structuredClone(layout))));
    }),
    runs(60),
  );
});
