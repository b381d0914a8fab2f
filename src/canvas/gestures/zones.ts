/**
 * Drags that reshape a drawn zone: the whole zone, one corner, a new corner on a side, a circle's radius. Corners of
 * other zones on the same point go along unless Ctrl is held. Platform millimetres.
 */
import {
  addZoneCorner,
  cornersTogether,
  drawnZones,
  moveDrawnZone,
  moveZoneCorners,
  outlineOf,
  removeZoneCorner,
  setZoneRadius,
  type ZoneCorner,
} from '../../commands/operations/drawnZones';
import type { Layout, Point } from '../../layout/types';
import type { PlatePoint } from '../../units/types';
import { snapMm, snapPoint } from '../snapping';
import { editGesture, type Gesture, type Input, type PlanHost } from './gesture';
import { mmWords, placeWords } from './words';

const pointOf = ({ x, y }: PlatePoint): Point => [x, y];

/** The point of a zone that keeps to the steps: its first corner, or its first circle's centre. */
const anchorOf = (layout: Layout, zone: number): Point => {
  const ring = drawnZones(layout)[zone]?.rings[0];
  if (!ring) return [0, 0];
  return 'circle_mm' in ring ? [ring.circle_mm[0], ring.circle_mm[1]] : (ring[0] ?? [0, 0]);
};

/** Moves a whole zone. */
export const moveZoneGesture = (
  host: PlanHost,
  start: Input,
  zone: number,
  clicked?: (at: Input) => void,
): Gesture => {
  const [x, y] = anchorOf(host.bench.store.getState().layout, zone);
  const by = (to: Input): PlatePoint => ({
    x: snapMm(x + to.at.x - start.at.x, to.held) - x,
    y: snapMm(y + to.at.y - start.at.y, to.held) - y,
  });
  return editGesture(host, start, {
    label: `Move zone ${zone + 1}`,
    change: (layout, to) => {
      const [presentX, presentY] = anchorOf(layout, zone);
      const wanted = by(to);
      return moveDrawnZone(layout, zone, x + wanted.x - presentX, y + wanted.y - presentY);
    },
    words: (to) => [`by ${placeWords(by(to), to.held)}`],
    clicked,
  });
};

/** Moves a corner; Shift and a click take it away. */
export const cornerGesture = (host: PlanHost, start: Input, place: ZoneCorner): Gesture => {
  const label = `Reshape zone ${place.zone + 1}`;
  const before = host.bench.store.getState().layout;
  const from = outlineOf(before, place)?.[place.corner] ?? [0, 0];
  const [x, y] = from;
  // Known from the beginning: a corner that is passed on the way is not taken along.
  const others = cornersTogether(before, place).slice(1);
  const target = (to: Input): PlatePoint =>
    snapPoint({ x: x + to.at.x - start.at.x, y: y + to.at.y - start.at.y }, to.held);
  return editGesture(host, start, {
    label,
    change: (layout, to) => {
      const at = pointOf(target(to));
      if (!to.held.ctrl) return moveZoneCorners(layout, [place, ...others], at);
      return moveZoneCorners(moveZoneCorners(layout, others, from), [place], at);
    },
    words: (to) => [placeWords(target(to), to.held)],
    clicked: (at) => {
      if (at.held.shift) host.bench.change(label, (layout) => removeZoneCorner(layout, place));
    },
  });
};

/** Pulls a new corner out of the side that begins at the corner named; a click alone adds it where it was pressed. */
export const newCornerGesture = (host: PlanHost, start: Input, after: ZoneCorner): Gesture => {
  const label = `Reshape zone ${after.zone + 1}`;
  const target = (to: Input): PlatePoint => snapPoint(to.at, to.held);
  let added = false;
  return editGesture(host, start, {
    label,
    change: (layout, to) => {
      const at = pointOf(target(to));
      if (added) return moveZoneCorners(layout, [{ ...after, corner: after.corner + 1 }], at);
      const next = addZoneCorner(layout, after, at);
      added = next !== layout;
      return next;
    },
    words: (to) => [placeWords(target(to), to.held)],
    clicked: (at) => host.bench.change(label, (layout) => addZoneCorner(layout, after, pointOf(target(at)))),
  });
};

/** Widens or narrows a circle about its centre. */
export const radiusGesture = (host: PlanHost, start: Input, zone: number, ring: number): Gesture => {
  const found = drawnZones(host.bench.store.getState().layout)[zone]?.rings[ring];
  const [x, y] = found && 'circle_mm' in found ? found.circle_mm : [0, 0];
  const target = (to: Input) => snapMm(Math.hypot(to.at.x - x, to.at.y - y), to.held);
  return editGesture(host, start, {
    label: `Reshape zone ${zone + 1}`,
    change: (layout, to) => setZoneRadius(layout, zone, ring, target(to)),
    words: (to) => [`radius ${mmWords(target(to), to.held)}`],
  });
};
