/**
 * Windows of one browser tell each other that the library has changed, and nothing else. Where the browser has no such
 * channel a window sees the others' changes when it lists anew.
 */
const CHANNEL = 'evenplate-library';

const opened: { channel: BroadcastChannel | null } = { channel: null };
const listeners = new Set<() => void>();
const tell = (): void => listeners.forEach((listener) => listener());

function channel(): BroadcastChannel | null {
  if (typeof BroadcastChannel === 'undefined') return null;
  if (opened.channel === null) {
    opened.channel = new BroadcastChannel(CHANNEL);
    opened.channel.onmessage = tell;
  }
  return opened.channel;
}

/** Tells this window's lists and every other window. */
export function tellChanged(): void {
  channel()?.postMessage('changed');
  tell();
}

/** Calls back when any window has changed the library; returns the way to stop. */
export function onLibraryChange(listener: () => void): () => void {
  channel();
  listeners.add(listener);
  return () => void listeners.delete(listener);
}
