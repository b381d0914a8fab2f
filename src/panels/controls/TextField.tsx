/**
 * A field for a name or note: Enter or leaving commits, Escape restores.
 */
import type { KeyboardEvent } from 'react';
import { useId, useState } from 'react';
import { messageAdvice, messageText } from '../../layout/messages';
import type { Fault, Result } from '../../layout/result';
import type { Layout } from '../../layout/types';
import { useEdit } from '../useEdit';
import { fieldFault } from './readField';
import { useCommitOnLeave } from './useCommitOnLeave';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly testId?: string;
  /** The label is read out, not shown. */
  readonly bare?: boolean;
  recipe(layout: Layout, value: string): Layout | Result<Layout>;
}

function useText({ label, value, recipe }: TextFieldProps) {
  const edit = useEdit();
  const [text, setText] = useState<string | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  const commit = (): void => {
    if (text === null) return;
    const refused = text === value ? null : edit.change(label, (layout) => recipe(layout, text));
    setFault(refused && fieldFault(refused, { what: label, unit: '', found: text }));
    if (refused === null) setText(null);
  };
  useCommitOnLeave(commit);
  const restore = (): void => {
    setText(null);
    setFault(null);
  };
  const press = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape' && text !== null) {
      event.stopPropagation();
      restore();
    }
  };
  return { text, fault, setText, commit, press };
}

export function TextField(props: TextFieldProps) {
  const id = useId();
  const { text, fault, setText, commit, press } = useText(props);
  return (
    <div className={props.bare ? 'bare-field' : 'field'}>
      <label htmlFor={id} className={props.bare ? 'visually-hidden' : undefined}>
        {props.label}
      </label>
      <span className="field-box" data-invalid={fault !== null || undefined}>
        <input
          id={id}
          type="text"
          autoComplete="off"
          data-testid={props.testId}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          style={{ textAlign: 'left' }}
          value={text ?? props.value}
          onChange={(event) => setText(event.target.value)}
          onBlur={commit}
          onKeyDown={press}
        />
      </span>
      {fault !== null && (
        <p className="field-fault" id={`${id}-fault`} role="alert">
          {messageText(fault.code, fault.params)} {messageAdvice(fault.code, fault.params)}
        </p>
      )}
    </div>
  );
}
