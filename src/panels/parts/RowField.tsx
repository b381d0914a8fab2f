/**
 * A field of the copies form: the form keeps its text, the message stands below it while it cannot be read, the up and
 * down arrows step (with Shift ten steps).
 */
import type { KeyboardEvent } from 'react';
import { useId } from 'react';
import { messageAdvice, messageText } from '../../layout/messages';
import type { Fault } from '../../layout/result';
import { formatField } from '../../units/format';
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

export function RowField(props: RowFieldProps) {
  const id = useId();
  const { reading, text, fault, testId, onText } = props;
  return (
    <div className="field">
      <label htmlFor={id}>{reading.what}</label>
      <span className="field-box" data-invalid={fault !== null || undefined}>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          data-testid={testId}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          value={text}
          onChange={(event) => onText(event.target.value)}
          onFocus={(event) => event.target.select()}
          onKeyDown={(event) => step(event, props)}
        />
        {reading.unit !== '' && <span className="field-unit">{reading.unit}</span>}
      </span>
      {fault !== null && (
        <p className="field-fault" id={`${id}-fault`} role="alert">
          {messageText(fault.code, fault.params)} {messageAdvice(fault.code, fault.params)}
        </p>
      )}
    </div>
  );
}
