/**
 * Reading in steps. A big drawing takes seconds; the readers stop again and again, say what they are at, and whoever
 * runs them decides when they go on, or that they do not. So a page can draw and be cancelled in between.
 */

/** What a reader is at. */
export type ReadingStep = 'text' | 'curves' | 'chains' | 'outlines';
/** A reader between two steps; its end is its answer. */
export type Reading<T> = Generator<ReadingStep, T>;

/** Runs a reader to its end at once. */
export function finish<T>(reading: Reading<T>): T {
  let step = reading.next();
  while (step.done !== true) step = reading.next();
  return step.value;
}
