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

/** The fewest cut parts with every laser at most `time`, as a mixed-integer program. */
export function fewestCutsByMip(problem: BalanceProblem, time: number): number {
  const rows: string[] = [];
  const cuts: string[] = [];
  const lasers = new Set<string>();
  const onLaser: string[][] = problem.fixed_s.map(() => []);
  problem.parts.forEach((part, p) => {
    const used = new Set(lasersOf(part.fixedLasers));
    part.fragments.forEach(({ mask, load_s }, f) => {
      const ks = lasersOf(mask);
      ks.forEach((k) => {
        onLaser[k]!.push(`${n(load_s)} x${p}_${f}_${k}`);
        rows.push(`x${p}_${f}_${k} - y${p}_${k} <= 0`);
        used.add(k);
        lasers.add(`y${p}_${k}`);
      });
      rows.push(`${ks.map((k) => `x${p}_${f}_${k}`).join(' + ')} = 1`);
    });
    for (const k of lasersOf(part.fixedLasers)) {
      rows.push(`y${p}_${k} = 1`);
      lasers.add(`y${p}_${k}`);
    }
    if (used.size === 0) return;
    rows.push(`${[...used].map((k) => `y${p}_${k}`).join(' + ')} - ${problem.laserCount} c${p} <= 1`);
    cuts.push(`c${p}`);
  });
  onLaser.forEach((terms, k) => {
    if (terms.length > 0) rows.push(`${terms.join(' + ')} <= ${n(time - problem.fixed_s[k]!)}`);
  });
  if (cuts.length === 0) return 0;
  const binary = [...lasers, ...cuts].join(' ');
  return Math.round(
    solve(`Minimize\n obj: ${cuts.join(' + ')}\nSubject To\n ${rows.join('\n ')}\nBinary\n ${binary}\nEnd`),
  );
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
