// The checksum is SHA-256 over canonical JSON (RFC 8785) without name, note and revision, first 12 digits.
// Node's own OpenSSL is the second opinion on SHA-256; canonical JSON of plain data is sorted keys without blanks.
import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { canonical, checksum, checksumSteps } from '../../src/layout/checksum';
import { emptyLayout } from '../../src/layout/defaults';
import { readLayoutValue } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { changed, REVISION, sample } from './sample';

const read = (json: unknown): Layout => {
  const result = readLayoutValue(json);
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
};

/** Keys sorted by UTF-16 code units, no blanks: RFC 8785 for data without exotic numbers. */
function sorted(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(sorted).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, entry]) => `${JSON.stringify(key)}:${sorted(entry)}`).join(',')}}`;
}

/** What a file of version 1 holds but for name and note, every default written out. */
function ofVersion1(layout: Layout): object {
  const { name: _name, note: _note, schedule: _none, revision: _unfiled, zoning, ...rest } = layout;
  return { ...rest, version: 1, zoning: zoning[0]?.zoning };
}

test('it is the start of SHA-256 over the sorted JSON without name and note', () => {
  const layout = read(sample());
  const rest = ofVersion1(layout);
  expect(canonical(layout)).toBe(sorted(rest));
  expect(checksum(layout)).toBe(createHash('sha256').update(sorted(rest), 'utf8').digest('hex').slice(0, 12));
  expect(checksum(layout)).toMatch(/^[0-9a-f]{12}$/);
});

const inPieces = (layout: Layout): string => {
  const steps = checksumSteps(layout);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};

test('taken piece by piece it is the same, whatever the shapes are called and however many slabs they have', () => {
  const layout = read(sample());
  const [shape] = Object.values(layout.shapes);
  const slabs = [0.5, 1, 7].map((to_mm) => ({ ...shape!.slabs[0]!, to_mm }));
  const shapes = { ...layout.shapes, 'ä "b"\\': { slabs }, Z: shape!, '1': shape!, shapes: { slabs } };
  for (const each of [layout, { ...layout, shapes }, { ...layout, shapes, note: 'other' }]) {
    const expected = createHash('sha256')
      .update(sorted(ofVersion1(each)), 'utf8')
      .digest('hex')
      .slice(0, 12);
    expect(inPieces(each)).toBe(expected);
  }
});

test('name and note do not change it, a moved part does', () => {
  const before = checksum(read(sample()));
  expect(checksum(read(changed(['name'], 'Another name')))).toBe(before);
  expect(checksum(read(changed(['note'], 'A note')))).toBe(before);
  expect(checksum(read(changed(['parts', 0, 'at_mm'], [-60, -49.999])))).not.toBe(before);
});

test('a revision does not change it, whatever it says', () => {
  const layout = read(sample());
  expect(checksum({ ...layout, revision: REVISION })).toBe(checksum(layout));
  const rest = ofVersion1({ ...layout, revision: REVISION });
  expect(canonical({ ...layout, revision: { ...REVISION, state: 'released' } })).toBe(sorted(rest));
});

test('the order of keys and a default that is written out do not change it', () => {
  const json = sample();
  const reversed = Object.fromEntries(Object.entries(json).reverse());
  expect(checksum(read(reversed))).toBe(checksum(read(json)));
  expect(checksum(read(changed(['limits'], undefined)))).toBe(checksum(read(json)));
});

test('an id outside ASCII is hashed as UTF-8', () => {
  const layout = { ...emptyLayout(), machine: { ...emptyLayout().machine, name: 'Fähre ⚓' } };
  const rest = ofVersion1(layout);
  expect(checksum(layout)).toBe(createHash('sha256').update(sorted(rest), 'utf8').digest('hex').slice(0, 12));
});
