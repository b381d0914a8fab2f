/**
 * Exact allocation of 400 shared pieces to 8 lasers: the solver of src/allocation/solver against HiGHS as WebAssembly
 * (npm highs) on the same linear program, min T with Σ_k x_ik = load_i, x_ik ≥ 0 only for eligible lasers and
 * fixed_k + Σ_i x_ik ≤ T. HiGHS begins without a basis, with presolve (measured here: 1.7 ms against 5.4 ms without).
 */
import loadHighs from 'highs';
import type { BalanceProblem, SharedPart } from '../../src/allocation/types';
import { between, seeded, type Random } from './random';

const LASERS = 8;
const PIECES = 400;

const bit = (laser: number): number => 1 << laser;

/** A part that meets the shared band between two strips: nothing fixed, or a fixed piece on one side or on both. */
const atABand = (random: Random, index: number): SharedPart => {
  const left = Math.floor(random() * (LASERS - 1));
  const mask = bit(left) | bit(left + 1);
  const fixedLasers = [0, bit(left), bit(left + 1), mask][Math.floor(random() * 4)]!;
  return { id: `P${index + 1}`, fixedLasers, fragments: [{ mask, load_s: between(random, 0.05, 1.5) }] };
};

/** Two neighbours, now and then three. */
const someLasers = (random: Random): number => {
  const first = Math.floor(random() * (LASERS - 1));
  const third = first + 2 < LASERS && random() < 0.25 ? bit(first + 2) : 0;
  return bit(first) | bit(first + 1) | third;
};
/** A large part over many drawn zones: four pieces, each shared by lasers of its own. */
const overManyZones = (random: Random, index: number): SharedPart => ({
  id: `P${index + 1}`,
  fixedLasers: 0,
  fragments: Array.from({ length: 4 }, () => ({
    mask: someLasers(random),
    load_s: between(random, 0.05, 1.5),
  })),
});

const problemOf = (seed: number, count: number, part: typeof atABand): BalanceProblem => {
  const random = seeded(seed);
  return {
    laserCount: LASERS,
    fixed_s: Array.from({ length: LASERS }, () => between(random, 20, 40)),
    parts: Array.from({ length: count }, (_, index) => part(random, index)),
  };
};

/** Seeded problems of 400 shared pieces each; the lasers' fixed loads differ by up to a factor of two. */
export const allocationProblems = (
  seed: number,
): { readonly name: string; readonly problem: BalanceProblem }[] => [
  { name: 'strips with shared bands, 400 parts', problem: problemOf(seed, PIECES, atABand) },
  { name: 'drawn zones, 100 parts in 4 pieces', problem: problemOf(seed, PIECES / 4, overManyZones) },
];

interface Column {
  readonly fragment: number;
  readonly laser: number;
}
const columnsOf = (problem: BalanceProblem): Column[] =>
  problem.parts
    .flatMap(({ fragments }) => fragments)
    .flatMap(({ mask }, fragment) =>
      Array.from({ length: problem.laserCount }, (_, laser) => laser)
        .filter((laser) => (mask >> laser) & 1)
        .map((laser) => ({ fragment, laser })),
    );

/** The program column by column: column 0 is T, rows are the fragments and then the lasers. */
const sparse = (problem: BalanceProblem, columns: readonly Column[], fragments: number) => {
  const { laserCount } = problem;
  const starts = [0, laserCount];
  const indices = Array.from({ length: laserCount }, (_, laser) => fragments + laser);
  const values = Array.from({ length: laserCount }, () => -1);
  for (const { fragment, laser } of columns) {
    indices.push(fragment, fragments + laser);
    values.push(1, 1);
    starts.push(indices.length);
  }
  return {
    format: 'csc' as const,
    numRows: fragments + laserCount,
    numCols: columns.length + 1,
    starts: Int32Array.from(starts),
    indices: Int32Array.from(indices),
    values: Float64Array.from(values),
  };
};

const modelData = (problem: BalanceProblem) => {
  const loads = problem.parts.flatMap(({ fragments }) => fragments).map(({ load_s }) => load_s);
  const columns = columnsOf(problem);
  const many = (count: number, value: number): number[] => Array.from({ length: count }, () => value);
  return {
    numCols: columns.length + 1,
    numRows: loads.length + problem.laserCount,
    colCost: Float64Array.from([1, ...many(columns.length, 0)]),
    colLower: new Float64Array(columns.length + 1),
    colUpper: Float64Array.from(many(columns.length + 1, Infinity)),
    rowLower: Float64Array.from([...loads, ...many(problem.laserCount, -Infinity)]),
    rowUpper: Float64Array.from([...loads, ...problem.fixed_s.map((load) => -load)]),
    matrix: sparse(problem, columns, loads.length),
  };
};

/** @returns a function that solves the program, kept in HiGHS's memory, once from nothing; optimum in seconds */
export const highsInMemory = async (problem: BalanceProblem): Promise<() => number> => {
  const model = (await loadHighs()).createModel(modelData(problem));
  model.options.set({ output_flag: false });
  return () => {
    model.clearSolver();
    model.run();
    return model.getObjectiveValue();
  };
};

/** @returns a function that passes the program (its arrays are ready), solves it and reads the shares: one frame's work */
export const highsFresh = async (problem: BalanceProblem): Promise<() => number> => {
  const highs = await loadHighs();
  const data = modelData(problem);
  return () =>
    highs.withModel(data, (model) => {
      model.options.set({ output_flag: false });
      model.run();
      return model.getSolution().colValue[0]!;
    });
};
