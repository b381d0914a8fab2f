/**
 * The parts of the plate as a table: id, shape, height, turn, laser. Selection and hover run both ways. With the focus
 * in the table the arrow keys walk the rows and the selection goes along; they move no part (that takes the focus of
 * the plan).
 */
import { t } from '../../language/index';
import type { KeyboardEvent } from 'react';
import { memo, useCallback, useDeferredValue, useEffect, useMemo, useRef } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import { isSelected } from '../../store/selected';
import { formatField } from '../../units/format';
import { Swatch } from '../controls/Swatch';
import { useLayerLater } from '../useLayer';
import { useLightHandlers, useLit } from '../useLight';
import { ColumnHeads, SearchLine, SortLine } from './ListHead';
import type { Carried } from './listDrag';
import { toIdField } from './renaming';
import { useKeptFocus } from './useKeptFocus';
import { useListDrag, type Grab } from './useListDrag';
import { useOrderLack, useOrderNews } from './useOrderNews';
import { shownRows } from '../../commands/list/shownRows';
import type { SortBy } from '../../store/types';
import type { PartRow } from '../../commands/list/partRows';
import { partRows } from '../../commands/list/partRows';
import type { Modifiers } from './selecting';
import { selectionAfter, selectionFollowing } from './selecting';

/** To a tenth, without trailing zeros. */
const short = (value: number): string => formatField(Math.round(value * 10) / 10);

/** More lasers than this have room for their names only. */
const MOST_SWATCHES = 2;
/** And more than this are counted; the tip names them. */
const MOST_NAMES = 3;

interface RowProps extends PartRow {
  readonly laserIds: string;
  readonly reachable: boolean;
  onSelect(id: string, keys: Modifiers): void;
  /** The focus has stepped to a part. */
  onStep(id: string, keys: Modifiers): void;
  /** Null where the list shows another order than the layout's. */
  readonly grab: Grab | null;
}

function LaserCell({ lasers, laserIds, pinned }: Pick<RowProps, 'lasers' | 'laserIds' | 'pinned'>) {
  const names = laserIds.split(' ');
  const indices = lasers === '' ? [] : lasers.split(' ').map(Number);
  const all = indices.length > MOST_NAMES && !indices.includes(-1);
  const text = indices.map((laser) => names[laser] ?? t('none')).join(' ');
  return (
    <td className="part-lasers" title={pinned ? t('{text}, pinned', { text }) : text}>
      {indices.length === 0 && '–'}
      {all && <span>{t('{count} lasers', { count: indices.length })}</span>}
      {(all ? [] : indices).map((laser) => (
        <span key={laser}>
          {laser >= 0 && indices.length <= MOST_SWATCHES && <Swatch laser={laser} size={10} />}
          {names[laser] ?? <b>{t('none')}</b>}
        </span>
      ))}
      {pinned && <span aria-label={t('pinned')}>•</span>}
    </td>
  );
}

/** The row that a key leads to; null where it leads nowhere, undefined for a key that does not walk. */
function rowFor(key: string, row: Element): Element | null | undefined {
  const rows = row.parentElement?.children ?? [];
  return {
    ArrowDown: row.nextElementSibling,
    ArrowUp: row.previousElementSibling,
    ArrowLeft: null,
    ArrowRight: null,
    Home: rows[0],
    End: rows[rows.length - 1],
  }[key];
}

/** To the field that holds the row's id; the inspector shows it once the row is selected. */
function rename(row: Element, stepTo: RowProps['onStep']): void {
  const id = row.getAttribute('data-part');
  if (id) stepTo(id, { shiftKey: false, ctrlKey: false, metaKey: false });
  setTimeout(toIdField);
}

/** Walks the rows; space and Enter press the row. None of these keys goes on to the plate. */
function walk(event: KeyboardEvent<HTMLButtonElement>, stepTo: RowProps['onStep']): void {
  const row = event.currentTarget.closest('tr');
  if (!row || event.altKey) return;
  if (event.key === 'F2') return rename(row, stepTo);
  if (event.key === ' ' || event.key === 'Enter') event.stopPropagation();
  const next = rowFor(event.key, row);
  if (next === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  next?.querySelector('button')?.focus();
  const id = next?.getAttribute('data-part');
  if (id) stepTo(id, event);
}

/** The id is a button that reaches over the whole row. */
function RowButton({ id, reachable, selected, onSelect, onStep }: RowButtonProps) {
  const light = useLightHandlers(`part:${id}`);
  return (
    <button
      type="button"
      className="row-button"
      tabIndex={reachable ? 0 : -1}
      aria-pressed={selected}
      onClick={(event) => onSelect(id, event)}
      onKeyDown={(event) => walk(event, onStep)}
      {...light}
    >
      {id}
    </button>
  );
}
interface RowButtonProps extends Pick<RowProps, 'id' | 'reachable' | 'onSelect' | 'onStep'> {
  readonly selected: boolean;
}

/** By it a row is dragged to another place; a press without a drag selects it. Keys do the same by commands. */
function Grip({
  id,
  grab,
  onSelect,
}: { readonly id: string; readonly grab: Grab } & Pick<RowProps, 'onSelect'>) {
  return (
    <span
      className="row-grip"
      aria-hidden="true"
      title={t('Drag to another place in the list (Alt+↑, Alt+↓)')}
      data-testid={`grip-${id}`}
      // the focus stays where it is, and no text is marked
      onMouseDown={(event) => event.preventDefault()}
      onPointerDown={(event) => grab(id, event, (released) => onSelect(id, released))}
    />
  );
}

/** Stands in the row of a locked part; a press unlocks it. */
function Padlock({ id }: { readonly id: string }) {
  const bench = useWorkbench();
  return (
    <button
      type="button"
      className="padlock"
      tabIndex={-1}
      aria-label={t('Unlock {id}', { id })}
      title={t('Locked; a press unlocks it')}
      onClick={() =>
        bench.setView({ locked: bench.store.getState().view.locked.filter((other) => other !== id) })
      }
    >
      <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true" fill="none" stroke="currentColor">
        <path d="M2.5 5.5h7v5h-7zM4 5.5v-2a2 2 0 0 1 4 0v2" />
      </svg>
    </button>
  );
}

const Row = memo(function Row(props: RowProps) {
  const selected = useBench((state) => isSelected(state.view.selection, props.id));
  const lit = useLit(`part:${props.id}`);
  const row = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    if (selected) row.current?.scrollIntoView({ block: 'nearest' });
  }, [selected]);
  return (
    <tr
      ref={row}
      data-lit={lit || undefined}
      data-selected={selected || undefined}
      data-hidden={props.hidden || undefined}
      data-part={props.id}
    >
      <td>
        {props.grab && <Grip id={props.id} grab={props.grab} onSelect={props.onSelect} />}
        <RowButton {...props} selected={selected} />
        {props.locked && <Padlock id={props.id} />}
        {props.mayNotBeCut && (
          <span className="uncut" title={t('no seams')}>
            <span className="visually-hidden">{t('no seams')}</span>
          </span>
        )}
        {props.problem > 0 && (
          <b className="problem-mark" aria-label={t('problem {problem}', { problem: props.problem })}>
            {props.problem}
          </b>
        )}
      </td>
      <td className="part-shape" title={props.shape}>
        {props.shape}
      </td>
      <td className="number">{short(props.height_mm)}</td>
      <td className="number">{short(props.turn_deg)}</td>
      <LaserCell lasers={props.lasers} laserIds={props.laserIds} pinned={props.pinned} />
    </tr>
  );
});

type After = typeof selectionAfter;

/** Selects by the rule given, in the order of the rows shown. */
function useSelecting(after: After, rows: readonly PartRow[]): (id: string, keys: Modifiers) => void {
  const bench = useWorkbench();
  const shown = useRef(rows);
  useEffect(() => {
    shown.current = rows;
  });
  return useCallback(
    (id, keys) => {
      const order = shown.current.map((row) => row.id);
      bench.setView({ selection: after(order, bench.store.getState().view.selection, id, keys) });
    },
    [bench, after],
  );
}

/** The rows that are looked for, in the order that is wished. */
function useRows() {
  const { analysis, figures } = useLayerLater();
  const locked = useBench((state) => state.view.locked);
  const hidden = useBench((state) => state.view.hidden);
  const bench = useWorkbench();
  const { search, sort } = useBench((state) => state.view.list);
  const setSearch = (next: string) => bench.setView({ list: { search: next, sort } });
  const setSort = (next: SortBy | null) => bench.setView({ list: { search, sort: next } });
  const wanted = useDeferredValue(search);
  const lasers = analysis.layout.machine.lasers;
  const all = useMemo(
    () => partRows(analysis, figures, { locked, hidden }),
    [analysis, figures, locked, hidden],
  );
  const rows = useMemo(
    () =>
      shownRows(
        all,
        wanted,
        sort,
        lasers.map(({ id }) => id),
      ),
    [all, wanted, sort, lasers],
  );
  return { lasers, all, rows, search, setSearch, sort, setSort };
}

/** Where what is carried would land. */
function Landing({ gap, words }: Carried) {
  return (
    <div className="row-landing" style={{ top: `calc(var(--row) * ${gap + 1})` }} data-testid="row-landing">
      {words !== null && <span>{words}</span>}
    </div>
  );
}

export function PartTable() {
  const list = useRef<HTMLDivElement>(null);
  const { lasers, all, rows, search, setSearch, sort, setSort } = useRows();
  const laserIds = lasers.map((laser) => laser.id).join(' ');
  const last = useBench((state) => state.view.selection.at(-1));
  const first = rows.some(({ id }) => id === last) ? last : rows[0]?.id;
  const select = useSelecting(selectionAfter, rows);
  const step = useSelecting(selectionFollowing, rows);
  const { carried, grab } = useListDrag(list);
  const focus = useKeptFocus(list, rows);
  const own = sort === null && search.trim() === '';
  useOrderNews();
  useOrderLack(list);
  return (
    <>
      <SearchLine text={search} found={rows} all={all.length} onText={setSearch} />
      {sort !== null && <SortLine />}
      <div className="part-table" ref={list} {...focus}>
        {carried && <Landing {...carried} />}
        <table aria-label={t('Parts')}>
          <thead>
            <ColumnHeads sort={sort} onSort={setSort} />
          </thead>
          <tbody>
            {rows.map((row) => (
              <Row
                key={row.id}
                {...row}
                laserIds={laserIds}
                reachable={row.id === first}
                onSelect={select}
                onStep={step}
                grab={own ? grab : null}
              />
            ))}
          </tbody>
        </table>
        {rows.length === 0 && all.length > 0 && <p className="hint">{t('No part holds these words.')}</p>}
      </div>
    </>
  );
}
