/**
 * What holds for the whole file: unit, turns, cracks and gaps, seams; and what the file itself has to say.
 */
import { t, type Text } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { Choice } from '../../panels/controls/Choice';
import { TypedField } from '../../panels/controls/TypedField';
import type { MeshUnit } from '../../import/mesh/types';
import { formatField } from '../../units/format';
import { parseAngle, parseLength } from '../../units/parse';
import type { MeshFileFound } from '../../worker/meshMessages';
import type { MeshLook } from '../../worker/meshes';
import { arrangementOf, placesParts, standsAsInFile, type Origin } from './arrangement';
import { scaleFor, UNIT_WORDS, UNITS, type MeshChoices } from './choices';
import { crackText, sentence, sizeText, type Size } from './meshText';
import { turnedFurther, UNTURNED, type Axis, type Turns } from './turns';

interface SettingsProps {
  readonly file: MeshFileFound;
  readonly look: MeshLook;
  readonly choices: MeshChoices;
  onChange(choices: MeshChoices): void;
}

/** Each unit with the size it gives to the body in the picture. */
function UnitChoice({ file, look, choices, onChange }: SettingsProps) {
  const shown = look.bodies[look.shown]!.size_mm;
  const now = scaleFor(file, choices.unit);
  const under = (unit: MeshUnit | null): string => {
    const factor = scaleFor(file, unit) / now;
    return sizeText(shown.map((value) => value * factor) as unknown as Size);
  };
  const said =
    file.unit === null
      ? t('not said, taken as mm')
      : t('{unit}, as the file says', { unit: UNIT_WORDS[file.unit] });
  const options = UNITS.map((unit) => ({ value: unit, label: `${UNIT_WORDS[unit]}: ${under(unit)}` }));
  return (
    <div className="mesh-unit" data-ask={(file.unit === null && choices.unit === null) || undefined}>
      <Choice<MeshUnit | ''>
        label={t('unit')}
        testId="mesh-unit"
        value={choices.unit ?? ''}
        options={[{ value: '', label: said }, ...options]}
        onChoose={(unit) => onChange({ ...choices, unit: unit === '' ? null : unit })}
      />
    </div>
  );
}

const AXES: readonly (readonly [Axis, keyof Turns])[] = [
  ['x', 'turnX_deg'],
  ['y', 'turnY_deg'],
  ['z', 'turnZ_deg'],
];
const ORDER: Readonly<Record<Axis, Text>> = { x: 'about x', y: 'then y', z: 'then z' };

function TurnLine({ axis, name, choices, onChange }: SettingsProps & { axis: Axis; name: keyof Turns }) {
  const { turns } = choices;
  const further = (deg: number): void => onChange({ ...choices, turns: turnedFurther(turns, axis, deg) });
  const button = (deg: number, word: string) => (
    <button
      type="button"
      className="button"
      title={t('Turn what is seen by {deg}° about {axis}', { deg, axis })}
      aria-label={t('Turn by {deg} degrees about {axis}', { deg, axis })}
      data-testid={`mesh-turn-${axis}${deg > 0 ? '+' : '-'}`}
      onClick={() => further(deg)}
    >
      {word}
    </button>
  );
  return (
    <div className="mesh-turn">
      <TypedField
        label={t(ORDER[axis])}
        what={t('turn')}
        unit="°"
        step={15}
        value={turns[name]}
        parse={parseAngle}
        format={formatField}
        testId={`mesh-turn-${axis}`}
        onCommit={(deg) => onChange({ ...choices, turns: { ...turns, [name]: deg } })}
      />
      {button(-90, '−90°')}
      {button(90, '+90°')}
    </div>
  );
}

function Turning(props: SettingsProps) {
  const { choices, onChange } = props;
  const plain = AXES.every(([, name]) => choices.turns[name] === 0);
  return (
    <section>
      <div className="mesh-head">
        <h3>{t('Turn')}</h3>
        <button
          type="button"
          className="button"
          disabled={plain}
          onClick={() => onChange({ ...choices, turns: UNTURNED })}
        >
          {t('as in the file')}
        </button>
      </div>
      {AXES.map(([axis, name]) => (
        <TurnLine key={axis} {...props} axis={axis} name={name} />
      ))}
      <p className="hint">{t('The buttons turn what is seen; it then stands on its lowest point.')}</p>
    </section>
  );
}

function Mending({ look, choices, onChange }: SettingsProps) {
  const cracks = look.bodies.flatMap(({ crack_mm }) => (crack_mm === null ? [] : [crack_mm]));
  return (
    <>
      {cracks.length > 0 && (
        <label className="switch">
          <input
            type="checkbox"
            checked={choices.joinCracks}
            data-testid="mesh-join"
            onChange={(event) => onChange({ ...choices, joinCracks: event.target.checked })}
          />
          {t('join points {width} apart', { width: crackText(Math.max(...cracks)) })}
        </label>
      )}
      <TypedField
        label={t('close gaps up to')}
        what={t('gap')}
        unit="mm"
        step={0.01}
        min={0}
        max={10}
        value={choices.chainGap_mm}
        parse={parseLength}
        format={formatField}
        testId="mesh-gap"
        onCommit={(chainGap_mm) => onChange({ ...choices, chainGap_mm })}
      />
    </>
  );
}

function FileFindings({ file }: { readonly file: MeshFileFound }) {
  if (file.findings.length === 0) return null;
  return (
    <ul className="check-left-out" data-testid="mesh-file-findings">
      {file.findings.map((fault, i) => (
        <li key={i}>{sentence(fault)}</li>
      ))}
    </ul>
  );
}

const ORIGINS: Readonly<Record<Origin, Text>> = {
  corner: 'The file measures from the front left corner of the platform.',
  middle: 'The file measures from the middle of the platform.',
  moved: 'The file measures from elsewhere: the arrangement stands in the middle of the platform.',
};

const whyNone = (choices: MeshChoices): Text =>
  standsAsInFile(choices)
    ? 'The file places parts too far apart for a platform.'
    : 'Turned bodies have no place in the file.';

/** Only a file that places several parts has an arrangement to keep. */
function Places({ file, look, choices, onChange }: SettingsProps) {
  const machine = useBench((state) => state.layout.machine);
  if (!placesParts(file)) return null;
  const found = arrangementOf(file, look, choices, machine);
  return (
    <>
      <label className="switch">
        <input
          type="checkbox"
          checked={choices.keepPlaces && found !== null}
          disabled={found === null}
          data-testid="mesh-keep-places"
          onChange={(event) => onChange({ ...choices, keepPlaces: event.target.checked })}
        />
        {t('parts stand where the file places them')}
      </label>
      <p className="hint">{t(found ? ORIGINS[found.origin] : whyNone(choices))}</p>
    </>
  );
}

export function MeshSettingsPanel(props: SettingsProps) {
  const { choices, onChange } = props;
  return (
    <div className="mesh-settings">
      <UnitChoice {...props} />
      <Turning {...props} />
      <Mending {...props} />
      <label className="switch">
        <input
          type="checkbox"
          checked={choices.seams === 'none'}
          data-testid="mesh-seams-none"
          onChange={(event) => onChange({ ...choices, seams: event.target.checked ? 'none' : 'free' })}
        />
        {t('no seams: each part keeps one laser')}
      </label>
      <Places {...props} />
      <FileFindings file={props.file} />
    </div>
  );
}
