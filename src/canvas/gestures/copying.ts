/**
 * Dragging with Alt held from the press on: copies of what is grabbed go with the pointer, the originals stay. Escape
 * takes the copies away again and chooses what was chosen before. Alt, which is held anyway, does not free the steps.
 */
import { copyInPlace } from '../../commands/operations/copies';
import { addedParts } from '../../commands/operations/names';
import { MOST_PARTS } from '../../layout/limits';
import type { PartId } from '../../layout/types';
import { moveGesture, type Grip } from './edits';
import type { Gesture, Input, PlanHost } from './gesture';

const onSteps = (input: Input): Input => ({ ...input, held: { ...input.held, alt: false } });

/** Puts the copies where the originals stand and chooses them; the originals themselves where there is no room for more. */
const takeCopies = ({ bench }: PlanHost, lead: PartId, ids: readonly PartId[], label: string): Grip => {
  const before = bench.store.getState().layout;
  bench.change(label, (layout) => copyInPlace(layout, ids));
  const copies = addedParts(before, bench.store.getState().layout);
  if (copies.length === 0) {
    const found = before.parts.length + ids.length;
    bench.notify({ code: 'too-many-parts', params: { found, limit: MOST_PARTS } });
    return { lead: '', ids: [] };
  }
  bench.setView({ selection: copies });
  const originals = before.parts.filter(({ id }) => ids.includes(id)).map(({ id }) => id);
  return { lead: copies[originals.indexOf(lead)] ?? copies[0]!, ids: copies };
};

/** Moves copies with the pointer; a click is a click. */
export const copyGesture = (
  host: PlanHost,
  start: Input,
  lead: PartId,
  ids: readonly PartId[],
  clicked: (at: Input) => void,
): Gesture => {
  const gesture = moveGesture(host, start, lead, ids, clicked, (label) => takeCopies(host, lead, ids, label));
  return {
    move: (to) => gesture.move(onSteps(to)),
    end: (at) => gesture.end(onSteps(at)),
    cancel() {
      gesture.cancel();
      host.bench.setView({ selection: ids });
    },
  };
};
