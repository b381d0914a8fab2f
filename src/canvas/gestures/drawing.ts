/**
 * Drawing tools. Rectangle: corner to corner. Disc: from the centre outward. Ring: outer radius first, then the inner
 * one with a second press. Polygon and zone: a press per corner; Enter, a double click or a press on the first corner
 * ends it, Backspace takes a corner back. Platform millimetres on the steps of a drag.
 */
import { addedParts } from '../../commands/operations/edit';
import { addDrawnPart, type Drawing } from '../../commands/operations/shapes';
import { addDrawnZone } from '../../commands/operations/zones';
import type { LaserId, LayoutAt, Point } from '../../layout/types';
import { changeZones } from '../../store/shown';
import type { PlatePoint } from '../../units/types';
import { snapMm, snapPoint } from '../snapping';
import type { Gesture, Input, PlanHost } from './gesture';
import type { Draft, DrawTool } from './planUi';
import { placeWords, sizeWords, mmWords } from './words';

/** A press this near the first corner closes a polygon. Screen px. */
const CLOSE_PX = 12;

const point = (p: PlatePoint): Point => [p.x, p.y];
const distance = (a: PlatePoint, b: PlatePoint): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The first laser that has no drawn zone yet; the first of all where each has one. */
export const nextZoneLaser = ({ machine, zoning }: LayoutAt): LaserId => {
  const used = zoning.strategy === 'drawn' ? zoning.zones.flatMap((zone) => zone.lasers) : [];
  const free = machine.lasers.find((laser) => laser.on && !used.includes(laser.id));
  return (free ?? machine.lasers[0]).id;
};

const drawingOf = (draft: Draft): Drawing | null => {
  switch (draft.kind) {
    case 'rectangle':
      return { kind: 'rectangle', from: point(draft.from), to: point(draft.to) };
    case 'disc':
      return { kind: 'disc', centre: point(draft.centre), radius_mm: draft.radius_mm };
    case 'ring':
      return { ...draft, centre: point(draft.centre) };
    case 'polygon':
      return { kind: 'polygon', points: draft.points.map(point) };
    default:
      return null;
  }
};

const NAMES: Readonly<Record<DrawTool, string>> = {
  rectangle: 'Draw a rectangle',
  disc: 'Draw a disc',
  ring: 'Draw a ring',
  polygon: 'Draw a polygon',
  zone: 'Draw a zone',
};

/** Puts a finished drawing on the plate; a drawn part is selected and the hand is free again. */
export const commitDraft = ({ bench, ui }: PlanHost, draft: Draft): void => {
  ui.setState({ draft: null, tip: null });
  if (draft.kind === 'box') return;
  const before = bench.store.getState().layout;
  const { drawHeight_mm } = bench.store.getState().view;
  if (draft.kind === 'zone')
    return changeZones(bench, NAMES.zone, (plate) =>
      addDrawnZone(plate, [draft.points.map(point)], [nextZoneLaser(plate)]),
    );
  bench.change(NAMES[draft.kind], (layout) => {
    const drawing = drawingOf(draft);
    return drawing ? addDrawnPart(layout, drawing, drawHeight_mm) : layout;
  });
  const added = addedParts(before, bench.store.getState().layout);
  if (added.length > 0) bench.setView({ selection: added, tool: 'select' });
};

const draftAt = (tool: 'rectangle' | 'disc' | 'ring', from: PlatePoint, to: Input): Draft => {
  const at = snapPoint(to.at, to.held);
  if (tool === 'rectangle') return { kind: 'rectangle', from, to: at };
  const radius_mm = snapMm(distance(from, at), to.held);
  if (tool === 'disc') return { kind: 'disc', centre: from, radius_mm };
  return { kind: 'ring', centre: from, outer_mm: radius_mm, inner_mm: snapMm(radius_mm / 2, to.held) };
};

/** Coordinates and size of a drawing under way. */
export const draftWords = (draft: Draft, to: Input): readonly string[] => {
  const place = placeWords(snapPoint(to.at, to.held), to.held);
  switch (draft.kind) {
    case 'rectangle':
      return [
        place,
        sizeWords(Math.abs(draft.to.x - draft.from.x), Math.abs(draft.to.y - draft.from.y), to.held),
      ];
    case 'disc':
      return [place, `Ø ${mmWords(2 * draft.radius_mm, to.held)}`];
    case 'ring':
      return [place, `Ø ${mmWords(2 * draft.outer_mm, to.held)} / ${mmWords(2 * draft.inner_mm, to.held)}`];
    case 'polygon':
    case 'zone': {
      const last = draft.points.at(-1);
      return last ? [place, `side ${mmWords(distance(last, draft.to), to.held)}`] : [place];
    }
    default:
      return [];
  }
};

/** Rectangle, disc and the outer circle of a ring: press, drag, let go. */
export const drawGesture = (host: PlanHost, start: Input, tool: 'rectangle' | 'disc' | 'ring'): Gesture => {
  const from = snapPoint(start.at, start.held);
  let draft = draftAt(tool, from, start);
  return {
    move(to) {
      draft = draftAt(tool, from, to);
      host.ui.setState({ draft, tip: { at: to.screen, lines: draftWords(draft, to) } });
    },
    end() {
      const slip = draft.kind === 'ring' && draft.outer_mm === 0;
      if (draft.kind !== 'ring' || slip) commitDraft(host, draft);
    },
    cancel: () => host.ui.setState({ draft: null, tip: null }),
  };
};

const nearFirst = (host: PlanHost, first: PlatePoint, at: PlatePoint): boolean =>
  distance(first, at) * host.camera().pxPerMm <= CLOSE_PX;

/** A press with the polygon or zone tool: a corner, or the end of the drawing. */
export const pressCorner = (host: PlanHost, tool: 'polygon' | 'zone', input: Input): void => {
  const { draft } = host.ui.getState();
  const at = snapPoint(input.at, input.held);
  const points = draft && (draft.kind === 'polygon' || draft.kind === 'zone') ? draft.points : [];
  if (points.length >= 3 && nearFirst(host, points[0], input.at))
    return commitDraft(host, { kind: tool, points, to: at });
  const last = points.at(-1);
  const repeated = last !== undefined && distance(last, at) === 0;
  host.ui.setState({ draft: { kind: tool, points: repeated ? points : [...points, at], to: at } });
};

/** Ends a polygon or zone under way; false where it has too few corners. */
export const finishCorners = (host: PlanHost): boolean => {
  const { draft } = host.ui.getState();
  if (draft?.kind !== 'polygon' && draft?.kind !== 'zone') return false;
  if (draft.points.length < 3) return false;
  commitDraft(host, draft);
  return true;
};

/** Takes the last corner back; the drawing ends with its first corner. */
export const dropCorner = ({ ui }: PlanHost): void => {
  const { draft } = ui.getState();
  if (draft?.kind !== 'polygon' && draft?.kind !== 'zone') return;
  ui.setState({ draft: draft.points.length > 1 ? { ...draft, points: draft.points.slice(0, -1) } : null });
};

/** A drawing that goes on between presses follows the pointer: a polygon's next side, a ring's inner circle. */
export const followDraft = (host: PlanHost, to: Input): void => {
  const { draft } = host.ui.getState();
  if (!draft) return;
  const at = snapPoint(to.at, to.held);
  let next = draft;
  if (draft.kind === 'polygon' || draft.kind === 'zone') next = { ...draft, to: at };
  if (draft.kind === 'ring') {
    const inner = snapMm(Math.min(distance(draft.centre, at), draft.outer_mm), to.held);
    next = { ...draft, inner_mm: inner };
  }
  host.ui.setState({ draft: next, tip: { at: to.screen, lines: draftWords(next, to) } });
};
