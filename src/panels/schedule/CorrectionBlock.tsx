/**
 * What real hours are to planned ones: a factor and its spread, typed or learned from finished builds that this browser
 * keeps. Hours.
 */
import { t } from '../../language/index';
import { useState } from 'react';
import { learnCorrection } from '../../build/correction';
import { useBench } from '../../canvas/bench';
import { setLearned, setSchedule } from '../../commands/operations';
import { messageAdvice, messageText } from '../../layout/messages';
import type { Fault, Result } from '../../layout/result';
import type { Correction } from '../../layout/types';
import { formatField, formatNumber, formatPercent } from '../../units/format';
import { parseNumber } from '../../units/parse';
import { Block } from '../controls/Block';
import { NumberField } from '../controls/fields';
import { TypedField } from '../controls/TypedField';
import { useEdit } from '../useEdit';
import { isOf, type NamedRecord, type Site } from './records';
import { useRecords, type Records } from './useRecords';

const LONGEST_NAME = 60;

function FaultLine({ fault }: { readonly fault: Fault }) {
  return (
    <p className="field-fault" role="alert">
      {messageText(fault.code, fault.params)} {messageAdvice(fault.code, fault.params)}
    </p>
  );
}

interface RecordsProps {
  readonly records: Records;
  /** Those that count here. */
  readonly list: readonly NamedRecord[];
}

function RecordTable({ records, list }: RecordsProps) {
  return (
    <table className="records" data-testid="build-records">
      <thead>
        <tr>
          <th scope="col">{t('build')}</th>
          <th scope="col">{t('planned h')}</th>
          <th scope="col">{t('real h')}</th>
          <th scope="col">{t('ratio')}</th>
          <th>
            <span className="visually-hidden">{t('remove')}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {list.map((record, index) => (
          <tr key={`${index} of ${list.length}`}>
            <td title={record.name}>{record.name}</td>
            <td>{formatNumber(record.planned_h, 4, 2)}</td>
            <td>{formatNumber(record.real_h, 4, 2)}</td>
            <td>{formatNumber(record.real_h / record.planned_h, 3, 2)}</td>
            <td>
              <button
                type="button"
                className="button"
                data-bare
                aria-label={t('Remove the record of {name}', { name: record.name })}
                onClick={() => records.remove(record)}
              >
                ×
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface RecordFormProps {
  /** Name and planned hours of the open plate; null while they are not known. */
  readonly plate: { readonly name: string; readonly planned_h: number } | null;
  readonly site: Site;
  onAdd(record: NamedRecord): Result<unknown>;
}

/** The same digits as the build time shows elsewhere. */
const plannedText = (hours: number): string => formatNumber(hours, 4, 2);

/** One more finished build; it starts with the open plate's planned hours. */
function RecordForm({ plate, site, onAdd }: RecordFormProps) {
  const [planned, setPlanned] = useState<number | null>(null);
  const [real_h, setReal] = useState(0);
  const [fault, setFault] = useState<Fault | null>(null);
  const planned_h = planned ?? plate?.planned_h ?? 0;
  const add = (): void => {
    const added = onAdd({ name: (plate?.name ?? '').slice(0, LONGEST_NAME), planned_h, real_h, site });
    setFault(added.ok ? null : added.fault);
    if (!added.ok) return;
    setPlanned(null);
    setReal(0);
  };
  const field = { unit: 'h', step: 1, min: 0, parse: parseNumber, format: formatField };
  return (
    <>
      <TypedField
        {...field}
        label={t('planned hours')}
        what={t('planned hours')}
        value={planned_h}
        format={plannedText}
        testId="record-planned"
        onCommit={setPlanned}
      />
      <TypedField
        {...field}
        label={t('real hours')}
        what={t('real hours')}
        value={real_h}
        testId="record-real"
        onCommit={setReal}
      />
      {fault !== null && <FaultLine fault={fault} />}
      <p className="hint">{t('Planned before any correction, real without stops.')}</p>
      <button type="button" className="button" data-testid="record-add" onClick={add}>
        {t('Record this build')}
      </button>
    </>
  );
}

/** What the records come to, and the button that takes it over. */
function Learning({ list }: Pick<RecordsProps, 'list'>) {
  const edit = useEdit();
  if (list.length === 0)
    return (
      <p className="hint">
        {t('No build is recorded yet. Records stay in this browser, not in the layout.')}
      </p>
    );
  const learned = learnCorrection(list);
  if (!learned.ok) return <FaultLine fault={learned.fault} />;
  const { factor, spread_pct } = learned.value;
  return (
    <>
      <p className="hint" data-testid="learned">
        {t('Σ real / Σ planned = {factor},', { factor: formatNumber(factor, 4, 3) })}{' '}
        {spread_pct === null
          ? t('spread unknown: one build has none, so the given one stays.')
          : t('spread {spread} of it (root mean square of the ratios about it, n − 1).', {
              spread: formatPercent(spread_pct),
            })}
      </p>
      <button
        type="button"
        className="button"
        data-testid="learned-use"
        onClick={() => edit.press(t('learned correction'), (layout) => setLearned(layout, learned.value))}
      >
        {t('Take over')}
      </button>
    </>
  );
}

interface CorrectionBlockProps {
  readonly correction: Correction;
  readonly plate: RecordFormProps['plate'];
}

export function CorrectionBlock({ correction, plate }: CorrectionBlockProps) {
  const records = useRecords();
  const machine = useBench((state) => state.layout.machine.name);
  const process = useBench((state) => state.layout.process.name);
  const site = { machine, process };
  const list = records.list.filter((record) => isOf(record, site));
  const elsewhere = records.list.length - list.length;
  const add = (record: NamedRecord): Result<unknown> => {
    const checked = learnCorrection([record]);
    if (checked.ok) records.add(record);
    return checked;
  };
  return (
    <Block title={t('CORRECTION')}>
      <NumberField
        label={t('real / planned hours')}
        what={t('correction factor')}
        value={correction.factor}
        step={0.01}
        testId="correction-factor"
        recipe={(layout, factor) => setSchedule(layout, { correction: { ...correction, factor } })}
      />
      <NumberField
        label={t('spread (one σ)')}
        what={t('spread of the correction')}
        unit="%"
        value={correction.spread_pct}
        testId="correction-spread"
        recipe={(layout, spread_pct) => setSchedule(layout, { correction: { ...correction, spread_pct } })}
      />
      {list.length > 0 && <RecordTable records={records} list={list} />}
      <Learning list={list} />
      {elsewhere > 0 && (
        <p className="hint" data-testid="records-elsewhere">
          {t('{count} [record|records] of other machines or processes [is|are] not counted here.', {
            count: elsewhere,
          })}
        </p>
      )}
      {records.fault !== null && <FaultLine fault={records.fault} />}
      <RecordForm plate={plate} site={site} onAdd={add} />
    </Block>
  );
}
