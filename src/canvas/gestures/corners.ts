/**
 * Outlines drawn corner by corner (polygon, zone): a press per corner, or a drag along a side; Enter, a double click or a press on the first
 * corner ends the drawing, Backspace takes a corner back. Platform millimetres on the steps of a drag.
 */
import { t } from '../../language/index';
import type { PlatePoint } from '../../units/types';
import { toScreen } from '../camera';
import { snapPoint } from '../snapping';
import { commitDraft, followDraft } from './drawing';
import type { Gesture, Input, PlanHost } from './gesture';
import { CORNERS_NEEDED, cornerDraft, type CornerTool } from './planUi';

/** A press this near the first corner closes the outline. Screen px. */
const CLOSE_PX = 12;

const distance = (a: PlatePoint, b: PlatePoint): number => Math.hypot(a.x - b.x, a.y - b.y);

const nearFirst = (host: PlanHost, first: PlatePoint, at: PlatePoint): boolean =>
  distance(first, at) * host.camera().pxPerMm <= CLOSE_PX;

/** A corner, or the end of the drawing. */
export const pressCorner = (host: PlanHost, tool: CornerTool, input: Input): void => {
  const at = snapPoint(input.at, input.held);
  const points = cornerDraft(host.ui.getState().draft)?.points ?? [];
  if (points.length >= CORNERS_NEEDED && nearFirst(host, points[0], input.at))
    return commitDraft(host, { kind: tool, points, to: at });
  const last = points.at(-1);
  const repeated = last !== undefined && distance(last, at) === 0;
  host.ui.setState({ draft: { kind: tool, points: repeated ? points : [...points, at], to: at } });
};

/** A pointer that moved less between press and release has clicked. Screen px. */
const DRAG_PX = 6;

/** A press on the plan: a corner where it begins and, dragged, another one where it ends. */
export const cornerGesture = (host: PlanHost, tool: CornerTool, start: Input): Gesture => {
  const before = host.ui.getState().draft;
  pressCorner(host, tool, start);
  let end: Input | null = null;
  return {
    move(to) {
      end = to;
      followDraft(host, to);
    },
    end() {
      const open = cornerDraft(host.ui.getState().draft);
      if (!open || !end) return;
      const moved = Math.hypot(end.screen.left - start.screen.left, end.screen.top - start.screen.top);
      if (moved >= DRAG_PX) pressCorner(host, tool, end);
    },
    // What the press has closed stays closed.
    cancel: () => host.ui.setState(({ draft }) => ({ draft: draft && before, tip: null })),
  };
};

const missingWords = (corners: number): string => {
  const missing = CORNERS_NEEDED - corners;
  return corners === 0
    ? t('No corner yet, {missing} more needed', { missing })
    : t('{count} [corner|corners] so far, {missing} more needed', { count: corners, missing });
};

/** Ends the drawing; with too few corners it goes on, and words beside the last place say how many are missing. */
export const finishCorners = (host: PlanHost): void => {
  const { draft: any, cross } = host.ui.getState();
  const draft = cornerDraft(any);
  if (draft && draft.points.length >= CORNERS_NEEDED) return commitDraft(host, draft);
  const { centreX_mm, centreY_mm } = host.camera();
  const place = draft?.to ?? cross ?? { x: centreX_mm, y: centreY_mm };
  const at = toScreen(place, host.camera(), host.size());
  host.ui.setState({ tip: { at, lines: [missingWords(draft?.points.length ?? 0)] } });
};

/** Takes the last corner back; the drawing ends with its first corner. */
export const dropCorner = ({ ui }: PlanHost): void => {
  const draft = cornerDraft(ui.getState().draft);
  if (!draft) return;
  ui.setState({ draft: draft.points.length > 1 ? { ...draft, points: draft.points.slice(0, -1) } : null });
};
