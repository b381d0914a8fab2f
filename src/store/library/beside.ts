/**
 * Layouts and library files that are too large to be read or written at once: a worker does it. null where they are not so
 * large, or where there is no worker: the page then does it itself.
 */
import { checksumSteps } from '../../layout/checksum';
import type { Result } from '../../layout/result';
import type { Layout, Shape } from '../../layout/types';
import { askOnce } from '../../worker/askOnce';
import { LARGE_CHARACTERS, readLayoutBeside, writeLayoutBeside } from '../../worker/layoutFiles';
import { packSteps } from '../../worker/packShape';
import { pauser } from '../../worker/pauser';
import { charactersOf, isLarge } from '../apartForm';
import type { StoredEntry } from './types';
import { Worker } from '../../worker/boundWorker';

/** Faults: those of readLayout. */
export async function readTextBeside(text: string): Promise<Result<Layout> | null> {
  return text.length > LARGE_CHARACTERS ? readLayoutBeside(new File([text], 'layout.json')) : null;
}

/** The layout's file as text. */
export async function textBeside(layout: Layout): Promise<string | null> {
  const bytes = isLarge(layout) ? await writeLayoutBeside(layout) : null;
  return bytes && new TextDecoder().decode(bytes);
}

/** Milliseconds of work between two pauses. */
const SLICE_MS = 8;

/** Work in steps, done here in slices. */
async function sliced<T>(steps: Generator<undefined, T>): Promise<T> {
  const pause = pauser();
  for (let until = performance.now() + SLICE_MS; ;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() < until) continue;
    await pause();
    until = performance.now() + SLICE_MS;
  }
}

/** The checksum of a layout of any size, worked out here in slices. */
export const slicedChecksum = (layout: Layout): Promise<string> => sliced(checksumSteps(layout));

/** The checksum of a large layout, worked out here in slices; null where the layout is not so large. */
export const checksumInSlices = async (layout: Layout): Promise<string | null> =>
  isLarge(layout) ? slicedChecksum(layout) : null;

const fileWorker = (): Worker => new Worker(new URL('./file.worker.ts', import.meta.url), { type: 'module' });
const shapeWorker = (): Worker =>
  new Worker(new URL('./shape.worker.ts', import.meta.url), { type: 'module' });

type Entries = Result<readonly StoredEntry[]>;

/** The entries of a library file. Faults: file-unreadable, those of readLibraryText. */
export const readFileBeside = async (file: Pick<File, 'size'>): Promise<Entries | null> =>
  file instanceof File && file.size > LARGE_CHARACTERS ? askOnce(fileWorker, file) : null;

/** A shape as its entry has it. */
export interface Written {
  readonly text: string;
  readonly checksum: string;
}

/** Text and checksum of a shape. */
export async function shapeBeside(shape: Shape): Promise<Written | null> {
  if (charactersOf(shape) < LARGE_CHARACTERS) return null;
  const packed = await sliced(packSteps(shape));
  return askOnce(shapeWorker, packed, [packed.buffer]);
}
