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
  `z ${formatField(from_mm)} to ${exactText(to_mm)}`;

/** "40.0 mm at once, at −12.0 mm" or "2.0 mm within 1.0 mm, at −12.0 mm". */
export function riseText({ rise_mm, from_mm, to_mm, back }: Rise): string {
  const within =
    from_mm === to_mm ? t('at once') : t('within {value}', { value: metText(Math.abs(to_mm - from_mm)) });
  return `${metText(rise_mm)} ${within}, at ${metText(from_mm)}${back ? t(' on the way back') : ''}`;
}

/** Up to three names, then how many more. */
export function partsText(parts: readonly PartId[]): string {
  const more = parts.length - 3;
  return parts.slice(0, 3).join(', ') + (more > 0 ? t(' and {more} more', { more }) : '');
}

export function sidesText(count: number, length_mm: number, { side_deg, side_mm }: BladeSettings): string {
  const rule = t('of {side} or more within {side2} of the blade’s line', {
    side: exactText(side_mm),
    side2: degreesText(side_deg),
  });
  if (count === 0) return t('no side {rule}', { rule });
  return `${count} ${count === 1 ? 'side' : 'sides'} ${rule}, ${metText(length_mm)} in all`;
}

export const adviceText = (part: PartId, { turn_deg, now_mm, then_mm }: TurnAdvice): string =>
  t('Turned by {turn}, {part} by itself rises by {then} at worst instead of {now}.', {
    turn: degreesText(turn_deg),
    part,
    then: metText(then_mm),
    now: metText(now_mm),
  });
