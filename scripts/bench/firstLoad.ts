/**
 * Bytes a first visit loads, each file gzipped as a file server would send it: those that had arrived when the plan
 * and its figures stood on the page (the plate can be dragged from then on), and those that came after by themselves.
 */
import { gzipSync } from 'node:zlib';
import type { Browser, Response } from '@playwright/test';

export interface LoadedFile {
  readonly name: string;
  readonly gzipped: number;
  /** It had arrived before the plate was usable. */
  readonly needed: boolean;
}
declare global {
  interface Window {
    usableAt?: number;
  }
}

/** Runs in the page from its first moment: notes when plan and figures are both in the document. */
const noteUsable = (figure: string): void => {
  const look = (): void => {
    const there = document.querySelector(`[data-testid="${figure}"]`)?.textContent;
    if (!there || document.querySelector('[data-testid="plan"] canvas') === null) return;
    window.usableAt = performance.now();
    watcher.disconnect();
  };
  const watcher = new MutationObserver(look);
  watcher.observe(document, { childList: true, subtree: true });
};
const arrivedBefore = (): string[] => {
  const at = window.usableAt ?? Infinity;
  const entries = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
  return entries.filter((entry) => entry.responseEnd <= at).map((entry) => new URL(entry.name).pathname);
};

const sizeOf = async (response: Response): Promise<{ name: string; gzipped: number }> => ({
  name: new URL(response.url()).pathname,
  gzipped: gzipSync(await response.body(), { level: 9 }).length,
});

/**
 * @param locale what the browser speaks
 * @returns every file asked for until the network is quiet, largest first; the document itself counts as needed
 */
export const firstLoad = async (
  browser: Browser,
  url: string,
  figure: string,
  locale = 'en-GB',
): Promise<LoadedFile[]> => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, locale });
  const responses: Response[] = [];
  page.on('response', (response) => responses.push(response));
  await page.addInitScript('globalThis.__name ??= (named) => named');
  await page.addInitScript(noteUsable, figure);
  await page.goto(url, { waitUntil: 'networkidle' });
  await page.waitForFunction(() => window.usableAt !== undefined);
  const needed = new Set([...(await page.evaluate(arrivedBefore)), '/']);
  const files = await Promise.all(responses.map(sizeOf));
  await page.close();
  return files
    .map((file) => ({ ...file, needed: needed.has(file.name) }))
    .toSorted((a, b) => b.gzipped - a.gzipped);
};
