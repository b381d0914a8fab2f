/**
 * Whole heights of several layouts, one after the other in a thread beside the page: plates of any size, none of which
 * holds up the page. One thread serves all that is compared.
 */
import { analyseLive, type KnownHeight } from '../../build/analysis';
import type { Analysis } from '../../build/types';
import type { Layout } from '../../layout/types';
import { heights, type Heights } from '../../worker/heights';
import { Worker } from '../../worker/boundWorker';

interface Waiting {
  readonly layout: Layout;
  resolve(analysis: Analysis): void;
  reject(reason: unknown): void;
}

/** Answers to one layout at a time; the next one is asked when the former is known or nobody waits for it any more. */
export class Analyser {
  private waiting: readonly Waiting[] = [];
  private running: Layout | null = null;
  /** Nobody looks at what is running: it goes on until something else is asked. */
  private left = false;
  private readonly known = new WeakMap<Layout, Promise<Analysis>>();
  constructor(private readonly service: Heights) {}

  /**
   * The analysis of the whole height, problems included; the same promise for the same layout. Rejects where it fails, and
   * then the next question tries again.
   */
  of(layout: Layout): Promise<Analysis> {
    if (layout === this.running) this.left = false;
    const before = this.known.get(layout);
    if (before) return before;
    const found = new Promise<Analysis>((resolve, reject) => {
      this.waiting = [...this.waiting, { layout, resolve, reject }];
    });
    this.known.set(layout, found);
    void this.next();
    return found;
  }

  /** Nobody waits for these any more; a promise that was given out for one that is not known yet may never be kept. */
  leave(layouts: readonly Layout[]): void {
    const gone = this.waiting.filter(({ layout }) => layouts.includes(layout));
    this.waiting = this.waiting.filter((one) => !gone.includes(one));
    for (const { layout } of gone) this.known.delete(layout);
    if (this.running !== null && layouts.includes(this.running)) this.left = true;
  }

  private async next(): Promise<void> {
    if (this.running !== null && !this.left) return;
    const [first, ...rest] = this.waiting;
    if (first === undefined) return;
    if (this.running !== null) this.known.delete(this.running);
    [this.waiting, this.running, this.left] = [rest, first.layout, false];
    try {
      first.resolve(await this.ask(first.layout));
    } catch (error) {
      this.known.delete(first.layout);
      first.reject(error);
    }
    this.running = null;
    void this.next();
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
