/** Copying where the page may not use the browser's clipboard; loaded only then. */

/** From a field that is there for a moment; the focus goes back to where it was. */
export function copyBySelection(page: Document, text: string): boolean {
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
