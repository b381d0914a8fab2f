/**
 * The same questions put to a general solver: HiGHS (Huangfu and Hall 2018, doi 10.1007/s12532-017-0130-5) by its
 * WebAssembly build, in CPLEX LP text. Only tests use it.
 */
import loadHighs from 'highs';
import type { BalanceProblem, SharedLoad, WholeProblem } from '../../../src/allocation/types';

const highs = await loadHighs();
const lasersOf = (mask: number): number[] =>
  Array.from({ length: 31 }, (_, k) => k).filter((k) => (mask >>> k) & 1);

/** Shortest exact decimal; LP text knows no other form. */
const n = (value: number): string => String(value);

function solve(text: string): number {
  const solution = highs.solve(text, {
    primal_feasibility_tolerance: 1e-10,
    dual_feasibility_tolerance: 1e-10,
    mip_rel_gap: 0,
    mip_feasibility_tolerance: 1e-9,
  });
  if (solution.Status !== 'Optimal') throw new Error(`HiGHS: ${solution.Status}`);
  return solution.ObjectiveValue;
}

/** The least time of the slowest laser as a linear program. */
export function leastTimeByLp(
  laserCount: number,
  fixed: readonly number[],
  shared: readonly SharedLoad[],
): number {
  const onLaser: string[][] = fixed.map(() => []);
  const whole = shared.map(({ mask, load_s }, j) => {
    const terms = lasersOf(mask).map((k) => `x${j}_${k}`);
    lasersOf(mask).forEach((k) => onLaser[k]!.push(`x${j}_${k}`));
    return `w${j}: ${terms.join(' + ')} = ${n(load_s)}`;
  });
  const loads = Array.from({ length: laserCount }, (_, k) => {
    const taken = onLaser[k]!.map((x) => ` - ${x}`).join('');
    return `l${k}: t${taken} >= ${n(fixed[k]!)}`;
  });
  return solve(`Minimize\n obj: t\nSubject To\n ${[...whole, ...loads].join('\n ')}\nEnd`);
}

interface CutModel {
  readonly rows: string[];
  readonly cuts: string[];
  readonly binary: string[];
  /** Per laser: terms of its shared load. */
  readonly onLaser: string[][];
}

/** Shares x (part, fragment, laser), use of a laser y (part, laser), cut c (part). */
function cutModel(problem: BalanceProblem): CutModel {
  const model: CutModel = { rows: [], cuts: [], binary: [], onLaser: problem.fixed_s.map(() => []) };
  problem.parts.forEach((part, p) => {
    const used = new Set(lasersOf(part.fixedLasers));
    for (const k of used) model.rows.push(`y${p}_${k} = 1`);
    part.fragments.forEach(({ mask, load_s }, f) => {
      if (load_s === 0) return; // nothing is exposed, so nothing is cut
      const ks = lasersOf(mask);
      for (const k of ks) {
        model.onLaser[k]!.push(`${n(load_s)} x${p}_${f}_${k}`);
        model.rows.push(`x${p}_${f}_${k} - y${p}_${k} <= 0`);
        used.add(k);
      }
      model.rows.push(`${ks.map((k) => `x${p}_${f}_${k}`).join(' + ')} = 1`);
    });
    if (used.size === 0) return; // no part of it is exposed
    const ys = [...used].map((k) => `y${p}_${k}`);
    model.binary.push(...ys, `c${p}`);
    model.cuts.push(`c${p}`);
    model.rows.push(`${ys.join(' + ')} - ${problem.laserCount} c${p} <= 1`);
  });
  return model;
}

/** The fewest cut parts with every laser at most `time`, as a mixed-integer program. */
export function fewestCutsByMip(problem: BalanceProblem, time: number): number {
  const { rows, cuts, binary, onLaser } = cutModel(problem);
  if (cuts.length === 0) return 0;
  onLaser.forEach((terms, k) => {
    if (terms.length > 0) rows.push(`${terms.join(' + ')} <= ${n(time - problem.fixed_s[k]!)}`);
  });
  return Math.round(
    solve(
      `Minimize\n obj: ${cuts.join(' + ')}\nSubject To\n ${rows.join('\n ')}\nBinary\n ${binary.join(' ')}\nEnd`,
    ),
  );
}

/**
 * The flattest loads, slowest first, with at most `cuts` cut parts: the sum of the j slowest made least for j = 1, 2, …,
 * each kept for the next (sum of the j largest: least j·t + Σ max(0, load − t), Ogryczak and Tamir 2003 [memory]).
 */
export function flattestByMip(problem: BalanceProblem, cuts: number): number[] {
  const model = cutModel(problem);
  const m = problem.laserCount;
  if (model.cuts.length > 0) model.rows.push(`${model.cuts.join(' + ')} <= ${cuts}`);
  model.onLaser.forEach((terms, k) =>
    model.rows.push(`l${k}${terms.map((t) => ` - ${t}`).join('')} = ${n(problem.fixed_s[k]!)}`),
  );
  const sums = [0];
  for (let j = 1; j <= m; j++) {
    for (let k = 0; k < m; k++) model.rows.push(`u${j}_${k} + t${j} - l${k} >= 0`);
    const sum = `${j} t${j} + ${Array.from({ length: m }, (_, k) => `u${j}_${k}`).join(' + ')}`;
    const integers = model.binary.length > 0 ? `\nBinary\n ${model.binary.join(' ')}` : '';
    const least = solve(`Minimize\n obj: ${sum}\nSubject To\n ${model.rows.join('\n ')}${integers}\nEnd`);
    model.rows.push(`${sum} <= ${n(least + 1e-7)}`);
    sums.push(least);
  }
  return sums.slice(1).map((sum, j) => sum - sums[j]!);
}

/** The least exposure of a build whose parts keep one laser each, as a mixed-integer program. */
export function leastExposureByMip(problem: WholeProblem): number {
  const rows: string[] = [];
  const binary: string[] = [];
  problem.parts.forEach((part, p) => {
    const xs = lasersOf(part.mask).map((k) => `x${p}_${k}`);
    binary.push(...xs);
    rows.push(`${xs.join(' + ')} = 1`);
  });
  problem.layers.forEach((_, s) => {
    const onLaser: string[][] = Array.from({ length: problem.laserCount }, () => []);
    problem.parts.forEach((part, p) => {
      for (const k of lasersOf(part.mask)) onLaser[k]!.push(` - ${n(part.loads_s[s]!)} x${p}_${k}`);
    });
    problem.shared[s]!.forEach(({ mask, load_s }, j) => {
      const ks = lasersOf(mask);
      ks.forEach((k) => onLaser[k]!.push(` - z${s}_${j}_${k}`));
      rows.push(`${ks.map((k) => `z${s}_${j}_${k}`).join(' + ')} = ${n(load_s)}`);
    });
    onLaser.forEach((terms, k) => rows.push(`t${s}${terms.join('')} >= ${n(problem.fixed_s[s]![k]!)}`));
  });
  const goal = problem.layers.map((count, s) => `${n(count)} t${s}`).join(' + ');
  const integers = binary.length > 0 ? `\nBinary\n ${binary.join(' ')}` : '';
  return solve(`Minimize\n obj: ${goal}\nSubject To\n ${rows.join('\n ')}${integers}\nEnd`);
}
