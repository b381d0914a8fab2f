/** The library: what is saved comes back after a reload, two windows keep both, one file carries all of it elsewhere. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { checksumNow, chooseFile, choosePart, expect, focusPlan, openDemo, test, typeInto } from './page';

const openLibrary = async (page: Page): Promise<void> => {
  await focusPlan(page);
  await page.keyboard.press('Shift+L');
  await expect(page.getByTestId('library-name')).toBeVisible();
};
const show = (page: Page, kind: string) => page.getByTestId(`library-${kind}`).click();
const save = async (page: Page, name: string, button = 'Save'): Promise<void> => {
  await page.getByTestId('library-name').fill(name);
  await page.getByRole('button', { name: button, exact: true }).click();
};
const entry = (page: Page, name: string) => page.locator(`tr[data-entry="${name}"]`);
const names = (page: Page) => page.getByTestId('library-table').locator('tbody th').allInnerTexts();
const closeDialog = (page: Page) => page.getByRole('button', { name: 'Close' }).click();
/** The checksum once it is worked out; of another plate than `former` where that is given. */
const checksumOf = async (page: Page, former = ''): Promise<string> => {
  let read = '';
  const found = async (): Promise<boolean> => {
    read = await checksumNow(page);
    return /^[0-9a-f]{12}$/.test(read) && read !== former;
  };
  await expect.poll(found).toBe(true);
  return read;
};

test('a saved layout is opened after a reload, and undo brings the plate before it back', async ({
  page,
}) => {
  await openDemo(page);
  const saved = await checksumOf(page);
  await openLibrary(page);
  await save(page, 'Before the move');
  await expect(page.getByTestId('library-done')).toHaveText('“Before the move” is in the library.');
  await expect(entry(page, 'Before the move')).toContainText(saved);
  await expect(entry(page, 'Before the move')).toContainText('the same');
  await closeDialog(page);
  await choosePart(page, 'P15');
  await typeInto(page, 'part-x', '120');
  const moved = await checksumOf(page, saved);
  await page.reload();
  await expect(page.getByTestId('checksum')).toHaveText(moved);
  await openLibrary(page);
  await expect(entry(page, 'Before the move')).toContainText('another one');
  await page.getByRole('button', { name: 'Open Before the move' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(page.getByTestId('checksum')).toHaveText(saved);
  await expect(page.getByTestId('layout-name')).toHaveValue('Before the move');
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('checksum')).toHaveText(moved);
});

test('an entry is renamed, replaced and deleted, each with a way back', async ({ page }) => {
  await openDemo(page);
  await openLibrary(page);
  await save(page, 'Plate A');
  await page.getByRole('button', { name: 'Rename Plate A' }).click();
  await page.getByTestId('library-rename').fill('Plate B');
  await page.keyboard.press('Enter');
  await expect(entry(page, 'Plate B')).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(entry(page, 'Plate A')).toBeVisible();
  await page.getByRole('button', { name: 'Rename Plate A' }).click();
  await page.getByTestId('library-rename').fill('Nothing');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeVisible();
  await expect(entry(page, 'Plate A')).toBeVisible();
  await closeDialog(page);
  await choosePart(page, 'P15');
  const before = await checksumOf(page);
  await typeInto(page, 'part-x', '120');
  const moved = await checksumOf(page, before);
  await openLibrary(page);
  await expect(entry(page, 'Plate A')).toContainText(before);
  await save(page, 'Plate A', 'Replace');
  await expect(entry(page, 'Plate A')).toContainText(moved);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(entry(page, 'Plate A')).toContainText(before);
  await save(page, 'Plate A', 'Keep both');
  await expect(entry(page, 'Plate A (2)')).toContainText(moved);
  await page.getByRole('button', { name: 'Delete Plate A', exact: true }).click();
  await expect(entry(page, 'Plate A')).toBeHidden();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(entry(page, 'Plate A')).toContainText(before);
});

test('a process of the library says where the plate’s differs, and is used by one step', async ({ page }) => {
  await openDemo(page);
  const first = await checksumOf(page);
  await openLibrary(page);
  await show(page, 'process');
  await save(page, 'House process');
  await closeDialog(page);
  await page.getByTestId('tab-process').click();
  const speed = page.locator('.list').getByLabel('hatch speed v');
  await speed.fill('900');
  await speed.press('Enter');
  const slower = await checksumOf(page, first);
  await openLibrary(page);
  await show(page, 'process');
  await expect(entry(page, 'House process')).toContainText('1 value differs');
  await expect(page.locator('tr[data-differences="House process"]')).toHaveText(
    /on the plate: speed 900.mm\/s, here 1000.mm\/s/,
  );
  await page.getByRole('button', { name: 'Use House process' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(speed).toHaveValue('1000');
  await checksumOf(page, slower);
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('checksum')).toHaveText(slower);
});

test('a shape of the library is placed on another plate', async ({ page }) => {
  await openDemo(page);
  await openLibrary(page);
  await show(page, 'shape');
  await page.getByTestId('library-shape-choice').selectOption('bracket');
  await save(page, 'Bracket 30');
  await closeDialog(page);
  await page.getByTestId('file-menu').click();
  await page.getByTestId('menu-new-plate').click();
  await expect(page.getByTestId('empty-plate')).toBeVisible();
  await page.getByTestId('file-menu').click();
  await page.getByTestId('menu-library').click();
  await show(page, 'shape');
  await expect(entry(page, 'Bracket 30')).toContainText('no shape of that name');
  await page.getByRole('button', { name: 'Place one Bracket 30' }).click();
  await expect(page.getByTestId('library-done')).toHaveText('“Bracket 30” stands on the plate as P01.');
  await expect(entry(page, 'Bracket 30')).toContainText('the same');
  await closeDialog(page);
  await expect(page.locator('[data-part="P01"]')).toContainText('Bracket 30');
});

test('two windows see each other’s entries and never write over them', async ({ page, context }) => {
  await openDemo(page);
  const other = await context.newPage();
  await other.goto('./');
  await expect(other.locator('main[data-keys]')).toBeVisible();
  await openLibrary(page);
  await openLibrary(other);
  await save(page, 'Plate A');
  await expect(entry(other, 'Plate A')).toBeVisible();
  // what the second window has seen is older than what the first one makes of it
  await other.getByRole('button', { name: 'Rename Plate A' }).click();
  await other.getByTestId('library-rename').fill('Plate C');
  await page.getByRole('button', { name: 'Delete Plate A' }).click();
  await expect(entry(page, 'Plate A')).toBeHidden();
  await expect(other.getByTestId('library-table')).toBeHidden();
  await save(other, 'Plate A');
  await expect(entry(page, 'Plate A')).toBeVisible();
  await other.close();
});

test('the plate that another window had saved is listed and opened', async ({ page, context }) => {
  await openDemo(page);
  const first = await checksumOf(page);
  const other = await context.newPage();
  await other.goto('./');
  await choosePart(other, 'P15');
  await typeInto(other, 'part-x', '100');
  const theirs = await checksumOf(other, first);
  await expect(page.getByTestId('notices')).toContainText('Another window');
  await choosePart(page, 'P15');
  await typeInto(page, 'part-x', '110');
  const mine = await checksumOf(page, first);
  await page.waitForFunction(() => {
    const { parts } = JSON.parse(localStorage.getItem('evenplate.layout.other') ?? '{"parts":[]}') as {
      parts: { id: string; at_mm: number[] }[];
    };
    return parts.some(({ id, at_mm }) => id === 'P15' && at_mm[0] === 100);
  });
  await openLibrary(page);
  const kept = page.getByTestId('library-kept');
  await expect(kept).toContainText('From another window');
  await kept.getByRole('button', { name: 'Open' }).click();
  await expect(page.getByTestId('checksum')).toHaveText(theirs);
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('checksum')).toHaveText(mine);
  await openLibrary(page);
  await kept.getByRole('button', { name: 'Move into the library' }).click();
  await expect(kept).toBeHidden();
  await expect(page.getByTestId('library-table').locator('tbody tr')).toContainText(theirs);
  await other.close();
});

test('all of it goes out in one file and into another browser; a bad file changes nothing', async ({
  page,
  browser,
  baseURL,
}) => {
  await openDemo(page);
  await openLibrary(page);
  await save(page, 'Plate A');
  await save(page, 'Plate B');
  await show(page, 'machine');
  await save(page, 'Hall 2');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export all' }).click();
  const path = await (await download).path();
  const away = await (await browser.newContext({ baseURL: baseURL ?? '' })).newPage();
  away.on('filechooser', () => undefined);
  await openDemo(away);
  await openLibrary(away);
  await save(away, 'My own');
  const bring = (file: Parameters<typeof chooseFile>[2]) =>
    chooseFile(away, () => away.getByRole('button', { name: 'Import …' }).click(), file);
  await bring({ name: 'cut.json', mimeType: 'application/json', buffer: readFileSync(path).subarray(0, -9) });
  await expect(away.getByTestId('dialog-notices')).toContainText('The library file is not JSON.');
  await expect.poll(() => names(away)).toEqual(['My own']);
  await bring(path);
  await expect(away.getByTestId('library-done')).toHaveText('3 entries added.');
  await expect.poll(async () => (await names(away)).toSorted()).toEqual(['My own', 'Plate A', 'Plate B']);
  await show(away, 'machine');
  await expect(entry(away, 'Hall 2')).toContainText('the same');
  await bring(path);
  await expect(away.getByTestId('library-done')).toHaveText('0 entries added, 3 here already.');
  await away.context().close();
});

test('without a database the library says so in one sentence and the plate stays usable', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { get: () => undefined });
  });
  await openDemo(page);
  await focusPlan(page);
  await page.keyboard.press('Shift+L');
  await expect(page.getByRole('dialog').getByRole('alert')).toContainText('the library is not there');
  await closeDialog(page);
  await choosePart(page, 'P15');
  await typeInto(page, 'part-x', '120');
  await expect(page.getByTestId('part-x')).toHaveValue('120');
});

test('a full storage refuses an entry in one sentence; the library and the plate stay as they were', async ({
  page,
  context,
}) => {
  await openDemo(page);
  // before the first entry: the browser remembers for a while how much room it has found
  const browser = await context.newCDPSession(page);
  const { origin } = new URL(page.url());
  await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  const checksum = await checksumOf(page);
  await openLibrary(page);
  await save(page, 'Plate A');
  await expect(page.getByTestId('dialog-notices')).toContainText('storage is full');
  await expect(page.getByTestId('library-table')).toBeHidden();
  await expect(page.getByTestId('checksum')).toHaveText(checksum);
  await browser.send('Storage.overrideQuotaForOrigin', { origin });
  await save(page, 'Plate A');
  await expect(entry(page, 'Plate A')).toBeVisible();
});
