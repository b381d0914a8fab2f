/**
 * Where the platform lies in a picture, and from plate millimetres to the picture's px. Plate: origin at the platform's
 * centre, +x right, +y back. Picture: origin at its top left, +y down; so y turns over.
 */
import type { Platform } from '../../layout/types';
import type { Mm, Px, ScreenPoint } from '../../units/types';
import type { PlanStyle } from './planPicture';

export const RULER_LEFT_PX: Px = 40;
export const RULER_BOTTOM_PX: Px = 24;
/** Room for an arrow of gas flow or blade and its word. */
const ARROW_ROOM_PX: Px = 50;
/** Without rulers: room for the thick line of the front edge. */
const BARE_ROOM_PX: Px = 6;
export const CAPTION_PX: Px = 28;
/** Height of a row of the key, and the gap above the first. */
export const LEGEND_PX: Px = 28;
export const LEGEND_GAP_PX: Px = 10;

export interface Frame {
  readonly width: Px;
  readonly height: Px;
  readonly pxPerMm: number;
  /** The platform's edges. */
  readonly left: Px;
  readonly right: Px;
  readonly top: Px;
  readonly bottom: Px;
  /** Lower end of the plan with its ruler; the key of the lasers stands under it. */
  readonly planBottom: Px;
}

/** Where things stand in a picture of `style.width_px`. */
export function frameOf(platform: Platform, style: PlanStyle, legendRows = 0): Frame {
  const around = style.rulers ? ARROW_ROOM_PX : BARE_ROOM_PX;
  const left = around + (style.rulers ? RULER_LEFT_PX : 0);
  const top = around + (style.caption === undefined ? 0 : CAPTION_PX);
  const right = style.width_px - around;
  const pxPerMm = Math.max(1, right - left) / platform.width_mm;
  const bottom = top + platform.depth_mm * pxPerMm;
  const planBottom = bottom + around + (style.rulers ? RULER_BOTTOM_PX : 0);
  const height = planBottom + (legendRows > 0 ? legendRows * LEGEND_PX + LEGEND_GAP_PX : 0);
  return { width: style.width_px, height, pxPerMm, left, right, top, bottom, planBottom };
}

/** A place on the plate as a place in the picture. */
export const toPicture = (frame: Frame, x_mm: Mm, y_mm: Mm): ScreenPoint => ({
  left: (frame.left + frame.right) / 2 + x_mm * frame.pxPerMm,
  top: (frame.top + frame.bottom) / 2 - y_mm * frame.pxPerMm,
});
