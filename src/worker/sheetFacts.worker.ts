/** The facts of the operator's sheet in a thread of their own: one question, news of how far it is, one answer. */
import { sheetFactSteps } from '../export/sheet/facts';
import type { SheetFacts } from '../export/sheet/types';
import { putTogether, type LayoutApart } from './layoutApart';
import { pauser } from './pauser';
import { inSlices } from './slices';

export type SheetNews =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'facts'; readonly facts: SheetFacts }
  | { readonly kind: 'failed'; readonly detail: string };

const page = self as unknown as {
  postMessage(news: SheetNews): void;
  onmessage: ((event: MessageEvent<LayoutApart>) => void) | null;
};

async function answer(apart: LayoutApart): Promise<void> {
  const clock = { pause: pauser(), now: () => performance.now() };
  const steps = sheetFactSteps(putTogether(apart));
  const facts = await inSlices(
    clock,
    steps,
    () => false,
    (share) => page.postMessage({ kind: 'progress', share }),
  );
  if (facts) page.postMessage({ kind: 'facts', facts });
}

page.onmessage = ({ data }) => {
  answer(data).catch((error: unknown) =>
    page.postMessage({ kind: 'failed', detail: error instanceof Error ? error.message : String(error) }),
  );
};
