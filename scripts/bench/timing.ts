/**
 * Times in milliseconds. The contestants take turns in short rounds, so that whatever else the machine does in that
 * minute meets them all; each is warmed up first, and the median of its single runs counts.
 */
export interface Timing {
  readonly name: string;
  readonly least_ms: number;
  readonly median_ms: number;
  readonly p95_ms: number;
  readonly runs: number;
}
export interface Contestant {
  readonly name: string;
  /** One run; it is told how many went before, so that it can do something new every time. */
  readonly work: (run: number) => unknown;
}
interface Lane {
  readonly name: string;
  readonly once: () => number;
  readonly samples: number[];
}

const WARM_UP_MS = 600;
const ROUNDS = 6;
const ROUND_MS = 250;
const LEAST_RUNS = 3;

const laneOf = ({ name, work }: Contestant): Lane => {
  let run = 0;
  const once = (): number => {
    const start = performance.now();
    work(run++);
    return performance.now() - start;
  };
  return { name, once, samples: [] };
};
const runFor = (lane: Lane, duration_ms: number): number[] => {
  const samples: number[] = [];
  const end = performance.now() + duration_ms;
  while (performance.now() < end || samples.length < LEAST_RUNS) samples.push(lane.once());
  return samples;
};
const timingOf = ({ name, samples }: Lane): Timing => {
  const sorted = samples.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor((sorted.length - 1) * share)]!;
  return { name, least_ms: at(0), median_ms: at(0.5), p95_ms: at(0.95), runs: sorted.length };
};

/** @returns one timing per contestant, in their order */
export const race = (contestants: readonly Contestant[]): Timing[] => {
  const lanes = contestants.map(laneOf);
  for (const lane of lanes) runFor(lane, WARM_UP_MS);
  for (let round = 0; round < ROUNDS; round++)
    for (const lane of lanes) lane.samples.push(...runFor(lane, ROUND_MS));
  return lanes.map(timingOf);
};
