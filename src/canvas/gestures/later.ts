/**
 * The tools that the first paint does not wait for, in one piece: drawing, reshaping zones, and the handle that turns.
 */
import '../TurnHandle';
export * from './corners';
export * from './drawing';
export { moveZoneGesture } from './zones';
