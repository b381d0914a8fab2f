/**
 * What lies over the parts: zone lines, faults with their numbers, what is lit up, what is selected, the drawing under
 * way. Hovered: 2 px ink. Selected: 2 px ink in a 3 px halo of paper. Faulty: dash-dot in the warning colour.
 */
import type { Analysis, LayerFigures } from '../../build/types';
import { boxOf } from '../../geometry/region';
import type { Region } from '../../geometry/types';
import type { PartId } from '../../layout/types';
import type { Hover, View } from '../../store/types';
import type { PlatePoint, ScreenPoint } from '../../units/types';
import type { Division, ZoneLine } from '../../zoning/types';
import { toScreen } from '../camera';
import { THICK_PX, THIN_PX, type Theme } from '../../export/plan/palette';
import { footprintBox, type PartItem } from '../plan/items';
import { lineEnds } from '../../export/plan/lineEnds';
import { boxAround, type ScreenBox } from '../../export/plan/clearPlace';
import { outlinePath } from './paths';
import { CHAIN, FAULT, balloon, inPlate, line, strokeRegion, setPen, type Ctx, type Sheet } from './pen';
import { drawLabel, drawSeam, labelBoxes } from './sections';
import { drawZoneNumbers } from './zoneNumbers';

const HALO_PX = 3;
const NAME_HALF_PX = 24;
/** Names written once more over what is drawn on top of them; of a crowd nobody reads them, and each costs a millisecond. */
const MOST_NAMED = 200;

export interface Overlay {
  readonly theme: Theme;
  readonly analysis: Analysis;
  /** The division in this layer. */
  readonly division: Division;
  readonly layer: LayerFigures | null;
  readonly items: readonly PartItem[];
  readonly view: Pick<View, 'selection' | 'locked' | 'hover'>;
}

const drawZoneLine = (ctx: Ctx, sheet: Sheet, analysis: Analysis, zoneLine: ZoneLine): void => {
  const ends = lineEnds(zoneLine, analysis.layout.machine.platform);
  if (!ends) return;
  const [from, to] = ends.map((p) => toScreen(p, sheet.camera, sheet.size));
  setPen(ctx, { colour: sheet.ground.sheet, width_px: THICK_PX + 1 }, 1);
  line(ctx, from, to);
  setPen(ctx, { colour: sheet.ground.ink, width_px: THIN_PX, dash_px: CHAIN }, 1);
  line(ctx, from, to);
};

/** A zone line may cross a part, not its name. */
const drawCrossedNames = (ctx: Ctx, sheet: Sheet, { division, items }: Overlay): void => {
  const near_mm = NAME_HALF_PX / sheet.camera.pxPerMm;
  for (const item of items) {
    const box = footprintBox(item.view);
    const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
    const crossed = division.lines.some(({ nx, ny, c }) => Math.abs(nx * x + ny * y - c) < near_mm);
    if (crossed) drawLabel(ctx, sheet, item);
  }
};

/** Numbers of the problems that name each part, in the order of the list. */
export const faultNumbers = (analysis: Analysis): ReadonlyMap<PartId, readonly number[]> => {
  const numbers = new Map<PartId, number[]>();
  analysis.problems.forEach((problem, i) => {
    for (const part of problem.parts) numbers.set(part, [...(numbers.get(part) ?? []), i + 1]);
  });
  return numbers;
};

/** At most two numbers: the list tells the rest. */
const numberWords = (numbers: readonly number[]): string =>
  numbers.slice(0, 2).join(' ') + (numbers.length > 2 ? ' …' : '');

/** The rear right corner of a part's box. */
const faultPlace = (sheet: Sheet, item: PartItem): ScreenPoint => {
  const box = footprintBox(item.view);
  return toScreen({ x: box.maxX, y: box.maxY }, sheet.camera, sheet.size);
};

const drawFaults = (ctx: Ctx, sheet: Sheet, { analysis, items, view }: Overlay): void => {
  const { warning, sheet: fill } = sheet.ground;
  const numbers = faultNumbers(analysis);
  const faulty = items.filter((item) => numbers.has(item.part.id));
  const chosen = new Set(view.selection);
  inPlate(ctx, sheet, () => {
    for (const { part, view: shown } of faulty) {
      const width_px = chosen.has(part.id) ? THIN_PX : THICK_PX;
      strokeRegion(ctx, sheet, shown.footprint, { colour: warning, width_px, dash_px: FAULT });
    }
  });
  for (const item of faulty) {
    if (faulty.length <= MOST_NAMED) drawLabel(ctx, sheet, item);
    const words = numberWords(numbers.get(item.part.id) ?? []);
    balloon(ctx, words, faultPlace(sheet, item), fill, warning, warning);
  }
};

/** Half the sides of a balloon with one number. */
const FAULT_HALF_PX = 11;

/** What the numbers of the zones keep clear of: names of parts and numbers of problems. */
const legible = (sheet: Sheet, { analysis, items }: Overlay): readonly ScreenBox[] => {
  const numbers = faultNumbers(analysis);
  return items.flatMap((item) => {
    const fault = boxAround(faultPlace(sheet, item), FAULT_HALF_PX, FAULT_HALF_PX);
    return numbers.has(item.part.id) ? [...labelBoxes(sheet, item), fault] : labelBoxes(sheet, item);
  });
};

/** Pieces that a hover lights up. */
const litPieces = ({ layer, items, analysis }: Overlay, hover: Hover | null): PartItem['pieces'] => {
  const pieces = items.flatMap((item) => item.pieces);
  if (hover?.kind === 'laser') return pieces.filter((piece) => piece.laser === hover.laser);
  if (hover?.kind === 'sections') return pieces.filter((piece) => piece.laser >= 0);
  if (hover?.kind === 'unassigned') return pieces.filter((piece) => piece.laser < 0);
  if (hover?.kind !== 'binding') return [];
  const setBy = layer?.bestSetBy ?? [];
  return pieces.filter((piece) => setBy.includes(analysis.layout.machine.lasers[piece.laser]?.id ?? ''));
};

const litParts = ({ analysis }: Overlay, hover: Hover | null): readonly PartId[] => {
  if (hover?.kind === 'part') return [hover.part];
  return hover?.kind === 'problem' ? (analysis.problems[hover.problem]?.parts ?? []) : [];
};

const drawLit = (ctx: Ctx, sheet: Sheet, overlay: Overlay): void => {
  const { hover } = overlay.view;
  const { ink, warning } = sheet.ground;
  const parts = new Set(litParts(overlay, hover));
  const lit = overlay.items.filter((item) => parts.has(item.part.id));
  inPlate(ctx, sheet, () => {
    const colour = hover?.kind === 'unassigned' ? warning : ink;
    for (const piece of litPieces(overlay, hover))
      strokeRegion(ctx, sheet, piece.region, { colour, width_px: THICK_PX });
    for (const item of lit)
      strokeRegion(ctx, sheet, item.view.footprint, { colour: ink, width_px: THICK_PX });
    (overlay.layer?.seams ?? []).forEach((seam, i) => {
      const asked = hover?.kind === 'seams' || (hover?.kind === 'seam' && hover.seam === i);
      if (asked) drawSeam(ctx, sheet, seam, true);
    });
  });
  if (lit.length <= MOST_NAMED) for (const item of lit) drawLabel(ctx, sheet, item, true);
};

/** A halo around a region, outside it only, so that its hatching stays whole. Call under inPlate. */
const drawHalo = (ctx: Ctx, sheet: Sheet, region: Region, colour: string): void => {
  const box = boxOf(region);
  const room = (THICK_PX + 2 * HALO_PX) / sheet.camera.pxPerMm;
  const outside = new Path2D();
  outside.rect(
    box.minX - room,
    box.minY - room,
    box.maxX - box.minX + 2 * room,
    box.maxY - box.minY + 2 * room,
  );
  outside.addPath(outlinePath(region));
  ctx.save();
  ctx.clip(outside, 'evenodd');
  strokeRegion(ctx, sheet, region, { colour, width_px: THICK_PX + 2 * HALO_PX });
  ctx.restore();
};

const drawSelected = (ctx: Ctx, sheet: Sheet, { items, view }: Overlay): void => {
  const chosen = new Set(view.selection);
  const selected = items.filter((item) => chosen.has(item.part.id));
  if (selected.length === 0) return;
  const { ink, paper } = sheet.ground;
  inPlate(ctx, sheet, () => {
    for (const { view: shown } of selected) {
      drawHalo(ctx, sheet, shown.footprint, paper);
      strokeRegion(ctx, sheet, shown.footprint, { colour: ink, width_px: THICK_PX });
    }
    for (const item of selected) for (const seam of item.seams) drawSeam(ctx, sheet, seam);
  });
  if (selected.length > MOST_NAMED) return;
  for (const item of selected) {
    drawLabel(ctx, sheet, item);
    drawOrigin(ctx, sheet, item);
  }
};

/** The shape's origin, about which it turns; left out where it would cross the part's name. */
const drawOrigin = (ctx: Ctx, sheet: Sheet, { part, view }: PartItem): void => {
  const arm = 5;
  const at = toScreen({ x: part.at_mm[0], y: part.at_mm[1] }, sheet.camera, sheet.size);
  const box = footprintBox(view);
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const name = toScreen(middle, sheet.camera, sheet.size);
  if (Math.abs(at.left - name.left) < 24 && Math.abs(at.top - name.top) < 16) return;
  for (const pass of [
    { colour: sheet.ground.paper, width_px: 3 },
    { colour: sheet.ground.ink, width_px: THIN_PX },
  ]) {
    setPen(ctx, pass, 1);
    line(ctx, { left: at.left - arm, top: at.top }, { left: at.left + arm, top: at.top });
    line(ctx, { left: at.left, top: at.top - arm }, { left: at.left, top: at.top + arm });
  }
};

const PADLOCK_LEAST_PX = 16;

/** The outline's point furthest to the rear left. */
const rearLeft = ({ footprint }: PartItem['view']): PlatePoint => {
  let [x, y] = [Infinity, -Infinity];
  for (const ring of footprint)
    for (let i = 0; i < ring.length; i += 2)
      if (ring[i + 1]! - ring[i]! > y - x) [x, y] = [ring[i]!, ring[i + 1]!];
  return { x, y };
};

/** A padlock at the rear left of each locked part that has room for it. */
const drawPadlocks = (ctx: Ctx, sheet: Sheet, { items, view }: Overlay): void => {
  if (view.locked.length === 0) return;
  const { ink, sheet: fill } = sheet.ground;
  for (const { part, view: shown } of items) {
    if (!view.locked.includes(part.id)) continue;
    const { minX, minY, maxX, maxY } = footprintBox(shown);
    if (Math.min(maxX - minX, maxY - minY) * sheet.camera.pxPerMm < PADLOCK_LEAST_PX) continue;
    const { left, top } = toScreen(rearLeft(shown), sheet.camera, sheet.size);
    setPen(ctx, { colour: ink, width_px: 1.5 }, 1);
    ctx.beginPath();
    ctx.arc(left, top - 1, 3, Math.PI, 0);
    ctx.lineTo(left + 3, top + 1);
    ctx.moveTo(left - 3, top - 1);
    ctx.lineTo(left - 3, top + 1);
    ctx.rect(left - 5, top + 1, 10, 7);
    ctx.fillStyle = fill;
    ctx.fill();
    ctx.stroke();
  }
};

/** Everything over the parts but the hand's own drawing. */
export const drawOverlay = (ctx: Ctx, sheet: Sheet, overlay: Overlay): void => {
  const { division, analysis } = overlay;
  for (const zoneLine of division.lines) drawZoneLine(ctx, sheet, analysis, zoneLine);
  drawCrossedNames(ctx, sheet, overlay);
  const { platform } = analysis.layout.machine;
  drawZoneNumbers(ctx, sheet, overlay.theme, division, platform, legible(sheet, overlay));
  drawSelected(ctx, sheet, overlay);
  drawPadlocks(ctx, sheet, overlay);
  drawFaults(ctx, sheet, overlay);
  drawLit(ctx, sheet, overlay);
};
