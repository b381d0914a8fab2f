/**
 * An empty plate on the machine, with the process and the lowest division, that are open now. Changes of the zones over
 * height, the start, the fill levels and the revision belong to the plate before.
 */
import { t } from '../../language/index';
import { always, layoutOf } from '../make';
import type { Command } from '../types';
import { openLayout } from './openLayout';

export const newPlate: Command = {
  id: 'new-plate',
  label: 'New plate',
  group: 'file',
  keys: [],
  when: always,
  run: (context) => {
    const open = layoutOf(context);
    const zoning = open.zoning.slice(0, 1);
    const plate = { name: t('New plate'), note: '', shapes: {}, parts: [], zoning };
    const empty = { ...open, ...plate, schedule: null, revision: null };
    openLayout(context.bench, t('New plate'), empty);
  },
};
