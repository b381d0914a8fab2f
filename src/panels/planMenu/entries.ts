/**
 * What the menu over the plan offers, by what it is about: ids of the one list of commands, in groups; a group with a
 * title opens beside it. Commands that do not apply are shown and are off, except numbers of lasers the machine lacks.
 */
import { type Text } from '../../language/index';
import type { MenuAsked } from '../../canvas/gestures/planUi';
import { MOST_LASERS } from '../../layout/limits';

export interface Group {
  /** null: its entries stand in the menu itself. */
  readonly title: Text | null;
  readonly ids: readonly string[];
}
/** Groups between two lines of the menu. */
export type Block = readonly Group[];

const here = (...ids: readonly string[]): Group => ({ title: null, ids });
const beside = (title: Text, ...ids: readonly string[]): Group => ({ title, ids });
const perLaser = (stem: string): readonly string[] =>
  Array.from({ length: MOST_LASERS }, (_, i) => `${stem}-${i + 1}`);

/** Commands of a laser's number: those the machine does not have are left out. */
export const isPerLaser = (id: string): boolean => /-laser-\d+$/.test(id);

const SELECT = beside('Select by laser', ...perLaser('select-laser'));

const PART: readonly Block[] = [
  [here('cut', 'copy', 'paste', 'duplicate', 'copy-in-rows', 'delete-parts')],
  [here('select-same-shape', 'select-same-laser')],
  [
    beside('Align', 'align-left', 'align-centre', 'align-right', 'align-front', 'align-middle', 'align-back'),
    beside('Distribute', 'equal-gaps-x', 'equal-gaps-y', 'equal-centres-x', 'equal-centres-y'),
    beside('Mirror places', 'mirror-x', 'mirror-y'),
    here('one-per-laser', 'measure-parts'),
  ],
  [
    beside(
      'Turn',
      'turn-counter-clockwise-90',
      'turn-clockwise-90',
      'turn-counter-clockwise-15',
      'turn-clockwise-15',
    ),
    beside('Laser', ...perLaser('pin-laser'), 'unpin'),
    beside('Seams', 'seams-free', 'seams-none'),
    here('lock'),
  ],
];
const LINE: readonly Block[] = [
  [here('next-zone-line', 'add-strip', 'remove-strip')],
  [here('change-from-here', 'remove-change', 'all-divisions')],
  [here('paste', 'select-all'), SELECT],
];
const PLATE: readonly Block[] = [
  [here('paste', 'paste-in-place')],
  [here('select-all'), SELECT],
  [
    beside('Draw', 'tool-rectangle', 'tool-disc', 'tool-ring', 'tool-polygon', 'tool-zone'),
    here('tool-measure'),
  ],
  [here('zoom-fit', 'wheel')],
];

export const MENUS: Readonly<Record<MenuAsked['about'], readonly Block[]>> = {
  part: PART,
  line: LINE,
  plate: PLATE,
};
