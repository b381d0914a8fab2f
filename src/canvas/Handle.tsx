/**
 * A handle on the plan: a 24 px target or larger that the pointer drags and arrow keys move. A held key is one entry of
 * history, ended by letting it go.
 */
import { useRef, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import type { ScreenPoint } from '../units/types';
import { useWorkbench } from './bench';
import { arrowOf } from './arrowKeys';
import { heldOf } from './heldKeys';
import type { Modifiers } from './snapping';

export interface HandleProps {
  readonly at: ScreenPoint;
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly valueText: string;
  readonly className: string;
  readonly testId: string;
  readonly cursor: string;
  /** False for a second handle of the same thing: the pointer finds it, the keyboard does not need it. */
  readonly reachable?: boolean;
  /** Name of the history entry of a held key. */
  readonly history: string;
  readonly onPress: (event: PointerEvent) => void;
  /** An arrow key: x and y are −1, 0 or 1. */
  readonly onArrow: (arrow: { readonly x: number; readonly y: number }, held: Modifiers) => void;
  /** Any other key; true where it was used. */
  readonly onKey?: (key: string) => boolean;
  /** A held key was let go. */
  readonly onLetGo?: () => void;
  readonly onFocus?: () => void;
  readonly children: ReactNode;
}

/** Keys of a handle: arrows move it within one gesture while a key is held, other keys go to `onKey`. */
function useHandleKeys(props: HandleProps) {
  const bench = useWorkbench();
  const holding = useRef(false);
  const letGo = () => {
    if (holding.current) bench.endGesture();
    holding.current = false;
    props.onLetGo?.();
  };
  const press = (event: KeyboardEvent) => {
    const arrow = arrowOf(event.key);
    if (!arrow && props.onKey?.(event.key)) {
      event.preventDefault();
      event.stopPropagation();
    }
    if (!arrow || bench.gestureOpen() !== holding.current) return;
    event.preventDefault();
    event.stopPropagation();
    if (!holding.current) bench.beginGesture(props.history);
    holding.current = true;
    props.onArrow(arrow, heldOf(event));
  };
  return { onKeyDown: press, onKeyUp: letGo, onBlur: letGo };
}

export function Handle(props: HandleProps) {
  const keys = useHandleKeys(props);
  return (
    <div
      // A range input runs along one axis; this handle is dragged on the plate.
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
      role="slider"
      tabIndex={props.reachable === false ? -1 : 0}
      aria-hidden={props.reachable === false}
      aria-label={props.label}
      aria-valuenow={props.value}
      aria-valuemin={props.least}
      aria-valuemax={props.most}
      aria-valuetext={props.valueText}
      data-testid={props.testId}
      className={`plan-handle ${props.className}`}
      style={{ transform: `translate(${props.at.left}px, ${props.at.top}px)`, cursor: props.cursor }}
      onPointerDown={props.onPress}
      // A press leaves the keys to the plan; the handle takes them when it is reached by Tab.
      onMouseDown={(event) => event.preventDefault()}
      onFocus={props.onFocus}
      {...keys}
    >
      {props.children}
    </div>
  );
}
