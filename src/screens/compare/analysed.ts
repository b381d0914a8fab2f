/**
 * Whole heights of several layouts, one after the other in a thread beside the page: plates of any size, none of which
 * holds up the page. One thread serves all that is compared.
 */
import { analyseLive, type KnownHeight } from '../../build/analysis';
import type { Analysis } from '../../build/types';
import type { Layout } from '../../layout/types';
import { heights, type Heights } from '../../worker/heights';
import { Worker } from '../../worker/boundWorker';

/** Answers to one layout at a time; the next one is asked when the former is known. */
export class Analyser {
  private line: Promise<unknown> = Promise.resolve();
  private readonly known = new WeakMap<Layout, Promise<Analysis>>();
  constructor(private readonly service: Heights) {}

  /** The analysis of the whole height, problems included; the same promise for the same layout. Rejects where it fails. */
  of(layout: Layout): Promise<Analysis> {
    const before = this.known.get(layout);
    if (before) return before;
    const next = this.line.then(() => this.ask(layout));
    this.line = next.catch(() => undefined);
    this.known.set(layout, next);
    return next;
  }

  private ask(layout: Layout): Promise<Analysis> {
    return new Promise((resolve, reject) => {
      this.service.listen((news) => {
        if (news.kind === 'failed') reject(new Error(news.detail));
        if (news.kind === 'height' && complete(news.known, layout)) resolve(analyseLive(layout, news.known));
      });
      this.service.ask(layout);
    });
  }
}

/** Every layer computed, and somebody has looked for problems. */
const complete = (known: KnownHeight, layout: Layout): boolean =>
  known.layout === layout && known.every === 1 && known.checks > 0;

const made: { analyser: Analyser | null } = { analyser: null };

/** The page's own, made with the first question. */
export const pageAnalyser = (): Analyser =>
  (made.analyser ??= new Analyser(
    heights(() => new Worker(new URL('../../worker/height.worker.ts', import.meta.url), { type: 'module' })),
  ));
