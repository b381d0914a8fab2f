/**
 * The page's side of files that are handed over. What needs the whole height is made by a worker that lives as long as its
 * question, the rest here in slices, so that neither holds up the page; where no worker can be made, all of it here.
 */
import type { Analysis } from '../build/types';
import { longFileSteps, type LongSource } from '../export/files/long';
import { shortFileSteps } from '../export/files/short';
import { isLong, type FileAsked, type FileMade, type LongFile } from '../export/files/types';
import { isBlocked, stateWords } from '../export/forUse';
import { fail, ok, type Result } from '../layout/result';
import { NOT_LOADED } from './askOnce';
import type { FileNews, FileQuestion } from './handOverMessages';
import { buffersOf, takeApartSteps } from './layoutApart';
import { pauser } from './pauser';
import { inSlices } from './slices';
import { Worker } from './boundWorker';

const createWorker = (): Worker =>
  new Worker(new URL('./handOver.worker.ts', import.meta.url), { type: 'module' });

export interface Asking {
  /** Drops the work. */
  readonly signal: AbortSignal;
  /** Hears how far it is, 0 to 1. */
  tell(share: number): void;
}

/** Work here in slices; null where it was dropped. */
function here<Step, T>(
  steps: Generator<Step, T, undefined>,
  { signal }: Asking,
  tell?: (step: Step) => void,
): Promise<T | null> {
  const clock = { pause: pauser(), now: () => performance.now() };
  return inSlices(clock, steps, () => signal.aborted, tell);
}

function answerOf(worker: Worker, question: FileQuestion, asking: Asking): Promise<Result<FileMade> | null> {
  return new Promise((done) => {
    worker.onmessage = ({ data }: MessageEvent<FileNews>) =>
      data.kind === 'progress' ? asking.tell(data.share) : done(data.made);
    worker.onerror = ({ message }) =>
      done(fail('export-failed', { detail: message || { text: NOT_LOADED } }));
    worker.onmessageerror = () =>
      done(fail('export-failed', { detail: { text: 'its answer could not be read' } }));
    asking.signal.addEventListener('abort', () => done(null), { once: true });
    worker.postMessage(question, buffersOf(question.apart));
  });
}

function workerOrNone(): Worker | null {
  try {
    return createWorker();
  } catch {
    return null;
  }
}

async function longFile(
  source: LongSource,
  file: LongFile,
  asking: Asking,
): Promise<Result<FileMade> | null> {
  const { layout, ...rest } = source;
  const worker = workerOrNone();
  if (!worker) return here(longFileSteps(source, file), asking, asking.tell);
  try {
    const apart = await here(takeApartSteps(layout), asking);
    if (apart === null || asking.signal.aborted) return null;
    return await answerOf(worker, { apart, source: rest, file }, asking);
  } finally {
    worker.terminate();
  }
}

/**
 * The file of a plate that is checked; null where it was dropped. Faults: export-failed, export-mesh-too-large.
 * @param checksum the layout's
 */
export async function makeFile(
  analysis: Analysis,
  checksum: string,
  asked: FileAsked,
  asking: Asking,
): Promise<Result<FileMade> | null> {
  try {
    if (isLong(asked)) {
      const blocked = isBlocked(analysis);
      const source = { layout: analysis.layout, checksum, blocked, state: stateWords(analysis) };
      return await longFile(source, asked, asking);
    }
    const made = await here(shortFileSteps(analysis, checksum, asked), asking, asking.tell);
    return made && ok(made);
  } catch (error) {
    return fail('export-failed', { detail: error instanceof Error ? error.message : String(error) });
  }
}
