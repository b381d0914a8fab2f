/**
 * The part after "#" of the page's address. It is read once and taken off: the plate is saved like any other from then
 * on, so that loading the page again brings later edits and not the link's state.
 */
import type { Workbench } from '../store/types';
import type { Context, Ports } from './types';

type Page = Pick<Window, 'location' | 'history' | 'addEventListener' | 'removeEventListener'>;
type Address = Pick<Page, 'location' | 'history'>;
type Opener = Pick<Ports, 'showComparison'>;

const ONE_PLATE = /^#L\d/;

/** Takes it off the address, which makes no step back; null where there is none. */
function takeLink({ location, history }: Address): string | null {
  const { hash, pathname, search } = location;
  if (hash.length < 2) return null;
  history.replaceState(history.state, '', pathname + search);
  return hash;
}

/** Never rejects. */
async function openText(text: string, bench: Workbench, ports: Opener): Promise<void> {
  try {
    const { openLink } = await import('./file/openLink');
    await openLink(bench, ports, text);
  } catch {
    bench.notify({ code: 'link-not-read', params: {} });
  }
}

/** Opens the plate of the address before anything is drawn, so that no other one is seen first. Never rejects. */
export async function openFirstPlate(page: Address, bench: Workbench): Promise<void> {
  const text = ONE_PLATE.test(page.location.hash) ? takeLink(page) : null;
  if (text !== null) await openText(text, bench, { showComparison: () => undefined });
}

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
