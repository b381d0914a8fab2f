/**
 * The numbers of one outline (a reach or a keep-out).
 */
import { t, type Text } from '../../language/index';
import type { Layout, LayoutRing } from '../../layout/types';
import type { Result } from '../../layout/result';
import { LengthField } from '../controls/fields';
import { discRing, formOf, rectangleRing } from './ringForm';

interface RingFieldsProps {
  readonly name: string;
  readonly ring: LayoutRing;
  recipe(layout: Layout, ring: LayoutRing): Layout | Result<Layout>;
}

const DISC = [
  ['x', '{name} x'],
  ['y', '{name} y'],
  ['r', '{name} radius'],
] as const satisfies readonly (readonly [string, Text])[];
const SIDES = [
  ['left', '{name} left'],
  ['front', '{name} front'],
  ['right', '{name} right'],
  ['back', '{name} back'],
] as const satisfies readonly (readonly [string, Text])[];

export function RingFields({ name, ring, recipe }: RingFieldsProps) {
  const form = formOf(ring);
  if (form.kind === 'outline')
    return (
      <p className="hint">
        {t('An outline of {count} points; a disc or rectangle can replace it.', { count: form.points })}
      </p>
    );
  if (form.kind === 'disc')
    return DISC.map(([key, label]) => (
      <LengthField
        key={key}
        label={t(label, { name })}
        value={form[key]}
        recipe={(layout, value) => {
          const next = { ...form, [key]: value };
          return recipe(layout, discRing(next.x, next.y, next.r));
        }}
      />
    ));
  return SIDES.map(([key, label]) => (
    <LengthField
      key={key}
      label={t(label, { name })}
      value={form[key]}
      recipe={(layout, value) => {
        const next = { ...form, [key]: value };
        return recipe(layout, rectangleRing(next.left, next.front, next.right, next.back));
      }}
    />
  ));
}
