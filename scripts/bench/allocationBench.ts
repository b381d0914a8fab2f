/**
 * Row 3 of the bench: exact allocation of 400 pieces to 8 lasers against HiGHS. Like stands against like: the optimum
 * against its linear program, the whole answer (optimum with the fewest cut parts) against program and mixed-integer
 * program. That the engine flattens the loads besides is given away.
 */
import { solveBalance } from '../../src/allocation/solver/balance';
import { lowerBound } from '../../src/allocation/solver/bound';
import { allocationIsFeasible } from '../../src/allocation/solver/check';
import type { BalanceProblem } from '../../src/allocation/types';
import { allocationProblems, highsFresh, highsInMemory } from './allocation';
import { highsFewestCuts } from './fewestCuts';
import { table, timed, TIMED, times } from './table';
import { race } from './timing';

const SEED = 11;

const LIMIT_S = 60;
const FEWEST = 'highs: optimum, then fewest cuts (MILP)';
const PROGRAM = 'highs: optimum and shares (LP)';
const OPTIMUM = 'engine: optimum alone (all subsets)';
const WHOLE = 'engine: optimum, shares, fewest cuts, flattest loads';

export interface AllocationBench {
  readonly text: string;
  readonly ratios: readonly {
    readonly what: string;
    readonly ratio: number;
    readonly wanted: number | null;
  }[];
  readonly agreed: boolean;
}

const close = (value: number, optimum: number): boolean => Math.abs(value / optimum - 1) <= 1e-6;

const bench = async (name: string, problem: BalanceProblem): Promise<AllocationBench> => {
  const shared = problem.parts.flatMap(({ fragments }) => fragments);
  const [inMemory, fresh] = [await highsInMemory(problem), await highsFresh(problem)];
  const optimum = inMemory();
  const fewest = await highsFewestCuts(problem, optimum, LIMIT_S);
  const solution = solveBalance(problem);
  const { best_s, cutParts, cutsProven } = solution;
  const cuts = fewest();
  const fault = allocationIsFeasible(problem, solution);
  const reached = Math.max(...solution.loads_s);
  const timings = race([
    { name: FEWEST, work: () => [fresh(), fewest()] },
    { name: PROGRAM, work: fresh },
    { name: 'highs: optimum, model kept in its memory', work: inMemory },
    { name: OPTIMUM, work: () => lowerBound(8, problem.fixed_s, shared) },
    { name: WHOLE, work: () => solveBalance(problem) },
  ]);
  const medianOf = (wanted: string): number => timings.find((timing) => timing.name === wanted)!.median_ms;
  const found = `${cutParts} cut parts (${cutsProven ? 'proven' : 'not proven'}; HiGHS: ${cuts ?? 'no proof'})`;
  return {
    text: [
      `${name}: optimum ${best_s.toFixed(9)} s, HiGHS ${optimum.toFixed(9)} s; ${found}; ${fault ?? 'feasible'}`,
      table(
        ['exact allocation, 400 pieces, 8 lasers', ...TIMED, 'against the LP'],
        timings.map((timing) => [...timed(timing), times(medianOf(PROGRAM) / timing.median_ms)]),
      ),
    ].join('\n\n'),
    ratios: [
      { what: `${name}: optimum against LP`, ratio: medianOf(PROGRAM) / medianOf(OPTIMUM), wanted: 50 },
      {
        what: `${name}: whole answer against LP + MILP`,
        ratio: medianOf(FEWEST) / medianOf(WHOLE),
        wanted: null,
      },
    ],
    agreed:
      [fresh(), reached, best_s].every((value) => close(value, optimum)) &&
      fault === null &&
      (cuts === null || !cutsProven || cuts === cutParts),
  };
};

/** @returns per problem its table, the ratios, and whether optimum (1e-6) and number of cuts agree */
export const allocationBench = async (): Promise<AllocationBench[]> => {
  const benches: AllocationBench[] = [];
  for (const { name, problem } of allocationProblems(SEED)) benches.push(await bench(name, problem));
  return benches;
};
