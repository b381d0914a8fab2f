/**
 * One of several, each with a picture or a word: a radix toggle group that never stands empty.
 */
import { ToggleGroup } from 'radix-ui';
import type { ReactNode } from 'react';

export interface SegmentedOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly content: ReactNode;
  readonly title?: string;
}
interface SegmentedProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly SegmentedOption<Value>[];
  onChoose(value: Value): void;
}

export function Segmented<Value extends string>({ label, value, options, onChoose }: SegmentedProps<Value>) {
  return (
    <ToggleGroup.Root
      className="choices"
      type="single"
      aria-label={label}
      value={value}
      onValueChange={(next) => {
        if (next !== '' && next !== value) onChoose(next as Value);
      }}
    >
      {options.map((option) => (
        <ToggleGroup.Item
          key={option.value}
          className="choice"
          value={option.value}
          aria-label={option.label}
          title={option.title ?? option.label}
          data-testid={`choose-${option.value}`}
        >
          {option.content}
        </ToggleGroup.Item>
      ))}
    </ToggleGroup.Root>
  );
}

/** A labelled row holding a segmented choice, in the grid of the typed fields. */
export function SegmentedField<Value extends string>(props: SegmentedProps<Value>) {
  return (
    <div className="field">
      <span className="field-label">{props.label}</span>
      <Segmented {...props} />
    </div>
  );
}
