/**
 * Where a tag stands clear of what must stay legible: its own place, else the nearest one around it. Screen px.
 */
import type { Px, ScreenPoint } from '../../units/types';

export interface ScreenBox {
  readonly left: Px;
  readonly top: Px;
  readonly right: Px;
  readonly bottom: Px;
}

export const boxAround = ({ left, top }: ScreenPoint, halfWidth: Px, halfHeight: Px): ScreenBox => ({
  left: left - halfWidth,
  right: left + halfWidth,
  top: top - halfHeight,
  bottom: top + halfHeight,
});

export const boxesMeet = (a: ScreenBox, b: ScreenBox): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Steps of the search, and how many to each side. */
const STEP_PX: Px = 12;
const STEPS = 10;

/** Steps around a place, the nearest first; of equally near ones those straight up or down first. */
const AROUND: readonly (readonly [number, number])[] = Array.from(
  { length: (2 * STEPS + 1) ** 2 },
  (_, k) => {
    const x = (k % (2 * STEPS + 1)) - STEPS;
    const y = Math.floor(k / (2 * STEPS + 1)) - STEPS;
    return [x * STEP_PX, y * STEP_PX] as const;
  },
).sort((a, b) => Math.hypot(...a) - Math.hypot(...b) || Math.abs(a[0]) - Math.abs(b[0]));

/**
 * The nearest place to `wanted` where a box of this size meets nothing that is taken; `wanted` itself where there is
 * none within 120 px.
 * @param allowed places to choose from
 */
export const clearPlace = (
  wanted: ScreenPoint,
  half: { readonly width: Px; readonly height: Px },
  taken: readonly ScreenBox[],
  allowed: (place: ScreenPoint) => boolean,
): ScreenPoint => {
  const clear = (place: ScreenPoint): boolean => {
    const box = boxAround(place, half.width, half.height);
    return !taken.some((other) => boxesMeet(box, other));
  };
  if (clear(wanted)) return wanted;
  for (const [x, y] of AROUND) {
    const place = { left: wanted.left + x, top: wanted.top + y };
    if (allowed(place) && clear(place)) return place;
  }
  return wanted;
};
