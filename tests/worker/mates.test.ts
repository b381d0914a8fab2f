// A build shared out among threads comes to the same figures as one thread's; a thread that fails costs time, no layer.
import { describe, expect, test } from 'vitest';
import { analyse, type KnownHeight } from '../../src/build/analyse';
import { totalsOf } from '../../src/build/totals';
import type { Layout } from '../../src/layout/types';
import { HeightEngine } from '../../src/worker/heightEngine';
import { HeightMate } from '../../src/worker/heightMate';
import type { HeightAnswer, HeightQuestion, PortionAnswer } from '../../src/worker/heightMessages';
import { heights } from '../../src/worker/heights';
import { Mates, type MakeMate } from '../../src/worker/mates';
import { pauser } from '../../src/worker/pauser';
import { pyramids } from '../support/pyramids';

const high = (x: number, seams: 'free' | 'none'): Layout => pyramids(x, { at: [-10, 90], seams });

const clock = () => ({ pause: pauser(), now: () => performance.now() });
const wait = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** Portions that mates answered, by the index of the mate. */
type Answered = number[];

/** A mate in this thread that gets copies, as a worker would. */
const nearMate =
  (answered: Answered, fails: (mate: number) => boolean = () => false): (() => MakeMate) =>
  () => {
    let made = 0;
    return (hear) => {
      const mate = made++;
      const tell = (answer: PortionAnswer): void => {
        if (answer.stretches) answered.push(mate);
        hear(fails(mate) ? { ...answer, stretches: null } : structuredClone(answer));
      };
      const near = new HeightMate({ ...clock(), wait, tell });
      return { say: (word) => void near.hear(structuredClone(word)) };
    };
  };

/** The page's side, with the engine and its mates where a worker would be. */
function shared(count: number, make: () => MakeMate) {
  type Hears = ((event: { data: HeightAnswer }) => void) | null;
  const worker = {
    onmessage: null as Hears,
    onerror: null,
    postMessage: (question: HeightQuestion) => void engine.ask(structuredClone(question)),
  };
  const tell = (data: HeightAnswer): void => worker.onmessage?.({ data: structuredClone(data) });
  const engine = new HeightEngine({ ...clock(), tell }, new Mates(count, make()));
  return heights(() => worker as unknown as Worker);
}

const whole = (service: ReturnType<typeof heights>, layout: Layout): Promise<KnownHeight> =>
  new Promise((resolve, reject) => {
    service.listen((news) => {
      if (news.kind === 'failed') reject(new Error(news.detail));
      if (news.kind !== 'height' || news.known.layout !== layout) return;
      if (news.known.every === 1 && news.known.checks > 0) resolve(news.known);
    });
    service.ask(layout);
  });

const expectWhole = (known: KnownHeight, layout: Layout): void => {
  const atOnce = analyse(layout);
  const expected = atOnce.stretches.map((stretch) => ({ ...stretch, figures: totalsOf(stretch.figures) }));
  expect(known.stretches).toEqual(expected);
  expect(known.build).toEqual(atOnce.build);
  expect(known.problems).toEqual(atOnce.problems);
};

describe('a build shared out among threads', () => {
  test.each([1, 2, 3])('comes to the same with %i mates, plate after plate', async (count) => {
    const answered: Answered = [];
    const service = shared(count, nearMate(answered));
    for (const layout of [high(0, 'free'), high(3, 'free'), high(3, 'free')]) {
      expectWhole(await whole(service, layout), layout);
      expect(answered.splice(0).toSorted()).toEqual(Array.from({ length: count }, (_, i) => i));
    }
  });

  test('comes to the same where a part keeps its laser, which only the whole height can tell', async () => {
    const answered: Answered = [];
    const service = shared(2, nearMate(answered));
    const layout = high(2, 'none');
    expectWhole(await whole(service, layout), layout);
    expect(answered).toHaveLength(2);
  });

  test('is computed by the first thread where a mate fails', async () => {
    const service = shared(
      2,
      nearMate([], (mate) => mate === 1),
    );
    const layout = high(1, 'none');
    expectWhole(await whole(service, layout), layout);
  });

  test('goes to the newest of many plates; mates begin when the questions have stopped', async () => {
    const answered: Answered = [];
    const service = shared(1, nearMate(answered));
    for (let x = 0; x < 8; x++) {
      service.ask(high(x, 'none'));
      await wait(5);
    }
    const last = high(9, 'none');
    expectWhole(await whole(service, last), last);
    expect(answered).toHaveLength(1);
  });
});
