/**
 * A build shared out among threads: the portion of one, and the rules that need no look at the others' sections. Apart from
 * stack.ts, as a page that is first painted computes small plates only, and those whole.
 */
import { divide, DIVIDING, rulesOver, scaled, type Portion, type Stacks } from './stack';
import type { Plate } from './plate';
import type { Rules } from './rules';
import type { LayerTotals, Stretch } from './types';

/** The rules of a plate on which no part keeps its laser: they hold without a look at the sections. */
export const freeRules = (plate: Plate): Rules => rulesOver({ plate, groups: [], sections: [] });

/** The stretches of a portion of a plate's ranges. Yields how far it is. */
export function* portionSteps<F extends LayerTotals>(
  stacks: Stacks<F>,
  plate: Plate,
  rules: Rules,
  portion: Portion,
): Generator<number, Stretch<F>[], undefined> {
  const divided = yield* scaled(divide(plate, 1, portion), 0, DIVIDING);
  return yield* scaled(stacks.stretches(divided, rules), DIVIDING, 1);
}
