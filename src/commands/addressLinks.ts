/**
 * The part after "#" of the page's address. It is read once and taken off: the plate is saved like any other from then
 * on, so that loading the page again brings later edits and not the link's state.
 */
import type { Workbench } from '../store/types';
import type { Ports } from './types';

export type Address = Pick<Window, 'location' | 'history'>;
type Opener = Pick<Ports, 'showComparison'>;

const ONE_PLATE = /^#L\d/;

/** Takes it off the address, which makes no step back; null where there is none. */
export function takeLink({ location, history }: Address): string | null {
  const { hash, pathname, search } = location;
  if (hash.length < 2) return null;
  history.replaceState(history.state, '', pathname + search);
  return hash;
}

/** Never rejects. */
export async function openText(text: string, bench: Workbench, ports: Opener): Promise<void> {
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
