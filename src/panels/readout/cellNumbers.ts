/**
 * How the numbers of one laser are written: bare in the table, with their unit in explanations, the same digits in both.
 * Seconds, square millimetres.
 */
import { formatNumber, NARROW_SPACE } from '../../units/format';
import type { Mm2, Seconds } from '../../units/types';

export const bareSeconds = (value: Seconds): string => formatNumber(value, 4, 2);
export const bareArea = (value: Mm2): string => formatNumber(value, 5, 1);
export const cellSeconds = (value: Seconds): string => `${bareSeconds(value)}${NARROW_SPACE}s`;
export const cellArea = (value: Mm2): string => `${bareArea(value)}${NARROW_SPACE}mm²`;
/** Plumes over a beam. */
export const barePlumes = (value: number): string => formatNumber(value, 3, 2);
