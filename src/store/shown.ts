/**
 * The plate as it is divided at the height that the screen shows. Zones are read and changed through here, so that the
 * step of the zoning that is seen is the one that is changed. Millimetres above the platform.
 */
import { layerAt, middleOfLayer } from '../build/layers';
import { buildTop } from '../layout/height';
import { changeAt, layoutAt, stepAt } from '../layout/steps';
import type { Layout, LayoutAt } from '../layout/types';
import type { Mm } from '../units/types';
import type { Workbench, WorkbenchState } from './types';

/** Index of the step that holds in the layer shown at a height. */
export function shownStep(layout: Layout, height_mm: Mm): number {
  if (layout.zoning.length === 1) return 0;
  const t = layout.process.layer_mm;
  const layer = layerAt(height_mm, t, buildTop(layout));
  return stepAt(layout.zoning, layer === 0 ? height_mm : middleOfLayer(layer, t));
}

/** The present plate as divided at the height shown; the same object while neither changes. */
export const plateShown = ({ layout, view }: Pick<WorkbenchState, 'layout' | 'view'>): LayoutAt =>
  layoutAt(layout, shownStep(layout, view.height_mm));

/** The layout after `recipe` changed its zones at the height shown. */
export const changeShown = (layout: Layout, height_mm: Mm, recipe: (at: LayoutAt) => LayoutAt): Layout =>
  changeAt(layout, shownStep(layout, height_mm), recipe);

/** The plate of a workbench as divided at the height it shows. */
export const plateOf = ({ store }: Workbench): LayoutAt => plateShown(store.getState());

/** Turns a change of the plate's zones into one of the document: it changes what holds at the height shown. */
export const onShown =
  <A extends readonly unknown[]>(
    { store }: Workbench,
    recipe: (plate: LayoutAt, ...args: A) => LayoutAt,
  ): ((layout: Layout, ...args: A) => Layout) =>
  (layout, ...args) =>
    changeShown(layout, store.getState().view.height_mm, (plate) => recipe(plate, ...args));

/** Changes the zones at the height shown: one history entry, or part of the open gesture. */
export const changeZones = (bench: Workbench, label: string, recipe: (plate: LayoutAt) => LayoutAt): void =>
  bench.change(label, onShown(bench, recipe));
