/** One file that can be made: what it is, what it is for, how it is to be written, and the button; or how far it is. */
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

function Working({ title, share, onCancel }: { title: string; share: number; onCancel(): void }) {
  return (
    <div className="file-working">
      <progress value={share} aria-label={`${title}, being made`} />
      <span>{Math.floor(100 * share)} %</span>
      <button type="button" className="button" data-testid="file-cancel" onClick={onCancel}>
        Cancel
      </button>
    </div>
  );
}

export function FileRow({ kind, desk, title, use, form, children }: RowProps) {
  const { job, ready, run, cancel } = desk;
  return (
    <li className="file-row" data-testid={`file-${kind}`}>
      <div>
        <h4>{title}</h4>
        <p className="hint">{use}</p>
      </div>
      {job?.kind === kind ? (
        <Working title={title} share={job.share} onCancel={cancel} />
      ) : (
        <>
          <div className="file-options">{children}</div>
          <button
            type="button"
            className="button"
            aria-label={`Save ${title.toLowerCase()} as ${form}`}
            data-testid={`make-${kind}`}
            disabled={job !== null || !ready}
            onClick={() => run(kind)}
          >
            Save {form}
          </button>
        </>
      )}
    </li>
  );
}
