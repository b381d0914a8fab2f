/** Links that the address names once the page stands. */
import { openText, takeLink, type Address } from './addressLinks';
import type { Context } from './types';

type Page = Address & Pick<Window, 'addEventListener' | 'removeEventListener'>;

/**
 * Opens what the address names now, and whenever it changes, one after the other: a long link that is read slowly does not
 * take the place of a later one. Returns the way to stop.
 */
export function listenToLinks(page: Page, { bench, ports }: Context): () => void {
  let before = Promise.resolve();
  const open = (): void => {
    const text = takeLink(page);
    if (text !== null) before = before.then(() => openText(text, bench, ports));
  };
  open();
  page.addEventListener('hashchange', open);
  return () => page.removeEventListener('hashchange', open);
}
