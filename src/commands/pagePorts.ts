/**
 * The page's side of the ports: the browser's file dialog, downloads, the clipboard. What belongs to screens (check page,
 * dialogs) is passed in.
 */
import { download } from './download';
import type { Ports } from './types';

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

/** By the browser's clipboard where the page may use it, else by marking the text in a field for a moment. */
async function writeClipboard(page: Document, text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    const { copyBySelection } = await import('./copyBySelection');
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
