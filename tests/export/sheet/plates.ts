/** Plates that the tests of the sheet share. */
import { readFileSync } from 'node:fs';
import { readLayout } from '../../../src/layout/read';
import type { Layout, Zoning } from '../../../src/layout/types';

export function example(name: string): Layout {
  const read = readLayout(readFileSync(`shared/examples/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(`${name}: ${read.fault.code}`);
  return read.value;
}
export const WHOLE_FIELD: Zoning = { strategy: 'wholeField' };
export const divided = (layout: Layout, zoning: Zoning): Layout => ({
  ...layout,
  zoning: [{ from_mm: 0, zoning }],
});
