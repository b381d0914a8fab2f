/** Brings an edge, or the middle, of the selected parts into line; with those that are locked, where there are any. */
import type { Text } from '../../language/index';
import { documentCommand, viewOf, where } from '../make';
import { alignParts, FEWEST_ALIGNED, type Edge } from '../operations/arrange';
import type { Command } from '../types';

/** Arrows point to where the edges go; "front" is the front edge of the platform. */
const EDGES: readonly { readonly edge: Edge; readonly label: Text; readonly key: string }[] = [
  { edge: 'left', label: 'Align left edges', key: 'Ctrl+Shift+ArrowLeft' },
  { edge: 'centre', label: 'Align centres, one behind the other', key: 'Shift+H' },
  { edge: 'right', label: 'Align right edges', key: 'Ctrl+Shift+ArrowRight' },
  { edge: 'front', label: 'Align front edges', key: 'Ctrl+Shift+ArrowDown' },
  { edge: 'middle', label: 'Align centres, side by side', key: 'Shift+M' },
  { edge: 'back', label: 'Align rear edges', key: 'Ctrl+Shift+ArrowUp' },
];

const several = where(
  'fewer than two parts are selected',
  (context) => viewOf(context).selection.length >= FEWEST_ALIGNED,
);

export const alignCommands: readonly Command[] = EDGES.map(({ edge, label, key }) =>
  documentCommand({ id: `align-${edge}`, label, group: 'part', keys: [key], when: several }, (layout, view) =>
    alignParts(layout, view.selection, edge, view.locked),
  ),
);
