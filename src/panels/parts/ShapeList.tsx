/**
 * The shapes of the layout as pictures. A click puts one more part of the shape at a free place.
 */
import { useBench, useWorkbench } from '../../canvas/bench';
import { addedParts, addPart, removeShape } from '../../commands/operations';
import { Block } from '../controls/Block';
import { useEdit } from '../useEdit';
import { ShapeIcon } from './ShapeIcon';
import { shapeHeight } from './shapePath';

export function ShapeList() {
  const bench = useWorkbench();
  const edit = useEdit();
  const shapes = useBench((state) => state.layout.shapes);
  const parts = useBench((state) => state.layout.parts);
  const place = (name: string): void => {
    const before = bench.store.getState().layout;
    edit.press(`place ${name}`, (layout) => addPart(layout, name));
    bench.setView({ selection: addedParts(before, bench.store.getState().layout) });
  };
  const names = Object.keys(shapes);
  return (
    <Block title="SHAPES" note={`${names.length}, click to place one`}>
      <ul className="shapes">
        {names.map((name) => {
          const count = parts.filter((part) => part.shape === name).length;
          const shape = shapes[name]!;
          return (
            <li key={name}>
              <button
                type="button"
                className="shape"
                title={`${name}, ${shapeHeight(shape)} mm high, ${count} on the plate`}
                aria-label={`Place one more ${name}; ${count} on the plate`}
                onClick={() => place(name)}
              >
                <ShapeIcon shape={shape} size={40} />
                <span>{count}</span>
              </button>
              {count === 0 && (
                <button
                  type="button"
                  className="button"
                  data-bare
                  aria-label={`Remove the shape ${name}`}
                  onClick={() => edit.press(`remove ${name}`, (layout) => removeShape(layout, name))}
                >
                  ×
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </Block>
  );
}
