/**
 * The box of a typed field: its label, the input in its frame with the unit, and below it the message where the text was
 * refused, tied to the input for those who listen. What the input does belongs to who uses it.
 */
import type { ComponentProps, LabelHTMLAttributes, ReactNode } from 'react';
import { useId } from 'react';
import { messageAdvice, messageText } from '../../layout/messages';
import type { Fault } from '../../layout/result';

interface FieldBoxProps {
  readonly label: string;
  readonly hint?: string | undefined;
  /** The label is read out, not shown. */
  readonly bare?: boolean | undefined;
  readonly unit?: string;
  readonly fault: Fault | null;
  /** Said behind the message: what is kept instead. */
  readonly kept?: string;
  readonly testId?: string | undefined;
  readonly input: ComponentProps<'input'>;
  /** What a press on the label does besides taking the focus to the input. */
  readonly drag?: LabelHTMLAttributes<HTMLLabelElement>;
  /** Stands below the box. */
  readonly children?: ReactNode;
}

/** A labelled input with its unit and its message. */
export function FieldBox({
  label,
  hint,
  bare,
  unit = '',
  fault,
  kept,
  testId,
  input,
  drag,
  children,
}: FieldBoxProps) {
  const id = useId();
  return (
    <div className={bare ? 'bare-field' : 'field'}>
      <label htmlFor={id} className={bare ? 'visually-hidden' : drag && 'scrubs'} title={hint} {...drag}>
        {label}
      </label>
      <span className="field-box" data-invalid={fault !== null || undefined}>
        <input
          id={id}
          type="text"
          autoComplete="off"
          data-testid={testId}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          {...input}
        />
        {unit !== '' && <span className="field-unit">{unit}</span>}
      </span>
      {children}
      {fault !== null && (
        <p className="field-fault" id={`${id}-fault`} role="alert">
          {messageText(fault.code, fault.params)} {messageAdvice(fault.code, fault.params)} {kept}
        </p>
      )}
    </div>
  );
}
