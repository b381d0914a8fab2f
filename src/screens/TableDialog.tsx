/**
 * The check page of a table of parts: what was understood of it row by row, what is refused and why. Nothing is on the
 * plate before the button is pressed; then it is one entry of history.
 */
import { t } from '../language/index';
import { useDeferredValue, useMemo, useState } from 'react';
import { useBench, useWorkbench } from '../canvas/bench';
import { placeTable, planTable, type OnTaken, type PlannedRow } from '../commands/operations/placeTable';
import { AS_TOLD, readTable, type TableReading } from '../import/table/readTable';
import { messageAdvice, messageText } from '../layout/messages';
import type { Fault } from '../layout/result';
import { useSaid } from '../panels/spoken/say';
import { Sheet } from './Sheet';
import { buttonWords, countEffects, countWords } from './table/planWords';
import { TableChoices } from './table/TableChoices';
import { TablePreview } from './table/TablePreview';
import './table/table.css';

interface TableDialogProps {
  /** What was pasted; may be empty. */
  readonly text: string;
  onClose(): void;
}

function Refusal({ fault: { code, params } }: { readonly fault: Fault }) {
  return (
    <p className="field-fault" role="alert">
      {messageText(code, params)} {messageAdvice(code, params)}
    </p>
  );
}

function TextOfTable({ text, onChange }: { readonly text: string; onChange(text: string): void }) {
  return (
    <label className="table-text">
      {t('Table, as copied from a spreadsheet')}
      <textarea
        rows={4}
        wrap="off"
        spellCheck={false}
        value={text}
        data-testid="table-text"
        onChange={({ target }) => onChange(target.value)}
      />
    </label>
  );
}

function Foot({ plan, onClose }: { readonly plan: readonly PlannedRow[]; onClose(): void }) {
  const bench = useWorkbench();
  const counts = countEffects(plan);
  const words = countWords(counts);
  useSaid(words);
  const place = (): void => {
    const next = placeTable(bench.store.getState().layout, plan);
    if (!next.ok) return bench.notify(next.fault);
    bench.change(t('Place a table'), () => next.value);
    bench.setView({ selection: plan.flatMap(({ part }) => part?.id ?? []), tool: 'select' });
    onClose();
  };
  return (
    <footer className="dialog-foot">
      <p className="table-count" data-testid="table-count">
        {words}
      </p>
      <button type="button" className="button" onClick={onClose}>
        {t('Cancel')}
      </button>
      <button
        type="button"
        className="button"
        data-main
        disabled={counts.add + counts.change === 0}
        data-testid="table-place"
        onClick={place}
      >
        {buttonWords(counts)}
      </button>
    </footer>
  );
}

const NO_ROWS: TableReading['rows'] = [];

function usePlan(text: string) {
  const [choices, onChange] = useState(AS_TOLD);
  const [onTaken, onOnTaken] = useState<OnTaken>('change');
  const layout = useBench((state) => state.layout);
  const locked = useBench((state) => state.view.locked);
  const read = useMemo(() => readTable(text, choices), [text, choices]);
  const rows = read.ok ? read.value.rows : NO_ROWS;
  const plan = useMemo(() => planTable(layout, rows, onTaken, locked), [layout, rows, onTaken, locked]);
  return { read, plan, choices, onTaken, onChange, onOnTaken };
}

export default function TableDialog({ text: pasted, onClose }: TableDialogProps) {
  const [text, setText] = useState(pasted);
  const { read, plan, ...chosen } = usePlan(useDeferredValue(text));
  const { choices, onChange } = chosen;
  return (
    <Sheet title={t('Table of parts')} wide onClose={onClose}>
      <TextOfTable text={text} onChange={setText} />
      <p className="hint">
        {t(
          'Columns by heading, English or German (id or Nr, shape or Form, x, y, turn, laser, seams, time factor; units as “x mm” or “x in”), else in this order. An empty cell leaves a value as it is; “-” takes a pin away.',
        )}
      </p>
      {!read.ok && <Refusal fault={read.fault} />}
      {read.ok && plan.length > 0 && (
        <>
          <TableChoices reading={read.value} {...chosen} />
          <TablePreview
            columns={read.value.columns}
            plan={plan}
            onField={(column, field) =>
              onChange({ ...choices, fields: { ...choices.fields, [column]: field } })
            }
          />
        </>
      )}
      <Foot plan={plan} onClose={onClose} />
    </Sheet>
  );
}
