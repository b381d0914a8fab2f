/** The main job by the keyboard alone, and what is heard of it: one polite region that says every step once. */
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { readLayout } from '../src/layout/read';
import { expect, openDemo, test } from './page';

/** Runs a command by the list of commands. */
async function byName(page: Page, words: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await expect(page.getByTestId('palette-input')).toBeFocused();
  await page.keyboard.type(words);
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('palette-input')).toBeHidden();
}
/** Tab until an element has the focus. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 200; i++) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the Tab key does not reach ${selector}`);
}
const heard = (page: Page) => page.getByTestId('spoken');

test.beforeEach(({ page }) => openDemo(page));

test('new plate, parts, division, zone line, imbalance, saved: without the pointer', async ({ page }) => {
  await byName(page, 'new plate');
  await expect(page.locator('[data-part]')).toHaveCount(0);
  await tabTo(page, '[data-testid=plan]');
  // A disc 40 mm across at the left, by the cross that arrows move, and a second one at the right.
  for (const arrow of ['ArrowLeft', 'ArrowRight']) {
    await page.keyboard.press('c');
    for (let i = 0; i < (arrow === 'ArrowLeft' ? 6 : 12); i++) await page.keyboard.press(`Shift+${arrow}`);
    await page.keyboard.press('Enter');
    for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowUp');
    await page.keyboard.press('Enter');
    if (arrow === 'ArrowLeft') for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowDown');
  }
  await expect(page.locator('[data-part]')).toHaveCount(2);
  await page.keyboard.press('w');
  await page.keyboard.press('x');
  await page.keyboard.press('.');
  await expect(heard(page)).toHaveText(/Zone line \d of \d, x .* mm, imbalance .*%$/);
  // told once the plate rests: until then the sentence of the key before stands there
  await expect(async () => {
    const imbalance = (await heard(page).innerText()).match(/imbalance ([\d.]+)/)![1];
    await expect(page.getByTestId('imbalance-time')).toContainText(imbalance!, { timeout: 100 });
  }).toPass({ timeout: 10_000 });
  await tabTo(page, '[data-testid=imbalance-time], [aria-label^="Imbalance by time"]');
  const download = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  const read = readLayout(await readFile(await (await download).path(), 'utf8'));
  expect(read.ok && [read.value.parts.length, read.value.zoning[0]?.zoning.strategy]).toEqual([2, 'strips']);
});

test('arrows move the selected part, which is told once, by one region', async ({ page }) => {
  await expect(heard(page)).toBeAttached();
  await page.evaluate(() => {
    const region = document.querySelector('[data-testid=spoken]')!;
    const told: string[] = [];
    Object.assign(window, { told });
    new MutationObserver(() => told.push(region.textContent ?? '')).observe(region, {
      subtree: true,
      childList: true,
      characterData: true,
    });
  });
  await tabTo(page, '[data-part="P01"] button');
  await page.keyboard.press('Enter');
  await expect(heard(page)).toHaveText(/^P01, x /);
  await tabTo(page, '[data-testid=plan]');
  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowLeft');
  await expect(heard(page)).toHaveText(/^P01, x 107 mm, y 112 mm, turned 15°, 100 % on L4$/);
  await page.waitForTimeout(800);
  const told = await page.evaluate(() => (window as unknown as { told: string[] }).told);
  expect(new Set(told).size).toBe(told.length);
  expect(await page.locator('[aria-live], output, [role=status], [role=log]').count()).toBe(1);
});

test('the plan stands beside the picture as lists with real names', async ({ page }) => {
  const lists = page.getByRole('region', { name: 'Parts and zones of the plan' });
  const rows = await page.locator('[data-part]').count();
  await expect(lists.getByRole('list', { name: 'Parts' }).getByRole('listitem')).toHaveCount(rows);
  await expect(lists.getByRole('list', { name: 'Zones' }).getByRole('listitem').first()).toHaveText(
    /^L1: \d+ parts, section \d+ mm²$/,
  );
});
