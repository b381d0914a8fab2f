/**
 * Drags that reshape a drawn zone: the whole zone, one corner, a new corner on a side, a circle's radius. Corners of
 * other zones on the same point go along unless Ctrl is held. Platform millimetres.
 */
import { t } from '../../language/index';
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
import type { LayoutAt, Point } from '../../layout/types';
import { changeZones, onShown, plateOf } from '../../store/shown';
import type { PlatePoint } from '../../units/types';
import { snapMm, snapPoint } from '../snapping';
import { editGesture, type Gesture, type Input, type PlanHost } from './gesture';
import { mmWords, placeWords } from './words';

const pointOf = ({ x, y }: PlatePoint): Point => [x, y];

/** The point of a zone that keeps to the steps: its first corner, or its first circle's centre. */
const anchorOf = (plate: LayoutAt, zone: number): Point => {
  const ring = drawnZones(plate)[zone]?.rings[0];
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
  const [x, y] = anchorOf(plateOf(host.bench), zone);
  const by = (to: Input): PlatePoint => ({
    x: snapMm(x + to.at.x - start.at.x, to.held) - x,
    y: snapMm(y + to.at.y - start.at.y, to.held) - y,
  });
  return editGesture(host, start, {
    label: t('Move zone {number}', { number: zone + 1 }),
    change: onShown(host.bench, (plate, to: Input) => {
      const [presentX, presentY] = anchorOf(plate, zone);
      const wanted = by(to);
      return moveDrawnZone(plate, zone, x + wanted.x - presentX, y + wanted.y - presentY);
    }),
    words: (to) => [t('by {amount}', { amount: placeWords(by(to), to.held) })],
    clicked,
  });
};

/** Moves a corner; Shift and a click take it away. */
export const cornerGesture = (host: PlanHost, start: Input, place: ZoneCorner): Gesture => {
  const label = t('Reshape zone {number}', { number: place.zone + 1 });
  const before = plateOf(host.bench);
  const from = outlineOf(before, place)?.[place.corner] ?? [0, 0];
  const [x, y] = from;
  // Known from the beginning: a corner that is passed on the way is not taken along.
  const others = cornersTogether(before, place).slice(1);
  const target = (to: Input): PlatePoint =>
    snapPoint({ x: x + to.at.x - start.at.x, y: y + to.at.y - start.at.y }, to.held);
  return editGesture(host, start, {
    label,
    change: onShown(host.bench, (plate, to: Input) => {
      const at = pointOf(target(to));
      if (!to.held.ctrl) return moveZoneCorners(plate, [place, ...others], at);
      return moveZoneCorners(moveZoneCorners(plate, others, from), [place], at);
    }),
    words: (to) => [placeWords(target(to), to.held)],
    clicked: (at) => {
      if (at.held.shift) changeZones(host.bench, label, (plate) => removeZoneCorner(plate, place));
    },
  });
};

/** Pulls a new corner out of the side that begins at the corner named; a click alone adds it where it was pressed. */
export const newCornerGesture = (host: PlanHost, start: Input, after: ZoneCorner): Gesture => {
  const label = t('Reshape zone {number}', { number: after.zone + 1 });
  const target = (to: Input): PlatePoint => snapPoint(to.at, to.held);
  let added = false;
  return editGesture(host, start, {
    label,
    change: onShown(host.bench, (plate, to: Input) => {
      const at = pointOf(target(to));
      if (added) return moveZoneCorners(plate, [{ ...after, corner: after.corner + 1 }], at);
      const next = addZoneCorner(plate, after, at);
      added = next !== plate;
      return next;
    }),
    words: (to) => [placeWords(target(to), to.held)],
    clicked: (at) =>
      changeZones(host.bench, label, (plate) => addZoneCorner(plate, after, pointOf(target(at)))),
  });
};

/** Widens or narrows a circle about its centre. */
export const radiusGesture = (host: PlanHost, start: Input, zone: number, ring: number): Gesture => {
  const found = drawnZones(plateOf(host.bench))[zone]?.rings[ring];
  const [x, y] = found && 'circle_mm' in found ? found.circle_mm : [0, 0];
  const target = (to: Input) => snapMm(Math.hypot(to.at.x - x, to.at.y - y), to.held);
  return editGesture(host, start, {
    label: t('Reshape zone {number}', { number: zone + 1 }),
    change: onShown(host.bench, (plate, to: Input) => setZoneRadius(plate, zone, ring, target(to))),
    words: (to) => [t('radius {length}', { length: mmWords(target(to), to.held) })],
  });
};
