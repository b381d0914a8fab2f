/** Takes the schedule out of the layout: start, attended hours, fill levels and correction. */
import { documentCommand, layoutOf, where } from '../make';
import { dropSchedule as drop } from '../operations';

export const dropSchedule = documentCommand(
  {
    id: 'drop-schedule',
    label: 'Drop the schedule',
    group: 'edit',
    keys: [],
    when: where('no start is planned', (context) => layoutOf(context).schedule !== null),
  },
  drop,
);
