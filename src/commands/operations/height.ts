/**
 * The typed height of a part: the top of a shape that has one slab. Shapes of several slabs keep their steps.
 * Millimetres above the platform.
 */
import { SIZE_LIMIT_mm } from '../../layout/limits';
import type { Layout, PartId, Shape, ShapeId } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import { changeParts } from './edit';
import { freshShapeName } from './names';

const shapeOf = (layout: Layout, id: PartId): ShapeId | undefined =>
  layout.parts.find((part) => part.id === id)?.shape;

/** True where `setPartHeight` has an effect: the part exists and its shape has one slab. */
export function canSetHeight(layout: Layout, id: PartId): boolean {
  const name = shapeOf(layout, id);
  return name !== undefined && layout.shapes[name]?.slabs.length === 1;
}

/** Raises the parts `ids`, which all have the shape `name`; copies the shape where other parts share it. */
function raise(layout: Layout, name: ShapeId, ids: readonly PartId[], height_mm: Mm): Layout {
  const slab = layout.shapes[name]!.slabs[0]!;
  if (slab.to_mm === height_mm) return layout;
  const raised: Shape = { slabs: [{ ...slab, to_mm: height_mm }] };
  const shared = layout.parts.some((part) => part.shape === name && !ids.includes(part.id));
  const shape = shared ? freshShapeName(layout, name.replace(/-\d+$/, '')) : name;
  const next = { ...layout, shapes: { ...layout.shapes, [shape]: raised } };
  return shared ? changeParts(next, ids, (part) => ({ ...part, shape })) : next;
}

/**
 * Sets the height (0.001 mm to 10 m) of parts whose shape has one slab; others keep theirs. A shape that parts outside
 * `ids` share is copied first; parts of one shape that are raised together go on sharing.
 */
export function setPartHeight(layout: Layout, ids: readonly PartId[], height_mm: Mm): Layout {
  const height = roundMm(height_mm);
  if (!(height > 0 && height <= SIZE_LIMIT_mm)) return layout;
  const able = ids.filter((id) => canSetHeight(layout, id));
  const names = new Set(able.map((id) => shapeOf(layout, id)!));
  return [...names].reduce(
    (next, name) =>
      raise(
        next,
        name,
        able.filter((id) => shapeOf(layout, id) === name),
        height,
      ),
    layout,
  );
}
