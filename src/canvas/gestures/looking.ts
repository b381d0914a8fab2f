/**
 * Gestures that change only the view: panning, and choosing parts with a box.
 */
import type { PartId } from '../../layout/types';
import type { Box } from '../../geometry/types';
import type { PlatePoint } from '../../units/types';
import { panBy } from '../camera';
import { footprintBox } from '../plan/items';
import { DRAG_THRESHOLD_PX, type Gesture, type Input, type PlanHost } from './gesture';

/** What is grabbed follows the pointer. */
export const panGesture = (host: PlanHost, start: Input): Gesture => {
  const before = host.bench.store.getState().view.camera;
  let last = start.screen;
  return {
    move(to) {
      const camera = panBy(host.camera(), to.screen.left - last.left, to.screen.top - last.top);
      last = to.screen;
      host.bench.setView({ camera });
    },
    end: () => undefined,
    cancel: () => host.bench.setView({ camera: before }),
  };
};

const boxBetween = (a: PlatePoint, b: PlatePoint): Box => ({
  minX: Math.min(a.x, b.x),
  minY: Math.min(a.y, b.y),
  maxX: Math.max(a.x, b.x),
  maxY: Math.max(a.y, b.y),
});
const holds = (outer: Box, inner: Box): boolean =>
  inner.minX >= outer.minX &&
  inner.maxX <= outer.maxX &&
  inner.minY >= outer.minY &&
  inner.maxY <= outer.maxY;

/** Chooses the parts that lie whole inside a box; with Shift they join those chosen before. A click chooses none. */
export const boxGesture = (host: PlanHost, start: Input): Gesture => {
  const { bench, ui } = host;
  const before = bench.store.getState().view.selection;
  const kept: readonly PartId[] = start.held.shift ? before : [];
  let dragged = false;
  return {
    move(to) {
      dragged ||=
        Math.hypot(to.screen.left - start.screen.left, to.screen.top - start.screen.top) >= DRAG_THRESHOLD_PX;
      if (!dragged) return;
      const frame = boxBetween(start.at, to.at);
      const inside = bench.analysis().parts.filter((part) => holds(frame, footprintBox(part)));
      const selection = [...new Set([...kept, ...inside.map((part) => part.id)])];
      ui.setState({ draft: { kind: 'box', from: start.at, to: to.at } });
      bench.setView({ selection });
    },
    end() {
      ui.setState({ draft: null });
      if (!dragged && !start.held.shift) bench.setView({ selection: [] });
    },
    cancel() {
      ui.setState({ draft: null });
      bench.setView({ selection: before });
    },
  };
};
