// A dose that does not fill the layer is a problem: by hand from the mass balance of a layer [mathematics].
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { messageText } from '../../src/layout/messages';
import { readLayout } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';

function tallOne(doseFactor: number): Layout {
  const text = readFileSync(new URL('../../shared/examples/tall-one.json', import.meta.url), 'utf8');
  const read = readLayout(text);
  if (!read.ok) throw new Error(read.fault.code);
  return { ...read.value, process: { ...read.value.process, doseFactor, packing: 0.6 } };
}
const dose = (layout: Layout) => analyse(layout).problems.filter(({ code }) => code === 'dose-too-small');

// Up to 60 mm: 40 000 of 160 000 mm² melt, need (120 000 + 40 000 / 0.6) / 160 000 = 1.1667 doses; above it 10 000 mm²:
// (150 000 + 10 000 / 0.6) / 160 000 = 1.0417. A dose is 160 000 mm² x 0.06 mm = 9.6 cm³.
test('a factor of 2 fills every layer', () => {
  expect(dose(tallOne(2))).toEqual([]);
});

test('a factor of 1.1 is short by 0.0667 doses in the lower 1000 layers alone: 0.640 cm³', () => {
  const [found] = dose(tallOne(1.1));
  expect(found!.params).toMatchObject({
    layers: 1000,
    from: 1,
    short: { number: '0.640' },
    factor: { number: '1.17' },
  });
  expect(found!.blocks).toBe(true);
  expect(messageText(found!.code, found!.params)).toContain('need up to 0.640 cm³ more powder');
});

test('a factor of 1 is short in all 4000 layers, and 1.17 is enough', () => {
  expect(dose(tallOne(1))[0]!.params).toMatchObject({ layers: 4000, short: { number: '1.60' } });
  expect(dose(tallOne(1.17))).toEqual([]);
});
