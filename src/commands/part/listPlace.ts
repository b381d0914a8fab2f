/**
 * The selected parts up or down the list, which is their order in the layout: by one place, to its top, to its bottom. Only
 * where the list shows that order.
 */
import { type Text } from '../../language/index';
import type { Layout, PartId } from '../../layout/types';
import { all, documentCommand, hasSelection, layoutOf, viewOf, where } from '../make';
import { placeInList, stepInList } from '../operations';
import type { Command } from '../types';

/** True where a column sorts the list. */
const unsorted = where('a column sorts the list', (context) => viewOf(context).list.sort === null);
/** True where words are looked for in the list. */
export const unsearched = where(
  'the list shows only what is looked for',
  (context) => viewOf(context).list.search.trim() === '',
);

type Reorder = (layout: Layout, ids: readonly PartId[]) => Layout;

interface Move extends Pick<Command, 'id' | 'label' | 'keys' | 'repeats'> {
  /** Said where the selection is at that end already. */
  readonly lack: Text;
  readonly reorder: Reorder;
}
const AT_TOP: Text = 'it is at the top of the list';
const AT_BOTTOM: Text = 'it is at the bottom of the list';

const MOVES: readonly Move[] = [
  {
    id: 'list-up',
    label: 'Move up in the list',
    keys: ['Alt+ArrowUp'],
    repeats: true,
    lack: AT_TOP,
    reorder: (layout, ids) => stepInList(layout, ids, -1),
  },
  {
    id: 'list-down',
    label: 'Move down in the list',
    keys: ['Alt+ArrowDown'],
    repeats: true,
    lack: AT_BOTTOM,
    reorder: (layout, ids) => stepInList(layout, ids, 1),
  },
  {
    id: 'list-top',
    label: 'To the top of the list',
    keys: ['Alt+Shift+ArrowUp'],
    lack: AT_TOP,
    reorder: (layout, ids) => placeInList(layout, ids, 0),
  },
  {
    id: 'list-bottom',
    label: 'To the bottom of the list',
    keys: ['Alt+Shift+ArrowDown'],
    lack: AT_BOTTOM,
    reorder: (layout, ids) => placeInList(layout, ids, layout.parts.length),
  },
];

export const listPlaceCommands: readonly Command[] = MOVES.map(({ lack, reorder, ...base }) => {
  const canMove = where(
    lack,
    (context) => reorder(layoutOf(context), viewOf(context).selection) !== layoutOf(context),
  );
  return documentCommand(
    { ...base, group: 'part', when: all(hasSelection, unsorted, unsearched, canMove) },
    (layout, view) => reorder(layout, view.selection),
  );
});
