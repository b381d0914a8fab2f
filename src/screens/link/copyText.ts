/**
 * Puts a text on the clipboard. Pages served without TLS have no navigator.clipboard, and a browser may refuse it: then the
 * text is selected in its field and copied by the browser's own command; where that fails too, it stays selected.
 */
export type Copied = 'copied' | 'selected';

async function byClipboard(text: string): Promise<boolean> {
  try {
    if (!('clipboard' in navigator)) return false;
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

function bySelection(field: HTMLTextAreaElement): boolean {
  field.focus();
  field.select();
  try {
    return document.execCommand('copy');
  } catch {
    return false;
  }
}

/** `field` holds the text. */
export const copyText = async (field: HTMLTextAreaElement): Promise<Copied> =>
  (await byClipboard(field.value)) || bySelection(field) ? 'copied' : 'selected';
