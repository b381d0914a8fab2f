/**
 * Above the part list: the words looked for and how many parts hold them, and the heads of the columns, which sort.
 */
import { CommandButton } from '../header/CommandButton';
import { t, type Text } from '../../language/index';
import { useWorkbench } from '../../canvas/bench';
import type { PartRow } from '../../commands/list/partRows';
import { nextSort } from '../../commands/list/shownRows';
import type { SortBy, SortColumn } from '../../store/types';
import { useSaid } from '../spoken/say';

interface SearchLineProps {
  readonly text: string;
  readonly found: readonly PartRow[];
  readonly all: number;
  onText(text: string): void;
}

export function SearchLine({ text, found, all, onText }: SearchLineProps) {
  const bench = useWorkbench();
  const searching = text.trim() !== '';
  const counted = t('{part} of {whole}', { part: found.length, whole: all });
  useSaid(searching ? t('{count} parts found', { count: counted }) : null);
  return (
    <div className="part-search">
      <input
        type="text"
        value={text}
        placeholder={t('Find id, shape, laser, locked …')}
        aria-label={t('Find parts; Enter selects all that are found')}
        title={t(
          'Words that all have to be in a row: id, shape, laser, locked, hidden, pinned, problem. Enter selects all found.',
        )}
        data-testid="part-search"
        spellCheck={false}
        autoComplete="off"
        onChange={(event) => onText(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') bench.setView({ selection: found.map(({ id }) => id) });
          if (event.key !== 'Escape' || text === '') return;
          event.stopPropagation();
          onText('');
        }}
      />
      <span data-testid="part-count">{searching ? counted : all}</span>
    </div>
  );
}

const COLUMNS: readonly (readonly [SortColumn, label: Text, title: Text])[] = [
  ['id', 'id', 'id'],
  ['shape', 'shape', 'shape'],
  ['height', 'mm', 'height in mm'],
  ['turn', 'turn ¦ head', 'turn'],
  ['laser', 'laser', 'laser'],
];

/** Over a list that a column sorts: its order can become that of the layout. */
export function SortLine() {
  return (
    <div className="part-sorted">
      <CommandButton id="keep-order">{t('Keep this order')}</CommandButton>
    </div>
  );
}

interface HeadsProps {
  readonly sort: SortBy | null;
  onSort(sort: SortBy | null): void;
}

export function ColumnHeads({ sort, onSort }: HeadsProps) {
  const way = sort?.down === true ? 'descending' : 'ascending';
  return (
    <tr>
      {COLUMNS.map(([column, label, title]) => (
        <th
          key={column}
          scope="col"
          className={column === 'height' || column === 'turn' ? 'number' : undefined}
          aria-sort={sort?.column === column ? way : undefined}
        >
          <button
            type="button"
            title={t('Sort by {title}', { title: t(title) })}
            onClick={() => onSort(nextSort(sort, column))}
          >
            {t(label)}
            {sort?.column === column && <span aria-hidden="true">{sort.down ? '↓' : '↑'}</span>}
          </button>
        </th>
      ))}
    </tr>
  );
}
