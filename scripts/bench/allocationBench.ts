/** Row 3 of the bench: exact allocation of 400 pieces to 8 lasers against HiGHS, in three ways of asking it. */
import { solveBalance } from '../../src/allocation/solver/balance';
import { lowerBound } from '../../src/allocation/solver/bound';
import { allocationProblem, highsFresh, highsInMemory } from './allocation';
import { table, timed, times } from './table';
import { time, type Timing } from './timing';

const SEED = 11;

export interface AllocationBench {
  readonly text: string;
  readonly ratio: number;
  readonly agreed: boolean;
}

/** @returns the table of row 3, the ratio of whole answers, and whether the optima agree to 1e-6 */
export const allocationBench = async (): Promise<AllocationBench> => {
  const problem = allocationProblem(SEED);
  const shared = problem.parts.flatMap(({ fragments }) => fragments);
  const inMemory = await highsInMemory(problem);
  const fresh = await highsFresh(problem);
  const optimum = inMemory();
  const solution = solveBalance(problem);
  const reached = Math.max(...solution.loads_s);
  const agreed = [fresh(), reached, solution.best_s].every((value) => Math.abs(value / optimum - 1) <= 1e-6);
  const whole = time(() => fresh());
  const ours = time(() => solveBalance(problem));
  const line = (name: string, timing: Timing): string[] => [
    name,
    ...timed(timing),
    times(whole.median_ms / timing.median_ms),
  ];
  return {
    text: [
      `${shared.length} pieces, 8 lasers. Optimum: HiGHS ${optimum.toFixed(9)} s, engine ${reached.toFixed(9)} s, ` +
        `cut parts ${solution.cutParts}${solution.cutsProven ? ' (proven fewest)' : ''}`,
      table(
        ['exact allocation', 'median', 'p95', 'runs', 'against HiGHS'],
        [
          line('highs: model passed, solved, read', whole),
          line(
            'highs: solved only, model kept',
            time(() => inMemory()),
          ),
          line(
            'engine: optimum alone (all subsets)',
            time(() => lowerBound(8, problem.fixed_s, shared)),
          ),
          line('engine: optimum, fewest cuts, flattest loads', ours),
        ],
      ),
    ].join('\n\n'),
    ratio: whole.median_ms / ours.median_ms,
    agreed,
  };
};
