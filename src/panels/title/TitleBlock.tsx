/**
 * The title block at the foot of the sheet (fields as in ISO 7200): units, machine, process, layers, hours, checksum,
 * state, and the cautions that belong to every sheet.
 */
import { useContext, useEffect, useState } from 'react';
import { fitsAFrame } from '../../build/analysis';
import { useAnalysisLater, useBench } from '../../canvas/bench';
import type { Analysis } from '../../build/types';
import type { Layout } from '../../layout/types';
import { formatHours } from '../../units/format';
import { CommandContext } from '../commandContext';
import { correctedTime } from '../readout/buildValues';
import type { LeftOut } from '../readout/leftOut';
import { leftOutOfBuild, leftOutVolume } from '../readout/leftOut';
import { NOTHING, nothingBuilt } from '../readout/nothing';
import './title.css';

export interface SheetState {
  readonly text: string;
  readonly blocked: boolean;
  /** Why hand-over is blocked, in a few words; empty where it is not. */
  readonly why: string;
}

const OPEN: SheetState = { text: 'draft, not released', blocked: false, why: '' };

/**
 * "NOT FOR USE" while anything blocks hand-over; otherwise a draft, which nobody has released. What is known of an earlier
 * plate only can block this one, never clear it; nor does a list of problems that nobody has looked for yet.
 */
export function sheetState({ problems, checks, layout, whole }: Analysis, left: LeftOut | null): SheetState {
  const faults = problems.filter((problem) => problem.blocks).length;
  if (left !== null) return { text: 'NOT FOR USE', blocked: true, why: 'unassigned area blocks hand-over' };
  if (faults > 0)
    return {
      text: 'NOT FOR USE',
      blocked: true,
      why: `${faults} ${faults === 1 ? 'fault blocks' : 'faults block'} hand-over`,
    };
  if (layout.parts.length === 0) return { ...OPEN, text: 'empty plate' };
  return whole === 'present' && checks > 0 ? OPEN : { ...OPEN, text: 'being checked' };
}

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

/** A checksum reads the whole layout: it is worked out once the layout has been still for this long. */
const STILL_MS = 150;
const PENDING = '············';

/** The checksum of this layout; dots while it is still changing, or being read beside the page. */
function useChecksum(layout: Layout): string {
  const [known, setKnown] = useState<{ readonly layout: Layout; readonly checksum: string } | null>(null);
  const beside = useBench((state) => state.height.checksum);
  const here = fitsAFrame(layout);
  useEffect(() => {
    if (!here) return undefined;
    let current = true;
    const timer = setTimeout(async () => {
      const { checksum } = await import('../../layout/checksum');
      if (current) setKnown({ layout, checksum: checksum(layout) });
    }, STILL_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [layout, here]);
  const found = here ? known : beside;
  return found?.layout === layout ? found.checksum : PENDING;
}

function Checksum({ layout }: { readonly layout: Layout }) {
  return <Cell label="checksum" value={useChecksum(layout)} testId="checksum" />;
}

/** The beginning of the note; a press leads to the field that holds it whole. */
function Note({ text }: { readonly text: string }) {
  const context = useContext(CommandContext);
  return (
    <div className="title-cell title-note">
      <dt>note</dt>
      <dd title={text}>
        <button type="button" data-testid="title-note" onClick={() => context?.ports.showDialog('process')}>
          {text === '' ? 'none' : text}
        </button>
      </dd>
    </div>
  );
}

export function TitleBlock() {
  const analysis = useAnalysisLater();
  const { machine, process } = analysis.layout;
  const { layers } = analysis.build;
  const corrected = (analysis.layout.schedule?.correction.factor ?? 1) !== 1;
  const left = leftOutOfBuild(analysis);
  const state = sheetState(analysis, left);
  const known = analysis.whole === 'none' ? '…' : formatHours(correctedTime(analysis.layout, analysis.build));
  const summed = left === null ? known : `${known} ${leftOutVolume(left)}`;
  const nothing = nothingBuilt(analysis.layout);
  const hours = nothing === null ? summed : `${NOTHING} ${nothing}`;
  return (
    <footer className="title-block" aria-label="Title block">
      <dl>
        <Cell label="program" value="Evenplate" />
        <Cell label="units" value="mm, s, °" />
        <Cell label="machine" value={machine.name} />
        <Cell label="process" value={process.name} />
        <Cell label="layers" value={`${layers} × ${process.layer_mm} mm`} testId="layers" />
        <Cell
          label={corrected ? 'build, corrected' : 'build, estimate'}
          value={hours}
          testId="title-hours"
          warn={left !== null}
        />
        <Checksum layout={analysis.layout} />
        <Cell
          label={state.blocked ? 'blocks hand-over' : 'state'}
          value={state.text}
          testId="sheet-state"
          warn={state.blocked}
          title={state.why || state.text}
        />
        <Note text={analysis.layout.note} />
      </dl>
      <p className="caution">
        A plan and an estimate, unvalidated by measurement for several lasers. The machine maker’s
        instructions, site rules, local law and trained people decide. Hatching shows who exposes, not the
        scan direction.
      </p>
    </footer>
  );
}
