/**
 * Paints sections where they changed, and leaves the rest of the canvas as it stands: a drag changes a part and the few
 * that are cut anew for it, not the hundred beside them. Screen px; places are widened to whole device pixels, so that
 * nothing is left half painted along their edges.
 */
import type { Px } from '../../units/types';
import { toScreen } from '../camera';
import type { Theme } from '../../export/plan/palette';
import { footprintBox, type PartItem } from '../plan/items';
import { boxesMeet, type ScreenBox } from '../../export/plan/clearPlace';
import { besideRulers } from './rulers';
import { drawItems, labelBoxes } from './sections';
import type { Ctx, Sheet } from './pen';

/** Half the widest line drawn on an outline, and the rounding of its corners. */
const LINE_ROOM_PX: Px = 8;
/** With more places than this the whole canvas is painted at no greater cost. */
const MOST_PLACES = 30;

/** What a canvas holds: painted through this sheet, in this theme, at this size in device pixels. */
interface Painted {
  readonly sheet: Sheet;
  readonly theme: Theme;
  readonly width: number;
  readonly height: number;
  readonly items: readonly PartItem[];
}

const around = (boxes: readonly ScreenBox[], room: Px): ScreenBox => ({
  left: Math.min(...boxes.map((box) => box.left)) - room,
  top: Math.min(...boxes.map((box) => box.top)) - room,
  right: Math.max(...boxes.map((box) => box.right)) + room,
  bottom: Math.max(...boxes.map((box) => box.bottom)) + room,
});

/** All that drawing an item may touch. */
const itemBox = (sheet: Sheet, item: PartItem): ScreenBox => {
  const { minX, minY, maxX, maxY } = footprintBox(item.view);
  const from = toScreen({ x: minX, y: maxY }, sheet.camera, sheet.size);
  const to = toScreen({ x: maxX, y: minY }, sheet.camera, sheet.size);
  const outline = { left: from.left, top: from.top, right: to.left, bottom: to.top };
  return around([outline, ...labelBoxes(sheet, item)], LINE_ROOM_PX);
};

/** Where two lists of items look different; null: everywhere, or in too many places to count. */
const changedPlaces = (
  sheet: Sheet,
  before: readonly PartItem[],
  next: readonly PartItem[],
): readonly ScreenBox[] | null => {
  const was = new Set(before);
  const is = new Set(next);
  const changed = [...before.filter((item) => !is.has(item)), ...next.filter((item) => !was.has(item))];
  return changed.length > MOST_PLACES ? null : changed.map((item) => itemBox(sheet, item));
};

const sameCanvas = (a: Painted | null, b: Painted): a is Painted =>
  a !== null && a.sheet === b.sheet && a.theme === b.theme && a.width === b.width && a.height === b.height;

/** A place widened to whole device pixels. */
const toDevice = ({ left, top, right, bottom }: ScreenBox, ratio: number): ScreenBox => ({
  left: Math.floor(left * ratio) / ratio,
  top: Math.floor(top * ratio) / ratio,
  right: Math.ceil(right * ratio) / ratio,
  bottom: Math.ceil(bottom * ratio) / ratio,
});

const paintAll = (ctx: Ctx, { sheet, theme, items }: Painted): void => {
  ctx.clearRect(0, 0, sheet.size.width, sheet.size.height);
  besideRulers(ctx, sheet, () => drawItems(ctx, sheet, theme, items));
};

/** One place at a time: a browser rounds edges differently inside a clip that is no rectangle. */
const paintPlace = (ctx: Ctx, { sheet, theme, items }: Painted, place: ScreenBox): void => {
  const size = [place.right - place.left, place.bottom - place.top] as const;
  const met = items.filter((item) => boxesMeet(place, itemBox(sheet, item)));
  ctx.save();
  ctx.clearRect(place.left, place.top, ...size);
  ctx.beginPath();
  ctx.rect(place.left, place.top, ...size);
  ctx.clip();
  besideRulers(ctx, sheet, () => drawItems(ctx, sheet, theme, met));
  ctx.restore();
};

/** Paints one canvas, which nobody else clears or paints on; remembers what it holds. */
export const itemsPainter = () => {
  let painted: Painted | null = null;
  return (ctx: Ctx, sheet: Sheet, theme: Theme, items: readonly PartItem[]): void => {
    const { width, height } = ctx.canvas;
    const next: Painted = { sheet, theme, width, height, items };
    const places = sameCanvas(painted, next) ? changedPlaces(sheet, painted.items, items) : null;
    painted = next;
    if (!places) return paintAll(ctx, next);
    const ratio = width / sheet.size.width;
    for (const place of places) paintPlace(ctx, next, toDevice(place, ratio));
  };
};
