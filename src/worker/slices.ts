/** Work in steps, in slices of a few milliseconds with pauses between them that let messages in. */

/** Milliseconds of work between two pauses. */
const SLICE_MS = 12;

export interface Clock {
  /** Lets waiting messages in. */
  pause(): Promise<void>;
  now(): number;
}

/** What the work comes to; null where it was dropped at a pause. `tell` hears the last step before every pause. */
export async function inSlices<Step, T>(
  { pause, now }: Clock,
  steps: Generator<Step, T, undefined>,
  dropped: () => boolean,
  tell?: (step: Step) => void,
): Promise<T | null> {
  for (let began = now(); ;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (now() - began < SLICE_MS) continue;
    tell?.(step.value);
    await pause();
    if (dropped()) return null;
    began = now();
  }
}
