/** Bytes a first visit loads before the plate is usable, each file gzipped as a file server would send it. */
import { gzipSync } from 'node:zlib';
import type { Browser } from '@playwright/test';

export interface LoadedFile {
  readonly name: string;
  readonly gzipped: number;
}

/** @returns every file asked for until `figure` (a data-testid) shows, largest first */
export const firstLoad = async (browser: Browser, url: string, figure: string): Promise<LoadedFile[]> => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const bodies: Promise<LoadedFile>[] = [];
  page.on('response', (response) => {
    const name = new URL(response.url()).pathname;
    bodies.push(response.body().then((body) => ({ name, gzipped: gzipSync(body, { level: 9 }).length })));
  });
  await page.goto(url);
  await page.getByTestId(figure).waitFor();
  const files = await Promise.all(bodies);
  await page.close();
  return files.toSorted((a, b) => b.gzipped - a.gzipped);
};
