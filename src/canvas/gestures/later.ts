/**
 * The tools that the first paint does not wait for, in one piece: drawing, choosing with a box, dragging copies, reshaping zones, and the handle that turns.
 */
import '../TurnHandle';
export { boxGesture } from './box';
export { copyGesture } from './copying';
export * from './corners';
export * from './drawing';
export { followMeasure, measureGesture } from './measuring';
export { createTouch } from './touch';
export { createMagnet } from './magnet';
export { moveZoneGesture } from './zones';
