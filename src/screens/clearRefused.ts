/** What was said of files refused before is put away by one that opens well. */
import type { Workbench } from '../store/types';

export function clearRefused(bench: Workbench): void {
  for (const { id, fault } of bench.store.getState().view.notices)
    if ('file' in fault.params || fault.code === 'file-unreadable') bench.dismissNotice(id);
}
