/**
 * Measuring on the plan: from one place to another, by a drag or by two clicks. While snapping is on, places are caught by corners,
 * centres, outlines, lines and the grid; Ctrl or Alt suspends that, Shift holds the line to steps of 45°. What is measured is
 * part of the view, never of the layout. Platform millimetres.
 */
import { sectionAt } from '../../build/sectionAt';
import { roundMm } from '../../units/round';
import type { PlatePoint } from '../../units/types';
import { caughtAt, near, type Caught } from '../catching';
import { divisionAt, layerFiguresAt } from '../layerAt';
import { footprintBox } from '../plan/items';
import { snapPoint } from '../snapping';
import type { Measured } from '../../store/types';
import { DRAG_THRESHOLD_PX, type Gesture, type Input, type PlanHost } from './gesture';

const REACH_PX = 8;
const STEP_RAD = Math.PI / 4;

const frameOf = (width: number, depth: number) => [
  Float64Array.of(-width / 2, -depth / 2, width / 2, -depth / 2, width / 2, depth / 2, -width / 2, depth / 2),
];

/** What catches a place on the plate as it is shown; null where nothing does, or it is suspended. */
export function caught({ bench, camera }: PlanHost, { at, held }: Input): Caught | null {
  const { view } = bench.store.getState();
  if (!view.snapping || held.ctrl || held.alt) return null;
  const analysis = bench.analysis();
  const { platform } = analysis.layout.machine;
  const reach = REACH_PX / camera().pxPerMm;
  const middle = layerFiguresAt(analysis, view.height_mm)?.height_mm ?? view.height_mm;
  const regions = near(analysis.parts, at, reach, footprintBox).flatMap((part) => [
    sectionAt(part, middle),
    part.footprint,
  ]);
  const edges = [
    frameOf(platform.width_mm, platform.depth_mm),
    frameOf(platform.width_mm - 2 * platform.margin_mm, platform.depth_mm - 2 * platform.margin_mm),
  ];
  const { lines } = divisionAt(analysis, view.height_mm);
  return caughtAt(at, { regions, lines, edges, grid_mm: view.grid_mm }, reach);
}

/** A place as it is measured: caught, or to the step of a drag. */
function placeOf(host: PlanHost, to: Input): { readonly at: PlatePoint; readonly by: Caught | null } {
  const by = caught(host, to);
  return { at: by?.at ?? snapPoint(to.at, to.held), by };
}

/** The place in the direction nearest to one of eight, as far as the pointer has come along it. */
function inStep(from: PlatePoint, to: PlatePoint): PlatePoint {
  const angle = Math.round(Math.atan2(to.y - from.y, to.x - from.x) / STEP_RAD) * STEP_RAD;
  const along = (to.x - from.x) * Math.cos(angle) + (to.y - from.y) * Math.sin(angle);
  return { x: roundMm(from.x + along * Math.cos(angle)), y: roundMm(from.y + along * Math.sin(angle)) };
}

function target(host: PlanHost, from: PlatePoint, to: Input): PlatePoint {
  const { at, by } = placeOf(host, to);
  host.ui.setState({ caught: by });
  return to.held.shift ? inStep(from, at) : at;
}

const show = ({ bench }: PlanHost, measured: Measured | null): void => bench.setView({ measured });

/** The pointer on its way: marks what would be caught, and takes the second place along where the first is set. */
export function followMeasure(host: PlanHost, to: Input): void {
  const { measureFrom } = host.ui.getState();
  if (measureFrom === null) return host.ui.setState({ caught: caught(host, to) });
  show(host, { from: measureFrom, to: target(host, measureFrom, to), parts: null });
}

/** From a press to letting go; a press without a drag sets one end, the next one the other. */
export function measureGesture(host: PlanHost, start: Input): Gesture {
  const { measureFrom } = host.ui.getState();
  const before = measureFrom ? null : host.bench.store.getState().view.measured;
  const from = measureFrom ?? placeOf(host, start).at;
  let dragged = false;
  return {
    move(to) {
      dragged ||=
        Math.hypot(to.screen.left - start.screen.left, to.screen.top - start.screen.top) >= DRAG_THRESHOLD_PX;
      if (dragged || measureFrom) show(host, { from, to: target(host, from, to), parts: null });
    },
    end() {
      host.ui.setState({ measureFrom: dragged || measureFrom ? null : from });
      if (!dragged && !measureFrom) show(host, null);
    },
    cancel() {
      host.ui.setState({ measureFrom: null, caught: null });
      show(host, before);
    },
  };
}
