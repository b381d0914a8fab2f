/**
 * A slider for one number; a drag from press to release, or a held key, is one gesture, so one history entry. Escape, and
 * a pointer that the system takes away, give the first value back.
 */
import { Slider } from 'radix-ui';
import type { KeyboardEvent } from 'react';
import { useRef } from 'react';

interface SliderLineProps {
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly valueText: string;
  readonly testId?: string;
  onChange(value: number): void;
  onHold?(phase: 'begin' | 'end' | 'cancel'): void;
}

const STEPS = /^(Arrow\w+|Home|End|PageUp|PageDown)$/;

/** One gesture at a time, begun by pointer or key. */
function useHold({ value, onHold, onChange }: SliderLineProps) {
  const start = useRef<number | null>(null);
  /** Taken back while still held: it steps no more until it is let go. */
  const takenBack = useRef(false);
  const begin = (): void => {
    if (start.current !== null || takenBack.current) return;
    start.current = value;
    onHold?.('begin');
  };
  const end = (): void => {
    if (start.current !== null) onHold?.('end');
    start.current = null;
    takenBack.current = false;
  };
  const cancel = (): void => {
    const first = start.current;
    start.current = null;
    takenBack.current = false;
    if (first === null) return;
    if (onHold) onHold('cancel');
    else onChange(first);
  };
  const press = (event: KeyboardEvent): void => {
    if (STEPS.test(event.key)) begin();
    if (event.key !== 'Escape' || start.current === null) return;
    event.stopPropagation();
    cancel();
    takenBack.current = true;
  };
  const change = (next: number | undefined): void => {
    if (next !== undefined && !takenBack.current) onChange(next);
  };
  return { begin, end, cancel, press, change };
}

export function SliderLine(props: SliderLineProps) {
  const { value, min, max, step } = props;
  const hold = useHold(props);
  return (
    <Slider.Root
      className="slider"
      value={[Math.min(max, Math.max(min, value))]}
      min={min}
      max={max}
      step={step}
      onPointerDown={hold.begin}
      onPointerUp={hold.end}
      onPointerCancel={hold.cancel}
      onLostPointerCapture={hold.cancel}
      onKeyUp={hold.end}
      onBlur={hold.end}
      onValueChange={([next]) => hold.change(next)}
      onKeyDown={hold.press}
    >
      <Slider.Track className="slider-track">
        <Slider.Range className="slider-range" />
      </Slider.Track>
      <Slider.Thumb
        className="slider-thumb"
        aria-label={props.label}
        aria-valuetext={props.valueText}
        data-testid={props.testId}
      />
    </Slider.Root>
  );
}
