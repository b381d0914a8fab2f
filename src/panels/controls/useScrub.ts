/**
 * Numbers changed in steps without typing: arrows and wheel in a focused field, a drag along its label. From the first
 * step to letting go it is one gesture, so one entry of history; Escape takes it back. Steps are the field's own unit;
 * Shift takes ten at once, Alt a tenth. A drag takes a step per 4 px, the wheel one per notch.
 */
import type { KeyboardEvent, PointerEvent } from 'react';
import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { stepField } from './readField';
import type { TypedFieldProps } from './TypedField';

const PX_PER_STEP = 4;
/** A press that wandered less is a click on the label. */
const THRESHOLD_PX = 3;
const WHEEL_PX_PER_STEP = 100;
const WHEEL_LINE_PX = 34;
/** A wheel that rested so long has been let go. */
const WHEEL_REST_MS = 500;

const scaleOf = ({ shiftKey, altKey }: { shiftKey: boolean; altKey: boolean }): number =>
  shiftKey ? 10 : altKey ? 0.1 : 1;

/** As much of a step as all of several values can take: they keep their differences. */
function sharedStep(by: number, { values = [], min = -Infinity, max = Infinity }: TypedFieldProps): number {
  const down = Math.min(0, Math.max(...values.map((value) => min - value)));
  const up = Math.max(0, Math.min(...values.map((value) => max - value)));
  return Math.min(up, Math.max(down, by));
}

/** The gesture itself: begun by its first step, ended or taken back. */
function createScrub() {
  let now: { readonly props: TypedFieldProps; stepped(): void } | null = null;
  let open: { readonly start: number; moved: number } | null = null;
  const close = (phase: 'end' | 'cancel'): void => {
    if (open === null || now === null) return;
    const { onHold, onCommit } = now.props;
    if (onHold) onHold(phase);
    else if (phase === 'cancel') onCommit(open.start);
    open = null;
  };
  return {
    open: () => open !== null,
    /** The field as it is now; `stepped` is called ahead of a step, so that what stands typed gives way. */
    follow: (props: TypedFieldProps, stepped: () => void) => {
      now = { props, stepped };
    },
    step(steps: number): void {
      if (steps === 0 || now === null || now.props.disabled === true) return;
      const { props } = now;
      now.stepped();
      if (open === null) props.onHold?.('begin');
      open ??= { start: props.value, moved: 0 };
      const by = steps * props.step;
      if (props.onEach) {
        const each = sharedStep(by, props);
        return void props.onEach((now) => stepField(now, each, 1, props));
      }
      const next = stepField(open.start, open.moved + by, 1, props);
      // What lies beyond a limit is not remembered: the way back begins at once.
      open.moved = next - open.start;
      props.onCommit(next);
    },
    end: () => close('end'),
    cancel: () => close('cancel'),
  };
}
type Scrub = ReturnType<typeof createScrub>;

/** The wheel over the focused input; it does not scroll the panel then. */
function listenToWheel(input: HTMLInputElement, scrub: Scrub): () => void {
  let rest: ReturnType<typeof setTimeout> | undefined;
  let left = 0;
  const turn = (event: WheelEvent): void => {
    if (document.activeElement !== input || event.ctrlKey || input.disabled) return;
    event.preventDefault();
    left -= (event.deltaY || event.deltaX) * (event.deltaMode === 0 ? 1 : WHEEL_LINE_PX);
    const steps = Math.trunc(left / WHEEL_PX_PER_STEP);
    left -= steps * WHEEL_PX_PER_STEP;
    scrub.step(steps * scaleOf(event));
    clearTimeout(rest);
    rest = setTimeout(() => {
      left = 0;
      scrub.end();
    }, WHEEL_REST_MS);
  };
  input.addEventListener('wheel', turn, { passive: false });
  return () => {
    clearTimeout(rest);
    input.removeEventListener('wheel', turn);
  };
}

/** A drag along the label, sideways; touch scrolls the panel as ever. What the system takes away is taken back. */
function labelDrag(scrub: Scrub) {
  let from: { readonly x: number; taken: number } | null = null;
  let dragged = false;
  const stop = (): void => {
    window.removeEventListener('keydown', escape, true);
    window.removeEventListener('blur', lose);
    from = null;
  };
  const lose = (): void => {
    if (from !== null) scrub.cancel();
    stop();
  };
  const escape = (event: globalThis.KeyboardEvent): void => {
    if (event.key !== 'Escape' || !scrub.open()) return;
    event.preventDefault();
    event.stopPropagation();
    lose();
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLLabelElement>): void => {
      dragged = false;
      if (event.button !== 0 || event.pointerType === 'touch') return;
      from = { x: event.clientX, taken: 0 };
      event.currentTarget.setPointerCapture(event.pointerId);
      window.addEventListener('keydown', escape, true);
      window.addEventListener('blur', lose);
    },
    onPointerMove: (event: PointerEvent): void => {
      if (from === null) return;
      const px = event.clientX - from.x;
      if (!dragged && Math.abs(px) < THRESHOLD_PX) return;
      dragged = true;
      const steps = Math.trunc(px / PX_PER_STEP);
      scrub.step((steps - from.taken) * scaleOf(event));
      from.taken = steps;
    },
    onPointerUp: (): void => {
      if (from !== null) scrub.end();
      stop();
    },
    onPointerCancel: lose,
    onLostPointerCapture: lose,
    /** A drag is no click: the input does not take the focus. */
    onClick: (event: { preventDefault(): void }): void => {
      if (dragged) event.preventDefault();
    },
  };
}

const ARROWS: Readonly<Record<string, 1 | -1>> = { ArrowUp: 1, ArrowDown: -1 };

/** `stepped` is called before a step changes the value: what stands typed gives way. */
export function useScrub(props: TypedFieldProps, stepped: () => void) {
  const [{ scrub, label }] = useState(() => {
    const made = createScrub();
    return { scrub: made, label: labelDrag(made) };
  });
  useLayoutEffect(() => scrub.follow(props, stepped));
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const element = input.current;
    const off = element && listenToWheel(element, scrub);
    return () => {
      off?.();
      scrub.end();
    };
  }, [scrub]);
  const takenBack = useRef(false);
  return {
    input,
    label,
    /** True where the key was a step, or took one back. */
    press: (event: KeyboardEvent): boolean => {
      const direction = ARROWS[event.key];
      const back = event.key === 'Escape' && scrub.open();
      if (direction === undefined && !back) return false;
      event.preventDefault();
      if (back) {
        event.stopPropagation();
        takenBack.current = true;
        scrub.cancel();
      } else if (!takenBack.current) {
        scrub.step(direction! * scaleOf(event));
      }
      return true;
    },
    release: (): void => {
      takenBack.current = false;
      scrub.end();
    },
  };
}
