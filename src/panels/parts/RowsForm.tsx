/**
 * Copies of the selection in rows: how many in x and in y, and from one to the next. The pitch starts at the part's own
 * size and the spacing. Nothing changes before the button is pressed, or Enter; both wait until every field is sound.
 */
import { t } from '../../language/index';
import { useState } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import type { Rows } from '../../commands/operations';
import { addedParts, copyInRows } from '../../commands/operations';
import { messageAdvice, messageText } from '../../layout/messages';
import type { PartId } from '../../layout/types';
import { useEdit } from '../useEdit';
import { RowField } from './RowField';
import { copiesOf, firstRows, placeFault, placeWords, readRows, ROW_FIELDS, rowTexts } from './rows';

interface RowsFormProps {
  readonly ids: readonly PartId[];
  onDone?(): void;
}

function usePlacing({ ids, onDone }: RowsFormProps) {
  const bench = useWorkbench();
  const edit = useEdit();
  return (rows: Rows): void => {
    const before = bench.store.getState().layout;
    edit.press(t('copies in rows'), (layout) => copyInRows(layout, ids, rows));
    const selection = addedParts(before, bench.store.getState().layout);
    if (selection.length > 0) bench.setView({ selection: [...ids, ...selection] });
    onDone?.();
  };
}

export function RowsForm({ ids, onDone }: RowsFormProps) {
  const bench = useWorkbench();
  const held = useBench((state) => state.layout.parts.length);
  const place = usePlacing({ ids, onDone });
  const [texts, setTexts] = useState(() => rowTexts(firstRows(bench.store.getState().layout, ids)));
  const { rows, faults } = readRows(texts);
  const fault = placeFault(rows, ids.length, held);
  const ready = rows !== null && copiesOf(rows) > 0 && fault === null;
  return (
    <form
      className="rows-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (ready) place(rows);
      }}
    >
      {ROW_FIELDS.map(({ key, what, ...reading }) => (
        <RowField
          key={key}
          reading={{ ...reading, what: t(what) }}
          text={texts[key]}
          fault={faults[key] ?? null}
          testId={`rows-${key}`}
          onText={(text) => setTexts((now) => ({ ...now, [key]: text }))}
        />
      ))}
      {fault !== null && (
        <p className="field-fault" role="alert">
          {messageText(fault.code, fault.params)} {messageAdvice(fault.code, fault.params)}
        </p>
      )}
      <div className="row">
        <button type="submit" className="button" data-main data-testid="rows-place" disabled={!ready}>
          {placeWords(rows, ids.length)}
        </button>
      </div>
    </form>
  );
}
