/**
 * A slider for one number; a drag from press to release is one gesture, so one history entry.
 */
import { Slider } from 'radix-ui';

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

export function SliderLine(props: SliderLineProps) {
  const { value, min, max, step, onHold } = props;
  return (
    <Slider.Root
      className="slider"
      value={[Math.min(max, Math.max(min, value))]}
      min={min}
      max={max}
      step={step}
      onPointerDown={() => onHold?.('begin')}
      onLostPointerCapture={() => onHold?.('end')}
      onValueChange={([next]) => {
        if (next !== undefined) props.onChange(next);
      }}
      onKeyDown={(event) => event.stopPropagation()}
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
