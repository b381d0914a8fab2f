/**
 * When the build starts: the browser's own field for a date and a time, local, without a zone. It goes into the layout
 * while it is typed; from the first key to leaving the field it is one entry of history.
 */
import { t, type Text } from '../../language/index';
import { useId, useLayoutEffect, useMemo, useState } from 'react';
import { setSchedule } from '../../commands/operations';
import { messageAdvice, messageText } from '../../layout/messages';
import type { Fault } from '../../layout/result';
import { fieldFault } from '../controls/readField';
import { useEdit } from '../useEdit';

const LABEL: Text = 'start of the build';

interface Refused {
  readonly text: string;
  readonly fault: Fault;
}

function useStart() {
  const edit = useEdit();
  const hold = useMemo(() => edit.hold(t(LABEL)), [edit]);
  const [typing, setTyping] = useState(false);
  const [refused, setRefused] = useState<Refused | null>(null);
  const type = (text: string): void => {
    // A date that is not complete yet reads as nothing.
    if (text === '') return;
    if (!typing) hold('begin');
    setTyping(true);
    const fault = edit.change(t(LABEL), (layout) => setSchedule(layout, { start: text }));
    setRefused(
      fault && {
        text,
        fault: fieldFault(fault, { what: t(LABEL), unit: '', found: text.replace('T', ' ') }),
      },
    );
  };
  const leave = (): void => {
    setTyping(false);
    setRefused(null);
  };
  useLayoutEffect(() => (typing ? () => hold('end') : undefined), [typing, hold]);
  return { refused, type, leave };
}

export function StartField({ start }: { readonly start: string }) {
  const id = useId();
  const { refused, type, leave } = useStart();
  return (
    <div className="field wide">
      <label htmlFor={id}>{t('start of the build, local time')}</label>
      <span className="field-box" data-invalid={refused !== null || undefined}>
        <input
          id={id}
          className="start-input"
          type="datetime-local"
          data-testid="schedule-start"
          aria-invalid={refused !== null}
          aria-describedby={refused === null ? undefined : `${id}-fault`}
          value={refused?.text ?? start}
          onChange={(event) => type(event.target.value)}
          onBlur={leave}
        />
      </span>
      {refused !== null && (
        <p className="field-fault" id={`${id}-fault`} role="alert">
          {messageText(refused.fault.code, refused.fault.params)}{' '}
          {messageAdvice(refused.fault.code, refused.fault.params)}
        </p>
      )}
    </div>
  );
}
