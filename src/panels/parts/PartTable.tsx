/**
 * The parts of the plate as a table: id, shape, height, turn, laser. Selection and hover run both ways; the arrow keys
 * walk the rows, space or Enter selects.
 */
import type { KeyboardEvent } from 'react';
import { memo, useCallback, useEffect, useMemo, useRef } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import { formatField } from '../../units/format';
import { Swatch } from '../controls/Swatch';
import { useLayerLater } from '../useLayer';
import { useLightHandlers, useLit } from '../useLight';
import type { PartRow } from './partRows';
import { partRows } from './partRows';
import type { Modifiers } from './selecting';
import { selectionAfter } from './selecting';

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
}

function LaserCell({ lasers, laserIds, pinned }: Pick<RowProps, 'lasers' | 'laserIds' | 'pinned'>) {
  const names = laserIds.split(' ');
  const indices = lasers === '' ? [] : lasers.split(' ').map(Number);
  const all = indices.length > MOST_NAMES && !indices.includes(-1);
  const text = indices.map((laser) => names[laser] ?? 'none').join(' ');
  return (
    <td className="part-lasers" title={pinned ? `${text}, pinned` : text}>
      {indices.length === 0 && '–'}
      {all && <span>{indices.length} lasers</span>}
      {(all ? [] : indices).map((laser) => (
        <span key={laser}>
          {laser >= 0 && indices.length <= MOST_SWATCHES && <Swatch laser={laser} size={10} />}
          {names[laser] ?? <b>none</b>}
        </span>
      ))}
      {pinned && <span aria-label="pinned">•</span>}
    </td>
  );
}

/** Arrow keys, Home and End walk the rows without moving parts; space and Enter press the row. */
function walk(event: KeyboardEvent<HTMLButtonElement>): void {
  const row = event.currentTarget.closest('tr');
  const rows = row?.parentElement?.children;
  if (!row || !rows) return;
  if (event.key === ' ' || event.key === 'Enter') event.stopPropagation();
  const next = {
    ArrowDown: row.nextElementSibling,
    ArrowUp: row.previousElementSibling,
    Home: rows[0],
    End: rows[rows.length - 1],
  }[event.key];
  if (next === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  next?.querySelector('button')?.focus();
}

/** The id is a button that reaches over the whole row. */
function RowButton({ id, reachable, selected, onSelect }: RowButtonProps) {
  const light = useLightHandlers(`part:${id}`);
  return (
    <button
      type="button"
      className="row-button"
      tabIndex={reachable ? 0 : -1}
      aria-pressed={selected}
      onClick={(event) => onSelect(id, event)}
      onKeyDown={walk}
      {...light}
    >
      {id}
    </button>
  );
}
interface RowButtonProps extends Pick<RowProps, 'id' | 'reachable' | 'onSelect'> {
  readonly selected: boolean;
}

const Row = memo(function Row(props: RowProps) {
  const selected = useBench((state) => state.view.selection.includes(props.id));
  const lit = useLit(`part:${props.id}`);
  const row = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    if (selected) row.current?.scrollIntoView({ block: 'nearest' });
  }, [selected]);
  return (
    <tr ref={row} data-lit={lit || undefined} data-selected={selected || undefined} data-part={props.id}>
      <td>
        <RowButton id={props.id} reachable={props.reachable} selected={selected} onSelect={props.onSelect} />
        {props.mayNotBeCut && (
          <span className="uncut" title="no seams">
            <span className="visually-hidden">no seams</span>
          </span>
        )}
        {props.problem > 0 && (
          <b className="problem-mark" aria-label={`problem ${props.problem}`}>
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

export function PartTable() {
  const bench = useWorkbench();
  const { analysis, figures } = useLayerLater();
  const rows = useMemo(() => partRows(analysis, figures), [analysis, figures]);
  const laserIds = analysis.layout.machine.lasers.map((laser) => laser.id).join(' ');
  const first = useBench((state) => state.view.selection[0]) ?? rows[0]?.id;
  const select = useCallback(
    (id: string, keys: Modifiers): void => {
      const { layout, view } = bench.store.getState();
      const order = layout.parts.map((part) => part.id);
      bench.setView({ selection: selectionAfter(order, view.selection, id, keys) });
    },
    [bench],
  );
  return (
    <div className="part-table">
      <table aria-label="Parts">
        <thead>
          <tr>
            <th scope="col">id</th>
            <th scope="col">shape</th>
            <th scope="col" className="number" title="height in mm">
              mm
            </th>
            <th scope="col" className="number">
              turn
            </th>
            <th scope="col">laser</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row key={row.id} {...row} laserIds={laserIds} reachable={row.id === first} onSelect={select} />
          ))}
        </tbody>
      </table>
    </div>
  );
}
