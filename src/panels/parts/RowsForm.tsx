/**
 * Copies of the selection in rows: how many in x and in y, and from one to the next. The pitch starts at the part's own
 * size and the spacing. Millimetres; nothing changes before the button is pressed.
 */
import { useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import type { Rows } from '../../commands/operations';
import { addedParts, copyInRows, MOST_COPIES, partBox } from '../../commands/operations';
import type { Layout, PartId } from '../../layout/types';
import { formatField } from '../../units/format';
import { parseLength, parseNumber } from '../../units/parse';
import { TypedField } from '../controls/TypedField';
import { useEdit } from '../useEdit';

/** Two in x, one in y, a spacing apart, rounded up to 0.1 mm. */
export function firstRows(layout: Layout, ids: readonly PartId[]): Rows {
  const boxes = layout.parts.filter(({ id }) => ids.includes(id)).map((part) => partBox(layout, part));
  const span = (low: 'minX' | 'minY', high: 'maxX' | 'maxY'): number => {
    const from = Math.min(...boxes.map((box) => box[low]));
    const to = Math.max(...boxes.map((box) => box[high]));
    return Math.ceil((to - from + layout.limits.spacing_mm) * 10) / 10;
  };
  return { countX: 2, countY: 1, pitchX_mm: span('minX', 'maxX'), pitchY_mm: span('minY', 'maxY') };
}

interface RowsFormProps {
  readonly ids: readonly PartId[];
  onDone?(): void;
}
const FIELDS = [
  { key: 'countX', label: 'count in x', unit: '', parse: parseNumber, min: 1, max: MOST_COPIES },
  { key: 'pitchX_mm', label: 'pitch in x', unit: 'mm', parse: parseLength, min: -1000, max: 1000 },
  { key: 'countY', label: 'count in y', unit: '', parse: parseNumber, min: 1, max: MOST_COPIES },
  { key: 'pitchY_mm', label: 'pitch in y', unit: 'mm', parse: parseLength, min: -1000, max: 1000 },
] as const;

export function RowsForm({ ids, onDone }: RowsFormProps) {
  const bench = useWorkbench();
  const edit = useEdit();
  const [rows, setRows] = useState<Rows>(() => firstRows(bench.store.getState().layout, ids));
  const place = (): void => {
    const before = bench.store.getState().layout;
    edit.press('copies in rows', (layout) => copyInRows(layout, ids, rows));
    const selection = addedParts(before, bench.store.getState().layout);
    if (selection.length > 0) bench.setView({ selection: [...ids, ...selection] });
    onDone?.();
  };
  return (
    <>
      {FIELDS.map(({ key, ...field }) => (
        <TypedField
          key={key}
          {...field}
          what={field.label}
          whole={field.unit === ''}
          step={1}
          value={rows[key]}
          testId={`rows-${key}`}
          format={formatField}
          onCommit={(value) => setRows({ ...rows, [key]: value })}
        />
      ))}
      <div className="row">
        <button type="button" className="button" data-main data-testid="rows-place" onClick={place}>
          Place {rows.countX * rows.countY - 1} copies per part
        </button>
      </div>
    </>
  );
}
