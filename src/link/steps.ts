/**
 * How the next step along an outline is expected, so that only the surprise is written. Along an arc drawn as chords each
 * step is the one before, turned by as much as that one was turned: as complex numbers next = last · last / before.
 * Whole micrometres. Only + − × ÷ and rounding, which every machine does alike (IEEE 754), so that what one machine
 * expected another expects too.
 */
export type Step = readonly [x: number, y: number];
export type Expected = (before: Step, last: Step) => Step;

export const NO_STEP: Step = [0, 0];
/** A turn of more than a right angle, or a step whose square is a quarter more or less than that of the one before, is a corner. */
const LEAST_RATIO = 0.75;
const LARGEST_RATIO = 1.25;

const nothing: Expected = () => NO_STEP;
const turned: Expected = ([bx, by], [lx, ly]) => {
  const square = bx * bx + by * by;
  if (square === 0) return NO_STEP;
  const along = (lx * bx + ly * by) / square;
  const across = (ly * bx - lx * by) / square;
  const ratio = along * along + across * across;
  if (along <= 0 || ratio < LEAST_RATIO || ratio > LARGEST_RATIO) return NO_STEP;
  return [Math.round(lx * along - ly * across) + 0, Math.round(lx * across + ly * along) + 0];
};
/** Ways of expecting; a ring is written in the one that costs least. Their order is part of the prefix. */
export const WAYS: readonly Expected[] = [nothing, turned];

/** Steps less what was expected. */
export function surprises(steps: readonly Step[], expected: Expected): Step[] {
  return steps.map(([x, y], i) => {
    const [ex, ey] = expected(steps[i - 2] ?? NO_STEP, steps[i - 1] ?? NO_STEP);
    return [x - ex, y - ey];
  });
}

/** The digits of a number in base two: what deflate makes of it, roughly. */
const weight = (value: number): number => 32 - Math.clz32(Math.abs(value));
/** Rises with what the steps take in a link. The writer alone decides by it. */
export const cost = (steps: readonly Step[]): number =>
  steps.reduce((sum, [x, y]) => sum + weight(x) + weight(y), 0);
