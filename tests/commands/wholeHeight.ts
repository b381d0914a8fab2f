/**
 * Operations as the workbench runs them on a document: those that change the zones take and give back whole layouts, and
 * change the division that holds at the top, which is the only one where one holds at every height.
 */
import * as operations from '../../src/commands/operations';
import { changeAt, layoutAt } from '../../src/layout/steps';
import type { Layout, LayoutAt, Zoning } from '../../src/layout/types';

export type { ZoneCorner } from '../../src/commands/operations';

/** One division from the platform up. */
export const divided = (zoning: Zoning): Layout['zoning'] => [{ from_mm: 0, zoning }];

/** The same layout with the same division once more from a height on. */
export const dividedTwice = (layout: Layout, from_mm: number): Layout => ({
  ...layout,
  zoning: [...layout.zoning, { from_mm, zoning: layout.zoning.at(-1)!.zoning }],
});

const top = ({ zoning }: Layout): number => zoning.length - 1;
const changing =
  <A extends readonly unknown[]>(recipe: (at: LayoutAt, ...args: A) => LayoutAt) =>
  (layout: Layout, ...args: A): Layout =>
    changeAt(layout, top(layout), (at) => recipe(at, ...args));
const reading =
  <A extends readonly unknown[], R>(look: (at: LayoutAt, ...args: A) => R) =>
  (layout: Layout, ...args: A): R =>
    look(layoutAt(layout, top(layout)), ...args);

export const op = {
  ...operations,
  drawnZones: reading(operations.drawnZones),
  cornersTogether: reading(operations.cornersTogether),
  moveDrawnZone: changing(operations.moveDrawnZone),
  moveZoneCorners: changing(operations.moveZoneCorners),
  addZoneCorner: changing(operations.addZoneCorner),
  removeZoneCorner: changing(operations.removeZoneCorner),
  setZoneRadius: changing(operations.setZoneRadius),
  setStrategy: changing(operations.setStrategy),
  setZoneLine: changing(operations.setZoneLine),
  setStripCount: changing(operations.setStripCount),
  addStrip: changing(operations.addStrip),
  removeStrip: changing(operations.removeStrip),
  setStripDirection: changing(operations.setStripDirection),
  setSharedBand: changing(operations.setSharedBand),
  setZoneLasers: changing(operations.setZoneLasers),
  addDrawnZone: changing(operations.addDrawnZone),
  setDrawnZone: changing(operations.setDrawnZone),
  removeDrawnZone: changing(operations.removeDrawnZone),
};
