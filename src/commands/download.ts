/** Hands content to the browser as a file to keep. */

/** A browser may still be reading the file when the click returns; this long is plenty. */
const RELEASE_AFTER_MS = 60_000;

export function download(page: Document, name: string, content: string | Uint8Array, mime: string): void {
  const blob = new Blob([content as BlobPart], { type: mime });
  const link = page.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), RELEASE_AFTER_MS);
}
