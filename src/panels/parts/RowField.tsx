/**
 * A field of the copies form: the form keeps its text, the message stands below it while it cannot be read, the up and
 * down arrows step (with Shift ten steps).
 */
import type { KeyboardEvent } from 'react';
import type { Fault } from '../../layout/result';
import { formatField } from '../../units/format';
import { FieldBox } from '../controls/FieldBox';
import { readField, stepField, type Reading } from '../controls/readField';

interface RowFieldProps {
  readonly reading: Reading;
  readonly text: string;
  readonly fault: Fault | null;
  readonly testId: string;
  onText(text: string): void;
}

const DIRECTIONS: Readonly<Record<string, 1 | -1>> = { ArrowUp: 1, ArrowDown: -1 };

function step(event: KeyboardEvent, { reading, text, onText }: RowFieldProps): void {
  const direction = DIRECTIONS[event.key];
  if (direction === undefined) return;
  event.preventDefault();
  const read = readField(text, reading);
  if (read.ok) onText(formatField(stepField(read.value, event.shiftKey ? 10 : 1, direction, reading)));
}

/** One number of the form. */
export function RowField(props: RowFieldProps) {
  const { reading, text, fault, testId, onText } = props;
  return (
    <FieldBox
      label={reading.what}
      unit={reading.unit}
      fault={fault}
      testId={testId}
      input={{
        inputMode: 'decimal',
        spellCheck: false,
        value: text,
        onChange: (event) => onText(event.target.value),
        onFocus: (event) => event.target.select(),
        onKeyDown: (event) => step(event, props),
      }}
    />
  );
}
