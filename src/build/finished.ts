/** Runs work that goes in steps to its end at once, where nobody wants to pause it. No units. */
export function finished<T>(run: Generator<unknown, T>): T {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}
