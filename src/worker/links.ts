/**
 * The page's side of links: short ones are read at once, here; long ones, and what is written, beside the page. Where no
 * worker can be made or it fails, the page does the work itself.
 */
import { ok, type Result } from '../layout/result';
import type { Layout } from '../layout/types';
import { decodeAny, type AnyLinked } from '../link/index';
import { buffersOf, putTogetherSlowly } from './layoutApart';
import { linkedApart, writtenLink, type LinkAnswer, type LinkedApart, type LinkQuestion } from './linkApart';
import { pauser } from './pauser';
import { Worker } from './boundWorker';

/** Links of fewer characters are read in a few milliseconds. */
const LONG_CHARACTERS = 20_000;
/** Milliseconds of putting together between two pauses. */
const SLICE_MS = 8;

export type MakeLinkWorker = () => Worker;
const createWorker: MakeLinkWorker = () =>
  new Worker(new URL('./link.worker.ts', import.meta.url), { type: 'module' });

/** One answer of a worker that lives as long as the question; null where there is none. */
function asked(
  make: MakeLinkWorker,
  question: LinkQuestion,
  handOver: ArrayBuffer[],
): Promise<LinkAnswer | null> {
  return new Promise((resolve) => {
    try {
      const worker = make();
      const done = (answer: LinkAnswer | null): void => {
        worker.terminate();
        resolve(answer);
      };
      worker.onmessage = ({ data }: MessageEvent<LinkAnswer>) => done(data);
      worker.onerror = () => done(null);
      worker.onmessageerror = () => done(null);
      worker.postMessage(question, handOver);
    } catch {
      resolve(null);
    }
  });
}

async function together({ layouts, ...rest }: LinkedApart): Promise<AnyLinked> {
  let began = performance.now();
  const pause = pauser();
  const due = (): boolean => performance.now() - began > SLICE_MS;
  const rested = (): Promise<void> => pause().then(() => void (began = performance.now()));
  const whole: Layout[] = [];
  for (const layout of layouts) whole.push(await putTogetherSlowly(layout, due, rested));
  return { ...rest, layouts: whole };
}

/** What a text after "#" or a whole address holds. Faults: those of decodeAny. */
export async function readLink(text: string, make = createWorker): Promise<Result<AnyLinked>> {
  if (text.length < LONG_CHARACTERS) return decodeAny(text);
  const answer = await asked(make, { kind: 'read', text }, []);
  if (answer?.kind === 'fault') return { ok: false, fault: answer.fault };
  return answer?.kind === 'read' ? ok(await together(answer.linked)) : decodeAny(text);
}

/** The text after "#" that holds it. Faults: link-not-made, link-altered and link-too-large (it could not be read). */
export async function writeLink(linked: AnyLinked, make = createWorker): Promise<Result<string>> {
  const apart = linkedApart(linked, false);
  const answer =
    (await asked(make, { kind: 'write', linked: apart }, apart.layouts.flatMap(buffersOf))) ??
    writtenLink(linked);
  return answer.kind === 'written'
    ? ok(answer.text)
    : { ok: false, fault: (answer as LinkAnswer & { kind: 'fault' }).fault };
}
