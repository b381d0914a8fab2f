/**
 * Runs a computation that pauses in short slices between other tasks of the page, so that it never holds up a drag.
 */
const SLICE_MS = 8;

/**
 * Starts in a task of its own; calls back after each slice with what was yielded last, and once with the result.
 * Returns the way to drop it.
 */
export function runInSlices<P, T>(
  run: Generator<P, T>,
  onProgress: (progress: P) => void,
  onDone: (result: T) => void,
): () => void {
  let timer: ReturnType<typeof setTimeout>;
  const slice = (): void => {
    const end = performance.now() + SLICE_MS;
    for (;;) {
      const step = run.next();
      if (step.done) return onDone(step.value);
      if (performance.now() >= end) {
        timer = setTimeout(slice);
        return onProgress(step.value);
      }
    }
  };
  timer = setTimeout(slice);
  return () => clearTimeout(timer);
}
