/**
 * Hatching as line segments: parallel lines at a laser's angle, cut at the outline of a region (even-odd), so that one
 * path stays crisp at every zoom and prints as vectors. Millimetres, +x right, +y back. Lines stand at whole multiples
 * of the spacing from the origin of the platform, so neighbouring pieces of one laser hatch through.
 *
 * Spacing keeps to steps of 2^(1/4): on screen it stays within 9 % of what the palette asks for, and a zoom re-cuts the
 * hatching only when it passes a step.
 */
import type { Region, Ring } from '../../geometry/types';
import type { Degrees, Mm, Px } from '../../units/types';

const STEPS_PER_OCTAVE = 4;

/** The spacing in mm, from a fixed series, that comes nearest to `wanted_px` on screen. */
export const hatchSpacing = (wanted_px: Px, pxPerMm: number): Mm =>
  2 ** (Math.round(STEPS_PER_OCTAVE * Math.log2(wanted_px / pxPerMm)) / STEPS_PER_OCTAVE);

/** One list of crossings per hatch line, lowest line first. */
interface Crossings {
  readonly first: number;
  readonly lines: number[][];
}

interface Frame {
  /** Along the hatch lines. */
  readonly ux: number;
  readonly uy: number;
  readonly spacing: Mm;
}

/** Distance from the origin in line numbers; a vertex on a line counts as above it (half-open rule). */
const level = (x: number, y: number, f: Frame): number => (y * f.ux - x * f.uy) / f.spacing;

const levelRange = (region: Region, f: Frame): readonly [number, number] => {
  let low = Infinity;
  let high = -Infinity;
  for (const ring of region) {
    for (let i = 0; i < ring.length; i += 2) {
      const at = level(ring[i], ring[i + 1], f);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
  }
  return [Math.ceil(low), Math.floor(high)];
};

const crossRing = (ring: Ring, f: Frame, into: Crossings): void => {
  const n = ring.length;
  let x0 = ring[n - 2];
  let y0 = ring[n - 1];
  let a = level(x0, y0, f);
  for (let i = 0; i < n; i += 2) {
    const x1 = ring[i];
    const y1 = ring[i + 1];
    const b = level(x1, y1, f);
    for (let k = Math.ceil(Math.min(a, b)); k < Math.max(a, b); k++) {
      const t = (k - a) / (b - a);
      const along = (x0 + t * (x1 - x0)) * f.ux + (y0 + t * (y1 - y0)) * f.uy;
      into.lines[k - into.first]?.push(along);
    }
    x0 = x1;
    y0 = y1;
    a = b;
  }
};

const pairUp = (crossings: Crossings, f: Frame): Float64Array => {
  const count = crossings.lines.reduce((sum, line) => sum + (line.length >> 1), 0);
  const segments = new Float64Array(count * 4);
  let at = 0;
  crossings.lines.forEach((line, i) => {
    line.sort((p, q) => p - q);
    const across = (crossings.first + i) * f.spacing;
    for (let k = 0; k + 1 < line.length; k += 2) {
      for (const along of [line[k], line[k + 1]]) {
        segments[at++] = along * f.ux - across * f.uy;
        segments[at++] = along * f.uy + across * f.ux;
      }
    }
  });
  return segments;
};

/**
 * Hatch segments inside a region, flat x0, y0, x1, y1 per segment, in mm. Empty where no line meets the region.
 * Even-odd scan lines; edges are half-open, so a vertex on a line counts once.
 */
export const hatchSegments = (region: Region, angle_deg: Degrees, spacing_mm: Mm): Float64Array => {
  const angle = (angle_deg * Math.PI) / 180;
  const frame: Frame = { ux: Math.cos(angle), uy: Math.sin(angle), spacing: spacing_mm };
  const [first, last] = levelRange(region, frame);
  if (!(last >= first)) return new Float64Array(0);
  const crossings: Crossings = { first, lines: Array.from({ length: last - first + 1 }, () => []) };
  for (const ring of region) crossRing(ring, frame, crossings);
  return pairUp(crossings, frame);
};
