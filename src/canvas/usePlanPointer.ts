/**
 * Wires the browser's pointer and wheel to the plan's controller. One pointer works at a time; losing it in any way
 * cancels what it was doing.
 */
import {
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  type PointerEvent,
  type RefObject,
} from 'react';
import type { Tool } from '../store/types';
import { useWorkbench } from './bench';
import type { Size } from './camera';
import { createController, type Controller, type DrawingTools } from './gestures/controller';
import type { Gesture, Input, PlanHost } from './gestures/gesture';
import { createPlanUi, setsPlaces } from './gestures/planUi';
import type { Touch } from './gestures/touch';
import { heldOf } from './heldKeys';
import { cameraOf } from './viewport';

type PlanElement = RefObject<HTMLElement | null>;
/** A press on a handle of the plan: begins the handle's gesture. */
type PressHandle = (event: PointerEvent, begin: (start: Input) => Gesture) => void;

export interface PlanPointer {
  readonly host: PlanHost;
  readonly controller: Controller;
  readonly pressHandle: PressHandle;
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent) => void;
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerUp: (event: PointerEvent) => void;
    readonly onPointerCancel: (event: PointerEvent) => void;
    readonly onLostPointerCapture: (event: PointerEvent) => void;
    readonly onPointerLeave: () => void;
    readonly onDoubleClick: () => void;
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

/** The wheel must be able to stop the page from scrolling, so it is not a passive listener. */
function useWheelZoom(element: PlanElement, controller: Controller): void {
  useEffect(() => {
    const node = element.current;
    if (!node) return undefined;
    const zoom = (event: WheelEvent) => {
      event.preventDefault();
      const frame = node.getBoundingClientRect();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      const at = { left: event.clientX - frame.left, top: event.clientY - frame.top };
      controller.wheel(at, event.deltaY * lines, event.ctrlKey, event.deltaX * lines);
    };
    node.addEventListener('wheel', zoom, { passive: false });
    return () => node.removeEventListener('wheel', zoom);
  }, [element, controller]);
}

const CURSORS: Partial<Readonly<Record<Tool, string>>> = { select: 'default', pan: 'grab' };

/**
 * A drawing under way belongs to its tool: it goes when another tool, or the same one anew, is taken up. While a drawing
 * tool is in hand the handles let the pointer through, so that a corner can stand under them.
 */
function useFreshTool(element: PlanElement, host: PlanHost, controller: Controller): void {
  useEffect(() => {
    const { store } = host.bench;
    const take = (tool: Tool) => {
      controller.cancel();
      host.ui.setState({
        draft: null,
        tip: null,
        cross: null,
        seam: null,
        caught: null,
        measureFrom: null,
        cursor: CURSORS[tool] ?? 'crosshair',
      });
      element.current?.toggleAttribute('data-drawing', setsPlaces(tool));
    };
    take(store.getState().view.tool);
    return store.subscribe(({ view, layout }, before) => {
      // a measure under way began on the plate as it was
      if (layout !== before.layout) host.ui.setState({ measureFrom: null, caught: null });
      if (view.tool !== before.view.tool) take(view.tool);
    });
  }, [element, host, controller]);
}

/** The plan's controller, and what it works on, for as long as the plan is shown. */
function useController(size: Size) {
  const bench = useWorkbench();
  const [ui] = useState(createPlanUi);
  useLayoutEffect(() => ui.setState({ size }), [ui, size]);
  return useMemo(() => {
    const host: PlanHost = {
      bench,
      ui,
      magnet: (ids) => drawingTools()?.createMagnet(host, ids) ?? null,
      camera: () => cameraOf(bench),
      size: () => ui.getState().size,
    };
    return { host, controller: createController(host, requestAnimationFrame, drawingTools) };
  }, [bench, ui]);
}

/** The one pointer that works: the first that presses, until it lets go. */
function useOnePointer(element: PlanElement) {
  const active = useRef<number | null>(null);
  return useMemo(
    () => ({
      /** True for any pointer but the one that works. */
      isOther: ({ pointerId }: PointerEvent) => active.current !== null && active.current !== pointerId,
      hold: ({ pointerId }: PointerEvent) => {
        active.current = pointerId;
        element.current?.setPointerCapture(pointerId);
      },
      letGo: () => {
        active.current = null;
      },
    }),
    [element],
  );
}
type OnePointer = ReturnType<typeof useOnePointer>;
type InputOf = (event: PointerEvent) => Input;

/** Fingers and pens, as soon as their code has come; null for a mouse. */
const touchFinder = (host: PlanHost, controller: Controller, pointer: OnePointer) => {
  let touch: Touch | null = null;
  const giveUp = () => {
    pointer.letGo();
    controller.cancel();
  };
  return ({ pointerType }: PointerEvent): Touch | null => {
    if (pointerType === 'mouse') return null;
    return (touch ??= drawingTools()?.createTouch(host, giveUp) ?? null);
  };
};
type TouchOf = ReturnType<typeof touchFinder>;

const pointerHandlers = (
  controller: Controller,
  pointer: OnePointer,
  inputOf: InputOf,
  touchOf: TouchOf,
) => ({
  onPointerDown: (event: PointerEvent) => {
    const client = { left: event.clientX, top: event.clientY };
    if (touchOf(event)?.down(event.pointerId, inputOf(event), client)) return;
    if (event.button > 1 || pointer.isOther(event)) return;
    if (event.button === 1) event.preventDefault();
    pointer.hold(event);
    controller.press(inputOf(event), event.button === 1);
  },
  onPointerMove: (event: PointerEvent) => {
    if (touchOf(event)?.move(event.pointerId, inputOf(event))) return;
    if (!pointer.isOther(event)) controller.move(inputOf(event));
  },
  onPointerUp: (event: PointerEvent) => {
    if (touchOf(event)?.up(event.pointerId)) return;
    if (pointer.isOther(event)) return;
    pointer.letGo();
    controller.release(inputOf(event));
  },
  onPointerCancel: (event: PointerEvent) => {
    touchOf(event)?.up(event.pointerId);
    if (pointer.isOther(event)) return;
    pointer.letGo();
    controller.cancel();
  },
  onLostPointerCapture: (event: PointerEvent) => {
    if (pointer.isOther(event)) return;
    pointer.letGo();
    if (controller.busy()) controller.cancel();
  },
  onPointerLeave: () => controller.leave(),
  onDoubleClick: () => controller.doubleClick(),
});

export function usePlanPointer(element: PlanElement, size: Size): PlanPointer {
  const { host, controller } = useController(size);
  const pointer = useOnePointer(element);
  useDrawingTools();
  useWheelZoom(element, controller);
  useFreshTool(element, host, controller);
  const touchOf = useMemo(() => touchFinder(host, controller, pointer), [host, controller, pointer]);

  const inputOf: InputOf = (event) => {
    const frame = element.current!.getBoundingClientRect();
    const screen = { left: event.clientX - frame.left, top: event.clientY - frame.top };
    return controller.input(screen, heldOf(event));
  };
  const pressHandle: PressHandle = (event, begin) => {
    event.stopPropagation();
    if (event.button !== 0 || pointer.isOther(event)) return;
    pointer.hold(event);
    element.current?.focus({ preventScroll: true });
    controller.begin(begin(inputOf(event)));
  };
  const handlers = pointerHandlers(controller, pointer, inputOf, touchOf);
  return { host, controller, pressHandle, handlers };
}
