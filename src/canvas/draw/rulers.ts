/**
 * Rulers along the canvas' lower and left edge, ticks by zoom, the platform's extent as a thick line. What lies over the
 * platform keeps out of their bands. Platform mm, screen px.
 */
import type { Platform } from '../../layout/types';
import type { Px, ScreenPoint } from '../../units/types';
import { RULER_BOTTOM_PX, RULER_LEFT_PX, toPlate, toScreen } from '../camera';
import { THICK_PX, THIN_PX } from '../../export/plan/palette';
import { tickLabel, ticks } from '../../export/plan/ruler';
import { crisp, line, setPen, write, type Ctx, type Sheet } from './pen';

const LABEL_EVERY_PX: Px = 48;
const MINOR_PX: Px = 4;
const MAJOR_PX: Px = 8;
/** Mean width of a digit; a minus sign that is cut off would make another number. */
const DIGIT_PX: Px = 7;

/** Draws with the rulers' bands left out. */
export const besideRulers = (ctx: Ctx, { size }: Sheet, draw: () => void): void => {
  ctx.save();
  ctx.beginPath();
  ctx.rect(RULER_LEFT_PX + 1, 0, size.width, size.height - RULER_BOTTOM_PX - 1);
  ctx.clip();
  draw();
  ctx.restore();
};

const writeNumberX = (ctx: Ctx, { size, ground }: Sheet, text: string, at: ScreenPoint): void => {
  const half = (text.length * DIGIT_PX) / 2;
  if (at.left - half >= RULER_LEFT_PX && at.left + half <= size.width) write(ctx, text, at, ground.note);
};

const drawRulerX = (ctx: Ctx, sheet: Sheet): void => {
  const { width, height } = sheet.size;
  const top = height - RULER_BOTTOM_PX;
  const from = toPlate({ left: RULER_LEFT_PX, top }, sheet.camera, sheet.size).x;
  const to = toPlate({ left: width, top }, sheet.camera, sheet.size).x;
  for (const tick of ticks(from, to, sheet.camera.pxPerMm, LABEL_EVERY_PX)) {
    const left = crisp(toScreen({ x: tick.value, y: 0 }, sheet.camera, sheet.size).left);
    line(ctx, { left, top }, { left, top: top + (tick.major ? MAJOR_PX : MINOR_PX) });
    if (tick.major) writeNumberX(ctx, sheet, tickLabel(tick.value), { left, top: top + 16 });
  }
};

const drawRulerY = (ctx: Ctx, sheet: Sheet): void => {
  const left = RULER_LEFT_PX;
  const from = toPlate({ left, top: sheet.size.height - RULER_BOTTOM_PX }, sheet.camera, sheet.size).y;
  const to = toPlate({ left, top: 0 }, sheet.camera, sheet.size).y;
  for (const tick of ticks(from, to, sheet.camera.pxPerMm, LABEL_EVERY_PX)) {
    const top = crisp(toScreen({ x: 0, y: tick.value }, sheet.camera, sheet.size).top);
    line(ctx, { left: left - (tick.major ? MAJOR_PX : MINOR_PX), top }, { left, top });
    const at = { left: left - MAJOR_PX - 2, top };
    if (tick.major && top > 8) write(ctx, tickLabel(tick.value), at, sheet.ground.note, { align: 'right' });
  }
};

/** The platform's extent as a thick line along each ruler. */
const drawExtent = (ctx: Ctx, sheet: Sheet, platform: Platform): void => {
  const front = toScreen({ x: -platform.width_mm / 2, y: -platform.depth_mm / 2 }, sheet.camera, sheet.size);
  const rear = toScreen({ x: platform.width_mm / 2, y: platform.depth_mm / 2 }, sheet.camera, sheet.size);
  const bottom = sheet.size.height - RULER_BOTTOM_PX;
  setPen(ctx, { colour: sheet.ground.ink, width_px: THICK_PX }, 1);
  const [left, right] = [Math.max(RULER_LEFT_PX, front.left), Math.min(sheet.size.width, rear.left)];
  if (right > left) line(ctx, { left, top: bottom }, { left: right, top: bottom });
  const [high, low] = [Math.max(0, rear.top), Math.min(bottom, front.top)];
  if (low > high) line(ctx, { left: RULER_LEFT_PX, top: high }, { left: RULER_LEFT_PX, top: low });
};

/** Both rulers, their numbers in mm, and the platform's extent on them. */
export const drawRulers = (ctx: Ctx, sheet: Sheet, platform: Platform): void => {
  const { width, height } = sheet.size;
  const bottom = height - RULER_BOTTOM_PX;
  ctx.fillStyle = sheet.ground.paper;
  ctx.fillRect(0, bottom, width, RULER_BOTTOM_PX);
  ctx.fillRect(0, 0, RULER_LEFT_PX, height);
  setPen(ctx, { colour: sheet.ground.line, width_px: THIN_PX }, 1);
  line(ctx, { left: RULER_LEFT_PX, top: crisp(bottom) }, { left: width, top: crisp(bottom) });
  line(ctx, { left: crisp(RULER_LEFT_PX), top: 0 }, { left: crisp(RULER_LEFT_PX), top: bottom });
  drawRulerX(ctx, sheet);
  drawRulerY(ctx, sheet);
  drawExtent(ctx, sheet, platform);
  ctx.fillStyle = sheet.ground.paper;
  ctx.fillRect(0, bottom + 1, RULER_LEFT_PX, RULER_BOTTOM_PX);
  write(ctx, 'mm', { left: RULER_LEFT_PX / 2, top: bottom + 13 }, sheet.ground.note);
};
