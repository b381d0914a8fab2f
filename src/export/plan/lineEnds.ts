/**
 * Where a zone line enters and leaves the platform, and where the platform lies along a direction. Millimetres,
 * platform coordinates, platform centred on the origin.
 */
import type { Platform } from '../../layout/types';
import type { Degrees, Mm, PlatePoint } from '../../units/types';
import type { ZoneLine } from '../../zoning/types';

/** Range of t for which start + t·step stays within ±half; empty (Infinity, −Infinity) where it never does. */
const within = (start: number, step: number, half: Mm): readonly [number, number] => {
  if (Math.abs(step) < 1e-12) return Math.abs(start) <= half ? [-Infinity, Infinity] : [Infinity, -Infinity];
  const [a, b] = [(-half - start) / step, (half - start) / step];
  return a < b ? [a, b] : [b, a];
};

/** The two points where nx·x + ny·y = c meets the platform's edge, front (or left) first; null where it misses. */
export const lineEnds = (
  line: ZoneLine,
  { width_mm, depth_mm }: Platform,
): readonly [PlatePoint, PlatePoint] | null => {
  const foot = { x: line.nx * line.c, y: line.ny * line.c };
  const along = { x: Math.abs(line.ny), y: line.ny > 0 ? -line.nx : Math.abs(line.nx) };
  const [x0, x1] = within(foot.x, along.x, width_mm / 2);
  const [y0, y1] = within(foot.y, along.y, depth_mm / 2);
  const [from, to] = [Math.max(x0, y0), Math.min(x1, y1)];
  if (!(to > from)) return null;
  const at = (t: number): PlatePoint => ({ x: foot.x + t * along.x, y: foot.y + t * along.y });
  return [at(from), at(to)];
};

/** Where the ray from the centre in a direction leaves the platform. */
export const edgePoint = (direction: Degrees, { width_mm, depth_mm }: Platform): PlatePoint => {
  const angle = (direction * Math.PI) / 180;
  const [x, y] = [Math.cos(angle), Math.sin(angle)];
  const t = Math.min(width_mm / 2 / Math.abs(x), depth_mm / 2 / Math.abs(y));
  return { x: t * x, y: t * y };
};
