/**
 * Moving the lines between zones. A line that does not fit the strategy, or has no room, leaves the layout as it is.
 * Platform millimetres; lines ascend along the strips' normal.
 */
import type { LayoutAt, StripsZoning } from '../../layout/types';
import type { Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import { stripNormal } from '../../zoning/lines';
import type { ZoneLine } from '../../zoning/types';
import { clamp, halfExtent, withZoning } from './edit';

/** No zone is narrower than this when a line is dragged. */
export const NARROWEST_ZONE_MM = 1;

/** `c` kept between two limits with room for a narrowest zone on either side; null where there is no room. */
function between(c: Mm, low: Mm, high: Mm): Mm | null {
  const [least, most] = [low + NARROWEST_ZONE_MM, high - NARROWEST_ZONE_MM];
  return Number.isFinite(c) && least <= most ? roundMm(clamp(c, least, most)) : null;
}

function setStripLine(layout: LayoutAt, zoning: StripsZoning, index: number, c: Mm): LayoutAt {
  if (!(index in zoning.lines_mm)) return layout;
  const half = halfExtent(layout.machine, ...stripNormal(zoning.run_deg));
  const low = Math.max(zoning.lines_mm[index - 1] ?? -half, -half);
  const high = Math.min(zoning.lines_mm[index + 1] ?? half, half);
  const place = between(c, low, high);
  if (place === null || place === zoning.lines_mm[index]) return layout;
  return withZoning(layout, { ...zoning, lines_mm: zoning.lines_mm.with(index, place) });
}

/** Puts a zone line at nx·x + ny·y = c, kept on the platform and 1 mm from its neighbours. */
export function setZoneLine(layout: LayoutAt, key: ZoneLine['key'], c: Mm): LayoutAt {
  const { zoning, machine } = layout;
  if (key.kind === 'strip')
    return zoning.strategy === 'strips' ? setStripLine(layout, zoning, key.index, c) : layout;
  if (zoning.strategy !== 'quadrants') return layout;
  const axis = key.kind === 'quadrantX' ? 0 : 1;
  const half = halfExtent(machine, 1 - axis, axis);
  const place = between(c, -half, half);
  if (place === null || place === zoning.at_mm[axis]) return layout;
  const at_mm = axis === 0 ? ([place, zoning.at_mm[1]] as const) : ([zoning.at_mm[0], place] as const);
  return withZoning(layout, { ...zoning, at_mm });
}
