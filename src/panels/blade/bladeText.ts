/** What the blade meets, in words. Millimetres, degrees; places along the stroke from the platform's centre. */
import { t } from '../../language/index';
import type { BladeSettings } from '../../build/blade';
import type { Heights } from '../../build/bladeBuild';
import type { Rise } from '../../build/bladeProfile';
import type { TurnAdvice } from '../../build/bladeTurn';
import type { PartId } from '../../layout/types';
import { formatField, formatNumber, NARROW_SPACE } from '../../units/format';
import type { Degrees, Mm } from '../../units/types';

/** A length met or a place: a tenth of a millimetre says enough. */
export const metText = (value: Mm): string => `${formatNumber(value, 4, 1)}${NARROW_SPACE}mm`;
/** A setting: as it is. */
const exactText = (value: Mm): string => `${formatField(value)}${NARROW_SPACE}mm`;
export const degreesText = (value: Degrees): string => `${formatField(value)}°`.replace('-', '−');

/** "z 0 to 12.5 mm" */
export const heightsText = ({ from_mm, to_mm }: Heights): string =>
  t('z {from} to {to}', { from: formatField(from_mm), to: exactText(to_mm) });

/** "40.0 mm at once, at −12.0 mm" or "2.0 mm within 1.0 mm, at −12.0 mm". */
export function riseText({ rise_mm, from_mm, to_mm, back }: Rise): string {
  const within =
    from_mm === to_mm ? t('at once') : t('within {value}', { value: metText(Math.abs(to_mm - from_mm)) });
  const values = { rise: metText(rise_mm), within, at: metText(from_mm) };
  return back ? t('{rise} {within}, at {at} on the way back', values) : t('{rise} {within}, at {at}', values);
}

/** Up to three names, then how many more. */
export function partsText(parts: readonly PartId[]): string {
  const more = parts.length - 3;
  const list = parts.slice(0, 3).join(', ');
  return more > 0 ? t('{list} and {more} more', { list, more }) : list;
}

export function sidesText(count: number, length_mm: number, { side_deg, side_mm }: BladeSettings): string {
  const values = {
    count,
    side: exactText(side_mm),
    angle: degreesText(side_deg),
    length: metText(length_mm),
  };
  return count === 0
    ? t('no side of {side} or more within {angle} of the blade’s line', values)
    : t('{count} [side|sides] of {side} or more within {angle} of the blade’s line, {length} in all', values);
}

export const adviceText = (part: PartId, { turn_deg, now_mm, then_mm }: TurnAdvice): string =>
  t('Turned by {turn}, {part} by itself rises by {turned} at worst instead of {now}.', {
    turn: degreesText(turn_deg),
    part,
    turned: metText(then_mm),
    now: metText(now_mm),
  });
