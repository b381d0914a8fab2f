/**
 * Sections as the plan shows them: each piece in its laser's tint and hatching, what no laser exposes cross-hatched in
 * the warning colour, cuts as thick lines with a mark where they meet the outline, and the part's name and tags.
 * Hatching tells lasers apart; it is not the scan direction.
 */
import { t } from '../../language/index';
import type { Piece, Seam } from '../../build/types';
import type { Px, ScreenPoint } from '../../units/types';
import { toScreen } from '../camera';
import { THICK_PX, THIN_PX, laserStyle, type Hatching, type Theme } from '../../export/plan/palette';
import { footprintBox, type PartItem } from '../plan/items';
import { boxAround, type ScreenBox } from '../../export/plan/clearPlace';
import { hatchPath, outlinePath } from './paths';
import { DOTTED, inPlate, strokeRegion, tag, setPen, write, type Ctx, type Sheet } from './pen';

/** Labels hide on parts smaller than this, and where they would stick out. */
export const LABEL_LEAST_PX: Px = 24;
const TAG_LEAST_PX: Px = 56;
/** Mean width of a letter of a name. */
const LETTER_PX: Px = 7;
const UNASSIGNED: readonly Hatching[] = [45, 135].map((angle_deg) => ({
  angle_deg,
  spacing_px: 7,
  dash_px: [],
}));

const drawHatching = (ctx: Ctx, sheet: Sheet, piece: Piece, hatching: Hatching, colour: string): void => {
  setPen(ctx, { colour, width_px: THIN_PX, dash_px: hatching.dash_px }, sheet.camera.pxPerMm);
  ctx.stroke(hatchPath(piece.region, hatching, sheet.camera.pxPerMm));
};

const drawPiece = (ctx: Ctx, sheet: Sheet, theme: Theme, piece: Piece): void => {
  const style = piece.laser < 0 ? null : laserStyle(piece.laser, theme);
  ctx.fillStyle = style?.tint ?? sheet.ground.sheet;
  ctx.fill(outlinePath(piece.region), 'evenodd');
  if (style) return drawHatching(ctx, sheet, piece, style.hatching, style.stroke);
  for (const hatching of UNASSIGNED) drawHatching(ctx, sheet, piece, hatching, sheet.ground.warning);
};

const traceSeam = (ctx: Ctx, seam: Seam): void => {
  ctx.beginPath();
  seam.path.forEach((value, i) => {
    if (i % 2 === 1) return;
    if (i === 0) ctx.moveTo(value, seam.path[1]);
    else ctx.lineTo(value, seam.path[i + 1]);
  });
};

/** A cut: thick ink over a halo of the ground; `lit` widens the halo in ink. Call under inPlate. */
export const drawSeam = (ctx: Ctx, sheet: Sheet, seam: Seam, lit = false): void => {
  const zoom = sheet.camera.pxPerMm;
  traceSeam(ctx, seam);
  ctx.lineCap = 'butt';
  setPen(ctx, { colour: lit ? sheet.ground.ink : sheet.ground.sheet, width_px: lit ? 8 : 5 }, zoom);
  ctx.stroke();
  if (lit) {
    setPen(ctx, { colour: sheet.ground.sheet, width_px: 5 }, zoom);
    ctx.stroke();
  }
  setPen(ctx, { colour: sheet.ground.ink, width_px: THICK_PX }, zoom);
  ctx.stroke();
};

interface Frame {
  readonly middle: ScreenPoint;
  readonly least_px: Px;
  readonly width_px: Px;
}
const frameOf = (item: PartItem, sheet: Sheet): Frame => {
  const box = footprintBox(item.view);
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const [width_px, height_px] = [box.maxX - box.minX, box.maxY - box.minY].map(
    (mm) => mm * sheet.camera.pxPerMm,
  );
  return {
    middle: toScreen(middle, sheet.camera, sheet.size),
    least_px: Math.min(width_px, height_px),
    width_px,
  };
};

const tagsOf = (item: PartItem): string =>
  [
    item.part.laser ? t('pinned {laser}', { laser: item.part.laser }) : '',
    item.part.seams === 'none' ? t('no seam') : '',
  ]
    .filter(Boolean)
    .join(', ');

/** Where a part's name and its tags stand; null where they are hidden. */
interface LabelPlace {
  readonly name: ScreenPoint;
  readonly tags: { readonly at: ScreenPoint; readonly words: string } | null;
}
const labelPlace = (sheet: Sheet, item: PartItem, always: boolean): LabelPlace | null => {
  const { middle, least_px, width_px } = frameOf(item, sheet);
  const fits = least_px >= LABEL_LEAST_PX && width_px >= item.part.id.length * LETTER_PX;
  if (!fits && !always) return null;
  const words = tagsOf(item);
  const roomy = words !== '' && (least_px >= TAG_LEAST_PX || always);
  const top = roomy ? middle.top - 9 : middle.top;
  return {
    name: { left: middle.left, top },
    tags: roomy ? { at: { left: middle.left, top: top + 18 }, words } : null,
  };
};

const NAME_HALF_HEIGHT_PX: Px = 8;

/** What a part's name and tags cover, for what must keep clear of them. */
export const labelBoxes = (sheet: Sheet, item: PartItem): readonly ScreenBox[] => {
  const place = labelPlace(sheet, item, false);
  if (!place) return [];
  const half = (text: string): Px => (text.length * LETTER_PX) / 2 + 4;
  const name = boxAround(place.name, half(item.part.id), NAME_HALF_HEIGHT_PX);
  if (!place.tags) return [name];
  return [name, boxAround(place.tags.at, half(place.tags.words), NAME_HALF_HEIGHT_PX)];
};

/** The part's name, and its tags where there is room. `always`: also on a small part (hovered). */
export const drawLabel = (ctx: Ctx, sheet: Sheet, item: PartItem, always = false): void => {
  const place = labelPlace(sheet, item, always);
  if (!place) return;
  const { ink, note, sheet: halo } = sheet.ground;
  const below = item.section.length === 0 && !always;
  write(ctx, item.part.id, place.name, below ? note : ink, { weight: below ? 400 : 600, halo });
  if (place.tags) tag(ctx, place.tags.words, place.tags.at, sheet, ink);
};

const drawBody = (ctx: Ctx, sheet: Sheet, theme: Theme, item: PartItem): void => {
  for (const piece of item.pieces) drawPiece(ctx, sheet, theme, piece);
  const hidden = item.section.length === 0;
  const below = { colour: sheet.ground.line, width_px: THIN_PX, dash_px: hidden ? DOTTED : [] };
  strokeRegion(ctx, sheet, item.view.footprint, below);
  if (!hidden) strokeRegion(ctx, sheet, item.section, { colour: sheet.ground.ink, width_px: THIN_PX });
};

/** Sections, cuts and names of some parts. Parts that end below the height show as dotted footprints. */
export const drawItems = (ctx: Ctx, sheet: Sheet, theme: Theme, items: readonly PartItem[]): void => {
  inPlate(ctx, sheet, () => {
    for (const item of items) drawBody(ctx, sheet, theme, item);
    for (const item of items) for (const seam of item.seams) drawSeam(ctx, sheet, seam);
  });
  for (const item of items) drawLabel(ctx, sheet, item);
};
