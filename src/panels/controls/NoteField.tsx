/**
 * A field for text of several lines. It goes into the layout while it is typed; from the first key to leaving the field,
 * or the page, it is one entry of history.
 */
import { useId, useLayoutEffect, useMemo, useState } from 'react';
import { messageAdvice, messageText } from '../../layout/messages';
import type { Fault, Result } from '../../layout/result';
import type { Layout } from '../../layout/types';
import { useEdit } from '../useEdit';
import { useCommitOnLeave } from './useCommitOnLeave';

interface NoteFieldProps {
  readonly label: string;
  readonly value: string;
  readonly testId: string;
  recipe(layout: Layout, value: string): Layout | Result<Layout>;
}

export function NoteField({ label, value, testId, recipe }: NoteFieldProps) {
  const id = useId();
  const edit = useEdit();
  const hold = useMemo(() => edit.hold(label), [edit, label]);
  const [typing, setTyping] = useState(false);
  const [refused, setRefused] = useState<{ readonly text: string; readonly fault: Fault } | null>(null);
  const type = (text: string): void => {
    if (!typing) hold('begin');
    setTyping(true);
    const fault = edit.change(label, (layout) => recipe(layout, text));
    setRefused(fault === null ? null : { text, fault });
  };
  // The entry ends with leaving the field, and also where the field goes away under the cursor.
  useLayoutEffect(() => (typing ? () => hold('end') : undefined), [typing, hold]);
  useCommitOnLeave(() => {
    if (typing) hold('end');
    setTyping(false);
  });
  return (
    <div className="note-field">
      <label htmlFor={id} className="visually-hidden">
        {label}
      </label>
      <textarea
        id={id}
        rows={5}
        data-testid={testId}
        aria-invalid={refused !== null}
        aria-describedby={refused === null ? undefined : `${id}-fault`}
        value={refused?.text ?? value}
        onChange={(event) => type(event.target.value)}
        onBlur={() => setTyping(false)}
      />
      {refused !== null && (
        <p className="field-fault" id={`${id}-fault`} role="alert">
          {messageText(refused.fault.code, refused.fault.params)}{' '}
          {messageAdvice(refused.fault.code, refused.fault.params)}
        </p>
      )}
    </div>
  );
}
