/**
 * When the figures of a layer may be taken over from an earlier computation: the same parts under the same rules on the
 * same division; or, where numbers alone are kept, a part that was moved but comes to the very same numbers and was never
 * drafted for a cut, since cuts alone depend on where it stands. Exact: what is taken over equals what would be computed.
 */
import type { LayerPart, Rule } from '../allocation/allocate';
import type { RealiseContext } from '../allocation/realise';
import type { Layout } from '../layout/types';

/** One stretch set up for allocation. */
export interface Asked {
  readonly context: RealiseContext;
  readonly layout: Layout;
  readonly layer: number;
  readonly parts: readonly LayerPart[];
  readonly indices: readonly number[];
}
export interface Known<F> extends Asked {
  readonly figures: F;
  /** Parts that a cut was drafted in, by their place in `parts`. */
  readonly drafted: ReadonlySet<number>;
}

function sameRule(a: Rule, b: Rule): boolean {
  if (a.kind === 'whole' && b.kind === 'whole') return a.laser === b.laser && a.holders === b.holders;
  return a.kind === 'free' && b.kind === 'free';
}

export const sameButSection = (a: LayerPart, b: LayerPart): boolean =>
  a.id === b.id && a.timeFactor === b.timeFactor && sameRule(a.rule, b.rule);

export const samePlate = (old: Asked, now: Asked): boolean =>
  old.layout.machine === now.layout.machine &&
  old.layout.process === now.layout.process &&
  old.context.division === now.context.division &&
  old.context.limits === now.context.limits &&
  old.parts.length === now.parts.length &&
  old.indices.every((index, i) => index === now.indices[i]);

/** The same parts where they stood. */
export const sameQuestion = (old: Asked, now: Asked): boolean =>
  samePlate(old, now) &&
  old.parts.every((part, i) => part.section === now.parts[i].section && sameButSection(part, now.parts[i]));
