/**
 * The page's side of one mesh file: hands it to a worker, asks, and hears what becomes known. Shapes are unpacked in
 * slices between the page's own work. Where no worker can be made (a page opened from a file, say), the same engine runs
 * beside the page. Closing ends the worker at once, whatever it does.
 */
import { knowFootprint } from '../exposure/prepared';
import type { Fault } from '../layout/result';
import type { Shape, Slab } from '../layout/types';
import type { Mm } from '../units/types';
import { MeshEngine } from './meshEngine';
import type {
  MeshAnswer,
  MeshBodyCut,
  MeshBodyLook,
  MeshCutOutcome,
  MeshDoing,
  MeshFileFound,
  MeshQuestion,
  MeshSettings,
} from './meshMessages';
import type { MeshViews } from './meshPicture';
import { unpackSlabs } from './packShape';
import { pauser } from './pauser';

/** Milliseconds of unpacking between two pauses. */
const SLICE_MS = 8;

export type MeshCutBody =
  | { readonly ok: true; readonly cut: MeshBodyCut; readonly shape: Shape }
  | { readonly ok: false; readonly fault: Fault };
export interface MeshLook {
  readonly bodies: readonly MeshBodyLook[];
  readonly shown: number;
  readonly views: MeshViews;
}
export type MeshNews =
  | { readonly kind: 'progress'; readonly at: MeshDoing }
  | { readonly kind: 'read'; readonly file: MeshFileFound }
  | { readonly kind: 'looked'; readonly look: MeshLook }
  /** In the order asked. */
  | { readonly kind: 'cut'; readonly bodies: readonly MeshCutBody[] }
  /** The file cannot be read. */
  | { readonly kind: 'fault'; readonly fault: Fault }
  | { readonly kind: 'failed'; readonly detail: string };

/** One open file. Only the answer to the newest question is heard. */
export interface MeshDesk {
  read(name: string, bytes: Uint8Array<ArrayBuffer>): void;
  look(settings: MeshSettings, shown: number): void;
  cut(settings: MeshSettings, bodies: readonly number[], layer_mm: Mm): void;
  /** Drops what is being done; what was read stays. */
  stop(): void;
  /** Ends everything; nothing is heard any more. */
  close(): void;
}

interface Line {
  post(question: MeshQuestion, handOver: ArrayBuffer[]): void;
  end(): void;
}

/** @param createWorker makes the worker; null, or throwing: the engine runs in this thread, in slices */
export function openDesk(createWorker: (() => Worker) | null, heard: (news: MeshNews) => void): MeshDesk {
  let newest = 0;
  const unpack = unpacker();
  const hear = (answer: MeshAnswer): void => {
    if (answer.id !== newest) return;
    if (answer.kind === 'cut')
      void unpack(answer.bodies, () => answer.id === newest).then(
        (bodies) => bodies && heard({ kind: 'cut', bodies }),
      );
    else heard(newsOf(answer));
  };
  const line = lineTo(createWorker, hear, () => newest);
  return {
    read: (name, bytes) => line.post({ kind: 'read', id: ++newest, name, bytes }, [bytes.buffer]),
    look: (settings, shown) => line.post({ kind: 'look', id: ++newest, settings, shown }, []),
    cut: (settings, bodies, layer_mm) =>
      line.post({ kind: 'cut', id: ++newest, settings, bodies, layer_mm }, []),
    stop: () => {
      newest += 1;
      line.post({ kind: 'stop' }, []);
    },
    close: () => {
      newest = Infinity;
      line.end();
    },
  };
}

function newsOf(answer: Exclude<MeshAnswer, { kind: 'cut' }>): MeshNews {
  if (answer.kind !== 'looked') return answer;
  const { bodies, shown, views } = answer;
  return { kind: 'looked', look: { bodies, shown, views } };
}

/** Turns packed shapes back, in slices; null where nobody waits for them any more. */
function unpacker() {
  let pause: (() => Promise<void>) | null = null;
  return async (
    outcomes: readonly MeshCutOutcome[],
    wanted: () => boolean,
  ): Promise<MeshCutBody[] | null> => {
    pause ??= pauser();
    const bodies: MeshCutBody[] = [];
    let began = performance.now();
    for (const outcome of outcomes) {
      if (!outcome.ok) {
        bodies.push(outcome);
        continue;
      }
      const slabs: Slab[] = [];
      for (const slab of unpackSlabs(outcome.packed)) {
        slabs.push(slab);
        if (performance.now() - began < SLICE_MS) continue;
        await pause();
        if (!wanted()) return null;
        began = performance.now();
      }
      const shape: Shape = { slabs };
      knowFootprint(shape, outcome.footprint);
      bodies.push({ ok: true, cut: outcome.cut, shape });
    }
    return wanted() ? bodies : null;
  };
}

function lineTo(
  createWorker: (() => Worker) | null,
  hear: (answer: MeshAnswer) => void,
  newest: () => number,
): Line {
  try {
    if (createWorker) return workerLine(createWorker(), hear, newest);
  } catch {
    // The browser allows no worker here: the page computes by itself, below.
  }
  const engine = new MeshEngine({ tell: hear, pause: pauser(), now: () => performance.now() });
  return {
    post: (question) => void engine.ask(question),
    end: () => void engine.ask({ kind: 'stop' }),
  };
}

function workerLine(worker: Worker, hear: (answer: MeshAnswer) => void, newest: () => number): Line {
  worker.onmessage = ({ data }: MessageEvent<MeshAnswer>) => hear(data);
  worker.onerror = ({ message }) => hear({ kind: 'failed', id: newest(), detail: message });
  return {
    post: (question, handOver) => worker.postMessage(question, handOver),
    end: () => worker.terminate(),
  };
}
