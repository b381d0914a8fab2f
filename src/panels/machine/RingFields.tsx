/**
 * The numbers of one outline (a reach or a keep-out).
 */
import type { Layout, LayoutRing } from '../../layout/types';
import type { Result } from '../../layout/result';
import { LengthField } from '../controls/fields';
import { discRing, formOf, rectangleRing } from './ringForm';

interface RingFieldsProps {
  readonly name: string;
  readonly ring: LayoutRing;
  recipe(layout: Layout, ring: LayoutRing): Layout | Result<Layout>;
}

const DISC = ['x', 'y', 'r'] as const;
const SIDES = ['left', 'front', 'right', 'back'] as const;

export function RingFields({ name, ring, recipe }: RingFieldsProps) {
  const form = formOf(ring);
  if (form.kind === 'outline')
    return <p className="hint">An outline of {form.points} points; a disc or rectangle can replace it.</p>;
  if (form.kind === 'disc')
    return DISC.map((key) => (
      <LengthField
        key={key}
        label={`${name} ${key === 'r' ? 'radius' : key}`}
        value={form[key]}
        recipe={(layout, value) => {
          const next = { ...form, [key]: value };
          return recipe(layout, discRing(next.x, next.y, next.r));
        }}
      />
    ));
  return SIDES.map((key) => (
    <LengthField
      key={key}
      label={`${name} ${key}`}
      value={form[key]}
      recipe={(layout, value) => {
        const next = { ...form, [key]: value };
        return recipe(layout, rectangleRing(next.left, next.front, next.right, next.back));
      }}
    />
  ));
}
