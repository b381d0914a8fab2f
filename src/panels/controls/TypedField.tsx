/**
 * A field for one number with its unit. Enter or leaving the field commits, Escape restores, the up and down arrows
 * step (with Shift ten steps; a held arrow is one history entry). Text that cannot be read shows its message and the
 * old value stays in the layout.
 */
import type { KeyboardEvent } from 'react';
import { useState } from 'react';
import type { Fault } from '../../layout/result';
import { FieldBox } from './FieldBox';
import type { Reading } from './readField';
import { fieldFault, readField, stepField } from './readField';
import { useCommitOnLeave } from './useCommitOnLeave';

export interface TypedFieldProps extends Reading {
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly disabled?: boolean;
  readonly testId?: string;
  readonly hint?: string;
  /** What is unwise about the value that is kept; stands under the field. */
  readonly caution?: string | undefined;
  format(value: number): string;
  /** Takes the value; returns why where it is refused. */
  onCommit(value: number): Fault | null | void;
  /** A held arrow key begins and ends one gesture. */
  onHold?(phase: 'begin' | 'end'): void;
}

interface Draft {
  readonly text: string;
  readonly fault: Fault | null;
}

function useDraft(props: TypedFieldProps) {
  const [draft, setDraft] = useState<Draft | null>(null);
  const commit = (): void => {
    if (draft === null) return;
    const read = readField(draft.text, props);
    if (!read.ok) {
      setDraft({ text: draft.text, fault: read.fault });
      return;
    }
    const refused = read.value === props.value ? null : (props.onCommit(read.value) ?? null);
    const fault = refused && fieldFault(refused, { ...props, found: draft.text });
    setDraft(fault === null ? null : { text: draft.text, fault });
  };
  useCommitOnLeave(commit);
  return {
    draft,
    commit,
    /** Leaving a field that clamps what is typed brings back the old value where the text cannot be read. */
    leave: () => {
      const unreadable = draft !== null && !readField(draft.text, props).ok;
      if (unreadable && props.clamp === true) setDraft(null);
      else commit();
    },
    type: (text: string) => setDraft({ text, fault: null }),
    restore: () => setDraft(null),
  };
}

function useKeys(props: TypedFieldProps, edit: ReturnType<typeof useDraft>) {
  const [held, setHeld] = useState(false);
  const release = (): void => {
    if (held) props.onHold?.('end');
    setHeld(false);
  };
  const step = (event: KeyboardEvent, direction: 1 | -1): void => {
    event.preventDefault();
    if (!held) props.onHold?.('begin');
    setHeld(true);
    edit.restore();
    props.onCommit(stepField(props.value, props.step * (event.shiftKey ? 10 : 1), direction, props));
  };
  const press = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') edit.commit();
    if (event.key === 'ArrowUp') step(event, 1);
    if (event.key === 'ArrowDown') step(event, -1);
    if (event.key === 'Escape' && edit.draft !== null) {
      event.stopPropagation();
      edit.restore();
    }
  };
  return { press, release };
}

/** Label, input, unit and, where needed, the message. */
export function TypedField(props: TypedFieldProps) {
  const edit = useDraft(props);
  const keys = useKeys(props, edit);
  const fault = edit.draft?.fault ?? null;
  return (
    <FieldBox
      label={props.label}
      hint={props.hint}
      unit={props.unit}
      fault={fault}
      kept={`Kept: ${props.format(props.value)} ${props.unit}`}
      testId={props.testId}
      input={{
        inputMode: 'decimal',
        spellCheck: false,
        disabled: props.disabled,
        value: edit.draft?.text ?? props.format(props.value),
        onChange: (event) => edit.type(event.target.value),
        onFocus: (event) => event.target.select(),
        onBlur: () => {
          keys.release();
          edit.leave();
        },
        onKeyDown: keys.press,
        onKeyUp: keys.release,
      }}
    >
      {fault === null && props.caution !== undefined && (
        <p className="field-fault" data-testid={props.testId && `${props.testId}-caution`}>
          {props.caution}
        </p>
      )}
    </FieldBox>
  );
}
