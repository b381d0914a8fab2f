/**
 * The page without a network after the first visit: asks the browser to keep the built files (sw.js, made by the build).
 * Where it may not (no TLS, a file opened from a disk, a browser that refuses) nothing is said: the page works as it is.
 * A newer version is kept beside the open one and takes over once every window of this page has been closed, so nothing
 * is loaded anew under anyone's hands.
 */

/** Files are asked for once nobody waits for the plate any more. */
const AFTER_MS = 2000;

const address = (page: Document): URL => new URL('sw.js', page.baseURI);

/** Resolves to whether the files are being kept; never rejected. */
export async function keepForOffline(page: Document, container?: ServiceWorkerContainer): Promise<boolean> {
  if (!container || !address(page).protocol.startsWith('http')) return false;
  try {
    await new Promise((resolve) => setTimeout(resolve, AFTER_MS));
    await container.register(address(page), { updateViaCache: 'none' });
    return true;
  } catch {
    return false;
  }
}
