/** A measure in words: length, its parts along x and y, its direction. Millimetres; degrees counter-clockwise from +x. */
import { t } from '../language/index';
import type { Measured } from '../store/types';
import { formatDegrees, formatMm } from '../units/format';
import { directionOf } from './snapping';

/** "12.50 mm, Δx 10.00 mm, Δy 7.500 mm, 36.9°"; between two parts it begins with their names. */
export function measuredWords({ from, to, parts }: Measured): string {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const values = {
    length: formatMm(Math.hypot(dx, dy)),
    dx: formatMm(dx),
    dy: formatMm(dy),
    angle: formatDegrees(directionOf(from, to)),
  };
  return parts === null
    ? t('{length}, Δx {dx}, Δy {dy}, {angle}', values)
    : t('{a} to {b}: {length}, Δx {dx}, Δy {dy}', { ...values, a: parts[0], b: parts[1] });
}
