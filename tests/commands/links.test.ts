// @vitest-environment jsdom
/**
 * Links that are opened: a plate becomes the open one with its view, and undo brings the former one back; whatever is
 * wrong with a link, the open plate, its history and its view stay as they were. Links are made of layouts that never went
 * through one.
 */
import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import { beforeEach, describe, expect, test } from 'vitest';
import { openFirstPlate } from '../../src/commands/addressLinks';
import { listenToLinks } from '../../src/commands/listenToLinks';
import { openLink } from '../../src/commands/file/openLink';
import { reportAt } from '../../src/cli/analyse';
import { emptyLayout } from '../../src/layout/defaults';
import { demoLayout } from '../../src/layout/demo';
import { readLayout } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { encodeComparison, encodeLink } from '../../src/link';
import { toBase64url } from '../../src/link/base64url';
import { sealed } from '../../src/link/envelope';
import { workplace } from './bench';

function example(name: string): Layout {
  const read = readLayout(readFileSync(`shared/examples/${name}`, 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}
const ring = example('ring.json');
const view = { height_mm: 60, camera: { centreX_mm: 3, centreY_mm: -4, pxPerMm: 2 } };
const link = encodeLink(ring, view);
const open = (place: ReturnType<typeof workplace>, text: string) =>
  openLink(place.bench, place.context.ports, text);

describe('a plate’s link', () => {
  test('opens the plate at its height and camera, as one step that undo takes back', async () => {
    const place = workplace();
    const before = place.layout();
    await open(place, `https://plates.example/#${link}`);
    expect(place.layout()).toEqual(ring);
    expect(place.bench.store.getState().view).toMatchObject(view);
    expect(place.bench.history().undo).toContain('by its link');
    place.bench.undo();
    expect(place.layout()).toBe(before);
  });

  test('gives the report of the file, to the last digit, at its height', async () => {
    const place = workplace();
    await open(place, link);
    const [linked, file] = [reportAt(place.layout(), 60), reportAt(ring, 60)];
    expect(JSON.stringify(linked)).toBe(JSON.stringify(file));
    expect(file).toMatchObject({ ok: true });
  });

  test('with a height above the plate shows its top, without a view all of it from the lowest layer', async () => {
    const place = workplace();
    await open(place, encodeLink(ring, { height_mm: 5000 }));
    // Ring is 120 mm high
    expect(place.bench.store.getState().view.height_mm).toBe(120);
    await open(place, encodeLink(demoLayout()));
    expect(place.bench.store.getState().view).toMatchObject({ height_mm: 0, camera: null });
  });

  test('of many thousand characters comes through too', async () => {
    const place = workplace();
    const noisy = (n: number): number => Math.round(1e5 * Math.sin(n * n)) / 1e3;
    const points = Array.from({ length: 9000 }, (_, i) => [noisy(i), noisy(i + 0.5)] as const);
    const slabs = [{ to_mm: 5, rings: [points] }];
    const large: Layout = { ...ring, shapes: { ...ring.shapes, cloud: { slabs } } };
    const text = encodeLink(large);
    expect(text.length).toBeGreaterThan(20_000);
    await open(place, text);
    expect(place.layout()).toEqual(large);
  });
});

const bomb = sealed('layout', toBase64url(deflateRawSync(new Uint8Array(200_000_000), { level: 9 })));

describe('a link that', () => {
  test.each([
    ['was cut', link.slice(0, -12), 'link-cut'],
    ['was altered', `${link.slice(0, 60)}${link[60] === 'x' ? 'y' : 'x'}${link.slice(61)}`, 'link-altered'],
    ['a newer version made', link.replace('L1.', 'L2.'), 'link-newer'],
    ['is none of ours', '#chapter-3', 'link-none'],
    ['is a bomb', bomb, 'link-too-large'],
  ])('%s is told and changes nothing', async (_, text, code) => {
    const place = workplace();
    const before = place.bench.store.getState();
    await open(place, text);
    const after = place.bench.store.getState();
    expect(after.view.notices.map(({ fault }) => fault.code)).toEqual([code]);
    expect(after.layout).toBe(before.layout);
    expect({ ...after.view, notices: [] }).toEqual(before.view);
    expect(place.bench.history().undo).toBeNull();
  });
});

test('a comparison’s link goes to its screen and leaves the open plate alone', async () => {
  const place = workplace();
  const before = place.layout();
  await open(place, encodeComparison([ring, emptyLayout()], { height_mm: 7 }));
  expect(place.asked.comparisons).toEqual([
    { kind: 'comparison', layouts: [ring, emptyLayout()], view: { height_mm: 7 } },
  ]);
  expect(place.layout()).toBe(before);
});

describe('the address', () => {
  beforeEach(() => window.history.replaceState(null, '', '/yard/?day=2'));

  test('with a plate opens it before anything is drawn and is then without it', async () => {
    const place = workplace();
    window.location.hash = link;
    await openFirstPlate(window, place.bench);
    expect(place.layout()).toEqual(ring);
    expect(window.location.href).toMatch(/\/yard\/\?day=2$/);
  });

  test('without one, or with a comparison, opens no plate first', async () => {
    const place = workplace();
    const before = place.layout();
    await openFirstPlate(window, place.bench);
    window.location.hash = encodeComparison([ring, ring]);
    await openFirstPlate(window, place.bench);
    expect(place.layout()).toBe(before);
    expect(window.location.hash).not.toBe('');
  });

  test('that changes twice ends at the later link, however slowly the former one is read', async () => {
    const place = workplace();
    const stop = listenToLinks(window, place.context);
    const opened: string[] = [];
    const off = place.bench.store.subscribe(({ layout }, before) => {
      if (layout !== before.layout) opened.push(layout.name);
    });
    // long enough to be read beside the page, where there is a thread
    const points = Array.from(
      { length: 9000 },
      (_, i) => [Math.round(1e5 * Math.sin(i * i)) / 1e3, i] as const,
    );
    const slow: Layout = {
      ...ring,
      name: 'Slow',
      shapes: { ...ring.shapes, cloud: { slabs: [{ to_mm: 5, rings: [points] }] } },
    };
    const text = encodeLink(slow);
    expect(text.length).toBeGreaterThan(20_000);
    window.location.hash = text;
    window.dispatchEvent(new Event('hashchange'));
    window.location.hash = link;
    window.dispatchEvent(new Event('hashchange'));
    await expect.poll(() => opened).toHaveLength(2);
    expect(opened).toEqual(['Slow', ring.name]);
    off();
    stop();
  });

  test('opens what it holds, and what it gets later, until listening stops', async () => {
    const place = workplace();
    window.location.hash = encodeComparison([ring, ring]);
    const stop = listenToLinks(window, place.context);
    await expect.poll(() => place.asked.comparisons).toHaveLength(1);
    window.location.hash = link;
    await expect.poll(() => place.layout()).toEqual(ring);
    expect(window.location.hash).toBe('');
    stop();
    window.location.hash = encodeLink(demoLayout());
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(place.layout()).toEqual(ring);
  });
});
