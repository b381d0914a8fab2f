/**
 * Puts a copy of a library's entry on the workbench as one history entry: a layout in place of the open one, a machine or
 * a process in place of the plate's, a shape as one more part.
 */
import { t, type Text } from '../../language/index';
import { ok, type Fault, type Result } from '../../layout/result';
import type { Layout, Machine } from '../../layout/types';
import type { Entry } from '../../store/library';
import type { Workbench } from '../../store/types';
import { addedParts } from '../operations/names';
import { heirs, withLibraryMachine, withLibraryProcess, withLibraryShape } from '../operations/fromLibrary';
import { openLayout } from './openLayout';

function changedBy({ head, ...entry }: Entry, layout: Layout): Result<Layout> {
  switch (head.kind) {
    case 'layout':
      return ok(entry.content as Layout);
    case 'machine':
      return withLibraryMachine(layout, entry.content as Machine);
    case 'process':
      return withLibraryProcess(layout, entry.content as Layout['process']);
    case 'shape':
      return withLibraryShape(layout, head.name, entry.content as Layout['shapes'][string]);
  }
}

/** Which lasers took over from which, where the machine has others; null where it has the same. */
function lasersMoved(before: Machine, next: Machine): Fault | null {
  const moves = heirs(before, next);
  if (moves.length === 0) return null;
  const text = moves.map(({ from, to }) => t('{to} takes over from {from}', { to, from })).join(', ');
  return { code: 'library-machine-lasers', params: { moves: text } };
}

/** What is put there, as history says it. */
const PUT: Readonly<Record<'machine' | 'process' | 'shape', Text>> = {
  machine: 'machine “{name}” of the library',
  process: 'process “{name}” of the library',
  shape: 'shape “{name}” of the library',
};

/** The parts that came with it; the fault where it cannot be put there, the layout being untouched. */
export function putEntry(bench: Workbench, entry: Entry): Result<readonly string[]> {
  const { layout: before } = bench.store.getState();
  const next = changedBy(entry, before);
  if (!next.ok) return next;
  const { kind, name } = entry.head;
  if (kind === 'layout') {
    openLayout(bench, t('Open “{name}” of the library', { name }), next.value);
    return ok([]);
  }
  bench.endGesture();
  bench.change(t(PUT[kind], { name }), () => next.value);
  const added = addedParts(before, next.value);
  if (added.length > 0) bench.setView({ selection: added });
  const moved = lasersMoved(before.machine, next.value.machine);
  if (moved) bench.notify(moved);
  return ok(added);
}
