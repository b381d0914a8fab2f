/**
 * Outlines and hatchings as paths, made once per region and kept as long as the region lives. Paths are in plate
 * millimetres; whoever strokes them sets the plate transform and divides line widths by the zoom.
 */
import type { Region } from '../../geometry/types';
import { hatchSegments, hatchSpacing } from '../../export/plan/hatching';
import type { Hatching } from '../../export/plan/palette';

const outlines = new WeakMap<Region, Path2D>();
/** One hatching per region: the one of the present laser and zoom step. */
const hatchings = new WeakMap<Region, { readonly key: string; readonly path: Path2D }>();

const traceOutline = (region: Region): Path2D => {
  const path = new Path2D();
  for (const ring of region) {
    for (let i = 0; i < ring.length; i += 2) {
      if (i === 0) path.moveTo(ring[0], ring[1]);
      else path.lineTo(ring[i], ring[i + 1]);
    }
    path.closePath();
  }
  return path;
};

const traceSegments = (segments: Float64Array): Path2D => {
  const path = new Path2D();
  for (let i = 0; i < segments.length; i += 4) {
    path.moveTo(segments[i], segments[i + 1]);
    path.lineTo(segments[i + 2], segments[i + 3]);
  }
  return path;
};

/** All rings of a region as one path; fill it even-odd. */
export const outlinePath = (region: Region): Path2D => {
  const kept = outlines.get(region);
  if (kept) return kept;
  const path = traceOutline(region);
  outlines.set(region, path);
  return path;
};

/** The hatching of a region at a zoom, re-cut only when the zoom passes a step. */
export const hatchPath = (region: Region, hatching: Hatching, pxPerMm: number): Path2D => {
  const spacing = hatchSpacing(hatching.spacing_px, pxPerMm);
  const key = `${hatching.angle_deg} ${spacing}`;
  const kept = hatchings.get(region);
  if (kept?.key === key) return kept.path;
  const path = traceSegments(hatchSegments(region, hatching.angle_deg, spacing));
  hatchings.set(region, { key, path });
  return path;
};
