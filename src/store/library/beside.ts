/**
 * Layouts and library files that are too large to be read or written at once: a worker does it. null where they are not so
 * large, or where there is no worker: the page then does it itself.
 */
import { checksumSteps } from '../../layout/checksum';
import type { Result } from '../../layout/result';
import type { Layout } from '../../layout/types';
import { LARGE_CHARACTERS, readLayoutBeside, writeLayoutBeside } from '../../worker/layoutFiles';
import { pauser } from '../../worker/pauser';
import { isLarge } from '../savedForm';
import type { StoredEntry } from './types';

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

/** The checksum of a large layout, worked out here in slices; null where the layout is not so large. */
export async function checksumInSlices(layout: Layout): Promise<string | null> {
  if (!isLarge(layout)) return null;
  const pause = pauser();
  const steps = checksumSteps(layout);
  for (let until = performance.now() + SLICE_MS; ;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() < until) continue;
    await pause();
    until = performance.now() + SLICE_MS;
  }
}

type Entries = Result<readonly StoredEntry[]>;

/** One question to a worker that lives as long as its answer. */
function asked(file: File): Promise<Entries | null> {
  return new Promise((resolve) => {
    try {
      const worker = new Worker(new URL('./file.worker.ts', import.meta.url), { type: 'module' });
      const done = (answer: Entries | null): void => {
        worker.terminate();
        resolve(answer);
      };
      worker.onmessage = ({ data }: MessageEvent<Entries>) => done(data);
      worker.onerror = () => done(null);
      worker.onmessageerror = () => done(null);
      worker.postMessage(file);
    } catch {
      resolve(null);
    }
  });
}

/** The entries of a library file. Faults: file-unreadable, those of readLibraryText. */
export const readFileBeside = async (file: Pick<File, 'size'>): Promise<Entries | null> =>
  file instanceof File && file.size > LARGE_CHARACTERS ? asked(file) : null;
