/**
 * Links beside the page: the same text and the same layouts as in the engine, from a thread that gets copies, and from the
 * page itself where there is no thread or it fails.
 */
import { describe, expect, test } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import type { Layout } from '../../src/layout/types';
import { encodeComparison, encodeLink, type AnyLinked } from '../../src/link';
import { answerLink, type LinkQuestion } from '../../src/worker/linkApart';
import { readLink, writeLink, type MakeLinkWorker } from '../../src/worker/links';

/** A worker in this thread, with copies of what goes over. */
const near =
  (asked: LinkQuestion[]): MakeLinkWorker =>
  () => {
    const worker = {
      onmessage: null as ((event: { data: unknown }) => void) | null,
      postMessage(question: LinkQuestion, transfer: ArrayBuffer[]) {
        const copy = structuredClone(question, { transfer });
        asked.push(copy);
        queueMicrotask(() => worker.onmessage?.({ data: structuredClone(answerLink(copy)) }));
      },
      terminate: () => undefined,
    };
    return worker as unknown as Worker;
  };
const none: MakeLinkWorker = () => {
  throw new Error('no threads here');
};
const failing: MakeLinkWorker = () => {
  const worker = {
    onerror: null as (() => void) | null,
    postMessage: () => queueMicrotask(() => worker.onerror?.()),
    terminate: () => undefined,
  };
  return worker as unknown as Worker;
};

const demo = demoLayout();
const noisy = (n: number): number => Math.round(1e5 * Math.sin(n * n)) / 1e3;
const cloud = Array.from({ length: 9000 }, (_, i) => [noisy(i), noisy(i + 0.5)] as const);
const large: Layout = {
  ...demo,
  shapes: { ...demo.shapes, cloud: { slabs: [{ to_mm: 5, rings: [cloud] }] } },
};
const one: AnyLinked = { kind: 'layout', layouts: [demo], view: { height_mm: 3 } };
const two: AnyLinked = { kind: 'comparison', layouts: [demo, large], view: {} };

describe.each([
  ['a thread', near],
  ['no thread', () => none],
  ['a thread that fails', () => failing],
])('with %s', (_, make) => {
  test('a plate and a comparison are written as the engine writes them', async () => {
    expect(await writeLink(one, make([]))).toEqual({ ok: true, value: encodeLink(demo, { height_mm: 3 }) });
    expect(await writeLink(two, make([]))).toEqual({ ok: true, value: encodeComparison([demo, large]) });
  });
  test('short and long links bring what they were made of', async () => {
    expect(await readLink(encodeLink(demo, { height_mm: 3 }), make([]))).toEqual({ ok: true, value: one });
    expect(await readLink(encodeComparison([demo, large]), make([]))).toEqual({ ok: true, value: two });
  });
  test('a long link that was cut says so', async () => {
    const read = await readLink(encodeLink(large).slice(0, -1), make([]));
    expect(read).toMatchObject({ ok: false, fault: { code: 'link-cut' } });
  });
});

test('long links go to the thread, short ones do not', async () => {
  const asked: LinkQuestion[] = [];
  await readLink(encodeLink(demo), near(asked));
  expect(asked).toHaveLength(0);
  await readLink(encodeLink(large), near(asked));
  expect(asked.map(({ kind }) => kind)).toEqual(['read']);
});

test('a layout with more digits than a link carries is not handed out as a link', async () => {
  const [part, ...rest] = demo.parts;
  const fine: Layout = { ...demo, parts: [{ ...part!, at_mm: [part!.at_mm[0] + 0.0004, 0] }, ...rest] };
  const written = await writeLink({ ...one, layouts: [fine] }, none);
  expect(written).toMatchObject({ ok: false, fault: { code: 'link-not-made' } });
});

test('what cannot be written is a message, not an exception', async () => {
  const broken = { ...one, layouts: [{ ...demo, parts: null }] } as unknown as AnyLinked;
  expect(await writeLink(broken, none)).toEqual({ ok: false, fault: { code: 'link-not-made', params: {} } });
});
