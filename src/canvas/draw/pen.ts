/**
 * The pen every drawing uses: two line widths, dashes in screen px whatever the zoom, words with a halo of the ground.
 * Angles and lengths in screen px unless the name says mm.
 */
import type { Region } from '../../geometry/types';
import type { Camera } from '../../store/types';
import type { Px, ScreenPoint } from '../../units/types';
import { plateTransform, type Size } from '../camera';
import type { Ground } from '../../export/plan/palette';
import { outlinePath } from './paths';

export type Ctx = CanvasRenderingContext2D;

/** The page's own typeface (--sans of tokens.css). */
export const FONT = "-apple-system, 'Segoe UI', Roboto, 'Liberation Sans', Arial, system-ui, sans-serif";
/** Dashes in px: band edges and margins; hidden outlines; centre lines; faults. */
export const DASHED: readonly Px[] = [6, 4];
export const DOTTED: readonly Px[] = [1, 3];
export const CHAIN: readonly Px[] = [14, 3, 2, 3];
export const FAULT: readonly Px[] = [10, 3, 2, 3];

/** What a drawing is drawn through. */
export interface Sheet {
  readonly camera: Camera;
  readonly size: Size;
  readonly ground: Ground;
}
export interface Stroke {
  readonly colour: string;
  readonly width_px: Px;
  readonly dash_px?: readonly Px[];
}

/** Runs `draw` with plate millimetres as the unit. */
export const inPlate = (ctx: Ctx, sheet: Sheet, draw: () => void): void => {
  ctx.save();
  ctx.transform(...plateTransform(sheet.camera, sheet.size));
  draw();
  ctx.restore();
};

/** Sets a stroke; call it under inPlate with the sheet's zoom, on screen with 1. */
export const setPen = (ctx: Ctx, stroke: Stroke, pxPerUnit: number): void => {
  ctx.strokeStyle = stroke.colour;
  ctx.lineWidth = stroke.width_px / pxPerUnit;
  ctx.setLineDash((stroke.dash_px ?? []).map((px) => px / pxPerUnit));
  ctx.lineJoin = 'round';
};

/** Strokes a region's outline; call under inPlate. */
export const strokeRegion = (ctx: Ctx, sheet: Sheet, region: Region, stroke: Stroke): void => {
  setPen(ctx, stroke, sheet.camera.pxPerMm);
  ctx.stroke(outlinePath(region));
};

/** Middle of a device pixel, so that a thin straight line stays one pixel wide. */
export const crisp = (at: Px): Px => Math.round(at - 0.5) + 0.5;

export const line = (ctx: Ctx, from: ScreenPoint, to: ScreenPoint): void => {
  ctx.beginPath();
  ctx.moveTo(from.left, from.top);
  ctx.lineTo(to.left, to.top);
  ctx.stroke();
};

export interface Words {
  readonly size_px?: Px;
  readonly weight?: 400 | 600;
  readonly align?: CanvasTextAlign;
  readonly colour?: string;
  /** Colour of a 3 px halo; none where left out. */
  readonly halo?: string;
}

/** One line of words, centred on `at` vertically. */
export const write = (ctx: Ctx, text: string, at: ScreenPoint, colour: string, words: Words = {}): void => {
  ctx.font = `${words.weight ?? 400} ${words.size_px ?? 12}px ${FONT}`;
  ctx.textAlign = words.align ?? 'center';
  ctx.textBaseline = 'middle';
  if (words.halo) {
    ctx.setLineDash([]);
    ctx.lineJoin = 'round';
    ctx.lineWidth = 4;
    ctx.strokeStyle = words.halo;
    ctx.strokeText(text, at.left, at.top);
  }
  ctx.fillStyle = words.colour ?? colour;
  ctx.fillText(text, at.left, at.top);
};

/** Words in a box with a thin frame, centred on `at`; returns nothing, draws on the sheet's ground. */
export const tag = (ctx: Ctx, text: string, at: ScreenPoint, sheet: Sheet, colour: string): void => {
  ctx.font = `400 12px ${FONT}`;
  const width = Math.ceil(ctx.measureText(text).width) + 8;
  const [left, top] = [crisp(at.left - width / 2), crisp(at.top - 8)];
  ctx.fillStyle = sheet.ground.sheet;
  ctx.fillRect(left, top, width, 16);
  setPen(ctx, { colour, width_px: 1 }, 1);
  ctx.strokeRect(left, top, width, 16);
  write(ctx, text, { left: left + width / 2, top: top + 8.5 }, colour);
};

/** A number in a circle, as drawings number what they point to. */
export const balloon = (
  ctx: Ctx,
  text: string,
  at: ScreenPoint,
  fill: string,
  stroke: string,
  ink: string,
): void => {
  ctx.font = `600 12px ${FONT}`;
  const half = Math.max(10, ctx.measureText(text).width / 2 + 5);
  ctx.beginPath();
  ctx.roundRect(at.left - half, at.top - 10, 2 * half, 20, 10);
  ctx.fillStyle = fill;
  ctx.fill();
  setPen(ctx, { colour: stroke, width_px: 1 }, 1);
  ctx.stroke();
  write(ctx, text, { left: at.left, top: at.top + 0.5 }, ink, { weight: 600 });
};
