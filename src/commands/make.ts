/**
 * Small makers shared by the command files: conditions, and changing a document by one named step.
 */
import { labelOf } from './labels';
import { t, type Text } from '../language/index';
import type { Layout, LayoutAt } from '../layout/types';
import { changeShown, plateOf } from '../store/shown';
import type { View } from '../store/types';
import type { Mm } from '../units/types';
import { addedParts } from './operations';
import type { Command, Context, When } from './types';

/** The document as it is now. */
export const layoutOf = ({ bench }: Context): Layout => bench.store.getState().layout;
/** What is shown and chosen now. */
export const viewOf = ({ bench }: Context): View => bench.store.getState().view;

/** The plate as divided at the height shown. */
export const plateIn = ({ bench }: Context): LayoutAt => plateOf(bench);

/** For commands that apply whatever is on the plate. */
export const always = (): boolean => true;

/** A condition, with the few words that are said where it does not hold. */
export const where = (lack: Text, holds: (context: Context) => boolean): When =>
  Object.assign((context: Context) => holds(context), { lack: () => t(lack) });

/** All of these; where they do not hold together, the first that fails says why. */
export const all = (...conditions: readonly When[]): When =>
  Object.assign((context: Context) => conditions.every((holds) => holds(context)), {
    lack: (context: Context) => conditions.find((holds) => !holds(context))?.lack?.(context) ?? '',
  });

/** True where the plate holds a part. */
export const hasParts = where('no part on the plate', (context) => layoutOf(context).parts.length > 0);
/** True where a part is selected. */
export const hasSelection = where('no part is selected', (context) => viewOf(context).selection.length > 0);
/** True where the machine has a laser of that number. */
export const hasLaser = (number: number): When =>
  where('the machine has fewer lasers', (context) => number <= layoutOf(context).machine.lasers.length);

/** Applies `recipe` to the document under the command's own label. */
export type Recipe = (layout: Layout, view: View) => Layout;
type Label = Pick<Command, 'label' | 'labelValues'>;
const changeBy =
  (command: Label, recipe: Recipe): Command['run'] =>
  (context) =>
    context.bench.change(labelOf(command), (layout) => recipe(layout, viewOf(context)));

/** A change of the zones at the height shown. */
export const atShown =
  (recipe: (plate: LayoutAt, view: View) => LayoutAt): Recipe =>
  (layout, view) =>
    changeShown(layout, view.height_mm, (plate) => recipe(plate, view));

/** The same, and selects the parts that the step added. */
export const addBy =
  (command: Label, recipe: Recipe): Command['run'] =>
  (context) => {
    const before = layoutOf(context);
    changeBy(command, recipe)(context);
    const added = addedParts(before, layoutOf(context));
    if (added.length > 0) context.bench.setView({ selection: added });
  };

/** A command that changes the document when `when` holds. */
export const documentCommand = (
  base: Pick<Command, 'id' | 'label' | 'labelValues' | 'group' | 'keys' | 'when'> & Pick<Command, 'repeats'>,
  recipe: Recipe,
): Command => ({ ...base, run: changeBy(base, recipe) });

/** A command that takes the height to where `target` says; null where there is nowhere to go. */
export const heightCommand = (
  { lack, ...base }: Pick<Command, 'id' | 'label' | 'keys'> & { readonly lack: Text },
  target: (context: Context) => Mm | null,
): Command => ({
  ...base,
  group: 'view',
  whileHeld: true,
  when: where(lack, (context) => target(context) !== null),
  run: (context) => {
    const height_mm = target(context);
    if (height_mm !== null) context.bench.setView({ height_mm });
  },
});
