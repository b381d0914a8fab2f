/**
 * Drawing tools. Rectangle: corner to corner. Disc: from the centre outward. Ring: outer radius first, then the inner
 * one with a second press. Polygon and zone are drawn in corners.ts. What a drawing becomes on the plate, and what is
 * said about it. Platform millimetres on the steps of a drag.
 */
import { t, type Text } from '../../language/index';
import { addedParts } from '../../commands/operations/names';
import { addDrawnPart, type Drawing } from '../../commands/operations/shapes';
import { addDrawnZone } from '../../commands/operations/zones';
import { clean } from '../../geometry/clipper';
import { MOST_PARTS } from '../../layout/limits';
import type { Fault, Words } from '../../layout/result';
import type { LaserId, Layout, LayoutAt, Point } from '../../layout/types';
import { changeZones } from '../../store/shown';
import type { Workbench } from '../../store/types';
import type { PlatePoint } from '../../units/types';
import { snapMm, snapPoint } from '../snapping';
import type { Gesture, Input, PlanHost } from './gesture';
import { cornerDraft, type CornerDraft, type Draft, type DrawTool, type PartDraft } from './planUi';
import { placeWords, sizeWords, mmWords } from './words';

const point = (p: PlatePoint): Point => [p.x, p.y];
const distance = (a: PlatePoint, b: PlatePoint): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The first laser that has no drawn zone yet; the first of all where each has one. */
const nextZoneLaser = ({ machine, zoning }: LayoutAt): LaserId => {
  const used = zoning.strategy === 'drawn' ? zoning.zones.flatMap((zone) => zone.lasers) : [];
  const free = machine.lasers.find((laser) => laser.on && !used.includes(laser.id));
  return (free ?? machine.lasers[0]).id;
};

const drawingOf = (draft: PartDraft): Drawing => {
  switch (draft.kind) {
    case 'rectangle':
      return { kind: 'rectangle', from: point(draft.from), to: point(draft.to) };
    case 'disc':
      return { kind: 'disc', centre: point(draft.centre), radius_mm: draft.radius_mm };
    case 'ring':
      return { ...draft, centre: point(draft.centre) };
    case 'polygon':
      return { kind: 'polygon', points: draft.points.map(point) };
  }
};

const NAMES: Readonly<Record<DrawTool, Text>> = {
  rectangle: 'Draw a rectangle',
  disc: 'Draw a disc',
  ring: 'Draw a ring',
  polygon: 'Draw a polygon',
  zone: 'Draw a zone',
};

const commitZone = (bench: Workbench, { points }: CornerDraft): void =>
  changeZones(bench, t(NAMES.zone), (plate) =>
    addDrawnZone(plate, [points.map(point)], [nextZoneLaser(plate)]),
  );

const commitPart = (bench: Workbench, draft: PartDraft): void => {
  const { layout: before, view } = bench.store.getState();
  bench.change(t(NAMES[draft.kind]), (layout) => addDrawnPart(layout, drawingOf(draft), view.drawHeight_mm));
  const added = addedParts(before, bench.store.getState().layout);
  if (added.length > 0) bench.setView({ selection: added, tool: 'select' });
};

/** True where an outline crosses or overlaps itself, by the test that opened files go through. */
const crossesItself = (points: readonly PlatePoint[]): boolean =>
  clean([Float64Array.from(points.flatMap(point))], 'evenOdd').repaired;

/** What the hand cannot see: an outline that crosses itself is taken by the even-odd rule, or encloses nothing. */
const outlineFault = ({ kind, points }: CornerDraft, taken: boolean): Fault | null => {
  const what: Words = { text: kind === 'zone' ? 'zone ¦ drawn' : 'part ¦ drawn' };
  if (!taken) return { code: 'drawing-without-area', params: { what } };
  return crossesItself(points) ? { code: 'drawing-crosses-itself', params: { what } } : null;
};

const draftFault = (draft: Draft, before: Layout, after: Layout): Fault | null => {
  const full = before === after && draft.kind !== 'zone' && before.parts.length >= MOST_PARTS;
  if (full) return { code: 'too-many-parts', params: { found: before.parts.length + 1, limit: MOST_PARTS } };
  const corners = cornerDraft(draft);
  return corners && outlineFault(corners, before !== after);
};

/** Puts a finished drawing on the plate; a drawn part is selected and the hand is free again. */
export const commitDraft = ({ bench, ui }: PlanHost, draft: Draft): void => {
  ui.setState({ draft: null, tip: null });
  if (draft.kind === 'box') return;
  const before = bench.store.getState().layout;
  if (draft.kind === 'zone') commitZone(bench, draft);
  else commitPart(bench, draft);
  const fault = draftFault(draft, before, bench.store.getState().layout);
  if (fault) bench.notify(fault);
};

const draftAt = (tool: 'rectangle' | 'disc' | 'ring', from: PlatePoint, to: Input): Draft => {
  const at = snapPoint(to.at, to.held);
  if (tool === 'rectangle') return { kind: 'rectangle', from, to: at };
  const radius_mm = snapMm(distance(from, at), to.held);
  if (tool === 'disc') return { kind: 'disc', centre: from, radius_mm };
  return { kind: 'ring', centre: from, outer_mm: radius_mm, inner_mm: snapMm(radius_mm / 2, to.held) };
};

/** Coordinates and size of a drawing under way. */
const draftWords = (draft: Draft, to: Input): readonly string[] => {
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
      return last
        ? [place, t('side {length}', { length: mmWords(distance(last, draft.to), to.held) })]
        : [place];
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

/** A drawing that goes on between presses follows the pointer: a polygon's next side, a ring's inner circle. */
export const followDraft = (host: PlanHost, to: Input): void => {
  const { draft } = host.ui.getState();
  if (!draft) return;
  const at = snapPoint(to.at, to.held);
  const corners = cornerDraft(draft);
  let next: Draft = corners ? { ...corners, to: at } : draft;
  if (draft.kind === 'ring') {
    const inner = snapMm(Math.min(distance(draft.centre, at), draft.outer_mm), to.held);
    next = { ...draft, inner_mm: inner };
  }
  host.ui.setState({ draft: next, tip: { at: to.screen, lines: draftWords(next, to) } });
};
