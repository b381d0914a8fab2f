/**
 * Pieces of the page that the plate does not wait for: their code is asked for once the plate has been painted.
 */
import type { ComponentType } from 'react';
import { lazy } from 'react';
import { restOfTexts } from '../language/load';

/** Resolves after the first frame that shows what is there now; at once where frames are not drawn (a hidden tab). */
const nextPaint = (): Promise<void> =>
  new Promise((resolve) => {
    if (typeof document === 'undefined' || document.visibilityState === 'hidden') resolve();
    else requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve)));
  });
let painted = nextPaint();

/** The first paint is the one after `drawn`: a plate that waits for its texts is not overtaken by what comes after it. */
export const paintAfter = (drawn: Promise<unknown>): void => {
  painted = drawn.then(nextPaint, nextPaint);
};

/** Runs after the first paint. */
export const afterPaint = <T>(load: () => Promise<T>): Promise<T> => painted.then(load);

/** A component whose code is loaded when it is first drawn, with the texts that it shows. */
export const onceDrawn = <Props extends object>(load: () => Promise<ComponentType<Props>>) =>
  lazy(async () => {
    const [found] = await Promise.all([load(), restOfTexts()]);
    return { default: found };
  });

/** The same, after the first paint. */
export const later = <Props extends object>(load: () => Promise<ComponentType<Props>>) =>
  onceDrawn(() => afterPaint(load));
