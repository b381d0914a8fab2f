/** Links in a thread of their own: one question, one answer. */
import { buffersOf } from './layoutApart';
import { answerLink, type LinkAnswer, type LinkQuestion } from './linkApart';

const page = self as unknown as {
  postMessage(answer: LinkAnswer, handOver: Transferable[]): void;
  onmessage: ((event: MessageEvent<LinkQuestion>) => void) | null;
};

page.onmessage = ({ data }) => {
  const answer = answerLink(data);
  page.postMessage(answer, answer.kind === 'read' ? answer.linked.layouts.flatMap(buffersOf) : []);
};
