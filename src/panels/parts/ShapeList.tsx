/**
 * The shapes of the layout as pictures. A click puts one more part of the shape at a free place.
 */
import { formatField } from '../../units/format';
import { t } from '../../language/index';
import { useBench, useWorkbench } from '../../canvas/bench';
import { addedParts, addPart, removeShape } from '../../commands/operations';
import { Block } from '../controls/Block';
import type { Shape } from '../../layout/types';
import { useEdit } from '../useEdit';
import { ShapeIcon } from './ShapeIcon';
import { shapeHeight } from './shapePath';

interface ShapeItemProps {
  readonly name: string;
  readonly shape: Shape;
  /** Parts of it on the plate. */
  readonly count: number;
  onPlace(): void;
  onRemove(): void;
}

function ShapeItem({ name, shape, count, onPlace, onRemove }: ShapeItemProps) {
  return (
    <li>
      <button
        type="button"
        className="shape"
        title={t('{name}, {height} mm high, {count} on the plate', {
          name,
          height: formatField(shapeHeight(shape)),
          count,
        })}
        aria-label={t('Place one more {name}; {count} on the plate', { name, count })}
        onClick={onPlace}
      >
        <ShapeIcon shape={shape} size={40} />
        <span>{count}</span>
      </button>
      {count === 0 && (
        <button
          type="button"
          className="button"
          data-bare
          aria-label={t('Remove the shape {name}', { name })}
          onClick={onRemove}
        >
          ×
        </button>
      )}
    </li>
  );
}

export function ShapeList() {
  const bench = useWorkbench();
  const edit = useEdit();
  const shapes = useBench((state) => state.layout.shapes);
  const parts = useBench((state) => state.layout.parts);
  const place = (name: string): void => {
    const before = bench.store.getState().layout;
    edit.press(t('place {name}', { name }), (layout) => addPart(layout, name));
    bench.setView({ selection: addedParts(before, bench.store.getState().layout) });
  };
  const all = Object.entries(shapes);
  return (
    <Block title={t('SHAPES')} note={t('{count}, click to place one', { count: all.length })}>
      <ul className="shapes">
        {all.map(([name, shape]) => (
          <ShapeItem
            key={name}
            name={name}
            shape={shape}
            count={parts.filter((part) => part.shape === name).length}
            onPlace={() => place(name)}
            onRemove={() => edit.press(t('remove {name}', { name }), (layout) => removeShape(layout, name))}
          />
        ))}
      </ul>
    </Block>
  );
}
