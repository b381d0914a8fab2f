// The files under shared/ are what this program writes and reads today, and the schema file says the same about them
// as the program does. The second opinion on the areas of the plates: coordinates and closed forms of their sources.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { EXAMPLES, EXAMPLES_FOLDER } from '../../scripts/writeExamples';
import { SCHEMA_FILE, schemaText } from '../../scripts/writeSchema';
import { readLayout } from '../../src/layout/read';
import { writeLayout } from '../../src/layout/write';
import type { Layout, Outline } from '../../src/layout/types';

const text = (file: string): string => readFileSync(new URL(file, EXAMPLES_FOLDER), 'utf8');
const open = (file: string): Layout => {
  const result = readLayout(text(file));
  if (!result.ok) throw new Error(`${file}: ${result.fault.code}`);
  return result.value;
};

test('layout.schema.json is the schema that reading uses', () => {
  expect(readFileSync(SCHEMA_FILE, 'utf8')).toBe(schemaText());
});

test('the folder holds every example and nothing else', () => {
  expect(readdirSync(EXAMPLES_FOLDER).sort()).toEqual(Object.keys(EXAMPLES).sort());
});

describe.each(Object.keys(EXAMPLES))('%s', (file) => {
  test('is what the script writes', () => {
    expect(text(file)).toBe(writeLayout(EXAMPLES[file] as Layout));
  });
  test('is read unchanged', () => {
    expect(open(file)).toEqual(EXAMPLES[file]);
  });
});

/** Shoelace formula [mathematics]. */
const area = (ring: Outline): number =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = ring[(i + 1) % ring.length] as readonly [number, number];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0),
  );

/** Section area of the NIST bridge at height z; its rings lie apart, so their areas add up. */
const slabs = open('nist-plate.json').shapes['bridge']?.slabs ?? [];
function bridgeSection(z: number): number {
  const slab = slabs.find(({ to_mm }) => z < to_mm);
  return (slab?.rings ?? []).reduce((sum, ring) => sum + area(ring as Outline), 0);
}

// Heigel et al. (2020), J. Res. NIST 125:125005, doi 10.6028/jres.125.005, and the STL of AMB2018-01 [derived].
describe('the NIST plate has the published sections', () => {
  test.each([
    [0.01, 248.75],
    [4.99, 248.75],
    [5.01, 248.75 + 60 * 0.01],
    [6.13, 248.75 + 60 * 1.13],
    [6.99, 248.75 + 60 * 1.99],
    [7.01, 368.75],
    [11.99, 368.75],
    [12.01, 55],
    [12.49, 55],
  ])('at z = %d mm a part is %d mm²', (z, expected) => {
    expect(bridgeSection(z)).toBeCloseTo(expected, 6);
  });
  test('625 layers of 0.02 mm of one part hold 3732.5 mm³', () => {
    const volume = Array.from({ length: 625 }, (_, k) => bridgeSection((k + 0.5) * 0.02) * 0.02);
    expect(volume.reduce((sum, layer) => sum + layer, 0)).toBeCloseTo(3732.5, 4);
  });
});
