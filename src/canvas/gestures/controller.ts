/**
 * What the pointer and the keys do on the plan, by tool. The free hand selects, moves and lights up; drawing tools draw;
 * the middle button, or Space held, pans whatever the tool. Zoom keeps the point under the pointer.
 */
import type { PlatePoint, ScreenPoint } from '../../units/types';
import { panBy, toPlate, zoomAt } from '../camera';
import { NO_MODIFIERS, type Modifiers } from '../snapping';
import type * as Corners from './corners';
import type * as Drawing from './drawing';
import type * as Magnets from './magnet';
import type { Gesture, Input, PlanHost } from './gesture';
import { createHand, type Hand } from './hand';
import { panGesture } from './looking';
import { cornerDraft, isCornerTool } from './planUi';
import type * as Measuring from './measuring';
import type * as Touching from './touch';
import { hoverSelect, pressSelect, type ZoneTools } from './select';

/** Zoom per px of wheel travel; a pinch on a trackpad sends small steps. */
const WHEEL_RATE = 0.0015;
const PINCH_RATE = 0.01;

export interface Controller {
  input(screen: ScreenPoint, held?: Modifiers): Input;
  /** A press on the plan; `middle` pans whatever the tool. */
  press(input: Input, middle: boolean): void;
  /** A press on a handle: begins its gesture. */
  begin(gesture: Gesture): void;
  move(input: Input): void;
  release(input: Input): void;
  cancel(): void;
  leave(): void;
  doubleClick(): void;
  /** Ends an outline of corners, or says what it lacks. */
  finish(): void;
  /** A turn of the wheel, or two fingers on a trackpad: zooms or pans as the view says; a pinch always zooms. */
  wheel(at: ScreenPoint, delta: number, pinch: boolean, aside?: number): void;
  /** Modifier keys changed while the pointer rests. */
  modifiers(held: Modifiers): void;
  /** Enter, Escape, Backspace for a drawing or gesture under way; true where the key was used. */
  key(key: string): boolean;
  busy(): boolean;
}

/** Drawing and reshaping zones, whose code is loaded apart from the free hand's; null until it is there. */
export type DrawingTools = Pick<typeof Drawing, 'commitDraft' | 'drawGesture' | 'followDraft'> &
  Pick<typeof Corners, 'cornerGesture' | 'dropCorner' | 'finishCorners'> &
  Pick<typeof Measuring, 'followMeasure' | 'measureGesture'> &
  Pick<typeof Touching, 'createTouch'> &
  Pick<typeof Magnets, 'createMagnet'> &
  ZoneTools;
type GetTools = () => DrawingTools | null;

const toolOf = ({ bench }: PlanHost) => bench.store.getState().view.tool;

const press = (
  host: PlanHost,
  hand: Hand,
  at: Input,
  middle: boolean,
  drawing: DrawingTools | null,
): void => {
  const tool = toolOf(host);
  const { draft, panKey } = host.ui.getState();
  if (middle || panKey || tool === 'pan') return hand.begin(panGesture(host, at));
  if (tool === 'select') {
    const taken = pressSelect(host, at, drawing);
    return taken ? hand.begin(taken) : undefined;
  }
  if (drawing === null) return undefined;
  if (tool === 'measure') return hand.begin(drawing.measureGesture(host, at));
  if (draft?.kind === 'ring') return drawing.commitDraft(host, draft);
  if (isCornerTool(tool)) return hand.begin(drawing.cornerGesture(host, tool, at));
  return hand.begin(drawing.drawGesture(host, at, tool));
};

const leave = ({ bench, ui }: PlanHost, hand: Hand): void => {
  if (hand.busy()) return;
  hand.forget();
  ui.setState({ pointer: null, cursor: 'default' });
  const { hover } = bench.store.getState().view;
  if (hover?.kind === 'part' || hover?.kind === 'seam') bench.setView({ hover: null });
};

const escape = (host: PlanHost, hand: Hand): boolean => {
  const { draft, seam, measureFrom } = host.ui.getState();
  if (!hand.busy() && !draft && !seam && !measureFrom) return false;
  hand.cancel();
  if (measureFrom) host.bench.setView({ measured: null });
  host.ui.setState({ draft: null, tip: null, seam: null, measureFrom: null, caught: null });
  return true;
};

const tryKey = (host: PlanHost, hand: Hand, key: string, drawing: DrawingTools | null): boolean => {
  if (key === 'Escape') return escape(host, hand);
  if (drawing === null || !cornerDraft(host.ui.getState().draft)) return false;
  if (key === 'Enter') drawing.finishCorners(host);
  else if (key === 'Backspace') drawing.dropCorner(host);
  else return false;
  return true;
};

/** The pointer on its way with no gesture: a drawing follows it, the free hand lights up what lies under it. */
const follow = (host: PlanHost, to: Input, drawing: DrawingTools | null): void => {
  if (host.ui.getState().draft) drawing?.followDraft(host, to);
  else if (toolOf(host) === 'select') hoverSelect(host, to);
  else if (toolOf(host) === 'measure') drawing?.followMeasure(host, to);
};

const wheel = (
  { bench, camera, size }: PlanHost,
  at: ScreenPoint,
  delta: number,
  pinch: boolean,
  aside: number,
): void => {
  if (bench.store.getState().view.wheel === 'pan' && !pinch)
    return bench.setView({ camera: panBy(camera(), -aside, -delta) });
  const factor = Math.exp(-delta * (pinch ? PINCH_RATE : WHEEL_RATE));
  bench.setView({ camera: zoomAt(camera(), at, factor, size()) });
};

/** `nextFrame` runs a callback with the next frame (requestAnimationFrame in the page). */
export const createController = (
  host: PlanHost,
  nextFrame: (run: () => void) => void,
  drawing: GetTools,
): Controller => {
  const { ui } = host;
  let lastScreen: ScreenPoint | null = null;
  const hand = createHand(ui, nextFrame, (to) => follow(host, to, drawing()));
  const input = (screen: ScreenPoint, held: Modifiers = NO_MODIFIERS): Input => {
    const at: PlatePoint = toPlate(screen, host.camera(), host.size());
    return { at, screen, held };
  };
  const move = (to: Input) => {
    lastScreen = to.screen;
    hand.move(to);
  };
  return {
    input,
    move,
    begin: hand.begin,
    release: hand.release,
    cancel: hand.cancel,
    busy: hand.busy,
    press(at, middle) {
      lastScreen = at.screen;
      press(host, hand, at, middle, drawing());
    },
    leave: () => leave(host, hand),
    finish: () => drawing()?.finishCorners(host),
    doubleClick() {
      if (cornerDraft(ui.getState().draft)) drawing()?.finishCorners(host);
    },
    wheel: (at, delta, pinch, aside = 0) => wheel(host, at, delta, pinch, aside),
    modifiers(held) {
      if (lastScreen && (hand.busy() || ui.getState().draft)) move(input(lastScreen, held));
    },
    key: (key) => tryKey(host, hand, key, drawing()),
  };
};
