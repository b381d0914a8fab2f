/**
 * A slider for one number; a drag from press to release, or a held key, is one gesture, so one history entry.
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
  onHold?(phase: 'begin' | 'end'): void;
}

const STEPS = /^(Arrow\w+|Home|End|PageUp|PageDown)$/;

/** One gesture at a time, begun by pointer or key. */
function useHold(onHold: SliderLineProps['onHold']) {
  const held = useRef(false);
  const begin = (): void => {
    if (!held.current) onHold?.('begin');
    held.current = true;
  };
  const end = (): void => {
    if (held.current) onHold?.('end');
    held.current = false;
  };
  const press = (event: KeyboardEvent): void => {
    if (STEPS.test(event.key)) begin();
  };
  return { begin, end, press };
}

export function SliderLine(props: SliderLineProps) {
  const { value, min, max, step } = props;
  const hold = useHold(props.onHold);
  return (
    <Slider.Root
      className="slider"
      value={[Math.min(max, Math.max(min, value))]}
      min={min}
      max={max}
      step={step}
      onPointerDown={hold.begin}
      onLostPointerCapture={hold.end}
      onKeyUp={hold.end}
      onBlur={hold.end}
      onValueChange={([next]) => {
        if (next !== undefined) props.onChange(next);
      }}
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
