/**
 * What holds for the whole drawing: unit, mirror, turn, height and copies of all; and what was left out.
 */
import { t } from '../../language/index';
import { Choice } from '../../panels/controls/Choice';
import { TypedField } from '../../panels/controls/TypedField';
import { importRemarks } from '../../import/outlines';
import type { ImportUnit, OutlineImport } from '../../import/types';
import { messageAdvice, messageText } from '../../layout/messages';
import { formatField } from '../../units/format';
import { parseAngle, parseLength, parseNumber } from '../../units/parse';
import type { Choices } from './choices';
import { unitText } from './choices';
import { leftOutText } from './leftOutText';

const UNITS: readonly ImportUnit[] = ['mm', 'cm', 'm', 'in', 'ft', 'um', 'mil', 'px', 'pt'];

interface SettingsProps {
  readonly imported: OutlineImport;
  readonly choices: Choices;
  onChange(choices: Choices): void;
}

/** Asks for the unit where the file says none; null where it does. */
function unitQuestion({ unit }: OutlineImport): string | null {
  if (unit === null)
    return t('The drawing does not say its unit. Compare the size with the part and choose.');
  if (unit.from !== 'css') return null;
  return t('No unit in the file: taken as px, 1/96 in. Compare the size with the part and choose.');
}

function UnitChoice({ imported, choices, onChange }: SettingsProps) {
  const said = imported.unit?.from === 'chosen' ? t('as the file says') : unitText(imported);
  const asks = unitQuestion(imported);
  return (
    <div className="check-unit" data-ask={asks !== null || undefined}>
      <Choice<ImportUnit | ''>
        label={t('unit')}
        testId="import-unit"
        value={choices.unit ?? ''}
        options={[{ value: '', label: said }, ...UNITS.map((unit) => ({ value: unit, label: unit }))]}
        onChoose={(unit) => onChange({ ...choices, unit: unit === '' ? null : unit })}
      />
      {asks !== null && (
        <p className="hint" data-testid="import-unit-asked">
          {asks}
        </p>
      )}
    </div>
  );
}

/** How near ends have to be; loose lines are chained in a DXF only. */
function GapField({ imported, choices, onChange }: SettingsProps) {
  if (imported.kind !== 'dxf') return null;
  return (
    <TypedField
      label={t('close gaps up to')}
      what={t('distance of ends')}
      unit="mm"
      step={0.01}
      min={0}
      max={1}
      value={choices.chainGap_mm}
      parse={parseLength}
      format={formatField}
      testId="import-gap"
      onCommit={(chainGap_mm) => onChange({ ...choices, chainGap_mm })}
    />
  );
}

function Mirrors({ choices, onChange }: Omit<SettingsProps, 'imported'>) {
  return (
    <>
      <label className="switch">
        <input
          type="checkbox"
          checked={choices.mirrorX}
          data-testid="import-mirror-x"
          onChange={(event) => onChange({ ...choices, mirrorX: event.target.checked })}
        />
        {t('mirror left and right')}
      </label>
      <label className="switch">
        <input
          type="checkbox"
          checked={choices.mirrorY}
          onChange={(event) => onChange({ ...choices, mirrorY: event.target.checked })}
        />
        {t('mirror front and back')}
      </label>
    </>
  );
}

function LeftOutList({ imported }: { readonly imported: OutlineImport }) {
  const { leftOut } = imported;
  const remarks = importRemarks(imported);
  if (leftOut.length === 0 && remarks.length === 0)
    return (
      <p className="hint" data-testid="left-out">
        {t('Nothing was left out.')}
      </p>
    );
  return (
    <section className="check-left-out" data-testid="left-out">
      {leftOut.length > 0 && <h3>{t('Left out')}</h3>}
      <ul>
        {leftOut.map((entry) => (
          <li key={`${entry.kind} ${entry.what}`}>{leftOutText(entry)}</li>
        ))}
      </ul>
      {leftOut.some(({ kind }) => kind === 'stroke') && (
        <p>{t('Lines without a fill are no area: to have one taken, fill it in the drawing program.')}</p>
      )}
      {remarks.map(({ code, params }) => (
        <p key={code} data-testid={code}>
          {messageText(code, params)} {messageAdvice(code, params)}
        </p>
      ))}
    </section>
  );
}

export function CheckSettings(props: SettingsProps) {
  const { imported, choices, onChange } = props;
  if (imported.shapes.length === 0)
    return (
      <div>
        <UnitChoice {...props} />
        <GapField {...props} />
        <LeftOutList imported={imported} />
      </div>
    );
  return (
    <div>
      <UnitChoice {...props} />
      <GapField {...props} />
      <Mirrors choices={choices} onChange={onChange} />
      <TypedField
        label={t('turn')}
        what={t('turn')}
        unit="°"
        step={15}
        value={choices.turn_deg}
        parse={parseAngle}
        format={formatField}
        testId="import-turn"
        onCommit={(turn_deg) => onChange({ ...choices, turn_deg })}
      />
      <TypedField
        label={t('height of all')}
        what={t('height')}
        unit="mm"
        step={1}
        min={0.001}
        max={10_000}
        value={choices.height_mm}
        parse={parseLength}
        format={formatField}
        testId="import-height"
        onCommit={(height_mm) => onChange({ ...choices, height_mm })}
      />
      <TypedField
        label={t('copies of each')}
        what={t('copies')}
        unit=""
        step={1}
        min={0}
        max={100}
        whole
        value={choices.copies}
        parse={parseNumber}
        format={formatField}
        testId="import-copies"
        onCommit={(copies) => onChange({ ...choices, copies })}
      />
      <LeftOutList imported={imported} />
    </div>
  );
}
