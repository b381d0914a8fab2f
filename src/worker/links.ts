/**
 * The page's side of links: short ones are read at once, here; long ones, and what is written, beside the page. Where no
 * worker can be made or it fails, the page does the work itself.
 */
import { fail, ok, type Result } from '../layout/result';
import type { Layout } from '../layout/types';
import { decodeAny, type AnyLinked } from '../link/index';
import { askOnce } from './askOnce';
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
  const answer = await askOnce<LinkQuestion, LinkAnswer>(make, { kind: 'read', text });
  if (answer?.kind === 'fault') return { ok: false, fault: answer.fault };
  return answer?.kind === 'read' ? ok(await together(answer.linked)) : decodeAny(text);
}

async function written(linked: AnyLinked, make: MakeLinkWorker): Promise<LinkAnswer> {
  const apart = linkedApart(linked, false);
  const question: LinkQuestion = { kind: 'write', linked: apart };
  const answer = await askOnce<LinkQuestion, LinkAnswer>(make, question, apart.layouts.flatMap(buffersOf));
  return answer ?? writtenLink(linked);
}

/** The text after "#" that holds it. Faults: link-not-made, link-altered and link-too-large (it could not be read). Never rejects. */
export async function writeLink(linked: AnyLinked, make = createWorker): Promise<Result<string>> {
  try {
    const answer = await written(linked, make);
    if (answer.kind === 'written') return ok(answer.text);
    return answer.kind === 'fault' ? { ok: false, fault: answer.fault } : fail('link-not-made');
  } catch {
    return fail('link-not-made');
  }
}
