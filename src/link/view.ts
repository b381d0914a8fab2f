/**
 * What of the view a link carries: the height looked at and where the plan is held. Millimetres, CSS pixels a mm. What a
 * link says about it is only taken where it can be shown; a link is not refused for its view.
 */
export interface LinkCamera {
  readonly centreX_mm: number;
  readonly centreY_mm: number;
  readonly pxPerMm: number;
}
export interface LinkView {
  readonly height_mm?: number;
  /** null or absent: the platform as large as it fits. */
  readonly camera?: LinkCamera | null;
}

const FURTHEST_mm = 100_000;
const MOST_PX_PER_MM = 400;
const LEAST_PX_PER_MM = 0.02;

const isWithin = (value: unknown, min: number, max: number): value is number =>
  typeof value === 'number' && value >= min && value <= max;

function readCamera(value: unknown): LinkCamera | null {
  if (typeof value !== 'object' || value === null) return null;
  const { centreX_mm, centreY_mm, pxPerMm } = value as Record<string, unknown>;
  const sound =
    isWithin(centreX_mm, -FURTHEST_mm, FURTHEST_mm) &&
    isWithin(centreY_mm, -FURTHEST_mm, FURTHEST_mm) &&
    isWithin(pxPerMm, LEAST_PX_PER_MM, MOST_PX_PER_MM);
  return sound ? { centreX_mm, centreY_mm, pxPerMm } : null;
}

/** The view that a link's text holds, as far as it can be shown. */
export function readView(value: unknown): LinkView {
  if (typeof value !== 'object' || value === null) return {};
  const { height_mm, camera } = value as Record<string, unknown>;
  const held = readCamera(camera);
  return {
    ...(isWithin(height_mm, 0, FURTHEST_mm) ? { height_mm } : {}),
    ...(held ? { camera: held } : {}),
  };
}
