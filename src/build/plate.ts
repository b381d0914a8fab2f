/**
 * A layout set up for its layers: the division of every step of the zoning, the parts in their places, what cuts are
 * realised with. Pure; what did not change since an earlier call keeps its objects. Millimetres, seconds.
 */
import type { RealiseContext } from '../allocation/realise';
import { cellsOfPinned, divideSection } from '../exposure/fragments';
import { placedPart, type PlacedPart } from '../exposure/prepared';
import type { DividedSection } from '../exposure/types';
import type { Layout } from '../layout/types';
import type { Mm } from '../units/types';
import { divideSteps } from '../zoning/divide';
import type { Cell, Division, LaserSet } from '../zoning/types';
import { layerRanges, type LayerRange } from './layers';
import { modelOf } from './layerFigures';

export interface Plate {
  readonly layout: Layout;
  /** By step of the zoning. */
  readonly divisions: readonly Division[];
  readonly placed: readonly PlacedPart[];
  /** By step of the zoning. */
  readonly contexts: readonly RealiseContext[];
  readonly on: LaserSet;
  readonly height_mm: Mm;
  /** The build as ranges of layers in which nothing changes; found on first use. */
  readonly ranges: readonly LayerRange[];
}

/** Divides the platform by every step of the zoning and places all parts; what all layers of a build have in common. Millimetres. */
export function plateOf(layout: Layout): Plate {
  const { machine, limits, process, zoning } = layout;
  const divisions = divideSteps(machine, zoning);
  const model = modelOf(process);
  const placed = layout.parts.map((part) => placedPart(layout, part));
  let ranges: readonly LayerRange[] | null = null;
  return {
    layout,
    divisions,
    placed,
    contexts: divisions.map((division) => ({ machine, division, model, limits })),
    on: divisions[0].on,
    height_mm: placed.reduce((top, part) => Math.max(top, part.height_mm), 0),
    get ranges() {
      return (ranges ??= layerRanges(placed, zoning, process.layer_mm));
    },
  };
}

function cellsFor({ layout, divisions }: Plate, part: number, step: number): readonly Cell[] {
  const { laser } = layout.parts[part];
  if (laser === null) return divisions[step].cells;
  return cellsOfPinned(
    divisions[step],
    layout.machine.lasers.findIndex((known) => known.id === laser),
  );
}

/** The section of every part in a range of layers, divided; null above a part. */
export const sectionsIn = (plate: Plate, { slabs, step }: LayerRange): (DividedSection | null)[] =>
  slabs.map((slab, part) => (slab ? divideSection(slab, cellsFor(plate, part, step)) : null));
