/**
 * The title block at the foot of the sheet (fields as in ISO 7200): units, machine, process, layers, hours, checksum,
 * state, the revision, and the cautions that belong to every sheet.
 */
import { t, type Text } from '../../language/index';
import { Suspense, useContext } from 'react';
import { onceDrawn } from '../../canvas/later';
import { useAnalysisLater } from '../../canvas/bench';
import type { Layout } from '../../layout/types';
import { formatField, formatHours } from '../../units/format';
import { CommandContext } from '../commandContext';
import { correctedTime } from '../readout/buildValues';
import { leftOutOfBuild, leftOutVolume } from '../readout/leftOutBuild';
import { NOTHING, nothingBuilt } from '../readout/nothing';
import { sheetState } from './sheetState';
import { useChecksum } from './useChecksum';
import './title.css';

const RevisionLine = onceDrawn(async () => (await import('./RevisionLine')).default);

interface CellProps {
  readonly label: string;
  readonly value: string;
  readonly testId?: string;
  readonly warn?: boolean;
  /** Words of the tooltip; the value itself where left out. */
  readonly title?: string;
}

function Cell({ label, value, testId, warn, title = value }: CellProps) {
  return (
    <div className="title-cell" data-warn={warn || undefined}>
      <dt>{label}</dt>
      <dd data-testid={testId} title={title}>
        {value}
      </dd>
    </div>
  );
}

function Checksum({ layout }: { readonly layout: Layout }) {
  return <Cell label={t('checksum')} value={useChecksum(layout)} testId="checksum" />;
}

/** The beginning of the note; a press leads to the field that holds it whole. */
function Note({ text }: { readonly text: string }) {
  const context = useContext(CommandContext);
  return (
    <div className="title-cell title-note">
      <dt>{t('note')}</dt>
      <dd title={text}>
        <button type="button" data-testid="title-note" onClick={() => context?.ports.showDialog('process')}>
          {text === '' ? t('none ¦ note') : text}
        </button>
      </dd>
    </div>
  );
}

/** What hours are called that are not of all layers of this plate. */
const INTERIM: Readonly<Record<string, Text>> = {
  sampled: '{hours}, some layers',
  earlier: '{hours}, before the edit',
};

const said = (text: Text | undefined, hours: string): string => (text ? t(text, { hours }) : hours);

export function TitleBlock() {
  const analysis = useAnalysisLater();
  const { machine, process, revision } = analysis.layout;
  const { layers } = analysis.build;
  const corrected = (analysis.layout.schedule?.correction.factor ?? 1) !== 1;
  const left = leftOutOfBuild(analysis);
  const state = sheetState(analysis, left);
  const hoursNow = formatHours(correctedTime(analysis.layout, analysis.build));
  const known = analysis.whole === 'none' ? '…' : said(INTERIM[analysis.whole], hoursNow);
  const summed = left === null ? known : `${known} ${leftOutVolume(left)}`;
  const nothing = nothingBuilt(analysis.layout);
  const hours = nothing === null ? summed : `${NOTHING} ${nothing}`;
  return (
    <footer className="title-block" aria-label={t('Title block')} data-revision={revision?.name}>
      <Suspense fallback={null}>{revision && <RevisionLine revision={revision} />}</Suspense>
      <dl>
        <Cell label={t('program')} value="Evenplate" />
        <Cell label={t('units')} value="mm, s, °" />
        <Cell label={t('machine')} value={machine.name} />
        <Cell label={t('process')} value={process.name} />
        <Cell label={t('layers')} value={`${layers} × ${formatField(process.layer_mm)} mm`} testId="layers" />
        <Cell
          label={corrected ? t('build, corrected') : t('build, estimate')}
          value={hours}
          testId="title-hours"
          warn={left !== null}
        />
        <Checksum layout={analysis.layout} />
        <Cell
          label={t(state.blocked ? 'blocks hand-over' : 'state')}
          value={state.text}
          testId="sheet-state"
          warn={state.blocked}
          title={state.why || state.text}
        />
        <Note text={analysis.layout.note} />
      </dl>
      <p className="caution">
        {t(
          'A plan and an estimate, unvalidated by measurement for several lasers. The machine maker’s instructions, site rules, local law and trained people decide. Hatching shows who exposes, not the scan direction.',
        )}
      </p>
    </footer>
  );
}
