/**
 * All that the sheet says of the whole height: layout → who exposes what from where to where, seams, and what each laser's
 * failing leaves. Goes step by step, so that who runs it may pause, tell how far it is, or drop it.
 */
import { plateOf } from '../../build/plate';
import { scaled, Stacks } from '../../build/stack';
import { checksumSteps } from '../../layout/checksum';
import type { Layout } from '../../layout/types';
import { gather, sharesOf } from './holdings';
import { outageOf } from './outages';
import type { Outage, SheetFacts } from './types';

/** A checksum is quick beside the rest: it counts as nothing of the way. */
function* checksumOf(layout: Layout): Generator<number, string, undefined> {
  for (const steps = checksumSteps(layout); ;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield 0;
  }
}

/** The facts of a layout that was read. Yields how far it is, 0 to 1. */
export function* sheetFactSteps(layout: Layout): Generator<number, SheetFacts, undefined> {
  const on = layout.machine.lasers.flatMap((laser, l) => (laser.on ? [l] : []));
  const checksum = yield* checksumOf(layout);
  // The plate as it is, and twice per laser.
  const share = 1 / (1 + 2 * on.length);
  const { stretches } = yield* scaled(new Stacks(sharesOf).run(plateOf(layout)), 0, share);
  const outages: Outage[] = [];
  for (const [i, laser] of on.entries()) {
    const from = share * (1 + 2 * i);
    outages.push(yield* scaled(outageOf(layout, laser), from, from + 2 * share));
  }
  return { checksum, ...gather(stretches), outages };
}

/** The same at one go. */
export function sheetFacts(layout: Layout): SheetFacts {
  const steps = sheetFactSteps(layout);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
