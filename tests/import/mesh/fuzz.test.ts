// Files with bytes changed, left out or doubled: reading gives a mesh or one sentence, and never throws; what is read can
// be checked and cut. Seeds are printed by fast-check where a run fails.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkMesh, orient, readMesh, sectionMesh } from '../../../src/import/mesh';
import { messageAdvice, messageText } from '../../../src/layout/messages';
import type { Fault } from '../../../src/layout/result';
import { binaryStl, box, inverted, meshXml, textStl, threeMf, together } from './meshes';

const mesh = together(
  box([0, 0, 0], [8, 8, 8]),
  inverted(box([2, 2, 2], [6, 6, 6])),
  box([4, 4, 4], [9, 9, 9]),
);
const objects = `<object id="1">${meshXml(mesh)}</object><object id="2"><components><component objectid="1" transform="1 0 0 0 1 0 0 0 1 3 0 0"/></components></object>`;
const files: readonly [string, Uint8Array][] = [
  ['binary STL', binaryStl(mesh)],
  ['STL as text', new TextEncoder().encode(textStl(mesh))],
  ['3MF', threeMf(objects, '<item objectid="1"/><item objectid="2"/>')],
];

interface Change {
  readonly at: number;
  readonly kind: 'set' | 'cut' | 'double' | 'end';
  readonly value: number;
}
const change = fc.record<Change>({
  at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  kind: fc.constantFrom('set', 'set', 'set', 'cut', 'double', 'end'),
  value: fc.integer({ min: 0, max: 255 }),
});
function changed(file: Uint8Array, { at, kind, value }: Change): Uint8Array {
  const place = Math.floor(at * file.length);
  const [before, after] = [file.subarray(0, place), file.subarray(place)];
  if (kind === 'set') return Uint8Array.from([...before, value, ...after.subarray(1)]);
  if (kind === 'cut') return Uint8Array.from([...before, ...after.subarray(1 + (value % 16))]);
  if (kind === 'double') return Uint8Array.from([...before, ...after.subarray(0, value), ...after]);
  return before.slice();
}
const sentence = ({ code, params }: Fault): string => {
  const text = `${messageText(code, params)} ${messageAdvice(code, params)}`;
  expect(text).not.toMatch(/undefined|\[object/);
  return text;
};

describe.each(files)('%s', (_, file) => {
  test('with changes is read or refused in words', { timeout: 60_000 }, () => {
    let read = 0;
    let refused = 0;
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        const made = readMesh(changes.reduce(changed, file), 'part.stl');
        if (!made.ok) {
          refused += 1;
          expect(sentence(made.fault).length).toBeGreaterThan(10);
          return;
        }
        read += 1;
        for (const body of made.value.bodies) {
          const standing = orient(body.mesh);
          checkMesh(standing, 0.01).findings.forEach(sentence);
          const height = checkMesh(standing, 0.01).size_mm[2];
          if (!(height < 1000)) continue;
          const cut = sectionMesh(standing, { layer_mm: Math.max(0.1, height / 50), chainGap_mm: 0.01 });
          if (!cut.ok) sentence(cut.fault);
          else expect(cut.value.slabs.at(-1)!.to_mm).toBeCloseTo(height, 2);
        }
      }),
      { numRuns: 300 },
    );
    expect(refused).toBeGreaterThan(10);
    expect(read + refused).toBeGreaterThanOrEqual(300);
  });
});

test('noise behind the first bytes of each kind is refused', () => {
  const starts = [[0x50, 0x4b, 3, 4], [...new TextEncoder().encode('solid ')], [0, 0, 0, 0], []];
  fc.assert(
    fc.property(fc.constantFrom(...starts), fc.uint8Array({ maxLength: 400 }), (start, noise) => {
      const made = readMesh(Uint8Array.from([...start, ...noise]), 'part.3mf');
      expect(made.ok).toBe(false);
    }),
    { numRuns: 500 },
  );
});
