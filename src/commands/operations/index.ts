/** All operations on a document: pure, (layout, …) → layout, or a result where what was typed can be refused. */
export { addedParts, nextPartIds } from './edit';
export * from './copies';
export * from './drawnZones';
export * from './height';
export * from './machine';
export * from './parts';
export { freePlace, partBox, takenBoxes } from './place';
export * from './process';
export * from './schedule';
export * from './shapes';
export * from './steps';
export * from './streams';
export { FEWEST_STRIPS, MOST_STRIPS, setStrategy, usableLasers } from './strategy';
export { groupPivot, turnTogether } from './turn';
export * from './zoneLines';
export * from './zones';
