/**
 * The rows of a pasted table as they stand in it, what each column is taken for, and what each row will do.
 */
import { t } from '../../language/index';
import type { PlannedRow } from '../../commands/operations/placeTable';
import { FIELD_NAMES, TABLE_FIELDS, type Column, type TableField } from '../../import/table/columns';
import { rowWords } from './planWords';

interface PreviewProps {
  readonly columns: readonly Column[];
  readonly plan: readonly PlannedRow[];
  onField(column: number, field: TableField | null): void;
}

/** Rows that a reader looks through; more would only slow the page down. */
const SHOWN = 200;

/** The first rows; of a longer table those first that are refused or have something to say. */
function shownRows(plan: readonly PlannedRow[]): readonly PlannedRow[] {
  if (plan.length <= SHOWN) return plan;
  const worth = ({ remark, effect }: PlannedRow): boolean => remark !== null && effect !== 'repeat';
  return [...plan.filter(worth), ...plan.filter((row) => !worth(row))].slice(0, SHOWN);
}

function FieldPick({ column, at, onField }: { column: Column; at: number } & Pick<PreviewProps, 'onField'>) {
  const name = column.heading ?? t('column {number}', { number: at + 1 });
  return (
    <th scope="col">
      <span className="table-heading">{name}</span>
      <select
        className="plain-select"
        aria-label={t('{column} is', { column: name })}
        data-testid={`table-field-${at}`}
        value={column.field ?? ''}
        onChange={({ target }) => onField(at, target.value === '' ? null : (target.value as TableField))}
      >
        <option value="">{t('left out')}</option>
        {TABLE_FIELDS.map((field) => (
          <option key={field} value={field}>
            {t(FIELD_NAMES[field])}
          </option>
        ))}
      </select>
    </th>
  );
}

function Row({ planned, columns }: { readonly planned: PlannedRow; readonly columns: readonly Column[] }) {
  const { row, effect } = planned;
  return (
    <tr data-effect={effect} data-testid="table-row">
      <th scope="row">{row.line}</th>
      {columns.map(({ field }, i) => (
        <td key={i} data-out={field === null || undefined}>
          {row.cells[i]}
        </td>
      ))}
      <td className="table-does">{rowWords(planned)}</td>
    </tr>
  );
}

export function TablePreview({ columns, plan, onField }: PreviewProps) {
  return (
    <>
      <div className="table-preview">
        <table>
          <thead>
            <tr>
              <th scope="col">{t('row')}</th>
              {columns.map((column, i) => (
                <FieldPick key={i} column={column} at={i} onField={onField} />
              ))}
              <th scope="col">{t('what it does')}</th>
            </tr>
          </thead>
          <tbody>
            {shownRows(plan).map((planned) => (
              <Row key={planned.row.line} planned={planned} columns={columns} />
            ))}
          </tbody>
        </table>
      </div>
      {plan.length > SHOWN && (
        <p className="hint">
          {t('{shown} of {count} rows, those first that are refused or get another number.', {
            shown: SHOWN,
            count: plan.length,
          })}
        </p>
      )}
    </>
  );
}
