/**
 * The whole question put to HiGHS: with the slowest laser at its optimum T, as few cut parts as possible. A mixed-integer
 * program: x_ik ≥ 0 shares, y_pk = 1 where laser k exposes part p, c_p = 1 where more than one laser does;
 * Σ_k x_ik = load_i, x_ik ≤ load_i·y_pk, fixed_k + Σ_i x_ik ≤ T, Σ_k y_pk ≤ 1 + (n_p − 1)·c_p, minimise Σ c_p.
 */
import loadHighs from 'highs';
import type { BalanceProblem } from '../../src/allocation/types';

interface Row {
  readonly terms: readonly (readonly [column: number, value: number])[];
  readonly low: number;
  readonly high: number;
}
interface Columns {
  readonly upper: number[];
  readonly whole: boolean[];
  readonly cost: number[];
}
/** T may be exceeded by this share, or rounding would forbid the optimum itself. */
const SLACK = 1e-9;

const lasersOf = (mask: number): number[] =>
  Array.from({ length: 32 }, (_, k) => k).filter((k) => (mask >>> k) & 1);

const addColumn = (columns: Columns, upper: number, whole: boolean, cost = 0): number => {
  columns.whole.push(whole);
  columns.cost.push(cost);
  return columns.upper.push(upper) - 1;
};

const rowsOf = (problem: BalanceProblem, optimum_s: number): { columns: Columns; rows: Row[] } => {
  const columns: Columns = { upper: [], whole: [], cost: [] };
  const rows: Row[] = [];
  const onLaser: [number, number][][] = problem.fixed_s.map(() => []);
  for (const { fixedLasers, fragments } of problem.parts) {
    const lasers = lasersOf(fragments.reduce((mask, fragment) => mask | fragment.mask, fixedLasers));
    const uses = new Map(lasers.map((k) => [k, addColumn(columns, 1, true)]));
    const cut = addColumn(columns, 1, true, 1);
    for (const k of lasersOf(fixedLasers)) rows.push({ terms: [[uses.get(k)!, 1]], low: 1, high: 1 });
    const users = [...uses.values()].map((y): [number, number] => [y, 1]);
    rows.push({ terms: [...users, [cut, 1 - lasers.length]], low: -Infinity, high: 1 });
    for (const { mask, load_s } of fragments) {
      const shares = lasersOf(mask).map((k) => ({ k, x: addColumn(columns, load_s, false) }));
      rows.push({ terms: shares.map(({ x }) => [x, 1]), low: load_s, high: load_s });
      for (const { k, x } of shares) {
        onLaser[k]!.push([x, 1]);
        const terms = [
          [x, 1],
          [uses.get(k)!, -load_s],
        ] as const;
        rows.push({ terms, low: -Infinity, high: 0 });
      }
    }
  }
  const most_s = optimum_s * (1 + SLACK);
  onLaser.forEach((terms, k) => rows.push({ terms, low: -Infinity, high: most_s - problem.fixed_s[k]! }));
  return { columns, rows };
};

const modelOf = ({ columns, rows }: ReturnType<typeof rowsOf>) => {
  const terms = rows.flatMap((row) => row.terms);
  const starts = [0];
  for (const row of rows) starts.push(starts.at(-1)! + row.terms.length);
  const [numCols, numRows] = [columns.upper.length, rows.length];
  return {
    numCols,
    numRows,
    colCost: Float64Array.from(columns.cost),
    colLower: new Float64Array(numCols),
    colUpper: Float64Array.from(columns.upper),
    rowLower: Float64Array.from(rows, ({ low }) => low),
    rowUpper: Float64Array.from(rows, ({ high }) => high),
    integrality: Int32Array.from(columns.whole, (whole) => (whole ? 1 : 0)),
    matrix: {
      format: 'csr' as const,
      numRows,
      numCols,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(terms, ([column]) => column),
      values: Float64Array.from(terms, ([, value]) => value),
    },
  };
};

/**
 * @returns a function that solves it from nothing and gives the number of cut parts; null where the time limit ended
 * the search before a proof
 */
export const highsFewestCuts = async (
  problem: BalanceProblem,
  optimum_s: number,
  limit_s: number,
): Promise<() => number | null> => {
  const highs = await loadHighs();
  const data = modelOf(rowsOf(problem, optimum_s));
  return () =>
    highs.withModel(data, (model) => {
      model.options.set({ output_flag: false, time_limit: limit_s, mip_rel_gap: 0, mip_abs_gap: 0.99 });
      model.run();
      const proven = model.getModelStatus() === highs.constants.modelStatus.optimal;
      return proven ? Math.round(model.getObjectiveValue()) : null;
    });
};
