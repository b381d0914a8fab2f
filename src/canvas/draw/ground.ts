/**
 * What lies under the parts: paper, platform with its front edge marked, margin, keep-outs, reach outlines, and the zones
 * with their bands. Millimetres on the platform, px on screen.
 */
import { t } from '../../language/index';
import { ringFromLayout } from '../../geometry/ring';
import type { Region } from '../../geometry/types';
import type { Machine, Platform } from '../../layout/types';
import type { Hover } from '../../store/types';
import type { ScreenPoint } from '../../units/types';
import type { Division, LaserSet, Zone } from '../../zoning/types';
import { toScreen } from '../camera';
import { THICK_PX, THIN_PX, laserStyle, type Hatching, type Theme } from '../../export/plan/palette';
import { hatchPath, outlinePath } from './paths';
import {
  CHAIN,
  DASHED,
  crisp,
  inPlate,
  line,
  strokeRegion,
  setPen,
  write,
  type Ctx,
  type Sheet,
} from './pen';

const KEEP_OUT: Hatching = { angle_deg: 45, spacing_px: 9.5, dash_px: [] };
const keepOuts = new WeakMap<Platform, Region>();

const keepOutRegion = (platform: Platform): Region => {
  const kept = keepOuts.get(platform) ?? platform.keepOuts.map(ringFromLayout);
  keepOuts.set(platform, kept);
  return kept;
};

/** Corners of the platform on screen: rear left, front right. */
const corners = (platform: Platform, sheet: Sheet): readonly [ScreenPoint, ScreenPoint] => {
  const [x, y] = [platform.width_mm / 2, platform.depth_mm / 2];
  return [toScreen({ x: -x, y }, sheet.camera, sheet.size), toScreen({ x, y: -y }, sheet.camera, sheet.size)];
};

const drawPlatform = (ctx: Ctx, sheet: Sheet, platform: Platform): void => {
  const [rear, front] = corners(platform, sheet);
  const [left, top] = [crisp(rear.left), crisp(rear.top)];
  const [width, height] = [Math.round(front.left - rear.left), Math.round(front.top - rear.top)];
  ctx.fillStyle = sheet.ground.sheet;
  ctx.fillRect(left, top, width, height);
  const margin = platform.margin_mm * sheet.camera.pxPerMm;
  if (margin > 0) {
    setPen(ctx, { colour: sheet.ground.line, width_px: THIN_PX, dash_px: DASHED }, 1);
    ctx.strokeRect(
      crisp(left + margin),
      crisp(top + margin),
      Math.round(width - 2 * margin),
      Math.round(height - 2 * margin),
    );
  }
  setPen(ctx, { colour: sheet.ground.line, width_px: THIN_PX, dash_px: CHAIN }, 1);
  const [midLeft, midTop] = [crisp(left + width / 2), crisp(top + height / 2)];
  line(ctx, { left: midLeft, top: top - 8 }, { left: midLeft, top: top + height + 8 });
  line(ctx, { left: left - 8, top: midTop }, { left: left + width + 8, top: midTop });
};

/** The platform's frame, thick at the front, and the word at its left end. */
const drawFrame = (ctx: Ctx, sheet: Sheet, platform: Platform): void => {
  const [rear, front] = corners(platform, sheet);
  setPen(ctx, { colour: sheet.ground.ink, width_px: THIN_PX }, 1);
  const [left, top] = [crisp(rear.left), crisp(rear.top)];
  ctx.strokeRect(left, top, Math.round(front.left - rear.left), Math.round(front.top - rear.top));
  setPen(ctx, { colour: sheet.ground.ink, width_px: THICK_PX }, 1);
  const edge = Math.round(front.top) + THICK_PX / 2;
  line(ctx, { left: rear.left, top: edge }, { left: front.left, top: edge });
  write(ctx, t('FRONT'), { left: rear.left, top: edge + 13 }, sheet.ground.ink, {
    align: 'left',
    weight: 600,
  });
};

const drawKeepOuts = (ctx: Ctx, sheet: Sheet, platform: Platform): void => {
  const region = keepOutRegion(platform);
  if (region.length === 0) return;
  inPlate(ctx, sheet, () => {
    ctx.fillStyle = sheet.ground.faint;
    ctx.fill(outlinePath(region), 'nonzero');
    setPen(ctx, { colour: sheet.ground.line, width_px: THIN_PX }, sheet.camera.pxPerMm);
    ctx.stroke(hatchPath(region, KEEP_OUT, sheet.camera.pxPerMm));
    strokeRegion(ctx, sheet, region, { colour: sheet.ground.ink, width_px: THIN_PX });
  });
};

export const lasersOf = (set: LaserSet): readonly number[] =>
  Array.from({ length: 31 }, (_, i) => i).filter((i) => (set >>> i) & 1);

const drawZone = (ctx: Ctx, sheet: Sheet, theme: Theme, division: Division, zone: Zone): void => {
  const path = outlinePath(zone.region);
  const lasers = lasersOf(zone.lasers);
  for (const laser of lasers) {
    if (!((division.on >>> laser) & 1)) continue;
    ctx.fillStyle = laserStyle(laser, theme).zoneTint;
    ctx.fill(path, 'evenodd');
  }
  const first = lasers[0];
  const off = first === undefined || !((division.on >>> first) & 1);
  const colour = off ? sheet.ground.line : laserStyle(first, theme).stroke;
  strokeRegion(ctx, sheet, zone.region, {
    colour,
    width_px: THIN_PX,
    dash_px: division.sharedBand_mm > 0 ? DASHED : [],
  });
};

/** What the ground shows; an outline that limits a laser's reach is thick while that laser is lit up. */
export interface GroundScene {
  readonly machine: Machine;
  readonly division: Division;
  readonly hover: Hover | null;
}

const drawReach = (ctx: Ctx, sheet: Sheet, theme: Theme, { machine, division, hover }: GroundScene): void => {
  machine.lasers.forEach((laser, i) => {
    const reach = division.reach[i];
    const asked = hover?.kind === 'laser' && hover.laser === i;
    if (!reach || !laser.reach || (!laser.on && !asked)) return;
    const colour = laserStyle(i, theme).stroke;
    strokeRegion(ctx, sheet, reach, { colour, width_px: asked ? THICK_PX : THIN_PX, dash_px: CHAIN });
  });
};

/** Everything under the parts. */
export const drawGround = (ctx: Ctx, sheet: Sheet, theme: Theme, scene: GroundScene): void => {
  const { platform } = scene.machine;
  ctx.fillStyle = sheet.ground.paper;
  ctx.fillRect(0, 0, sheet.size.width, sheet.size.height);
  drawPlatform(ctx, sheet, platform);
  inPlate(ctx, sheet, () => {
    for (const zone of scene.division.zones) drawZone(ctx, sheet, theme, scene.division, zone);
    drawReach(ctx, sheet, theme, scene);
  });
  drawKeepOuts(ctx, sheet, platform);
  drawFrame(ctx, sheet, platform);
};
