/**
 * Spreads parts over the lasers: each laser that is on gets one, then each a second one, and so on. A part that is
 * pinned goes to its laser, the others to the laser whose zone is nearest. Platform millimetres.
 */
import type { Box } from '../../geometry/types';
import type { Layout, PartId, Point, Zoning } from '../../layout/types';
import type { Mm } from '../../units/types';
import { boxedParts, moveEach, type Boxed, type Step } from './boxes';
import { fieldsOf, stepIntoField, type Field } from './field';
import { grown, isFree, shifted, takenBoxes } from './place';

export interface SpreadLayout {
  readonly layout: Layout;
  /** Parts for which their laser's zone has no room, or that no laser takes; they stay where they were. */
  readonly left: readonly PartId[];
}

const middle = (box: Box): Point => [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
const apart = (a: Point, b: Point): Mm => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Which field each part goes to: pinned ones first, then round by round the nearest pairs. */
function assigned(parts: readonly Boxed[], fields: readonly Field[]): ReadonlyMap<PartId, Field> {
  const uses = new Map(fields.map((field) => [field, 0]));
  const given = new Map<PartId, Field>();
  const give = (id: PartId, field: Field): void => {
    given.set(id, field);
    uses.set(field, uses.get(field)! + 1);
  };
  for (const { part } of parts) {
    const own = fields.find(({ laser }) => laser === part.laser);
    if (own) give(part.id, own);
  }
  const pairs = parts.flatMap(({ part, box }) =>
    fields.map((field) => ({ id: part.id, field, far: apart(middle(box), middle(field.box)) })),
  );
  pairs.sort((a, b) => a.far - b.far || (a.field.laser < b.field.laser ? -1 : 1));
  for (let round = 1; given.size < parts.length; round++)
    for (const { id, field } of pairs) if (!given.has(id) && uses.get(field)! < round) give(id, field);
  return given;
}

/** Finds one part after the other its place among what stands there already. */
function stepsTo(
  others: Layout,
  parts: readonly Boxed[],
  fieldOf: ReadonlyMap<PartId, Field>,
): ReadonlyMap<PartId, Step | null> {
  const taken = takenBoxes(others);
  const steps = new Map<PartId, Step | null>();
  for (const { part, box } of parts) {
    const step = stepIntoField(fieldOf.get(part.id)!, box, taken, (at) => isFree(others, taken, at));
    steps.set(part.id, step);
    taken.push(grown(shifted(box, step?.dx ?? 0, step?.dy ?? 0), others.limits.spacing_mm));
  }
  return steps;
}

/** Spreads the parts named over the lasers that are on, under the zones given. */
export function spreadParts(layout: Layout, zoning: Zoning, ids: readonly PartId[]): SpreadLayout {
  const fields = fieldsOf(layout.machine, zoning);
  const parts = boxedParts(layout, ids);
  if (fields.length === 0) return { layout, left: parts.map(({ part }) => part.id) };
  const chosen = new Set(parts.map(({ part }) => part.id));
  const others = { ...layout, parts: layout.parts.filter(({ id }) => !chosen.has(id)) };
  const steps = stepsTo(others, parts, assigned(parts, fields));
  const found = [...steps].filter((entry): entry is [PartId, Step] => entry[1] !== null);
  const left = [...steps].filter(([, step]) => step === null).map(([id]) => id);
  return { layout: moveEach(layout, new Map(found)), left };
}
