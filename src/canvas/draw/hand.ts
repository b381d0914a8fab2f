/**
 * The hand's own drawing: the shape under way, and the cross that the keyboard moves. Platform mm, screen px.
 */
import type { PlatePoint } from '../../units/types';
import { toScreen } from '../camera';
import type { Draft, PlanUi } from '../gestures/planUi';
import { THICK_PX, THIN_PX } from '../../export/plan/palette';
import { DASHED, balloon, line, setPen, type Ctx, type Sheet } from './pen';

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
  // A box that takes what it touches is dashed.
  const dashed = light && draft.to.x < draft.from.x;
  setPen(
    ctx,
    { colour: sheet.ground.ink, width_px: light ? THIN_PX : THICK_PX, dash_px: dashed ? DASHED : [] },
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

/** Drawing under way and keyboard cross. */
export const drawHand = (ctx: Ctx, sheet: Sheet, ui: Pick<PlanUi, 'draft' | 'cross'>): void => {
  if (ui.draft) drawDraft(ctx, sheet, ui.draft);
  if (ui.cross) drawCross(ctx, sheet, ui.cross);
};
