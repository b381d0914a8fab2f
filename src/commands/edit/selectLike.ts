/** Takes more parts into the selection: all of the selected shapes, all that the same lasers expose in the layer shown, all of one laser. */
import { MOST_LASERS } from '../../layout/limits';
import type { PartId } from '../../layout/types';
import { layerAt } from '../../build/layers';
import { all, hasLaser, hasParts, hasSelection, layoutOf, viewOf } from '../make';
import type { Command, Context } from '../types';

/** Numbers of the lasers that expose something of each part in the layer shown; a pinned part counts for its laser alone. */
function lasersByPart({ bench }: Context): ReadonlyMap<PartId, ReadonlySet<number>> {
  const { layout, build, layer } = bench.analysis();
  const found = new Map(layout.parts.map(({ id }) => [id, new Set<number>()]));
  if (build.layers === 0) return found;
  const shown = Math.min(Math.max(0, bench.store.getState().view.height_mm), build.height_mm);
  for (const { part, laser } of layer(layerAt(shown, layout.process.layer_mm, build.height_mm)).pieces)
    if (laser >= 0) found.get(layout.parts[part]!.id)?.add(laser);
  return found;
}

const choose = ({ bench }: Context, selection: readonly PartId[]): void =>
  bench.setView({ selection, tool: 'select' });

export const selectSameShape: Command = {
  id: 'select-same-shape',
  label: 'Select all of the same shape',
  group: 'edit',
  keys: ['z'],
  when: hasSelection,
  run: (context) => {
    const { parts } = layoutOf(context);
    const chosen = new Set(viewOf(context).selection);
    const shapes = new Set(parts.filter(({ id }) => chosen.has(id)).map(({ shape }) => shape));
    choose(
      context,
      parts.filter(({ shape }) => shapes.has(shape)).map(({ id }) => id),
    );
  },
};

export const selectSameLaser: Command = {
  id: 'select-same-laser',
  label: 'Select all that the same lasers expose in this layer',
  group: 'edit',
  keys: ['Shift+Z'],
  when: hasSelection,
  run: (context) => {
    const lasers = lasersByPart(context);
    const wanted = new Set(viewOf(context).selection.flatMap((id) => [...(lasers.get(id) ?? [])]));
    const ids = [...lasers].filter(([, own]) => [...own].some((laser) => wanted.has(laser)));
    if (wanted.size > 0)
      choose(
        context,
        ids.map(([id]) => id),
      );
  },
};

/** By the laser's number on the machine. */
const selectLaser = (number: number): Command => ({
  id: `select-laser-${number}`,
  label: 'Select all that laser {number} exposes in this layer',
  labelValues: { number },
  group: 'edit',
  keys: [],
  when: all(hasParts, hasLaser(number)),
  run: (context) => {
    const own = [...lasersByPart(context)].filter(([, lasers]) => lasers.has(number - 1));
    choose(
      context,
      own.map(([id]) => id),
    );
  },
});

export const selectLaserCommands: readonly Command[] = Array.from({ length: MOST_LASERS }, (_, i) =>
  selectLaser(i + 1),
);
