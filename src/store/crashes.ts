/**
 * Whether something has failed since the page was opened. From then on a plate is checked before it is written over the
 * one that is saved: what a failure leaves behind in the store is not trusted. No units.
 */
import type { Workbench } from './types';

const failed = new WeakSet<Workbench>();

/** Something has failed on this workbench: a screen, a handler, a promise. */
export const noteCrash = (bench: Workbench): void => void failed.add(bench);

/** True once something has failed. */
export const hasCrashed = (bench: Workbench): boolean => failed.has(bench);
