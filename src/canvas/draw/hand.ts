/**
 * The hand's own drawing: the shape under way, the cross that the keyboard moves, and the rulers along the canvas' lower
 * and left edge. Screen px; numbers on the rulers are platform mm.
 */
import type { Platform } from '../../layout/types';
import type { PlatePoint, Px } from '../../units/types';
import { RULER_BOTTOM_PX, RULER_LEFT_PX, toPlate, toScreen } from '../camera';
import type { Draft, PlanUi } from '../gestures/planUi';
import { THICK_PX, THIN_PX } from '../palette';
import { tickLabel, ticks } from '../ruler';
import { DASHED, balloon, crisp, line, setPen, write, type Ctx, type Sheet } from './pen';

const LABEL_EVERY_PX: Px = 48;
const MINOR_PX: Px = 4;
const MAJOR_PX: Px = 8;

const place = (sheet: Sheet, p: PlatePoint) => toScreen(p, sheet.camera, sheet.size);

const traceCircle = (ctx: Ctx, sheet: Sheet, centre: PlatePoint, radius_mm: number): void => {
  const at = place(sheet, centre);
  const radius = radius_mm * sheet.camera.pxPerMm;
  ctx.moveTo(at.left + radius, at.top);
  ctx.arc(at.left, at.top, radius, 0, 2 * Math.PI);
};

const traceDraft = (ctx: Ctx, sheet: Sheet, draft: Draft): void => {
  switch (draft.kind) {
    case 'rectangle':
    case 'box': {
      const [a, b] = [place(sheet, draft.from), place(sheet, draft.to)];
      return ctx.rect(a.left, a.top, b.left - a.left, b.top - a.top);
    }
    case 'disc':
      return traceCircle(ctx, sheet, draft.centre, draft.radius_mm);
    case 'ring':
      traceCircle(ctx, sheet, draft.centre, draft.outer_mm);
      return traceCircle(ctx, sheet, draft.centre, draft.inner_mm);
    default:
      [...draft.points, draft.to].forEach((p, i) => {
        const at = place(sheet, p);
        if (i === 0) ctx.moveTo(at.left, at.top);
        else ctx.lineTo(at.left, at.top);
      });
      return ctx.closePath();
  }
};

const drawDraft = (ctx: Ctx, sheet: Sheet, draft: Draft): void => {
  ctx.beginPath();
  traceDraft(ctx, sheet, draft);
  ctx.globalAlpha = 0.5;
  ctx.fillStyle = sheet.ground.faint;
  ctx.fill('evenodd');
  ctx.globalAlpha = 1;
  const light = draft.kind === 'box';
  setPen(
    ctx,
    { colour: sheet.ground.ink, width_px: light ? THIN_PX : THICK_PX, dash_px: light ? DASHED : [] },
    1,
  );
  ctx.stroke();
  if (draft.kind !== 'polygon' && draft.kind !== 'zone') return;
  draft.points.forEach((p, i) => {
    balloon(ctx, String(i + 1), place(sheet, p), sheet.ground.sheet, sheet.ground.ink, sheet.ground.ink);
  });
};

const drawCross = (ctx: Ctx, sheet: Sheet, cross: PlatePoint): void => {
  const at = place(sheet, cross);
  setPen(ctx, { colour: sheet.ground.ink, width_px: THIN_PX }, 1);
  line(ctx, { left: at.left - 16, top: at.top }, { left: at.left + 16, top: at.top });
  line(ctx, { left: at.left, top: at.top - 16 }, { left: at.left, top: at.top + 16 });
};

const drawRulerX = (ctx: Ctx, sheet: Sheet): void => {
  const { width, height } = sheet.size;
  const top = height - RULER_BOTTOM_PX;
  const from = toPlate({ left: RULER_LEFT_PX, top }, sheet.camera, sheet.size).x;
  const to = toPlate({ left: width, top }, sheet.camera, sheet.size).x;
  for (const tick of ticks(from, to, sheet.camera.pxPerMm, LABEL_EVERY_PX)) {
    const left = crisp(place(sheet, { x: tick.value, y: 0 }).left);
    line(ctx, { left, top }, { left, top: top + (tick.major ? MAJOR_PX : MINOR_PX) });
    if (tick.major) write(ctx, tickLabel(tick.value), { left, top: top + 16 }, sheet.ground.note);
  }
};

const drawRulerY = (ctx: Ctx, sheet: Sheet): void => {
  const left = RULER_LEFT_PX;
  const from = toPlate({ left, top: sheet.size.height - RULER_BOTTOM_PX }, sheet.camera, sheet.size).y;
  const to = toPlate({ left, top: 0 }, sheet.camera, sheet.size).y;
  for (const tick of ticks(from, to, sheet.camera.pxPerMm, LABEL_EVERY_PX)) {
    const top = crisp(place(sheet, { x: 0, y: tick.value }).top);
    line(ctx, { left: left - (tick.major ? MAJOR_PX : MINOR_PX), top }, { left, top });
    const at = { left: left - MAJOR_PX - 2, top };
    if (tick.major && top > 8) write(ctx, tickLabel(tick.value), at, sheet.ground.note, { align: 'right' });
  }
};

/** The platform's extent as a thick line along each ruler. */
const drawExtent = (ctx: Ctx, sheet: Sheet, platform: Platform): void => {
  const front = place(sheet, { x: -platform.width_mm / 2, y: -platform.depth_mm / 2 });
  const rear = place(sheet, { x: platform.width_mm / 2, y: platform.depth_mm / 2 });
  const bottom = sheet.size.height - RULER_BOTTOM_PX;
  setPen(ctx, { colour: sheet.ground.ink, width_px: THICK_PX }, 1);
  const [left, right] = [Math.max(RULER_LEFT_PX, front.left), Math.min(sheet.size.width, rear.left)];
  if (right > left) line(ctx, { left, top: bottom }, { left: right, top: bottom });
  const [high, low] = [Math.max(0, rear.top), Math.min(bottom, front.top)];
  if (low > high) line(ctx, { left: RULER_LEFT_PX, top: high }, { left: RULER_LEFT_PX, top: low });
};

const drawRulers = (ctx: Ctx, sheet: Sheet, platform: Platform): void => {
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

/** Drawing under way, keyboard cross, rulers. */
export const drawHand = (
  ctx: Ctx,
  sheet: Sheet,
  platform: Platform,
  ui: Pick<PlanUi, 'draft' | 'cross'>,
): void => {
  if (ui.draft) drawDraft(ctx, sheet, ui.draft);
  if (ui.cross) drawCross(ctx, sheet, ui.cross);
  drawRulers(ctx, sheet, platform);
};
