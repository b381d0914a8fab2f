/** Row 3 of the bench: exact allocation of 400 pieces to 8 lasers against HiGHS, in three ways of asking it. */
import { solveBalance } from '../../src/allocation/solver/balance';
import { lowerBound } from '../../src/allocation/solver/bound';
import { allocationProblem, highsFresh, highsInMemory } from './allocation';
import { table, timed, TIMED, times } from './table';
import { race } from './timing';

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
  const timings = race([
    { name: 'highs: model passed, solved, read', work: fresh },
    { name: 'highs: solved only, model kept', work: inMemory },
    { name: 'engine: optimum alone (all subsets)', work: () => lowerBound(8, problem.fixed_s, shared) },
    { name: 'engine: optimum, fewest cuts, flattest loads', work: () => solveBalance(problem) },
  ]);
  const [highs, , , ours] = timings.map(({ median_ms }) => median_ms) as [number, number, number, number];
  const proven = solution.cutsProven ? ' (proven fewest)' : '';
  return {
    text: [
      `${shared.length} pieces, 8 lasers. Optimum: HiGHS ${optimum.toFixed(9)} s, engine ${reached.toFixed(9)} s, ` +
        `cut parts ${solution.cutParts}${proven}`,
      table(
        ['exact allocation', ...TIMED, 'against HiGHS'],
        timings.map((timing) => [...timed(timing), times(highs / timing.median_ms)]),
      ),
    ].join('\n\n'),
    ratio: highs / ours,
    agreed,
  };
};
