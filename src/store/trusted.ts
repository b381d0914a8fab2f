/**
 * Whether the open plate may be written over the saved one. Without a failure it may; after one only if it reads back as
 * a layout and the engine can work on it. No units.
 */
import { readLayout } from '../layout/read';
import type { Layout } from '../layout/types';
import { writeLayout } from '../layout/write';
import { hasCrashed } from './crashes';
import type { Workbench } from './types';

function works(bench: Workbench): boolean {
  try {
    bench.analysis();
    return true;
  } catch {
    return false;
  }
}

function reads(layout: Layout): boolean {
  try {
    return readLayout(writeLayout(layout)).ok;
  } catch {
    return false;
  }
}

/** True where `layout`, the settled state of `bench`, may be saved. */
export const isTrusted = (bench: Workbench, layout: Layout): boolean =>
  !hasCrashed(bench) || (reads(layout) && works(bench));
