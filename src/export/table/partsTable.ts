/**
 * The table of parts: one row for each part, laser and range of heights, with the part's place repeated, so that a
 * spreadsheet can filter by any of them. Heights are the lower side of the first layer and the upper side of the last one.
 * Millimetres, degrees counter-clockwise from +x, cm³ without seam overlap.
 */
import { plateOf } from '../../build/plate';
import type { PartView } from '../../build/types';
import type { Layout } from '../../layout/types';
import { roundMm } from '../../units/round';
import type { Cell, Table } from './csv';
import { laserRanges, partStretches, type LaserRange } from './partLasers';

const HEADER = [
  'part',
  'shape',
  'x_mm',
  'y_mm',
  'turn_deg',
  'height_mm',
  'seams',
  'pinned',
  'laser',
  'from_mm',
  'to_mm',
  'first_layer',
  'last_layer',
  'volume_cm3',
  'state',
] as const;

/** Stands in the column of the laser for what no laser exposes. */
export const UNASSIGNED = 'unassigned';
const MM3_PER_CM3 = 1000;

function rowOf(layout: Layout, parts: readonly PartView[], state: string, range: LaserRange): Cell[] {
  const part = layout.parts[range.part]!;
  const { layer_mm } = layout.process;
  return [
    part.id,
    part.shape,
    ...part.at_mm,
    part.turn_deg,
    parts[range.part]?.height_mm ?? null,
    part.seams,
    part.laser ?? '',
    layout.machine.lasers[range.laser]?.id ?? UNASSIGNED,
    roundMm((range.firstLayer - 1) * layer_mm),
    roundMm(range.lastLayer * layer_mm),
    range.firstLayer,
    range.lastLayer,
    range.volume_mm3 / MM3_PER_CM3,
    state,
  ];
}

/** The table of a layout. Yields how far it is, 0 to 1. @param state what its plate is, in words */
export function* partsTable(layout: Layout, state: string): Generator<number, Table> {
  const { placed } = plateOf(layout);
  const ranges = laserRanges(yield* partStretches(layout), layout.process.layer_mm);
  return { header: HEADER, rows: ranges.map((range) => rowOf(layout, placed, state, range)) };
}
