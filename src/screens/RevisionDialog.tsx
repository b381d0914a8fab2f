/**
 * What the open layout is filed under: name, reason, author, reviewer while it is a draft, the checksum it has and the one
 * it was derived from, and the step to its next state with what that step waits for. Names are records, not proofs.
 */
import { t, type Text } from '../language/index';
import { useState } from 'react';
import { useAnalysisLater, useBench } from '../canvas/bench';
import {
  advanceRevision,
  beginRevision,
  setRevision,
  stateAfter,
  type RevisionText,
} from '../commands/operations/revision';
import { messageAdvice, messageText } from '../layout/messages';
import { isFixed, nextName } from '../layout/revision';
import { reviewedByAuthor } from '../layout/revisionNames';
import type { Layout, Revision, RevisionState } from '../layout/types';
import { TextField } from '../panels/controls/TextField';
import { leftOutOfBuild } from '../panels/readout/leftOutBuild';
import { handOverOf } from '../panels/title/sheetState';
import { useChecksum } from '../panels/title/useChecksum';
import { useEdit } from '../panels/useEdit';
import { localDay } from '../store/revising';
import { Sheet } from './Sheet';
import './revision.css';

const STATES: readonly RevisionState[] = ['draft', 'reviewed', 'released', 'superseded'];
const FIELDS: readonly (keyof RevisionText)[] = ['name', 'reason', 'author', 'reviewer'];
const STEPS: Readonly<Partial<Record<RevisionState, Text>>> = {
  reviewed: 'Mark as reviewed',
  released: 'Release',
  superseded: 'Mark as superseded',
};
const today = (): string => localDay(new Date());

/** The way of a revision, the present state marked. */
function Way({ state }: { readonly state: RevisionState }) {
  return (
    <ol className="revision-way" aria-label={t('States of a revision')}>
      {STATES.map((one) => (
        <li key={one} aria-current={one === state ? 'step' : undefined}>
          {t(one)}
        </li>
      ))}
    </ol>
  );
}

function Typed({ revision }: { readonly revision: Revision }) {
  return FIELDS.map((key) => (
    <TextField
      key={key}
      label={t(key === 'name' ? 'revision' : key)}
      value={revision[key]}
      testId={`revision-${key}`}
      recipe={(layout, text) => setRevision(layout, { [key]: text })}
    />
  ));
}

function Recorded({ label, value }: { readonly label: Text; readonly value: string }) {
  return (
    <div className="field">
      <span className="field-label">{t(label)}</span>
      <span className="recorded" data-testid={`revision-${label.replace(' ', '-')}`}>
        {value === '' ? '–' : value}
      </span>
    </div>
  );
}

/** The next step, and the sentence it waits for; pressed too early, the sentence is said as a refusal. */
function NextStep({ layout, to }: { readonly layout: Layout; readonly to: RevisionState }) {
  const edit = useEdit();
  const analysis = useAnalysisLater();
  const [pressed, setPressed] = useState(false);
  const handOver = handOverOf(analysis, leftOutOfBuild(analysis));
  const step = advanceRevision(layout, to, today(), handOver);
  const label = t(STEPS[to] ?? to);
  const press = (): void => {
    if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
    const recipe = (now: Layout) => advanceRevision(now, to, today(), handOver);
    setPressed(edit.change(label, recipe) !== null);
  };
  return (
    <>
      {/* keeps its room when the sentence goes, so that a button pressed at that moment stays under the pointer */}
      <div className="revision-waits">
        {!step.ok && (
          <p
            className={pressed ? 'field-fault' : 'hint'}
            role={pressed ? 'alert' : undefined}
            data-testid="revision-waits"
          >
            {messageText(step.fault.code, step.fault.params)}{' '}
            {messageAdvice(step.fault.code, step.fault.params)}
          </p>
        )}
      </div>
      <button
        type="button"
        className="button"
        data-main={(step.ok && to !== 'superseded') || undefined}
        data-testid="revision-next"
        // a field that is left takes its text and moves what stands under it: it is left when the press is complete
        onMouseDown={(event) => event.preventDefault()}
        onClick={press}
      >
        {label}
      </button>
    </>
  );
}

function Filed({ layout, revision }: { readonly layout: Layout; readonly revision: Revision }) {
  const next = stateAfter(revision.state);
  const fixed = isFixed(revision);
  const checksum = useChecksum(layout);
  return (
    <>
      <Way state={revision.state} />
      {fixed ? (
        FIELDS.map((key) => <Recorded key={key} label={key} value={revision[key]} />)
      ) : (
        <Typed revision={revision} />
      )}
      <Recorded label="date" value={revision.date} />
      <Recorded label="checksum" value={checksum} />
      <Recorded label="derived from" value={revision.derivedFrom ?? ''} />
      {reviewedByAuthor(revision) && (
        <p className="hint" data-testid="revision-alone">
          {t('Author and reviewer are one name: nobody else has looked at this plate.')}
        </p>
      )}
      {revision.state === 'released' && revision.derivedFrom !== null && (
        <p className="hint">
          {t(
            'It takes the place of the layout with checksum {checksum}: open that one and mark it as superseded.',
            { checksum: revision.derivedFrom },
          )}
        </p>
      )}
      <p className="hint">
        {fixed
          ? t('Revision {name} stays as it is: the next edit of the plate begins revision {next}.', {
              name: revision.name,
              next: nextName(revision.name),
            })
          : t(
              'A draft is edited in place. Reviewed, it stays as it is, and an edit begins the next revision.',
            )}
      </p>
      <div className="dialog-foot">{next && <NextStep key={next} layout={layout} to={next} />}</div>
    </>
  );
}

function Unfiled() {
  const edit = useEdit();
  return (
    <>
      <p>
        {t(
          'This layout has no revision yet. A revision gives it a name, a date and a reason beside its checksum, and records who made it, who reviewed it and that it was released.',
        )}
      </p>
      <div className="dialog-foot">
        <button
          type="button"
          className="button"
          data-main
          data-testid="revision-begin"
          onClick={() => edit.press(t('begin revision A'), (layout) => beginRevision(layout, today()))}
        >
          {t('Begin revision A')}
        </button>
      </div>
    </>
  );
}

export default function RevisionDialog({ onClose }: { onClose(): void }) {
  const layout = useBench((state) => state.layout);
  const { revision } = layout;
  return (
    <Sheet
      title={revision === null ? t('Revision') : t('Revision {name}', { name: revision.name })}
      onClose={onClose}
    >
      <div className="revision" data-testid="revision-dialog">
        <p className="hint">
          {t(
            'Names are recorded as they are typed: a page cannot prove who typed them. Where that matters, sign the printed sheet.',
          )}
        </p>
        {revision === null ? <Unfiled /> : <Filed layout={layout} revision={revision} />}
      </div>
    </Sheet>
  );
}
