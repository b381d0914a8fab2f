/**
 * From the plate to the screen and back. Plate: mm, origin at the platform's centre, +x right, +y back. Screen: CSS px,
 * origin at the canvas' top left, +y down; so y turns over. A camera of null in the store means: fit the platform.
 */
import { boxUnion } from '../geometry/region';
import type { Box } from '../geometry/types';
import type { Camera } from '../store/types';
import type { Mm, PlatePoint, Px, ScreenPoint } from '../units/types';

export interface Size {
  readonly width: Px;
  readonly height: Px;
}
/** Room kept free around the platform: rulers, arrows and grips stand in it. */
export interface Insets {
  readonly left: Px;
  readonly right: Px;
  readonly top: Px;
  readonly bottom: Px;
}

export const RULER_LEFT_PX: Px = 40;
export const RULER_BOTTOM_PX: Px = 24;
export const FIT_INSETS: Insets = {
  left: RULER_LEFT_PX + 44,
  right: 44,
  top: 44,
  bottom: RULER_BOTTOM_PX + 44,
};

/** At most 0.4 px a µm, at least a plate of a metre in 20 px. */
const MOST_PX_PER_MM = 400;
const LEAST_PX_PER_MM = 0.02;

const clampScale = (scale: number): number => Math.min(MOST_PX_PER_MM, Math.max(LEAST_PX_PER_MM, scale));

export const toScreen = (p: PlatePoint, camera: Camera, size: Size): ScreenPoint => ({
  left: size.width / 2 + (p.x - camera.centreX_mm) * camera.pxPerMm,
  top: size.height / 2 - (p.y - camera.centreY_mm) * camera.pxPerMm,
});

export const toPlate = (p: ScreenPoint, camera: Camera, size: Size): PlatePoint => ({
  x: camera.centreX_mm + (p.left - size.width / 2) / camera.pxPerMm,
  y: camera.centreY_mm - (p.top - size.height / 2) / camera.pxPerMm,
});

/** The camera at a given zoom with a box in the middle of the room between the insets. */
const centredOn = (box: Box, pxPerMm: number, insets: Insets): Camera => ({
  centreX_mm: (box.minX + box.maxX) / 2 + (insets.right - insets.left) / 2 / pxPerMm,
  centreY_mm: (box.minY + box.maxY) / 2 + (insets.top - insets.bottom) / 2 / pxPerMm,
  pxPerMm,
});

/** The camera that shows a box whole, between the insets. */
export const fitBox = (box: Box, size: Size, insets: Insets = FIT_INSETS): Camera => {
  const room = { x: size.width - insets.left - insets.right, y: size.height - insets.top - insets.bottom };
  const scale = Math.min(room.x / (box.maxX - box.minX), room.y / (box.maxY - box.minY));
  return centredOn(box, clampScale(scale), insets);
};

export const platformBox = (width_mm: Mm, depth_mm: Mm): Box => ({
  minX: -width_mm / 2,
  minY: -depth_mm / 2,
  maxX: width_mm / 2,
  maxY: depth_mm / 2,
});

/** The camera that shows a platform of width × depth (centred on the origin) whole, between the insets. */
export const fitCamera = (width_mm: Mm, depth_mm: Mm, size: Size, insets: Insets = FIT_INSETS): Camera =>
  fitBox(platformBox(width_mm, depth_mm), size, insets);

/** Room around what is brought into view. */
const SIGHT_PX: Px = 12;

const inSight = (box: Box, camera: Camera, size: Size): boolean => {
  const rear = toScreen({ x: box.minX, y: box.maxY }, camera, size);
  const front = toScreen({ x: box.maxX, y: box.minY }, camera, size);
  return (
    rear.left >= RULER_LEFT_PX + SIGHT_PX &&
    rear.top >= SIGHT_PX &&
    front.left <= size.width - SIGHT_PX &&
    front.top <= size.height - RULER_BOTTOM_PX - SIGHT_PX
  );
};

/** Zooming out by more than this to show a box beside the platform, one would see neither. */
const MOST_ZOOM_OUT = 4;

/**
 * The camera that has a box in sight: the present one where it has; else one that shows it with the platform, where that
 * is not too far out; else the box alone, no nearer than now.
 */
export const bringInto = (box: Box, platform: Box, camera: Camera, size: Size): Camera => {
  if (inSight(box, camera, size)) return camera;
  const both = fitBox(boxUnion(platform, box), size);
  if (both.pxPerMm * MOST_ZOOM_OUT >= camera.pxPerMm) return both;
  return centredOn(box, Math.min(camera.pxPerMm, fitBox(box, size).pxPerMm), FIT_INSETS);
};

/** Zooms by `factor`; the plate point under `at` stays where it is. */
export const zoomAt = (camera: Camera, at: ScreenPoint, factor: number, size: Size): Camera => {
  const fixed = toPlate(at, camera, size);
  const pxPerMm = clampScale(camera.pxPerMm * factor);
  return {
    centreX_mm: fixed.x - (at.left - size.width / 2) / pxPerMm,
    centreY_mm: fixed.y + (at.top - size.height / 2) / pxPerMm,
    pxPerMm,
  };
};

/** Shifts the picture by screen px: what is grabbed follows the pointer. */
export const panBy = (camera: Camera, dx: Px, dy: Px): Camera => ({
  ...camera,
  centreX_mm: camera.centreX_mm - dx / camera.pxPerMm,
  centreY_mm: camera.centreY_mm + dy / camera.pxPerMm,
});

/** The canvas transform (a, b, c, d, e, f) under which plate millimetres are drawn. */
export const plateTransform = (
  camera: Camera,
  size: Size,
): [number, number, number, number, number, number] => {
  const origin = toScreen({ x: 0, y: 0 }, camera, size);
  return [camera.pxPerMm, 0, 0, -camera.pxPerMm, origin.left, origin.top];
};

/** The nearest place with so much room to the canvas' edges and rulers. */
export const keepInside = (p: ScreenPoint, size: Size, roomX: Px, roomY = roomX): ScreenPoint => ({
  left: Math.min(size.width - roomX, Math.max(RULER_LEFT_PX + roomX, p.left)),
  top: Math.min(size.height - RULER_BOTTOM_PX - roomY, Math.max(roomY, p.top)),
});
