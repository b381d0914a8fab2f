/** The order that a column gives the list becomes the order of the layout; the list then shows that one. */
import { labelOf } from '../labels';
import { figuresAt } from '../../build/analysis';
import { partRows } from '../list/partRows';
import { shownRows } from '../list/shownRows';
import { all, layoutOf, viewOf, where } from '../make';
import { orderParts } from '../operations';
import type { Command, Context } from '../types';
import { unsearched } from './listPlace';

function sortedIds(context: Context): readonly string[] {
  const { height_mm, list } = viewOf(context);
  const analysis = context.bench.analysis();
  const lasers = layoutOf(context).machine.lasers.map(({ id }) => id);
  const rows = partRows(analysis, figuresAt(analysis, height_mm));
  return shownRows(rows, '', list.sort, lasers).map(({ id }) => id);
}

export const keepOrder: Command = {
  id: 'keep-order',
  label: 'Keep this order',
  group: 'part',
  keys: [],
  when: all(
    where('no column sorts the list', (context) => viewOf(context).list.sort !== null),
    unsearched,
  ),
  run: (context) => {
    const ids = sortedIds(context);
    context.bench.change(labelOf(keepOrder), (layout) => orderParts(layout, ids));
    context.bench.setView({ list: { ...viewOf(context).list, sort: null } });
  },
};
