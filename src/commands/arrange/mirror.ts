/** Mirrors where the selected parts stand and how they are turned; says whose shape is unlike its mirror image. */
import { t, type Text } from '../../language/index';
import { hasSelection, layoutOf, viewOf } from '../make';
import type { Axis } from '../operations/arrange';
import { mirrorPlaces } from '../operations/mirror';
import type { Command } from '../types';
import { someParts } from './words';

const mirror = (axis: Axis, label: Text, key: string): Command => ({
  id: `mirror-${axis}`,
  label,
  group: 'part',
  keys: [key],
  when: hasSelection,
  run: (context) => {
    const { layout, unlike } = mirrorPlaces(layoutOf(context), viewOf(context).selection, axis);
    context.bench.change(t(label), () => layout);
    if (unlike.length > 0)
      context.bench.notify({ code: 'mirror-unlike', params: { parts: someParts(unlike) } });
  },
});

export const mirrorCommands: readonly Command[] = [
  mirror('x', 'Mirror places left to right', 'Shift+N'),
  mirror('y', 'Mirror places front to back', 'Shift+B'),
];
