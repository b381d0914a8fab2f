/** Measures how far the selected part stands from the other one selected, or from its nearest neighbour, at the height shown. */
import { apart } from '../../build/apart';
import { layerAt, middleOfLayer } from '../../build/layers';
import { all, hasSelection, viewOf, where } from '../make';
import type { Command, Context } from '../types';

function found(context: Context) {
  const { selection, height_mm } = viewOf(context);
  const analysis = context.bench.analysis();
  const { build, layout } = analysis;
  const inside = Math.min(Math.max(0, height_mm), build.height_mm);
  const layer = Math.max(1, layerAt(inside, layout.process.layer_mm, build.height_mm));
  const middle = middleOfLayer(layer, layout.process.layer_mm);
  return apart(analysis, selection.at(-1) ?? '', selection.length === 2 ? selection[0]! : null, middle);
}

export const measureParts: Command = {
  id: 'measure-parts',
  label: 'Measure to the other part selected, or to the nearest',
  group: 'draw',
  keys: ['Alt+Shift+R'],
  when: all(
    hasSelection,
    where('more than two parts are selected', (context) => viewOf(context).selection.length <= 2),
    where('it overlaps, or stands alone', (context) => found(context) !== null),
  ),
  run: (context) => {
    const measured = found(context);
    if (measured) context.bench.setView({ measured });
  },
};
