/** Times in milliseconds: warmed up, then the median of many single runs. */
export interface Timing {
  readonly median_ms: number;
  readonly p95_ms: number;
  readonly runs: number;
}
export interface TimingOptions {
  readonly warmUp_ms?: number;
  readonly measure_ms?: number;
  readonly leastRuns?: number;
}

/** Runs `work` (with the number of the run) for at least the time and the number of runs given. */
export const time = (work: (run: number) => unknown, options: TimingOptions = {}): Timing => {
  const { warmUp_ms = 400, measure_ms = 1500, leastRuns = 15 } = options;
  let run = 0;
  for (const end = performance.now() + warmUp_ms; performance.now() < end || run < 3;) work(run++);
  const samples: number[] = [];
  for (const end = performance.now() + measure_ms; performance.now() < end || samples.length < leastRuns;) {
    const start = performance.now();
    work(run++);
    samples.push(performance.now() - start);
  }
  samples.sort((a, b) => a - b);
  const at = (share: number): number =>
    samples[Math.min(samples.length - 1, Math.floor(samples.length * share))]!;
  return { median_ms: at(0.5), p95_ms: at(0.95), runs: samples.length };
};
