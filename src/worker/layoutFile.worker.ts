/** Large layout files in a thread of their own: one question, one answer. */
import { buffersOf, readApart, writeApart, type LayoutAnswer, type LayoutQuestion } from './layoutApart';

const page = self as unknown as {
  postMessage(answer: LayoutAnswer, handOver: Transferable[]): void;
  onmessage: ((event: MessageEvent<LayoutQuestion>) => void) | null;
};

async function answer(question: LayoutQuestion): Promise<void> {
  if (question.kind === 'write') {
    const bytes = writeApart(question.apart);
    return page.postMessage({ kind: 'written', bytes }, [bytes.buffer]);
  }
  const read = readApart(await question.file.text());
  if (read.ok) page.postMessage({ kind: 'read', apart: read.value }, buffersOf(read.value));
  else page.postMessage({ kind: 'fault', fault: read.fault }, []);
}

page.onmessage = ({ data }) => {
  answer(data).catch(() =>
    page.postMessage({ kind: 'fault', fault: { code: 'file-unreadable', params: {} } }, []),
  );
};
