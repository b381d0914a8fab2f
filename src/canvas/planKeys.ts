/**
 * The plan's own keys: the cross that arrows move while a drawing tool is in hand, keys for what is under way, Space held
 * to pan. Platform millimetres.
 */
import { useEffect, type RefObject } from 'react';
import { answerForPointer } from '../commands/pointerPlace';
import type { PlatePoint } from '../units/types';
import { toScreen } from './camera';
import type { Controller } from './gestures/controller';
import type { Input, PlanHost } from './gestures/gesture';
import { askMenu } from './gestures/menu';
import { isCornerTool, setsPlaces } from './gestures/planUi';
import { arrowOf } from './arrowKeys';
import { heldOf } from './heldKeys';
import { footprintBox } from './plan/items';

const MODIFIERS = ['Shift', 'Alt', 'Control', 'Meta'];
const CROSS_STEP_MM = 1;

/** Where the cross stands; the middle of the view before it was used. */
const crossInput = (host: PlanHost, event: KeyboardEvent): Input => {
  const camera = host.camera();
  const middle = { x: Math.round(camera.centreX_mm), y: Math.round(camera.centreY_mm) };
  const at = host.ui.getState().cross ?? middle;
  return { at, screen: toScreen(at, camera, host.size()), held: heldOf(event) };
};

const moveCross = (host: PlanHost, controller: Controller, from: Input, arrow: { x: number; y: number }) => {
  const { held } = from;
  const step = CROSS_STEP_MM * (held.shift ? 10 : held.ctrl ? 0.1 : 1);
  const at = { x: from.at.x + arrow.x * step, y: from.at.y + arrow.y * step };
  host.ui.setState({ cross: at });
  const screen = toScreen(at, host.camera(), host.size());
  controller.move({ at, screen, held: { ...held, shift: false } });
};

const pressCross = (host: PlanHost, controller: Controller, input: Input) => {
  host.ui.setState({ cross: input.at });
  if (controller.busy()) controller.release(input);
  else controller.press(input, false);
};

/**
 * Arrows move the cross, Space presses with it, and so does Enter, which for an outline of corners ends it. True where
 * the key was used.
 */
const crossKey = (host: PlanHost, controller: Controller, event: KeyboardEvent): boolean => {
  const { tool } = host.bench.store.getState().view;
  if (!setsPlaces(tool)) return false;
  const input = crossInput(host, event);
  const arrow = arrowOf(event.key);
  if (arrow) moveCross(host, controller, input, arrow);
  else if (event.key === 'Enter' && isCornerTool(tool)) controller.finish();
  else if (event.key === 'Enter' || event.key === ' ') pressCross(host, controller, input);
  else return false;
  return true;
};

/** Typing and dialogs keep their own keys. */
const isElsewhere = (target: EventTarget | null): boolean =>
  target instanceof Element &&
  target.closest('input, textarea, select, [contenteditable], [role=dialog]') !== null;

/** Keys of the cross, while the plan itself has the focus. */
function useCrossKeys(element: RefObject<HTMLElement | null>, host: PlanHost, controller: Controller): void {
  useEffect(() => {
    const plan = element.current;
    const down = (event: KeyboardEvent) => {
      if (event.target !== plan || !crossKey(host, controller, event)) return;
      event.preventDefault();
      event.stopPropagation();
    };
    plan?.addEventListener('keydown', down);
    return () => plan?.removeEventListener('keydown', down);
  }, [element, host, controller]);
}

/** Keys while something is under way come before the page's commands: Escape cancels, others wait. */
function useUrgentKeys(host: PlanHost, controller: Controller): void {
  useEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (MODIFIERS.includes(event.key)) controller.modifiers(heldOf(event));
      if (!controller.busy() && isElsewhere(event.target)) return;
      const used = controller.key(event.key);
      // a box that is being drawn selects as it grows: what would act on the selection waits, too
      const boxing = host.ui.getState().pressed && host.bench.store.getState().view.tool === 'select';
      const dragging = controller.busy() && (host.bench.gestureOpen() || boxing);
      if (!used && !(dragging && !MODIFIERS.includes(event.key))) return;
      event.preventDefault();
      event.stopPropagation();
    };
    const up = (event: KeyboardEvent) => {
      if (MODIFIERS.includes(event.key)) controller.modifiers(heldOf(event));
    };
    const away = () => controller.cancel();
    window.addEventListener('keydown', down, true);
    window.addEventListener('keyup', up, true);
    window.addEventListener('blur', away);
    // Switching to another tab hides the page without the window losing the focus on every system.
    document.addEventListener('visibilitychange', away);
    return () => {
      window.removeEventListener('keydown', down, true);
      window.removeEventListener('keyup', up, true);
      window.removeEventListener('blur', away);
      document.removeEventListener('visibilitychange', away);
      controller.cancel();
    };
  }, [host, controller]);
}

/** Space held over the plan pans; focus on a button elsewhere keeps its own Space. */
function useSpacePan(element: RefObject<HTMLElement | null>, host: PlanHost): void {
  useEffect(() => {
    const isOurs = () => {
      const focused = document.activeElement;
      const free = focused === null || focused === document.body || focused === element.current;
      return free && host.ui.getState().pointer !== null && element.current?.matches(':hover') === true;
    };
    const down = (event: KeyboardEvent) => {
      if (event.key !== ' ' || !isOurs()) return;
      event.preventDefault();
      host.ui.setState({ panKey: true });
    };
    const up = (event: KeyboardEvent) => {
      if (event.key === ' ') host.ui.setState({ panKey: false });
    };
    const away = () => host.ui.setState({ panKey: false });
    window.addEventListener('keydown', down);
    window.addEventListener('keyup', up);
    window.addEventListener('blur', away);
    return () => {
      window.removeEventListener('keydown', down);
      window.removeEventListener('keyup', up);
      window.removeEventListener('blur', away);
    };
  }, [element, host]);
}

export interface PlanKeysProps {
  /** The plan's own element. */
  readonly element: RefObject<HTMLElement | null>;
  readonly host: PlanHost;
  readonly controller: Controller;
}

/** The menu key has no place of its own: the middle of the first selected part, else of the view. */
const keyPlace = ({ bench, camera }: PlanHost): PlatePoint => {
  const { selection } = bench.store.getState().view;
  const part = bench.analysis().parts.find(({ id }) => id === selection[0]);
  if (!part) return { x: camera().centreX_mm, y: camera().centreY_mm };
  const box = footprintBox(part);
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
};

const RIGHT_BUTTON = 2;

/** A right click, or the menu key, asks for the menu. */
function useMenuRequests(element: RefObject<HTMLElement | null>, host: PlanHost, controller: Controller) {
  useEffect(() => {
    const plan = element.current;
    const ask = (event: MouseEvent) => {
      event.preventDefault();
      controller.cancel();
      const frame = plan!.getBoundingClientRect();
      const screen = { left: event.clientX - frame.left, top: event.clientY - frame.top };
      const pointed = event.button === RIGHT_BUTTON || (event as PointerEvent).pointerType === 'touch';
      const at = pointed ? controller.input(screen).at : keyPlace(host);
      const { left, top } = pointed ? screen : toScreen(at, host.camera(), host.size());
      askMenu(host, at, { left: left + frame.left, top: top + frame.top });
    };
    plan?.addEventListener('contextmenu', ask);
    return () => plan?.removeEventListener('contextmenu', ask);
  }, [element, host, controller]);
}

/** Listens to the plan's keys for as long as it is mounted; shows nothing. */
export function PlanKeys({ element, host, controller }: PlanKeysProps): null {
  useUrgentKeys(host, controller);
  useSpacePan(element, host);
  useCrossKeys(element, host, controller);
  useMenuRequests(element, host, controller);
  useEffect(() => {
    const place = () => host.ui.getState().menu?.at ?? host.ui.getState().pointer;
    return answerForPointer(host.bench, place);
  }, [host]);
  return null;
}
