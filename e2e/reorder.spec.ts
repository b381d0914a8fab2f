/** The order of the part list: rows dragged by their grip, moved by keys, taken from a sorted column; and renaming in it. */
import type { Page } from '@playwright/test';
import { expect, fingersOn, openDemo, test } from './page';

const ids = (page: Page): Promise<(string | null)[]> =>
  page
    .locator('tr[data-part]')
    .evaluateAll((rows) => rows.slice(0, 5).map((row) => row.getAttribute('data-part')));
const rowOf = (page: Page, id: string) => page.locator(`tr[data-part="${id}"]`);
const middleOf = async (page: Page, id: string): Promise<number> => {
  const box = (await rowOf(page, id).boundingBox())!;
  return box.y + box.height / 2;
};
/** Takes a row by its grip down to just below the middle of another and holds it there. */
async function carry(page: Page, id: string, below: string): Promise<void> {
  const grip = (await page.getByTestId(`grip-${id}`).boundingBox())!;
  const x = grip.x + grip.width / 2;
  await page.mouse.move(x, grip.y + grip.height / 2);
  await page.mouse.down();
  const y = await middleOf(page, below);
  await page.mouse.move(x, y + 4, { steps: 5 });
}

test('a row is dragged to another place, and undo brings it back', async ({ page }) => {
  await openDemo(page);
  await expect.poll(() => ids(page)).toEqual(['P01', 'P02', 'P03', 'P04', 'P05']);
  await carry(page, 'P01', 'P03');
  await expect(page.getByTestId('row-landing')).toHaveText('3 of 27');
  await page.mouse.up();
  await expect.poll(() => ids(page)).toEqual(['P02', 'P03', 'P01', 'P04', 'P05']);
  await expect(page.getByTestId('spoken')).toHaveText('P01 is now 3 of 27');
  await page.keyboard.press('Control+z');
  await expect.poll(() => ids(page)).toEqual(['P01', 'P02', 'P03', 'P04', 'P05']);
  await carry(page, 'P02', 'P04');
  await page.keyboard.press('Escape');
  await expect(page.getByTestId('row-landing')).toHaveCount(0);
  await page.mouse.up();
  await expect.poll(() => ids(page)).toEqual(['P01', 'P02', 'P03', 'P04', 'P05']);
});

test('keys move the selected rows and the focus stays with them', async ({ page }) => {
  await openDemo(page);
  await rowOf(page, 'P02').getByRole('button', { name: 'P02', exact: true }).click();
  await page.keyboard.press('Alt+ArrowDown');
  await expect.poll(() => ids(page)).toEqual(['P01', 'P03', 'P02', 'P04', 'P05']);
  await expect(rowOf(page, 'P02').getByRole('button', { name: 'P02', exact: true })).toBeFocused();
  await page.keyboard.press('Alt+Shift+ArrowUp');
  await expect.poll(() => ids(page)).toEqual(['P02', 'P01', 'P03', 'P04', 'P05']);
});

test('a sorted list gives the layout its order in one step', async ({ page }) => {
  await openDemo(page);
  await page.getByTitle('Sort by shape').click();
  await expect.poll(() => ids(page)).not.toEqual(['P01', 'P02', 'P03', 'P04', 'P05']);
  const sorted = await ids(page);
  await expect(page.getByTestId('grip-P01')).toHaveCount(0);
  await page.getByTestId('command-keep-order').click();
  await expect.poll(() => ids(page)).toEqual(sorted);
  await expect(page.getByTestId('grip-P01')).toHaveCount(1);
  await page.keyboard.press('Control+z');
  await expect.poll(() => ids(page)).toEqual(['P01', 'P02', 'P03', 'P04', 'P05']);
});

test('F2 renames from the row; the focus comes back, and undo keeps selection and lock', async ({ page }) => {
  await openDemo(page);
  await rowOf(page, 'P03').getByRole('button', { name: 'P03', exact: true }).click();
  await page.keyboard.press('Shift+P');
  await page.keyboard.press('F2');
  await expect(page.getByTestId('part-id')).toBeFocused();
  await page.keyboard.type('pump');
  await page.keyboard.press('Enter');
  await expect(rowOf(page, 'pump').getByRole('button', { name: 'pump', exact: true })).toBeFocused();
  await expect(rowOf(page, 'pump')).toHaveAttribute('data-selected', 'true');
  await expect(rowOf(page, 'pump').locator('.padlock')).toBeVisible();
  await expect(page.getByTestId('part-id')).toHaveAttribute('aria-invalid', 'false');
  await page.keyboard.press('Control+z');
  await expect(rowOf(page, 'P03')).toHaveAttribute('data-selected', 'true');
  await expect(rowOf(page, 'P03').locator('.padlock')).toBeVisible();
});

test('Escape gives up a new name, and keys that cannot move rows say why', async ({ page }) => {
  await openDemo(page);
  await rowOf(page, 'P03').getByRole('button', { name: 'P03', exact: true }).click();
  await page.keyboard.press('F2');
  await expect(page.getByTestId('part-id')).toBeFocused();
  await page.keyboard.type('pump');
  await page.keyboard.press('Escape');
  await expect(rowOf(page, 'P03').getByRole('button', { name: 'P03', exact: true })).toBeFocused();
  await expect(rowOf(page, 'pump')).toHaveCount(0);
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await page.getByTitle('Sort by shape').click();
  await rowOf(page, 'P03').getByRole('button', { name: 'P03', exact: true }).click();
  await page.keyboard.press('Alt+ArrowUp');
  await expect(page.getByTestId('notices')).toContainText('a column sorts the list');
});

test.describe('with fingers', () => {
  test.use({ hasTouch: true });

  test('the grip carries a row, the row beside it scrolls the list; what the system takes away stays put', async ({
    page,
  }) => {
    await openDemo(page);
    const touch = await fingersOn(page);
    const grip = (await page.getByTestId('grip-P01').boundingBox())!;
    const from = [grip.x + grip.width / 2, grip.y + grip.height / 2] as const;
    const to = (await middleOf(page, 'P03')) + 4;
    const carryDown = async () => {
      await touch('touchStart', [from]);
      for (let i = 1; i <= 5; i++) await touch('touchMove', [[from[0], from[1] + ((to - from[1]) * i) / 5]]);
      await expect(page.getByTestId('row-landing')).toHaveText('3 of 27');
    };
    await carryDown();
    await touch('touchCancel', []);
    await expect(page.getByTestId('row-landing')).toHaveCount(0);
    await expect.poll(() => ids(page)).toEqual(['P01', 'P02', 'P03', 'P04', 'P05']);
    await carryDown();
    await touch('touchEnd', []);
    await expect.poll(() => ids(page)).toEqual(['P02', 'P03', 'P01', 'P04', 'P05']);
    const list = page.locator('.part-table');
    const row = (await rowOf(page, 'P05').boundingBox())!;
    await touch('touchStart', [[row.x + 120, row.y]]);
    for (let i = 1; i <= 5; i++) await touch('touchMove', [[row.x + 120, row.y - 20 * i]]);
    await touch('touchEnd', []);
    await expect.poll(() => list.evaluate((element) => element.scrollTop)).toBeGreaterThan(20);
    await expect.poll(() => ids(page)).toEqual(['P02', 'P03', 'P01', 'P04', 'P05']);
  });
});
