/**
 * A labelled native list of values, in the grid of the typed fields.
 */
import { useId } from 'react';

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly testId?: string;
  onChoose(value: Value): void;
}

export function Choice<Value extends string>({
  label,
  value,
  options,
  testId,
  onChoose,
}: ChoiceProps<Value>) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        data-testid={testId}
        onChange={(event) => onChoose(event.target.value as Value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
