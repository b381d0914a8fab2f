/**
 * The parts of the plate as a table: id, shape, height, turn, laser. Selection and hover run both ways; the arrow keys
 * walk the rows, space or Enter selects.
 */
import type { KeyboardEvent } from 'react';
import { memo, useMemo, useRef } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import { formatNumber } from '../../units/format';
import { Swatch } from '../controls/Swatch';
import { useLayer } from '../useLayer';
import { useLight, useLit } from '../useLight';
import type { PartRow } from './partRows';
import { partRows } from './partRows';
import type { Modifiers } from './selecting';
import { selectionAfter } from './selecting';

interface RowProps extends PartRow {
  readonly laserIds: string;
  readonly reachable: boolean;
  onSelect(id: string, keys: Modifiers): void;
}

function LaserCell({ lasers, laserIds, pinned }: Pick<RowProps, 'lasers' | 'laserIds' | 'pinned'>) {
  const names = laserIds.split(' ');
  const indices = lasers === '' ? [] : lasers.split(' ').map(Number);
  const text = indices.map((laser) => names[laser] ?? 'none').join('+');
  return (
    <td className="part-lasers" title={pinned ? `${text}, pinned` : text}>
      {indices.length === 0 && '–'}
      {indices.map((laser) =>
        laser < 0 ? <b key={laser}>none</b> : <Swatch key={laser} laser={laser} size={12} />,
      )}
      <span>{text === 'none' ? '' : text}</span>
      {pinned && <span aria-label="pinned">⚲</span>}
    </td>
  );
}

const Row = memo(function Row(props: RowProps) {
  const selected = useBench((state) => state.view.selection.includes(props.id));
  const light = useLight(`part:${props.id}`);
  const lit = useLit(`part:${props.id}`);
  const onKeyDown = (event: KeyboardEvent<HTMLTableRowElement>): void => {
    if (event.key !== ' ' && event.key !== 'Enter') return;
    event.preventDefault();
    event.stopPropagation();
    props.onSelect(props.id, event);
  };
  return (
    <tr
      tabIndex={props.reachable ? 0 : -1}
      aria-selected={selected}
      data-lit={lit || undefined}
      data-part={props.id}
      onClick={(event) => props.onSelect(props.id, event)}
      onKeyDown={onKeyDown}
      {...light}
    >
      <td>
        {props.id}
        {props.problem > 0 && (
          <b className="problem-mark" aria-label={`problem ${props.problem}`}>
            {props.problem}
          </b>
        )}
      </td>
      <td className="part-shape" title={props.shape}>
        {props.shape}
        {props.mayNotBeCut && <span className="tag">no seam</span>}
      </td>
      <td className="number">{formatNumber(props.height_mm, 4, 1)}</td>
      <td className="number">{formatNumber(props.turn_deg, 4, 1)}</td>
      <LaserCell lasers={props.lasers} laserIds={props.laserIds} pinned={props.pinned} />
    </tr>
  );
});

/** Arrow keys, Home and End walk the rows without moving parts. */
function walk(event: KeyboardEvent<HTMLTableSectionElement>): void {
  const row = (event.target as HTMLElement).closest('tr');
  const rows = row?.parentElement?.children;
  if (!row || !rows) return;
  const next = {
    ArrowDown: row.nextElementSibling,
    ArrowUp: row.previousElementSibling,
    Home: rows[0],
    End: rows[rows.length - 1],
  }[event.key];
  if (next === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  if (next instanceof HTMLElement) next.focus();
}

export function PartTable() {
  const bench = useWorkbench();
  const { analysis, figures } = useLayer();
  const rows = useMemo(() => partRows(analysis, figures), [analysis, figures]);
  const laserIds = analysis.layout.machine.lasers.map((laser) => laser.id).join(' ');
  const first = useBench((state) => state.view.selection[0]) ?? rows[0]?.id;
  const select = useRef((id: string, keys: Modifiers): void => {
    const { layout, view } = bench.store.getState();
    const order = layout.parts.map((part) => part.id);
    bench.setView({ selection: selectionAfter(order, view.selection, id, keys) });
  });
  return (
    <div className="part-table">
      <table role="grid" aria-label="Parts" aria-multiselectable="true">
        <thead>
          <tr>
            <th scope="col">id</th>
            <th scope="col">shape</th>
            <th scope="col" className="number">
              z mm
            </th>
            <th scope="col" className="number">
              turn°
            </th>
            <th scope="col">laser</th>
          </tr>
        </thead>
        <tbody onKeyDown={walk}>
          {rows.map((row) => (
            <Row
              key={row.id}
              {...row}
              laserIds={laserIds}
              reachable={row.id === first}
              onSelect={select.current}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}
