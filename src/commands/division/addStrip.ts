/** One strip more: the widest is cut in two. */
import { atShown, documentCommand } from '../make';
import { addStrip as add, MOST_STRIPS } from '../operations';
import { stripCount } from './stripCount';

export const addStrip = documentCommand(
  {
    id: 'add-strip',
    label: 'Cut the widest strip in two',
    group: 'division',
    keys: ['s'],
    when: (context) => stripCount(context) > 0 && stripCount(context) < MOST_STRIPS,
  },
  atShown((plate) => add(plate)),
);
