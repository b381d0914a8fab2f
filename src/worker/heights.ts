/**
 * The page's side of the whole height: asks a worker, knows which shapes it has, and turns answers back into what the
 * screens read. Where no worker can be made (a page opened from a file, say), the same engine runs beside the page.
 */
import type { KnownHeight } from '../build/analysis';
import type { Layout, Shape } from '../layout/types';
import { HeightEngine } from './heightEngine';
import type { HeightAnswer, HeightFound, HeightQuestion } from './heightMessages';
import { packShape } from './packShape';
import { unpackStretches } from './packStretches';
import { pauser } from './pauser';

export type HeightNews =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'height'; readonly known: KnownHeight }
  | { readonly kind: 'checksum'; readonly layout: Layout; readonly checksum: string }
  | { readonly kind: 'failed'; readonly detail: string };
export interface Heights {
  /** Asks for the whole height of a layout; the newest question counts. */
  ask(layout: Layout): void;
  /** Calls back with what becomes known. */
  listen(heard: (news: HeightNews) => void): void;
}

interface Line {
  post(question: HeightQuestion, handOver: ArrayBuffer[]): void;
}

/** Asked layouts by their number, until a newer one was answered. */
class Asked {
  private readonly layouts = new Map<number, Layout>();
  private count = 0;
  add(layout: Layout): number {
    this.layouts.set(++this.count, layout);
    return this.count;
  }
  get(id: number): Layout | undefined {
    for (const older of this.layouts.keys()) if (older < id) this.layouts.delete(older);
    return this.layouts.get(id);
  }
  newest(id: number): boolean {
    return id === this.count;
  }
}

/** Numbers of shapes, and which of them the other side holds. */
class SentShapes {
  private readonly keys = new WeakMap<Shape, number>();
  private held = new Set<number>();
  private count = 0;
  private keyOf(shape: Shape): number {
    const key = this.keys.get(shape) ?? ++this.count;
    this.keys.set(shape, key);
    return key;
  }
  /** Shapes of a layout; the ones it does not use are forgotten on both sides. */
  of({ shapes, parts }: Layout): Pick<HeightQuestion, 'shapes' | 'sent'> {
    const used = [...new Set(parts.map((part) => part.shape))];
    const numbered = used.map((id) => [id, this.keyOf(shapes[id]!)] as const);
    const sent = used.flatMap((id) => {
      const key = this.keyOf(shapes[id]!);
      return this.held.has(key) ? [] : [[key, packShape(shapes[id]!)] as const];
    });
    this.held = new Set(numbered.map(([, key]) => key));
    return { shapes: Object.fromEntries(numbered), sent };
  }
}

/** The whole height with the problems of the one before, for which no check of this plate stands yet. */
function knownOf(layout: Layout, before: KnownHeight | null, answer: HeightFound): KnownHeight {
  const { build, rules, every } = answer;
  return {
    layout,
    every,
    build,
    rules,
    problems: before?.problems ?? [],
    checks: 0,
    stretches: unpackStretches(answer.stretches, layout.machine.lasers),
  };
}

/** @param createWorker makes the worker; null, or throwing: the engine runs in this thread, in slices */
export function heights(createWorker: (() => Worker) | null): Heights {
  const asked = new Asked();
  const shapes = new SentShapes();
  let heard: (news: HeightNews) => void = () => undefined;
  let before: KnownHeight | null = null;
  const hear = (answer: HeightAnswer): void => {
    if (answer.kind === 'height') {
      const layout = asked.get(answer.id);
      if (layout) heard({ kind: 'height', known: (before = knownOf(layout, before, answer)) });
    } else if (answer.kind === 'problems') {
      const layout = asked.get(answer.id);
      if (layout && before?.layout === layout)
        heard({ kind: 'height', known: (before = { ...before, ...answer.found }) });
    } else if (answer.kind === 'checksum') {
      const layout = asked.get(answer.id);
      if (layout) heard({ kind: 'checksum', layout, checksum: answer.checksum });
    } else if (asked.newest(answer.id)) heard(answer);
  };
  let line: Line | null = null;
  return {
    ask: (layout) => {
      line ??= lineTo(createWorker, hear);
      const { shapes: _all, ...rest } = layout;
      const question = { id: asked.add(layout), layout: rest, ...shapes.of(layout) };
      line.post(
        question,
        question.sent.map(([, packed]) => packed.buffer),
      );
    },
    listen: (listener) => {
      heard = listener;
    },
  };
}

function lineTo(createWorker: (() => Worker) | null, hear: (answer: HeightAnswer) => void): Line {
  try {
    if (createWorker) return workerLine(createWorker(), hear);
  } catch {
    // The browser allows no worker here: the page computes by itself, below.
  }
  const engine = new HeightEngine({ tell: hear, pause: pauser(), now: () => performance.now() });
  return { post: (question) => void engine.ask(question) };
}

function workerLine(worker: Worker, hear: (answer: HeightAnswer) => void): Line {
  let asked = 0;
  worker.onmessage = ({ data }: MessageEvent<HeightAnswer>) => hear(data);
  worker.onerror = ({ message }) => hear({ kind: 'failed', id: asked, detail: message });
  return {
    post: (question, handOver) => {
      asked = question.id;
      worker.postMessage(question, handOver);
    },
  };
}
