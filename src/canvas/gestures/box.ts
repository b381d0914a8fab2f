/**
 * Choosing parts with a box: dragged to the right it takes what lies whole inside, to the left whatever it touches. The
 * footprint counts, not the box around it. Platform millimetres.
 */
import { t } from '../../language/index';
import type { Box } from '../../geometry/types';
import { boxesMeet, containsPoint } from '../../geometry/region';
import { untagged, clipToConvex, planesOfBox } from '../../geometry/halfPlane';
import type { PartView } from '../../build/types';
import type { PartId } from '../../layout/types';
import type { PlatePoint } from '../../units/types';
import { footprintBox } from '../plan/items';
import { DRAG_THRESHOLD_PX, type Gesture, type Input, type PlanHost } from './gesture';

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

/** True where a footprint has a point in the box: something of it is left once it is cut along the box's sides. */
export const touches = (frame: Box, part: PartView): boolean => {
  const box = footprintBox(part);
  if (!boxesMeet(frame, box)) return false;
  if (holds(frame, box) || containsPoint(part.footprint, frame.minX, frame.minY)) return true;
  return clipToConvex(untagged(part.footprint), planesOfBox(frame)).rings.length > 0;
};

/** Parts that a box drawn from one point to another chooses. */
export const chosenBy = (parts: readonly PartView[], from: PlatePoint, to: PlatePoint): PartId[] => {
  const frame = boxBetween(from, to);
  const inside = (part: PartView): boolean =>
    to.x < from.x ? touches(frame, part) : holds(frame, footprintBox(part));
  return parts.filter(inside).map(({ id }) => id);
};

/** With Shift the parts join those chosen before. A click chooses none. */
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
      const chosen = chosenBy(bench.analysis().parts, start.at, to.at);
      const way = to.at.x < start.at.x ? t('touched') : t('whole inside');
      ui.setState({
        draft: { kind: 'box', from: start.at, to: to.at },
        tip: { at: to.screen, lines: [`${chosen.length} ${way}`] },
      });
      bench.setView({ selection: [...new Set([...kept, ...chosen])] });
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
