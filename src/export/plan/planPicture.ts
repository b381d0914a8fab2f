/**
 * What a picture of the plan shows: a layout, its division and its layer at one height, and how it is to look.
 * Millimetres above the platform, px in the picture.
 */
import { layerAt, middleOfLayer } from '../../build/layers';
import type { Analysis, LayerFigures, PartView } from '../../build/types';
import { stepAt } from '../../layout/steps';
import type { Layout } from '../../layout/types';
import type { Mm, Px } from '../../units/types';
import type { Division } from '../../zoning/types';
import type { PlanGround } from './ink';

export interface PlanPicture {
  readonly layout: Layout;
  /** The division that holds in the layer. */
  readonly division: Division;
  /** In the layout's order. */
  readonly parts: readonly PartView[];
  /** null: an empty build, footprints only. */
  readonly layer: LayerFigures | null;
}
export interface PlanStyle {
  /** Of the whole picture; its height follows. */
  readonly width_px: Px;
  readonly ground: PlanGround;
  /** Names of the parts that have room for them. */
  readonly labels: boolean;
  /** Also the names of parts without room for them, beside the part with a line to it where that is clear. */
  readonly everyName?: boolean;
  /** Rulers along the lower and left edge, and arrows of gas flow and blade. */
  readonly rulers: boolean;
  readonly zoneNumbers: boolean;
  /** Words across the plan. */
  readonly stamp?: string;
  /** One line above the plan. */
  readonly caption?: string;
  /** A key of the lasers under the plan. */
  readonly legend?: boolean;
}

/** The picture at a height; heights outside the build show the nearest layer. */
export function planPictureOf(analysis: Analysis, height_mm: Mm): PlanPicture {
  const { layout, build, divisions, parts } = analysis;
  const t = layout.process.layer_mm;
  const inside = Math.min(Math.max(0, height_mm), build.height_mm);
  const layer = layerAt(inside, t, build.height_mm);
  const middle_mm = layer === 0 ? inside : middleOfLayer(layer, t);
  return {
    layout,
    division: divisions[stepAt(layout.zoning, middle_mm)] ?? divisions[0],
    parts,
    layer: layer === 0 ? null : analysis.layer(layer),
  };
}
