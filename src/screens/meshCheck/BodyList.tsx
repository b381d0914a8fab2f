/**
 * The bodies of the file: what each is like and what is wrong with it, whether it is taken, under which name and how often.
 */
import { t } from '../../language/index';
import { useState } from 'react';
import { useBench } from '../../canvas/bench';
import { TypedField } from '../../panels/controls/TypedField';
import { formatField } from '../../units/format';
import { parseNumber } from '../../units/parse';
import type { MeshBodyLook, MeshFileFound } from '../../worker/meshMessages';
import type { MeshCutBody, MeshLook } from '../../worker/meshes';
import { choiceFor, withBody, type MeshChoices } from './choices';
import { factsText, fitOf, outcomeLines, sentence, sizeText } from './meshText';
import type { CutDone } from './useMeshDesk';

/** Bodies listed; the others of a file of hundreds are taken as they are. */
const MOST_LISTED = 60;
const MOST_COPIES = 100;
const LONGEST_NAME = 28;

export interface BodyListProps {
  readonly file: MeshFileFound;
  readonly look: MeshLook;
  readonly choices: MeshChoices;
  readonly cut: CutDone | null;
  onChange(choices: MeshChoices): void;
}
type BodyProps = BodyListProps & { readonly place: number };

function NameField({ file, choices, place, onChange }: BodyProps) {
  const { name } = choiceFor(choices, file, place);
  const [draft, setDraft] = useState<string | null>(null);
  const commit = (): void => {
    if (draft !== null && draft.trim() !== '')
      onChange(withBody(choices, file, place, { name: draft.trim() }));
    setDraft(null);
  };
  return (
    <label className="field">
      {t('name')}
      <span className="field-box">
        <input
          type="text"
          className="mesh-name"
          maxLength={LONGEST_NAME}
          value={draft ?? name}
          data-testid={`mesh-name-${place}`}
          onChange={(event) => setDraft(event.target.value)}
          onBlur={commit}
          onKeyDown={(event) => event.key === 'Enter' && commit()}
        />
      </span>
    </label>
  );
}

function Findings({ look }: { readonly look: MeshBodyLook }) {
  const { findings } = look.check;
  if (findings.length === 0) return null;
  return (
    <ul className="check-left-out" data-testid="mesh-findings">
      {findings.map((fault) => (
        <li key={fault.code}>{sentence(fault)}</li>
      ))}
    </ul>
  );
}

function Facts({ look }: { readonly look: MeshBodyLook }) {
  const machine = useBench((state) => state.layout.machine);
  const fit = fitOf(look.size_mm, machine);
  return (
    <>
      <p>
        <b data-testid="mesh-size">{sizeText(look.size_mm)}</b>
      </p>
      <p data-testid="mesh-facts">{factsText(look)}</p>
      <p data-warn={!fit.fits || undefined} data-testid="mesh-fit">
        {fit.text}
      </p>
      <Findings look={look} />
    </>
  );
}

function Outcome({ body }: { readonly body: MeshCutBody }) {
  if (!body.ok)
    return (
      <p className="mesh-outcome" data-warn data-testid="mesh-outcome">
        {sentence(body.fault)}
      </p>
    );
  return (
    <ul className="mesh-outcome" data-testid="mesh-outcome">
      {outcomeLines(body.cut).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

function TakeIt({ file, choices, place, onChange }: BodyProps) {
  return (
    <div className="row">
      <label className="switch">
        <input
          type="checkbox"
          checked={choiceFor(choices, file, place).use}
          data-testid={`mesh-use-${place}`}
          onChange={(event) => onChange(withBody(choices, file, place, { use: event.target.checked }))}
        />
        {t('place it')}
      </label>
      <button
        type="button"
        className="button"
        disabled={choices.shown === place}
        onClick={() => onChange({ ...choices, shown: place })}
      >
        {choices.shown === place ? t('in the picture') : t('show')}
      </button>
    </div>
  );
}

function Body(props: BodyProps) {
  const { file, look, choices, cut, place, onChange } = props;
  const { use, name, copies } = choiceFor(choices, file, place);
  const outcome = cut?.bodies[cut.places.indexOf(place)];
  return (
    <li className="mesh-body" data-skipped={!use || undefined} data-testid="mesh-body">
      {file.bodies.length > 1 && <TakeIt {...props} />}
      <Facts look={look.bodies[place]!} />
      {outcome && <Outcome body={outcome} />}
      <div className="mesh-fields">
        <NameField key={name} {...props} />
        <TypedField
          label={t('copies')}
          what={t('copies')}
          unit=""
          step={1}
          min={0}
          max={MOST_COPIES}
          whole
          value={copies}
          parse={parseNumber}
          format={formatField}
          testId={`mesh-copies-${place}`}
          onCommit={(count) => onChange(withBody(choices, file, place, { copies: count }))}
        />
      </div>
    </li>
  );
}

export function BodyList(props: BodyListProps) {
  const { look } = props;
  const hidden = look.bodies.length - MOST_LISTED;
  return (
    <>
      <ul className="mesh-bodies">
        {look.bodies.slice(0, MOST_LISTED).map((_, place) => (
          <Body key={place} {...props} place={place} />
        ))}
      </ul>
      {hidden > 0 && (
        <p className="hint">{t('{count} more bodies are placed as they are.', { count: hidden })}</p>
      )}
    </>
  );
}
