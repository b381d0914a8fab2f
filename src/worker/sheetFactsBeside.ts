/**
 * The page's side of the sheet's facts: a worker gathers them, which ends with the question. Where no worker can be made,
 * they are gathered beside the page, in slices.
 */
import { sheetFactSteps } from '../export/sheet/facts';
import type { Layout } from '../layout/types';
import { t } from '../language/index';
import { NOT_LOADED } from './askOnce';
import { buffersOf, takeApart } from './layoutApart';
import { pauser } from './pauser';
import type { SheetNews } from './sheetFacts.worker';
import { inSlices } from './slices';
import { Worker } from './boundWorker';

const createWorker = (): Worker =>
  new Worker(new URL('./sheetFacts.worker.ts', import.meta.url), { type: 'module' });

async function here(layout: Layout, dropped: () => boolean, heard: (news: SheetNews) => void): Promise<void> {
  const clock = { pause: pauser(), now: () => performance.now() };
  const tell = (share: number): void => heard({ kind: 'progress', share });
  try {
    const facts = await inSlices(clock, sheetFactSteps(layout), dropped, tell);
    if (facts && !dropped()) heard({ kind: 'facts', facts });
  } catch (error) {
    heard({ kind: 'failed', detail: error instanceof Error ? error.message : String(error) });
  }
}

/** Gathers the facts of a layout and calls back with what becomes known; returns the way to stop. */
export function gatherSheetFacts(layout: Layout, heard: (news: SheetNews) => void): () => void {
  let stopped = false;
  const hear = (news: SheetNews): void => {
    if (!stopped) heard(news);
  };
  let worker: Worker | null = null;
  try {
    worker = createWorker();
    worker.onmessage = ({ data }: MessageEvent<SheetNews>) => hear(data);
    worker.onerror = ({ message }) => hear({ kind: 'failed', detail: message || t(NOT_LOADED) });
    const apart = takeApart(layout, false);
    worker.postMessage(apart, buffersOf(apart));
  } catch {
    void here(layout, () => stopped, hear);
  }
  return () => {
    stopped = true;
    worker?.terminate();
  };
}
