/** Files that are dropped on the page. */
import { holdsFiles } from './holdsFiles';
import type { Context } from './types';

/** Opens files dropped anywhere on `target`, one after the other; returns the way to stop. */
export function listenToDrops(target: Window | HTMLElement, context: Context): () => void {
  const over = (event: Event) => {
    if (holdsFiles((event as DragEvent).dataTransfer)) event.preventDefault();
  };
  const drop = (event: Event) => {
    const { dataTransfer } = event as DragEvent;
    if (!holdsFiles(dataTransfer)) return;
    event.preventDefault();
    void openAll(context, [...(dataTransfer?.files ?? [])]);
  };
  target.addEventListener('dragover', over);
  target.addEventListener('drop', drop);
  return () => {
    target.removeEventListener('dragover', over);
    target.removeEventListener('drop', drop);
  };
}

async function openAll(context: Context, files: readonly File[]): Promise<void> {
  const { openFile } = await import('./file/openFile');
  for (const file of files) await openFile(context, file);
}
