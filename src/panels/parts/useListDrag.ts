/**
 * The pointer's part of dragging rows: the grip keeps the pointer, the list scrolls while it is held near an edge, and
 * Escape, a cancelled touch, a lost pointer or a window that is left put everything back.
 */
import type { PointerEvent as ReactPointerEvent, RefObject } from 'react';
import { useCallback, useEffect, useRef, useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import type { PartId } from '../../layout/types';
import { dragRows, type Carried, type ListDrag } from './listDrag';

/** Nearer than this to an edge of the list, px, it scrolls; so many px a frame at most. */
const EDGE_PX = 28;
const SCROLL_PX = 9;

/** Px a frame that the list scrolls with the pointer at `y`: up is negative. */
function scrollSpeed(y: number, { top, bottom }: Pick<DOMRect, 'top' | 'bottom'>): number {
  const inside = Math.min(y - top, bottom - y);
  if (inside >= EDGE_PX) return 0;
  const share = Math.min(1, (EDGE_PX - inside) / EDGE_PX);
  return (y - top < bottom - y ? -1 : 1) * Math.ceil(share * SCROLL_PX);
}

interface Follow {
  readonly grip: Element;
  readonly pointerId: number;
  readonly list: HTMLElement;
  readonly drag: ListDrag;
  pressed(event: PointerEvent): void;
}

/** Follows the pointer until it lets go; returns the way to give up. */
function follow({ grip, pointerId, list, drag, pressed }: Follow): () => void {
  const heard = new AbortController();
  let y: number | null = null;
  let frame = 0;
  const stop = (): void => {
    cancelAnimationFrame(frame);
    heard.abort();
    if (grip.hasPointerCapture(pointerId)) grip.releasePointerCapture(pointerId);
  };
  const cancel = (): void => {
    drag.cancel();
    stop();
  };
  const step = (): void => {
    frame = requestAnimationFrame(step);
    if (y === null || !drag.open()) return;
    const before = list.scrollTop;
    list.scrollTop += scrollSpeed(y, list.getBoundingClientRect());
    if (list.scrollTop !== before && !drag.move(y)) stop();
  };
  const on = <K extends keyof WindowEventMap>(kind: K, hear: (event: WindowEventMap[K]) => void): void =>
    window.addEventListener(kind, hear, { signal: heard.signal, capture: true });
  const ours = (hear: (event: PointerEvent) => void) => (event: PointerEvent) => {
    if (event.pointerId === pointerId) hear(event);
  };
  on(
    'pointermove',
    ours((event) => {
      y = event.clientY;
      if (!drag.move(y)) stop();
    }),
  );
  on(
    'pointerup',
    ours((event) => {
      const dragged = drag.end();
      stop();
      if (!dragged) pressed(event);
    }),
  );
  on('pointercancel', ours(cancel));
  on('lostpointercapture', ours(cancel));
  on('blur', (event) => event.target === window && cancel());
  on('contextmenu', (event) => event.preventDefault());
  on('keydown', (event) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    event.preventDefault();
    cancel();
  });
  grip.setPointerCapture(pointerId);
  frame = requestAnimationFrame(step);
  return cancel;
}

export type Grab = (
  id: PartId,
  event: ReactPointerEvent<HTMLElement>,
  pressed: (event: PointerEvent) => void,
) => void;

/** What is carried, and the way to take hold of a row. */
export function useListDrag(list: RefObject<HTMLElement | null>): {
  readonly carried: Carried | null;
  readonly grab: Grab;
} {
  const bench = useWorkbench();
  const [carried, setCarried] = useState<Carried | null>(null);
  const giveUp = useRef<(() => void) | null>(null);
  useEffect(() => () => giveUp.current?.(), []);
  const grab = useCallback<Grab>(
    (id, event, pressed) => {
      const body = list.current?.querySelector('tbody');
      if (!list.current || !body || event.button !== 0 || !event.isPrimary) return;
      giveUp.current?.();
      const rows = () => body.getBoundingClientRect();
      const drag = dragRows({ bench, rows, show: setCarried }, id, event.clientY);
      const { currentTarget: grip, pointerId } = event;
      giveUp.current = follow({ grip, pointerId, list: list.current, drag, pressed });
    },
    [bench, list],
  );
  return { carried, grab };
}
