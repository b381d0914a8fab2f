/**
 * Where on the plate the pointer stands, for commands that put something there. The plan says how to find out; nothing
 * is noted while it moves. Platform millimetres.
 */
import type { Workbench } from '../store/types';
import type { PlatePoint } from '../units/types';

type Source = () => PlatePoint | null;
const sources = new WeakMap<Workbench, Source>();

/** `source` answers for this workbench from now on, until the way to stop that is returned is called. */
export function answerForPointer(bench: Workbench, source: Source): () => void {
  const before = sources.get(bench);
  sources.set(bench, source);
  return () => {
    if (sources.get(bench) !== source) return;
    if (before) sources.set(bench, before);
    else sources.delete(bench);
  };
}

/** Null where the pointer is not over the plan. */
export const pointerPlace = (bench: Workbench): PlatePoint | null => sources.get(bench)?.() ?? null;
