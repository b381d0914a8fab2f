/**
 * What the check page lets a person choose, and what of it goes to the plate. Millimetres, degrees.
 */
import { t } from '../../language/index';
import type { NewShape } from '../../commands/operations';
import type { ImportUnit, OutlineImport, PlacedShape } from '../../import/types';
import type { Degrees, Mm } from '../../units/types';
import { roundMm } from '../../units/round';

export interface ShapeChoice {
  readonly use: boolean;
  /** null: as all. */
  readonly height_mm: Mm | null;
  readonly copies: number | null;
}
export interface Choices {
  /** null: as the file says. */
  readonly unit: ImportUnit | null;
  /** Ends of lines that lie this close belong together. */
  readonly chainGap_mm: Mm;
  readonly mirrorX: boolean;
  readonly mirrorY: boolean;
  readonly turn_deg: Degrees;
  readonly height_mm: Mm;
  readonly copies: number;
  /** By the shape's place in the import; shapes without an entry are as all. */
  readonly shapes: Readonly<Record<number, ShapeChoice>>;
}
export const AS_ALL: ShapeChoice = { use: true, height_mm: null, copies: null };

export const firstChoices = (height_mm: Mm, chainGap_mm: Mm): Choices => ({
  unit: null,
  chainGap_mm,
  mirrorX: false,
  mirrorY: false,
  turn_deg: 0,
  height_mm,
  copies: 1,
  shapes: {},
});

export const choiceFor = (choices: Choices, index: number): ShapeChoice => choices.shapes[index] ?? AS_ALL;

export const withShapeChoice = (choices: Choices, index: number, patch: Partial<ShapeChoice>): Choices => ({
  ...choices,
  shapes: { ...choices.shapes, [index]: { ...choiceFor(choices, index), ...patch } },
});

/** The shapes that go to the plate, each of one slab. */
export function chosenShapes(placed: readonly PlacedShape[], choices: Choices): NewShape[] {
  return placed.flatMap(({ name, rings }, index) => {
    const choice = choiceFor(choices, index);
    if (!choice.use) return [];
    const to_mm = roundMm(choice.height_mm ?? choices.height_mm);
    const copies = choice.copies ?? choices.copies;
    return [{ name, shape: { slabs: [{ to_mm, rings }] }, copies }];
  });
}

/** How the unit was found, in words. */
export function unitText({ unit, kind }: Pick<OutlineImport, 'unit' | 'kind'>): string {
  if (unit === null) return t('not said, taken as mm');
  if (unit.from === 'css') return t('not said, taken as px');
  if (unit.from === 'chosen') return t('{unit}, chosen here', { unit: unit.unit });
  return t('{unit}, as the {kind} says', { unit: unit.unit, kind: kind.toUpperCase() });
}
