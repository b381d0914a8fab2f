/**
 * Meshes in: reading a file, checking a mesh, setting it down, cutting it into the slabs of a shape. Runs in Node, in a
 * worker and in the page; the screen loads it when it is needed. Millimetres; +z up.
 */
export { checkMesh, fileFindings, sizeOf } from './check';
export { orient } from './orient';
export { joinCracks } from './prepare';
export { readMesh } from './read';
export { sectionMesh, sectionSteps } from './section/sections';
export type * from './types';
