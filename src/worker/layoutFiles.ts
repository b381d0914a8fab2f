/**
 * The page's side of large layout files: a worker reads and writes them, the page puts the shapes together in slices. Where
 * no worker can be made or it fails, null comes back and the page does the work itself.
 */
import { fail, ok, type Result } from '../layout/result';
import type { Layout } from '../layout/types';
import { askOnce } from './askOnce';
import {
  buffersOf,
  putTogetherSlowly,
  takeApart,
  type LayoutAnswer,
  type LayoutQuestion,
} from './layoutApart';
import { pauser } from './pauser';
import { Worker } from './boundWorker';

/** Milliseconds of putting together between two pauses. */
const SLICE_MS = 8;
/** Files and layouts of fewer characters are read and written at once, here. */
export const LARGE_CHARACTERS = 2_000_000;

const createWorker = (): Worker =>
  new Worker(new URL('./layoutFile.worker.ts', import.meta.url), { type: 'module' });

const asked = (question: LayoutQuestion, handOver: ArrayBuffer[]): Promise<LayoutAnswer | null> =>
  askOnce(createWorker, question, handOver);

/** Reads a layout file. Faults: those of readLayout, file-unreadable. */
export async function readLayoutBeside(file: File): Promise<Result<Layout> | null> {
  const answer = await asked({ kind: 'read', file }, []);
  if (answer?.kind === 'fault') return fail(answer.fault.code, { name: file.name, ...answer.fault.params });
  if (answer?.kind !== 'read') return null;
  let began = performance.now();
  const pause = pauser();
  const due = (): boolean => performance.now() - began > SLICE_MS;
  const rest = (): Promise<void> => pause().then(() => void (began = performance.now()));
  return ok(await putTogetherSlowly(answer.apart, due, rest));
}

/** The layout's file as UTF-8. */
export async function writeLayoutBeside(layout: Layout): Promise<Uint8Array | null> {
  const apart = takeApart(layout, false);
  const answer = await asked({ kind: 'write', apart }, buffersOf(apart));
  return answer?.kind === 'written' ? answer.bytes : null;
}
