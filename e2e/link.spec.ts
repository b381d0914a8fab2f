/**
 * Plates by their links. Ring was computed by hand: quadrants take 44.748 h in all, the ring's own layer 70.546 s (process
 * numbers common practice, no source); the links are made of the files in shared/examples.
 */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readLayout } from '../src/layout/read';
import type { Layout } from '../src/layout/types';
import { decodeLink, encodeLink } from '../src/link';
import { choosePart, expect, figure, focusPlan, openDemo, test } from './page';

const example = (name: string): Layout => {
  const read = readLayout(readFileSync(`shared/examples/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
};
const ring = example('ring');
const link = encodeLink(ring, { height_mm: 60, camera: { centreX_mm: 0, centreY_mm: 0, pxPerMm: 1.5 } });
const hours = (page: Page) => expect.poll(() => figure(page, 'build-hours'));
const opened = async (page: Page): Promise<void> => {
  await expect(page.getByTestId('layout-name')).toHaveValue(ring.name);
  await hours(page).toBeCloseTo(44.75, 2);
};
const hash = (page: Page): Promise<string> => page.evaluate(() => window.location.hash);
/** What a person does who types an address into the page's own tab. */
const goToHash = (page: Page, text: string): Promise<void> =>
  page.evaluate((next) => void (window.location.hash = next), text);

test.describe('opening', () => {
  test('a link shows its plate first, at its height; a reload keeps what was edited since', async ({
    page,
  }) => {
    await page.goto(`./#${link}`);
    await opened(page);
    await expect(page.locator('main[data-keys]')).toBeVisible();
    expect(await hash(page)).toBe('');
    expect(await figure(page, 'layer-time')).toBeCloseTo(80.55, 1);
    await expect(page.getByTestId('height')).toHaveValue('60');
    await page.getByRole('button', { name: 'Understood' }).click();
    await choosePart(page, ring.parts[1]!.id);
    await page.keyboard.press('Delete');
    await expect(page.locator(`[data-part="${ring.parts[1]!.id}"]`)).toHaveCount(0);
    await page.reload();
    await expect(page.getByTestId('layout-name')).toHaveValue(ring.name);
    await expect(page.locator(`[data-part="${ring.parts[1]!.id}"]`)).toHaveCount(0);
  });

  test('an address that gets a link opens it; undo brings the former plate, back loses nothing', async ({
    page,
  }) => {
    await openDemo(page);
    const name = await page.getByTestId('layout-name').inputValue();
    await goToHash(page, link);
    await opened(page);
    expect(await hash(page)).toBe('');
    await page.goBack();
    await opened(page);
    await page.getByTestId('plan').focus();
    await page.keyboard.press('Control+z');
    await expect(page.getByTestId('layout-name')).toHaveValue(name);
  });

  for (const [what, text, words] of [
    ['cut', link.slice(0, -20), 'was cut'],
    ['altered', `${link.slice(0, 50)}${link[50] === 'x' ? 'y' : 'x'}${link.slice(51)}`, 'was altered'],
    ['of a newer version', link.replace('L1.', 'L2.'), 'newer version'],
    ['of something else', 'chapter-3', 'holds no plate'],
  ] as const)
    test(`a link that is ${what} says so and leaves the open plate`, async ({ page }) => {
      await openDemo(page);
      const name = await page.getByTestId('layout-name').inputValue();
      await goToHash(page, text);
      await expect(page.getByTestId('notices')).toContainText(words);
      await expect(page.getByTestId('layout-name')).toHaveValue(name);
      await expect(page.getByTestId('command-undo')).toBeDisabled();
    });
});

/** The link that the dialog shows. */
const shown = (page: Page): Promise<string> => page.getByTestId('link-text').inputValue();
const clipboard = (page: Page): Promise<string> => page.evaluate(() => navigator.clipboard.readText());

test.describe('copying', () => {
  test('the link of a dragged plate, whole on the clipboard, brings another browser the same figures', async ({
    page,
    browser,
    context,
  }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await openDemo(page);
    await page.getByTestId('height').fill('12');
    await page.getByTestId('height').press('Enter');
    await choosePart(page, 'P01');
    const place = await page.getByTestId('part-x').inputValue();
    await page.getByTestId('part-x').fill(`${Number(place) + 1.237}`);
    await page.getByTestId('part-x').press('Enter');
    await focusPlan(page);
    await page.keyboard.press('q');
    await page.getByTestId('command-copy-link').click();
    await expect(page.getByTestId('link-length')).toContainText('characters');
    const text = await shown(page);
    await expect(page.getByTestId('link-length')).toHaveText(
      `${text.length.toLocaleString('en-GB').replace(',', '\u202f')} characters.`,
    );
    await page.getByTestId('link-copy').click();
    await expect(page.getByTestId('link-copied')).toHaveText('Copied.');
    expect(await clipboard(page)).toBe(text);
    await expect(page.getByTestId('link-checksum')).toHaveText(/^[0-9a-f]{12}$/);
    const sum = await page.getByTestId('link-checksum').innerText();
    await page.keyboard.press('Escape');
    const other = await (await browser.newContext()).newPage();
    await other.goto(text);
    await expect(other.getByTestId('layer-time')).toHaveText(/\d/);
    for (const name of ['layer-time', 'imbalance-time', 'seam-length', 'build-hours', 'build-exposure'])
      await expect(other.getByTestId(name)).toHaveText(await page.getByTestId(name).innerText());
    await expect(other.getByTestId('height')).toHaveValue('12');
    await expect(other.getByTestId('checksum')).toHaveText(sum);
    await other.context().close();
  });

  test('a page without a clipboard copies by selection', async ({ page, context }) => {
    await context.grantPermissions(['clipboard-read']);
    await page.addInitScript(() =>
      Object.defineProperty(Navigator.prototype, 'clipboard', { value: undefined }),
    );
    await openDemo(page);
    await focusPlan(page);
    await page.keyboard.press('Shift+E');
    await page.getByTestId('link-copy').click();
    await expect(page.getByTestId('link-copied')).toHaveText(/Copied|press Ctrl\+C/);
    const selected = await page.evaluate(() => {
      const field = document.activeElement as HTMLTextAreaElement;
      return field.value.slice(field.selectionStart, field.selectionEnd);
    });
    expect(selected).toBe(await shown(page));
  });

  test('over 2,000 characters a file is offered beside it, with the reason', async ({ page }) => {
    await openDemo(page);
    await focusPlan(page);
    await page.keyboard.press('Shift+E');
    const text = await shown(page);
    expect(text.length).toBeGreaterThan(2000);
    expect(decodeLink(text)).toMatchObject({ ok: true });
    await expect(page.getByTestId('link-long')).toContainText('2\u202f000');
    const saved = page.waitForEvent('download');
    await page.getByTestId('link-file').click();
    expect((await saved).suggestedFilename()).toMatch(/\.json$/);
  });

  test('a short one is offered alone', async ({ page }) => {
    await page.goto(`./#${link}`);
    await opened(page);
    await expect(page.locator('main[data-keys]')).toBeVisible();
    await focusPlan(page);
    await page.keyboard.press('Shift+E');
    await expect(page.getByTestId('link-length')).toBeVisible();
    expect((await shown(page)).length).toBeLessThanOrEqual(2000);
    await expect(page.getByTestId('link-file')).toHaveCount(0);
    await expect(page.getByTestId('link-revision')).toContainText('none');
  });
});

test.describe('the content security policy', () => {
  /** What becomes of a request for a file of the page's own server. */
  const asks = (): Promise<string> =>
    fetch(new URL('./favicon.svg', document.baseURI)).then(
      () => 'answered',
      () => 'refused',
    );

  test('lets the page connect to nothing, its own server included', async ({ browser, baseURL }) => {
    const page = await browser.newPage({ baseURL });
    const violations: string[] = [];
    page.on('console', (message) => violations.push(message.text()));
    await openDemo(page);
    expect(violations).toEqual([]);
    expect(await page.evaluate(asks)).toBe('refused');
    const picture = (): Promise<string> =>
      new Promise((resolve) => {
        const image = new Image();
        image.addEventListener('load', () => resolve('answered'));
        image.addEventListener('error', () => resolve('refused'));
        image.src = 'http://127.0.0.1:1/plate.svg';
      });
    expect(await page.evaluate(picture)).toBe('refused');
    expect(violations.join('\n')).toContain('img-src');
    expect(violations.join('\n')).toContain('connect-src');
    await page.close();
  });

  test('binds the threads beside the page too', async ({ browser, baseURL }) => {
    const page = await browser.newPage({ baseURL });
    await openDemo(page);
    const begun = page.waitForEvent('worker');
    await focusPlan(page);
    await page.keyboard.press('Shift+C');
    const worker = await begun;
    const own = new URL('./favicon.svg', baseURL).href;
    expect(
      await worker.evaluate(
        (address) =>
          fetch(address).then(
            () => 'answered',
            () => 'refused',
          ),
        own,
      ),
    ).toBe('refused');
    await page.close();
  });
});
