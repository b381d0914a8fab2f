/**
 * The page's side of the ports: the browser's file dialog, downloads, dropped files. The two things that belong to
 * screens (check page, dialogs) are passed in.
 */
import { download } from './download';
import type { Context, Ports } from './types';

type ScreenPorts = Pick<Ports, 'showImport' | 'showComparison' | 'showTable' | 'showDialog'>;

/** Asks by an input that never enters the page; null where the dialog is cancelled. */
function pickFile(page: Document, accept: string): Promise<File | null> {
  const input = page.createElement('input');
  input.type = 'file';
  input.accept = accept;
  return new Promise((resolve) => {
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => resolve(null));
    input.click();
  });
}

/** From a field that is there for a moment; the focus goes back to where it was. */
function copyBySelection(page: Document, text: string): boolean {
  const before = page.activeElement;
  const field = page.createElement('textarea');
  field.value = text;
  // An open menu or dialog lets the focus go to nothing outside it.
  (before?.closest('[role=menu], [role=dialog]') ?? page.body).append(field);
  field.focus({ preventScroll: true });
  field.select();
  try {
    return page.execCommand('copy');
  } catch {
    return false;
  } finally {
    field.remove();
    if (before instanceof HTMLElement) before.focus({ preventScroll: true });
  }
}

/** By the browser's clipboard where the page may use it, else by marking the text in a field for a moment. */
async function writeClipboard(page: Document, text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyBySelection(page, text);
  }
}

async function readClipboard(): Promise<string | null> {
  try {
    return await navigator.clipboard.readText();
  } catch {
    return null;
  }
}

/** Ports for a page: `screens` shows the check page and the dialogs. */
export const pagePorts = (page: Document, screens: ScreenPorts): Ports => ({
  ...screens,
  pickFile: (accept) => pickFile(page, accept),
  download: (name, content, mime) => download(page, name, content, mime),
  writeClipboard: (text) => writeClipboard(page, text),
  readClipboard,
});

/** True where something dragged over the page holds files. */
export const holdsFiles = (transfer: DataTransfer | null): boolean =>
  transfer?.types.includes('Files') ?? false;

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
