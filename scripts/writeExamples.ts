/**
 * Writes shared/examples: the plates that tests, the command line and the browser tests open as files.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { demoLayout } from '../src/layout/demo';
import { writeLayout } from '../src/layout/write';
import type { Layout } from '../src/layout/types';
import { HAND_PLATES } from './examples/handPlates';
import { NIST_PLATES } from './examples/nistPlate';

export const EXAMPLES_FOLDER = new URL('../shared/examples/', import.meta.url);

/** File name → layout. */
export const EXAMPLES: Readonly<Record<string, Layout>> = {
  ...HAND_PLATES,
  ...NIST_PLATES,
  'demo.json': demoLayout(),
};

function writeAll(): void {
  for (const [file, layout] of Object.entries(EXAMPLES)) {
    writeFileSync(new URL(file, EXAMPLES_FOLDER), writeLayout(layout));
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeAll();
