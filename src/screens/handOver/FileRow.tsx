/** One file that can be made: what it is, what it is for, how it is to be written, and the button; or how far it is. */
import { t, type Text } from '../../language/index';
import type { ReactNode } from 'react';
import type { FileKind } from '../../export/files/types';
import type { Job } from './useHandOver';

interface PickProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: Readonly<Record<Value, string>>;
  readonly testId: string;
  onPick(value: Value): void;
}

/** The choices of a list in the language in force. */
export const inWords = <Value extends string>(words: Readonly<Record<Value, Text>>) =>
  Object.fromEntries(Object.entries<Text>(words).map(([value, text]) => [value, t(text)])) as Record<
    Value,
    string
  >;

/** A short list of values with its label in front. */
export function Pick<Value extends string>({ label, value, options, testId, onPick }: PickProps<Value>) {
  return (
    <label className="file-pick">
      <span>{label}</span>
      <select
        className="plain-select"
        value={value}
        data-testid={testId}
        onChange={(event) => onPick(event.target.value as Value)}
      >
        {(Object.keys(options) as Value[]).map((key) => (
          <option key={key} value={key}>
            {options[key]}
          </option>
        ))}
      </select>
    </label>
  );
}

export interface Desk {
  readonly job: Job | null;
  /** The plate is checked, so that files can say what it is. */
  readonly ready: boolean;
  run(kind: FileKind): void;
  cancel(): void;
}
interface RowProps {
  readonly kind: FileKind;
  readonly desk: Desk;
  readonly title: string;
  readonly use: string;
  /** "CSV". */
  readonly form: string;
  readonly children?: ReactNode;
}

function Working({ title, share }: { readonly title: string; readonly share: number }) {
  return (
    <div className="file-working">
      <progress value={share} aria-label={t('{title}, being made', { title })} />
      <span>{Math.floor(100 * share)} %</span>
    </div>
  );
}

/** One button that saves and, while it does, drops the work: the keyboard stays on it. */
function SaveButton({ kind, desk, title, form }: Omit<RowProps, 'use' | 'children'>) {
  const { job, ready, run, cancel } = desk;
  const mine = job?.kind === kind;
  return (
    <button
      type="button"
      className="button"
      aria-label={mine ? t('Cancel: {title}', { title }) : t('Save {form}: {title}', { form, title })}
      data-testid={mine ? 'file-cancel' : `make-${kind}`}
      disabled={!mine && (job !== null || !ready)}
      // the second press of a double click is not meant for what the first one made of the button
      onClick={({ detail }) => detail < 2 && (mine ? cancel() : run(kind))}
    >
      {mine ? t('Cancel') : t('Save {form}', { form })}
    </button>
  );
}

export function FileRow({ use, children, ...row }: RowProps) {
  const { kind, desk, title } = row;
  return (
    <li className="file-row" data-testid={`file-${kind}`}>
      <div>
        <h4>{title}</h4>
        <p className="hint">{use}</p>
      </div>
      {desk.job?.kind === kind ? (
        <Working title={title} share={desk.job.share} />
      ) : (
        <div className="file-options">{children}</div>
      )}
      <SaveButton {...row} />
    </li>
  );
}
