/**
 * A revision from its first draft to its release, and the edit after it, which begins the next one: header, title block,
 * dialog, saved file, undo, reload. Names are made up.
 */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { checksumNow, chooseFile, expect, focusPlan, openDemo, test, typeInto } from './page';

const CHECKSUM = /^[0-9a-f]{12}$/;

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await expect(page.getByTestId('sheet-state')).toHaveText('draft, not released');
});

const openRevision = (page: Page): Promise<void> => page.getByTestId('revision-mark').click();
const closeDialog = async (page: Page): Promise<void> => {
  await page.keyboard.press('Escape');
  await expect(page.getByTestId('revision-dialog')).toHaveCount(0);
};
const step = (page: Page, label: string): Promise<void> =>
  page.getByTestId('revision-dialog').getByRole('button', { name: label, exact: true }).click();
/** Files the open plate as revision A and brings it to "reviewed". */
const review = async (page: Page, author: string, reviewer: string): Promise<void> => {
  await openRevision(page);
  await page.getByTestId('revision-begin').click();
  await typeInto(page, 'revision-reason', 'first plate of the week');
  await typeInto(page, 'revision-author', author);
  await typeInto(page, 'revision-reviewer', reviewer);
  await step(page, 'Mark as reviewed');
};
/** Moves one part by 1 mm. */
const moveOne = async (page: Page): Promise<void> => {
  await page.locator('[data-part="P20"]').click();
  await focusPlan(page);
  await page.keyboard.press('ArrowRight');
};
const stateNow = (page: Page) => page.getByTestId('revision-dialog').locator('[aria-current="step"]');

test('a draft is reviewed and released; every step is recorded and undone', async ({ page }) => {
  await expect(page.getByTestId('revision-mark')).toHaveText('· –');
  await review(page, 'Ada Quay', 'Bo Pier');
  await expect(stateNow(page)).toHaveText('reviewed');
  await expect(page.getByTestId('revision-dialog')).toContainText('a page cannot prove who typed them');
  await expect(page.getByTestId('revision-author')).toHaveText('Ada Quay');
  await step(page, 'Release');
  await expect(stateNow(page)).toHaveText('released');
  await expect(page.getByTestId('revision-checksum')).toHaveText(CHECKSUM);
  const checksum = await page.getByTestId('revision-checksum').innerText();
  await closeDialog(page);
  await expect(page.getByTestId('revision-mark')).toContainText('A');
  await expect(page.getByTestId('sheet-state')).toHaveText('released');
  await expect(page.getByTestId('title-reviewer')).toHaveText('Bo Pier');
  await expect(page.getByTestId('title-reason')).toHaveText('first plate of the week');
  // What is recorded is no part of the plate: the checksum is that of the plate alone.
  await expect(page.getByTestId('checksum')).toHaveText(checksum);
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('sheet-state')).toHaveText('reviewed, not released');
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('sheet-state')).toHaveText('draft, not released');
});

test('an edit of a released plate begins the next revision, derived from it; undo goes back', async ({
  page,
}) => {
  await review(page, 'Ada Quay', 'Bo Pier');
  await step(page, 'Release');
  await closeDialog(page);
  await expect(page.getByTestId('checksum')).toHaveText(CHECKSUM);
  const released = await checksumNow(page);
  await moveOne(page);
  await expect(page.getByTestId('notices')).toContainText('Revision A is released and stays as it is');
  await expect(page.getByTestId('revision-mark')).toContainText('B');
  await expect(page.getByTestId('title-derived')).toHaveText(released);
  await expect(page.getByTestId('title-author')).toHaveText('–');
  await expect(page.getByTestId('checksum')).not.toHaveText(released);
  await expect(page.getByTestId('sheet-state')).toHaveText('draft, not released');
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('revision-mark')).toContainText('A');
  await expect(page.getByTestId('sheet-state')).toHaveText('released');
  await expect(page.getByTestId('checksum')).toHaveText(released);
  await expect(page.getByTestId('notices').locator('p')).toHaveCount(0);
});

test('a review needs two names, and one person under both is said so', async ({ page }) => {
  await openRevision(page);
  await page.getByTestId('revision-begin').click();
  await step(page, 'Mark as reviewed');
  await expect(page.getByRole('alert')).toContainText('names no author');
  await typeInto(page, 'revision-author', 'Ada Quay');
  await expect(page.getByTestId('revision-waits')).toContainText('names no reviewer');
  // Typed and left by the press itself.
  await page.getByTestId('revision-reviewer').fill('ada quay');
  await step(page, 'Mark as reviewed');
  await expect(stateNow(page)).toHaveText('reviewed');
  await expect(page.getByTestId('revision-alone')).toContainText('nobody else has looked');
  await closeDialog(page);
  await expect(page.getByTestId('title-reviewer')).toHaveText('ada quay, the author');
});

test('nothing is released while a fault blocks hand-over', async ({ page }) => {
  // Half of the impeller beyond the edge of the 340 mm platform.
  await page.locator('[data-part="P01"]').click();
  await typeInto(page, 'part-x', '170');
  await expect(page.getByTestId('sheet-state')).toHaveText('NOT FOR USE');
  await review(page, 'Ada Quay', 'Bo Pier');
  await step(page, 'Release');
  await expect(page.getByRole('alert')).toContainText('cannot be released');
  await expect(stateNow(page)).toHaveText('reviewed');
  await closeDialog(page);
  await expect(page.getByTestId('sheet-state')).toHaveText('NOT FOR USE');
});

test('a superseded revision is not for use, and goes through file and reload', async ({ page }) => {
  await review(page, 'Ada Quay', 'Bo Pier');
  await step(page, 'Release');
  await step(page, 'Mark as superseded');
  await expect(stateNow(page)).toHaveText('superseded');
  await expect(page.getByTestId('revision-next')).toHaveCount(0);
  await closeDialog(page);
  await expect(page.getByTestId('sheet-state')).toHaveText('NOT FOR USE');
  const download = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  const text = readFileSync(await (await download).path());
  expect(JSON.parse(text.toString())).toMatchObject({
    version: 3,
    revision: { name: 'A', state: 'superseded' },
  });
  await page.getByTestId('file-menu').click();
  await page.getByTestId('menu-open-demo').click();
  await expect(page.getByTestId('revision-mark')).toHaveText('· –');
  await chooseFile(page, () => page.keyboard.press('Control+o'), {
    name: 'superseded.json',
    mimeType: 'application/json',
    buffer: text,
  });
  await expect(page.getByTestId('title-revision')).toHaveText('A');
  await page.reload();
  await expect(page.getByTestId('title-revision')).toHaveText('A');
  await expect(page.getByTestId('sheet-state')).toHaveText('NOT FOR USE');
});
