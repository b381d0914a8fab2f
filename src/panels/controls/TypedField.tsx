/**
 * A field for one number with its unit. Enter or leaving the field commits, Escape restores, the up and down arrows
 * step (with Shift ten steps; a held arrow is one history entry). Text that cannot be read shows its message and the
 * old value stays in the layout.
 */
import { t, type Text } from '../../language/index';
import type { KeyboardEvent } from 'react';
import { useState } from 'react';
import type { Fault } from '../../layout/result';
import { FieldBox } from './FieldBox';
import type { Reading } from './readField';
import { fieldFault, readEntry } from './readField';
import { useCommitOnLeave } from './useCommitOnLeave';
import { useScrub } from './useScrub';

/** How a gesture begins, ends, or is taken back. */
export type Hold = 'begin' | 'end' | 'cancel';

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
  /** Several values stand behind the field; where they differ it says so instead of showing one. */
  readonly values?: readonly number[] | undefined;
  /** Takes a change of each of several values. */
  onEach?: ((to: (now: number) => number) => Fault | null | void) | undefined;
  /** A held arrow key, a drag of the label or a turn of the wheel is one gesture. */
  onHold?: ((phase: Hold) => void) | undefined;
}

/** Said at the label of every field for a number. */
const MANNERS: Text =
  'Sums such as 3+2 mm; +=5 or -=5 change what is there. Drag here sideways, arrows or wheel: steps, Shift ten, Alt a tenth.';

interface Draft {
  readonly text: string;
  readonly fault: Fault | null;
}

/** True where the field stands for values that differ. */
const isMixed = ({ values }: TypedFieldProps): boolean =>
  values !== undefined && values.some((value) => value !== values[0]);

/** Takes what was typed to the value or to each of several; why not, where it is refused. */
function takeEntry(text: string, props: TypedFieldProps): Fault | null {
  const read = readEntry(text, props);
  if (!read.ok) return read.fault;
  const { relative, to } = read.value;
  const all = (relative ? props.values : undefined) ?? [props.value];
  for (const value of all) {
    const result = to(value);
    if (!result.ok) return result.fault;
  }
  const valueFor = (now: number): number => {
    const result = to(now);
    return result.ok ? result.value : now;
  };
  if (relative && props.onEach) return props.onEach(valueFor) ?? null;
  const value = valueFor(props.value);
  return value === props.value && !isMixed(props) ? null : (props.onCommit(value) ?? null);
}

function useDraft(props: TypedFieldProps) {
  const [draft, setDraft] = useState<Draft | null>(null);
  const commit = (): void => {
    if (draft === null) return;
    if (draft.text.trim() === '' && isMixed(props)) return setDraft(null);
    const refused = takeEntry(draft.text, props);
    const fault = refused && fieldFault(refused, { ...props, found: draft.text });
    setDraft(fault === null ? null : { text: draft.text, fault });
  };
  useCommitOnLeave(commit);
  return {
    draft,
    commit,
    /** Leaving a field that clamps what is typed brings back the old value where the text cannot be read. */
    leave: () => {
      const unreadable = draft !== null && !readEntry(draft.text, props).ok;
      if (unreadable && props.clamp === true) setDraft(null);
      else commit();
    },
    type: (text: string) => setDraft({ text, fault: null }),
    restore: () => setDraft(null),
  };
}

function useKeys(props: TypedFieldProps, edit: ReturnType<typeof useDraft>) {
  const scrub = useScrub(props, edit.restore);
  const press = (event: KeyboardEvent): void => {
    if (scrub.press(event)) return;
    if (event.key === 'Enter') edit.commit();
    if (event.key === 'Escape' && edit.draft !== null) {
      event.stopPropagation();
      edit.restore();
    }
  };
  return { ...scrub, press };
}

/** Label, input, unit and, where needed, the message. */
export function TypedField(props: TypedFieldProps) {
  const edit = useDraft(props);
  const keys = useKeys(props, edit);
  const fault = edit.draft?.fault ?? null;
  const mixed = isMixed(props);
  return (
    <FieldBox
      label={props.label}
      hint={props.hint === undefined ? t(MANNERS) : `${props.hint} ${t(MANNERS)}`}
      unit={props.unit}
      fault={fault}
      kept={
        mixed
          ? t('Kept: the values that differ')
          : t('Kept: {value} {unit}', { value: props.format(props.value), unit: props.unit })
      }
      testId={props.testId}
      drag={props.disabled === true ? undefined : keys.label}
      input={{
        ref: keys.input,
        inputMode: 'text',
        spellCheck: false,
        disabled: props.disabled,
        placeholder: mixed ? t('mixed') : undefined,
        value: edit.draft?.text ?? (mixed ? '' : props.format(props.value)),
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
