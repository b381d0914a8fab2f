/**
 * Pieces of the page that the plate does not wait for: their code is asked for once the plate has been painted.
 */
import type { ComponentType } from 'react';
import { lazy } from 'react';

/** Resolves after the first frame that shows the page; at once where frames are not drawn (a hidden tab). */
const painted: Promise<void> = new Promise((resolve) => {
  if (typeof document === 'undefined' || document.visibilityState === 'hidden') resolve();
  else requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve)));
});

/** Runs after the first paint. */
export const afterPaint = <T>(load: () => Promise<T>): Promise<T> => painted.then(load);

/** A component whose code is loaded after the first paint. */
export const later = <Props extends object>(load: () => Promise<ComponentType<Props>>) =>
  lazy(() => afterPaint(async () => ({ default: await load() })));
