// Several layouts analysed one after the other: in their order, each once, and not for a screen that was closed meanwhile.
import { describe, expect, it, vi } from 'vitest';
import type { Layout } from '../../../src/layout/types';
import { Analyser } from '../../../src/screens/compare/analysed';
import { heights, type HeightNews, type Heights } from '../../../src/worker/heights';
import { plate, QUADRANTS, rect } from '../../support/plates';

const block = (x: number): Layout =>
  plate([{ id: 'P01', slabs: [{ to_mm: 1, rings: [rect(0, 0, 10, 10)] }], at: [x, 100] }], QUADRANTS);

/** The engine in this thread; what it was asked is written down. */
function counting() {
  const asked: Layout[] = [];
  const near = heights(null);
  const ask = (layout: Layout): void => {
    asked.push(layout);
    near.ask(layout);
  };
  return { asked, analyser: new Analyser({ ask, listen: near.listen }) };
}

/** Answers nothing by itself. */
function silent() {
  const asked: Layout[] = [];
  let hear: (news: HeightNews) => void = () => undefined;
  const service: Heights = {
    ask: (layout) => void asked.push(layout),
    listen: (heard) => void (hear = heard),
  };
  const fail = (): void => hear({ kind: 'failed', detail: 'no memory' });
  return { asked, fail, analyser: new Analyser(service) };
}

describe('layouts beside each other', () => {
  it('are each analysed once, with their problems looked for', async () => {
    const { asked, analyser } = counting();
    const [a, b] = [block(60), block(120)];
    const [first, second, again] = await Promise.all([analyser.of(a), analyser.of(b), analyser.of(a)]);
    expect(first.layout).toBe(a);
    expect(second.layout).toBe(b);
    expect(again).toBe(first);
    expect(first.checks).toBeGreaterThan(0);
    expect(asked).toEqual([a, b]);
  });

  it('that failed are asked anew', async () => {
    const { asked, fail, analyser } = silent();
    const layout = block(60);
    const found = analyser.of(layout);
    fail();
    await expect(found).rejects.toThrow('no memory');
    void analyser.of(layout);
    await vi.waitFor(() => expect(asked).toEqual([layout, layout]));
  });

  it('that nobody waits for any more hold up no other', async () => {
    const { asked, analyser } = silent();
    const [a, b, c] = [block(60), block(120), block(180)];
    void analyser.of(a);
    void analyser.of(b);
    analyser.leave([a, b]);
    void analyser.of(c);
    await vi.waitFor(() => expect(asked).toEqual([a, c]));
  });

  it('that are running go on for who comes back to them', async () => {
    const { asked, fail, analyser } = silent();
    const [a, b] = [block(60), block(120)];
    const before = analyser.of(a);
    analyser.leave([a]);
    expect(analyser.of(a)).toBe(before);
    void analyser.of(b);
    expect(asked).toEqual([a]);
    fail();
    await expect(before).rejects.toThrow('no memory');
    await vi.waitFor(() => expect(asked).toEqual([a, b]));
  });
});
