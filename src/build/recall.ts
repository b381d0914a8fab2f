/**
 * When the figures of a layer may be taken over from an earlier computation: the same parts under the same rules on the
 * same division; or, where numbers alone are kept, a part that was moved but comes to the very same numbers and was never
 * drafted for a cut, since cuts alone depend on where it stands. Exact: what is taken over equals what would be computed.
 */
import type { Rule } from '../allocation/allocate';
import type { RealiseContext } from '../allocation/realise';
import type { DividedSection } from '../exposure/types';
import type { Layout } from '../layout/types';

/** One stretch set up for allocation. By part of the layout: its divided section, null above it, and its rule. */
export interface Asked {
  readonly context: RealiseContext;
  readonly layout: Layout;
  readonly layer: number;
  readonly sections: readonly (DividedSection | null)[];
  readonly rules: readonly Rule[];
}
export interface Known<F> extends Asked {
  readonly figures: F;
  /** Parts that a cut was drafted in. */
  readonly drafted: ReadonlySet<number>;
}

function sameRule(a: Rule, b: Rule): boolean {
  if (a.kind === 'whole' && b.kind === 'whole') return a.laser === b.laser && a.holders === b.holders;
  return a.kind === 'free' && b.kind === 'free';
}

function sameButSection(old: Asked, now: Asked, p: number): boolean {
  const [a, b] = [old.layout.parts[p], now.layout.parts[p]];
  return (
    (a === b || (a.id === b.id && a.timeFactor === b.timeFactor)) && sameRule(old.rules[p], now.rules[p])
  );
}

const samePlate = (old: Asked, now: Asked): boolean =>
  old.layout.machine === now.layout.machine &&
  old.layout.process === now.layout.process &&
  old.context.division === now.context.division &&
  old.context.limits === now.context.limits;

/** @param sameSection whether a part's section is still what it was; the parts beside it are the same by then */
export function sameParts(
  old: Asked,
  now: Asked,
  sameSection: (old: DividedSection, now: DividedSection, part: number) => boolean,
): boolean {
  if (!samePlate(old, now)) return false;
  const parts = Math.max(old.sections.length, now.sections.length);
  for (let p = 0; p < parts; p++) {
    const before = old.sections[p];
    const after = now.sections[p];
    if (!before && !after) continue;
    if (!before || !after || !sameButSection(old, now, p)) return false;
    if (before !== after && !sameSection(before, after, p)) return false;
  }
  return true;
}

/** The same parts where they stood. */
export const sameQuestion = (old: Asked, now: Asked): boolean => sameParts(old, now, () => false);
