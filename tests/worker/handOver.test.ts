// The page's side of files that are handed over, where no worker can be made: all of it is done here, in slices.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { makeFile } from '../../src/worker/handOver';
import { paramText } from '../../src/layout/messages';
import { block, recordsOf } from '../export/plates';

const PARTS = { kind: 'parts', csv: { separator: ',', decimal: '.' } } as const;

beforeEach(() => void vi.stubGlobal('Worker', undefined));
afterEach(() => void vi.unstubAllGlobals());

test('a file is made without a worker, and is the same', async () => {
  const asking = { signal: new AbortController().signal, tell: () => undefined };
  const made = await makeFile(analyse(block()), 'abc', PARTS, asking);
  if (!made?.ok) throw new Error('expected a file');
  expect(made.value.name).toBe('ferry-spares-plate-1-abc-parts.csv');
  expect(recordsOf(String(made.value.content)).map(({ laser }) => laser)).toEqual(['L1', 'L2']);
});

test('a dropped one comes to nothing', async () => {
  const control = new AbortController();
  // so many heights that there is a pause at which it can be dropped
  const rings = [[[0, 0], [60, 0], [60, 60], [0, 60]]] as const; // prettier-ignore
  const slabs = Array.from({ length: 800 }, (_, i) => ({
    to_mm: (i + 1) * 0.05,
    rings: rings.map((ring) => ring.map(([x, y]) => [x + i / 1000, y] as const)),
  }));
  const layout = block({ shapes: { block: { slabs } } });
  const told: number[] = [];
  const tell = (share: number): void => {
    told.push(share);
    control.abort();
  };
  expect(await makeFile(analyse(layout), 'abc', PARTS, { signal: control.signal, tell })).toBeNull();
  expect(told).toHaveLength(1);
  expect(told[0]).toBeLessThan(1);
});

test('what goes wrong is a message, not an exception', async () => {
  const asking = { signal: new AbortController().signal, tell: () => undefined };
  const broken = { ...analyse(block()), get stretches(): never { throw new Error('gone'); } }; // prettier-ignore
  const made = await makeFile(broken, 'abc', { ...PARTS, kind: 'layers' }, asking);
  expect(made).toEqual({ ok: false, fault: { code: 'export-failed', params: { detail: 'gone' } } });
});

test('a worker that cannot be loaded, or not be asked, is a message, and is ended', async () => {
  const asking = { signal: new AbortController().signal, tell: () => undefined };
  const ended: string[] = [];
  class Silent {
    onerror: ((event: object) => void) | null = null;
    postMessage(): void {
      queueMicrotask(() => this.onerror?.({}));
    }
    terminate(): void {
      ended.push('silent');
    }
  }
  class Deaf extends Silent {
    override postMessage(): void {
      throw new Error('too large to hand over');
    }
  }
  const detail = async (): Promise<unknown> => {
    const made = await makeFile(analyse(block()), 'abc', PARTS, asking);
    return made?.ok === false && paramText(made.fault.params['detail']!);
  };
  vi.stubGlobal('Worker', Silent);
  expect(await detail()).toBe('a part of the page could not be loaded');
  vi.stubGlobal('Worker', Deaf);
  expect(await detail()).toBe('too large to hand over');
  expect(ended).toEqual(['silent', 'silent']);
});
