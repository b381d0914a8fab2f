/** Files of the whole height in a thread of their own: one question, news of how far it is, one answer. */
import { longFileSteps } from '../export/files/long';
import { fail } from '../layout/result';
import type { FileNews, FileQuestion } from './handOverMessages';
import { putTogether } from './layoutApart';
import { pauser } from './pauser';
import { inSlices } from './slices';

const page = self as unknown as {
  postMessage(news: FileNews, handOver: Transferable[]): void;
  onmessage: ((event: MessageEvent<FileQuestion>) => void) | null;
};

async function answer({ apart, source, file }: FileQuestion): Promise<void> {
  const clock = { pause: pauser(), now: () => performance.now() };
  const steps = longFileSteps({ ...source, layout: putTogether(apart) }, file);
  const tell = (share: number): void => page.postMessage({ kind: 'progress', share }, []);
  const made = await inSlices(clock, steps, () => false, tell);
  if (made === null) return;
  const content = made.ok ? made.value.content : '';
  page.postMessage({ kind: 'made', made }, typeof content === 'string' ? [] : [content.buffer]);
}

page.onmessage = ({ data }) => {
  answer(data).catch((error: unknown) => {
    const detail = error instanceof Error ? error.message : String(error);
    page.postMessage({ kind: 'made', made: fail('export-failed', { detail }) }, []);
  });
};
