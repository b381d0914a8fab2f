/**
 * A field for a name or note: Enter or leaving commits, Escape restores.
 */
import type { KeyboardEvent } from 'react';
import { useState } from 'react';
import type { Fault, Result } from '../../layout/result';
import type { Layout } from '../../layout/types';
import { useEdit } from '../useEdit';
import { fieldFault } from './readField';
import { FieldBox } from './FieldBox';
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

/** A labelled text of the layout. */
export function TextField(props: TextFieldProps) {
  const { text, fault, setText, commit, press } = useText(props);
  return (
    <FieldBox
      label={props.label}
      bare={props.bare}
      fault={fault}
      testId={props.testId}
      input={{
        style: { textAlign: 'left' },
        value: text ?? props.value,
        onChange: (event) => setText(event.target.value),
        onBlur: commit,
        onKeyDown: press,
      }}
    />
  );
}
