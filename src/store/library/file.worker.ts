/** Reads a library file beside the page: one file in, its entries or the fault out, as texts with their heads. */
import { readLibraryText } from './file';
import { fail } from '../../layout/result';

self.onmessage = async ({ data: file }: MessageEvent<File>) => {
  const text = await file.text().catch(() => null);
  self.postMessage(text === null ? fail('file-unreadable', { name: file.name }) : readLibraryText(text));
};
