/**
 * Parts as text and back. Expected values: the description of the text at the head of clip.ts, written by hand here, and
 * places worked out by hand on blocks 20 × 20. Platform millimetres.
 */
import { describe, expect, it } from 'vitest';
import { clipText, readClip, type Clip } from '../../../src/commands/operations/clip';
import { pasteClip } from '../../../src/commands/operations/paste';
import { emptyLayout } from '../../../src/layout/defaults';
import type { Layout } from '../../../src/layout/types';
import { part, smallPlate } from '../../store/plates';

/** A text as another program could write it: optional keys left out, a circle, lengths finer than a micrometre. */
const byHand = JSON.stringify({
  format: 'evenplate-parts',
  version: 1,
  shapes: { block: { slabs: [{ to_mm: 12.00049, rings: [{ circle_mm: [0, 0, 8] }] }] } },
  parts: [
    { id: 'P02', shape: 'block', at_mm: [10, 20.0004] },
    { id: 'P77', shape: 'block', at_mm: [40, 20], turn_deg: 90, seams: 'none', laser: 'L9' },
  ],
});
const clipOf = (text: string, layout: Layout = smallPlate()): Clip => {
  const read = readClip(layout, text);
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
};
const pasteInto = (layout: Layout, clip: Clip, place: Parameters<typeof pasteClip>[2]): Layout => {
  const next = pasteClip(layout, clip, place);
  if (!next.ok) throw new Error(next.fault.code);
  return next.value;
};
const codeOf = (text: string): string | null => {
  const read = readClip(smallPlate(), text);
  return read.ok ? null : read.fault.code;
};

describe('the text', () => {
  it('holds the chosen parts and only the shapes they need', () => {
    expect(JSON.parse(clipText(smallPlate(), ['P03']))).toEqual({
      format: 'evenplate-parts',
      version: 1,
      shapes: { stepped: smallPlate().shapes['stepped'] },
      parts: [part('P03', 0, 60, 'stepped')],
    });
  });

  it('comes back as the same parts and shapes on an empty plate', () => {
    const before = smallPlate();
    const clip = clipOf(clipText(before, ['P01', 'P02', 'P03']), emptyLayout());
    const after = pasteInto(emptyLayout(), clip, 'inPlace');
    expect([after.parts, after.shapes]).toEqual([before.parts, before.shapes]);
  });

  it('is read by the schema of layouts: rounded, with defaults, pins to unknown lasers lifted and named', () => {
    const { parts, shapes, unpinned } = clipOf(byHand);
    expect(parts).toEqual([
      { ...part('P02', 10, 20), at_mm: [10, 20] },
      { ...part('P77', 40, 20), turn_deg: 90, seams: 'none' },
    ]);
    expect(shapes['block']?.slabs[0]?.to_mm).toBe(12);
    expect(unpinned).toEqual(['P77']);
  });

  it.each([
    ['clip-nothing', '  '],
    ['clip-no-parts', 'The ferry leaves at nine.'],
    ['clip-no-parts', '{"format":"somebody-else"}'],
    ['clip-no-parts', '{ not json'],
    ['clip-table', 'id;x;y\nP01;1,5;2'],
    ['clip-table', 'id\tx\r\nP01\t1'],
    ['clip-table', 'id,x\nP01,1'],
    ['clip-table', 'P01\tblock\t1\t2'],
    ['clip-no-parts', 'P01;block'],
    ['clip-layout', JSON.stringify(smallPlate())],
    ['clip-newer-version', byHand.replace('"version":1', '"version":2')],
    ['clip-wrong-value', byHand.replace('"version":1', '"version":1,"colour":"red"')],
    ['clip-wrong-value', byHand.replace('[40,20]', '[40,1e300]')],
    ['clip-wrong-value', byHand.replace('P77', 'P02')],
    ['clip-wrong-value', byHand.replace('"shape":"block","at_mm":[40', '"shape":"other","at_mm":[40')],
    ['clip-wrong-value', byHand.replace('"circle_mm":[0,0,8]', '"circle_mm":[0,0,-8]')],
    ['clip-wrong-value', byHand.replace('"turn_deg":90', '"turn_deg":90,"mirrored":true')],
    ['clip-wrong-value', '{"format":"evenplate-parts","version":1,"shapes":{},"parts":7}'],
    ['clip-wrong-value', byHand.slice(0, -9)],
    ['clip-nothing', '{"format":"evenplate-parts","version":1,"shapes":{},"parts":[]}'],
  ])('is refused with %s: %s', (code, text) => {
    expect(codeOf(text)).toBe(code);
  });
});

describe('pasting', () => {
  it('gives a taken number a new one, keeps a free one, and renames a shape of another content', () => {
    const before = smallPlate();
    const after = pasteInto(before, clipOf(byHand), 'inPlace');
    expect(after.parts.slice(3).map(({ id, shape }) => [id, shape])).toEqual([
      ['P04', 'block-1'],
      ['P77', 'block-1'],
    ]);
    expect(after.shapes['block']).toBe(before.shapes['block']);
    expect(after.shapes['block-1']?.slabs[0]?.rings).toEqual([{ circle_mm: [0, 0, 8] }]);
  });

  it('shares shapes of the same content, and the renamed one with the next paste', () => {
    const before = smallPlate();
    const own = pasteInto(before, clipOf(clipText(before, ['P01', 'P02'])), 'inPlace');
    expect(Object.keys(own.shapes)).toEqual(['block', 'stepped']);
    const twice = pasteInto(pasteInto(before, clipOf(byHand), 'inPlace'), clipOf(byHand), 'inPlace');
    expect(Object.keys(twice.shapes)).toEqual(['block', 'stepped', 'block-1']);
  });

  it('brings the middle of the group to a point on 0.1 mm steps and keeps distances', () => {
    // blocks at (−60, −60) and (60, −60): their middle is (0, −60)
    const before = smallPlate();
    const clip = clipOf(clipText(before, ['P01', 'P02']));
    const after = pasteInto(before, clip, [12.34, 0.06]);
    expect(after.parts.slice(3).map(({ at_mm }) => at_mm)).toEqual([
      [-47.7, 0.1],
      [72.3, 0.1],
    ]);
  });

  it('shows a second paste at the same point beside the first one', () => {
    const before = smallPlate();
    const clip = clipOf(clipText(before, ['P01']));
    const twice = pasteInto(pasteInto(before, clip, [0, 0]), clip, [0, 0]);
    expect(twice.parts.slice(3).map(({ at_mm }) => at_mm)).toEqual([
      [0, 0],
      [5, -5],
    ]);
  });

  it('beside: where the parts were where that is free, else next to it', () => {
    const before = smallPlate();
    const clip = clipOf(clipText(before, ['P01']));
    const beside = pasteInto(before, clip, 'beside').parts.at(-1)!.at_mm;
    expect(beside[1]).toBe(-60);
    expect(beside[0]).toBeCloseTo(-60 + 20 + before.limits.spacing_mm, 6);
    const removed = { ...before, parts: before.parts.slice(1) };
    expect(pasteInto(removed, clip, 'beside').parts.at(-1)).toEqual(part('P01', -60, -60));
  });

  it('is refused where the plate would hold more parts than a layout may', () => {
    const parts = Array.from({ length: 4999 }, (_, i) => part(`Q${i}`, 0, 0));
    const full = { ...smallPlate(), parts };
    expect(pasteClip(full, clipOf(byHand), 'inPlace')).toEqual({
      ok: false,
      fault: { code: 'too-many-parts', params: { found: 5001, limit: 5000 } },
    });
  });
});
