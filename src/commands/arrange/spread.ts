/** Spreads the selected parts over the lasers, one to each zone at the height shown; says for which there was no room. */
import { labelOf } from '../labels';
import { hasSelection, layoutOf, plateIn, viewOf } from '../make';
import { spreadParts } from '../operations/spread';
import { usableLasers } from '../operations/strategy';
import type { Command } from '../types';
import { someParts } from './words';

export const spread: Command = {
  id: 'one-per-laser',
  label: 'Spread, one per laser',
  group: 'part',
  keys: ['Shift+Q'],
  when: hasSelection,
  run: (context) => {
    const { zoning } = plateIn(context);
    const { selection, locked } = viewOf(context);
    const loose = selection.filter((id) => !locked.includes(id));
    const { layout, left } = spreadParts(layoutOf(context), zoning, loose);
    context.bench.change(labelOf(spread), () => layout);
    if (left.length === 0) return;
    const none = !usableLasers(layout.machine).some(({ on }) => on);
    context.bench.notify(
      none
        ? { code: 'spread-no-laser', params: {} }
        : { code: 'spread-no-room', params: { parts: someParts(left) } },
    );
  },
};
