/**
 * Wires the browser's pointer, wheel and keys to the plan's controller. One pointer works at a time; losing it in any
 * way cancels what it was doing.
 */
import {
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  type KeyboardEvent,
  type PointerEvent,
  type RefObject,
} from 'react';
import type { Tool } from '../store/types';
import type { ScreenPoint } from '../units/types';
import { useBench, useWorkbench } from './bench';
import { createController, type Controller, type DrawingTools } from './gestures/controller';
import type { Gesture, Input, PlanHost } from './gestures/gesture';
import { createPlanUi, isDrawTool } from './gestures/planUi';
import { arrowOf, heldOf } from './Handle';
import type { Size } from './camera';
import { cameraOf } from './viewport';

const MODIFIERS = ['Shift', 'Alt', 'Control', 'Meta'];
const CROSS_STEP_MM = 1;

export interface PlanPointer {
  readonly host: PlanHost;
  readonly pressHandle: (event: PointerEvent, begin: (start: Input) => Gesture) => void;
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent) => void;
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerUp: (event: PointerEvent) => void;
    readonly onPointerCancel: () => void;
    readonly onLostPointerCapture: () => void;
    readonly onPointerLeave: () => void;
    readonly onDoubleClick: () => void;
    readonly onKeyDown: (event: KeyboardEvent) => void;
  };
}

let loadedTools: DrawingTools | null = null;
const drawingTools = (): DrawingTools | null => loadedTools;
/** The tools come right after the plate; choosing one takes longer than loading it. */
function useDrawingTools(): void {
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      void import('./gestures/later').then((tools) => (loadedTools = tools));
    });
    return () => cancelAnimationFrame(frame);
  }, []);
}

/** Moves the keyboard's cross, or presses with it. True where the key was used. */
const crossKey = (host: PlanHost, controller: Controller, event: KeyboardEvent): boolean => {
  const camera = host.camera();
  const held = heldOf(event);
  const present = host.ui.getState().cross ?? {
    x: Math.round(camera.centreX_mm),
    y: Math.round(camera.centreY_mm),
  };
  const input: Input = {
    at: present,
    screen: {
      left: host.size().width / 2 + (present.x - camera.centreX_mm) * camera.pxPerMm,
      top: host.size().height / 2 - (present.y - camera.centreY_mm) * camera.pxPerMm,
    },
    held,
  };
  const arrow = arrowOf(event.key);
  if (arrow) {
    const step = CROSS_STEP_MM * (held.shift ? 10 : held.ctrl ? 0.1 : 1);
    const at = { x: present.x + arrow.x * step, y: present.y + arrow.y * step };
    host.ui.setState({ cross: at });
    controller.move({ at, screen: input.screen, held: { ...held, shift: false } });
    return true;
  }
  if (event.key !== ' ' && event.key !== 'Enter') return false;
  host.ui.setState({ cross: present });
  if (controller.busy()) controller.release(input);
  else controller.press(input, false);
  return true;
};

/** Typing and dialogs keep their own keys. */
const isElsewhere = (target: EventTarget | null): boolean =>
  target instanceof Element &&
  target.closest('input, textarea, select, [contenteditable], [role=dialog]') !== null;

/** Keys while something is under way come before the page's commands: Escape cancels, others wait. */
function useUrgentKeys(host: PlanHost, controller: Controller): void {
  useEffect(() => {
    const down = (event: globalThis.KeyboardEvent) => {
      if (MODIFIERS.includes(event.key)) controller.modifiers(heldOf(event));
      if (!controller.busy() && isElsewhere(event.target)) return;
      const used = controller.key(event.key);
      const dragging = controller.busy() && host.bench.gestureOpen();
      if (!used && !(dragging && !MODIFIERS.includes(event.key))) return;
      event.preventDefault();
      event.stopPropagation();
    };
    const up = (event: globalThis.KeyboardEvent) => {
      if (MODIFIERS.includes(event.key)) controller.modifiers(heldOf(event));
    };
    const away = () => controller.cancel();
    window.addEventListener('keydown', down, true);
    window.addEventListener('keyup', up, true);
    window.addEventListener('blur', away);
    return () => {
      window.removeEventListener('keydown', down, true);
      window.removeEventListener('keyup', up, true);
      window.removeEventListener('blur', away);
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
    const down = (event: globalThis.KeyboardEvent) => {
      if (event.key !== ' ' || !isOurs()) return;
      event.preventDefault();
      host.ui.setState({ panKey: true });
    };
    const up = (event: globalThis.KeyboardEvent) => {
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

/** The wheel must be able to stop the page from scrolling, so it is not a passive listener. */
function useWheelZoom(element: RefObject<HTMLElement | null>, controller: Controller): void {
  useEffect(() => {
    const node = element.current;
    if (!node) return undefined;
    const zoom = (event: WheelEvent) => {
      event.preventDefault();
      const frame = node.getBoundingClientRect();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      const at = { left: event.clientX - frame.left, top: event.clientY - frame.top };
      controller.wheel(at, event.deltaY * lines, event.ctrlKey);
    };
    node.addEventListener('wheel', zoom, { passive: false });
    return () => node.removeEventListener('wheel', zoom);
  }, [element, controller]);
}

/** A drawing under way belongs to its tool. */
function useFreshTool(host: PlanHost, controller: Controller): void {
  const tool = useBench((state): Tool => state.view.tool);
  useEffect(() => {
    const cursor = tool === 'select' ? 'default' : tool === 'pan' ? 'grab' : 'crosshair';
    host.ui.setState({ cursor });
    return () => {
      controller.cancel();
      host.ui.setState({ draft: null, tip: null, cross: null, seam: null });
    };
  }, [tool, host, controller]);
}

export function usePlanPointer(element: RefObject<HTMLElement | null>, size: Size): PlanPointer {
  const bench = useWorkbench();
  const [ui] = useState(createPlanUi);
  const active = useRef<number | null>(null);
  useLayoutEffect(() => ui.setState({ size }), [ui, size]);
  const { host, controller } = useMemo(() => {
    const made: PlanHost = { bench, ui, camera: () => cameraOf(bench), size: () => ui.getState().size };
    return { host: made, controller: createController(made, requestAnimationFrame, drawingTools) };
  }, [bench, ui]);
  useDrawingTools();
  useUrgentKeys(host, controller);
  useSpacePan(element, host);
  useWheelZoom(element, controller);
  useFreshTool(host, controller);

  const screenOf = (event: PointerEvent): ScreenPoint => {
    const frame = element.current!.getBoundingClientRect();
    return { left: event.clientX - frame.left, top: event.clientY - frame.top };
  };
  const inputOf = (event: PointerEvent): Input => controller.input(screenOf(event), heldOf(event));
  const other = (event: PointerEvent) => active.current !== null && active.current !== event.pointerId;
  const hold = (event: PointerEvent) => {
    active.current = event.pointerId;
    element.current?.setPointerCapture(event.pointerId);
  };
  const drop = () => {
    active.current = null;
    controller.cancel();
  };
  return {
    host,
    pressHandle: (event, begin) => {
      event.stopPropagation();
      if (event.button !== 0 || other(event)) return;
      hold(event);
      element.current?.focus({ preventScroll: true });
      controller.begin(begin(inputOf(event)));
    },
    handlers: {
      onPointerDown: (event) => {
        if (event.button > 1 || other(event)) return;
        if (event.button === 1) event.preventDefault();
        hold(event);
        controller.press(inputOf(event), event.button === 1);
      },
      onPointerMove: (event) => {
        if (!other(event)) controller.move(inputOf(event));
      },
      onPointerUp: (event) => {
        if (other(event)) return;
        active.current = null;
        controller.release(inputOf(event));
      },
      onPointerCancel: drop,
      onLostPointerCapture: () => {
        if (controller.busy()) drop();
        active.current = null;
      },
      onPointerLeave: () => controller.leave(),
      onDoubleClick: () => controller.doubleClick(),
      onKeyDown: (event) => {
        if (event.target !== element.current || !isDrawTool(bench.store.getState().view.tool)) return;
        if (!crossKey(host, controller, event)) return;
        event.preventDefault();
        event.stopPropagation();
      },
    },
  };
}
