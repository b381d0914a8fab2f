/** Drawn zones, several parts turned together, the note: in the real page, by hand and by key. */
import type { Page } from '@playwright/test';
import { choosePart, expect, expectBooksBalanced, figure, focusPlan, openDemo, test } from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

const dragHandle = async (page: Page, handle: string, right: number, down: number): Promise<void> => {
  const box = await page.getByTestId(handle).boundingBox();
  if (box === null) throw new Error(`no handle ${handle} on the plan`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + right, y + down, { steps: 8 });
  await page.mouse.up();
};

test('a drawn zone is reshaped by hand, by key and by number; every way is one undo', async ({ page }) => {
  await focusPlan(page);
  await page.keyboard.press('a');
  await page.getByTestId('tab-division').click();
  // the quadrant in front on the right; its first corner is behind on the left: (−10, 10) with the band of 20 mm
  await page.getByTestId('choose-zone-1').click();
  const x = page.getByTestId('zone-0-0-x');
  await expect(x).toHaveValue('-10');
  const drawn = await page.getByTestId('checksum').innerText();

  await dragHandle(page, 'zone-corner-0-0', 40, 0);
  await expect(x).not.toHaveValue('-10');
  await expect(page.getByTestId('zone-0-0-y')).toHaveValue('10');
  expect(await figure(page, 'unassigned')).toBeGreaterThan(0);
  await expectBooksBalanced(page);
  await page.getByTestId('command-undo').click();
  await expect(x).toHaveValue('-10');

  await page.getByTestId('zone-corner-0-0').focus();
  await page.keyboard.press('ArrowLeft');
  await expect(x).toHaveValue('-11');
  await page.keyboard.press('Insert');
  await expect(page.getByTestId('zone-0-4-x')).toBeVisible();
  await page.keyboard.press('Delete');
  await expect(page.getByTestId('zone-0-4-x')).toHaveCount(0);
  for (let i = 0; i < 3; i++) await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('checksum')).toHaveText(drawn);

  await dragHandle(page, 'zone-middle', 0, 30);
  await expect(x).toHaveValue('-10');
  await expect(page.getByTestId('zone-0-0-y')).not.toHaveValue('10');
});

test('two parts turn about the middle between them, and four quarters bring them back', async ({ page }) => {
  await expect(page.getByTestId('checksum')).toHaveText(/^[0-9a-f]{12}$/);
  const before = await page.getByTestId('checksum').innerText();
  await choosePart(page, 'P15');
  await page.locator('[data-part="P16"]').click({ modifiers: ['Control'] });
  await expect(page.getByTestId('part-inspector')).toContainText('2 PARTS');
  await focusPlan(page);
  await page.keyboard.press('y');
  // seal rings at (130, −62) and (130, −112): a quarter about (130, −87) puts them at x = 105 and 155
  await choosePart(page, 'P15');
  await expect(page.getByTestId('part-x')).toHaveValue('105');
  await expect(page.getByTestId('part-y')).toHaveValue('-87');
  await page.locator('[data-part="P16"]').click({ modifiers: ['Control'] });
  await page.getByTestId('turn-handle').focus();
  for (let i = 0; i < 18; i++) await page.keyboard.press('Shift+ArrowUp');
  await choosePart(page, 'P15');
  expect(Number(await page.getByTestId('part-x').inputValue())).toBeCloseTo(130, 1);
  expect(Number(await page.getByTestId('part-turn').inputValue())).toBe(0);
  for (let i = 0; i < 19; i++) await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('checksum')).toHaveText(before);
});

test('a note, and a name not yet confirmed, survive a reload while they are typed', async ({ page }) => {
  await page.getByTestId('title-note').click();
  await page.getByTestId('layout-note').fill('Second shift\nchecks the filter');
  await page.getByTestId('layout-name').fill('Ferry spares, plate 2');
  await page.reload();
  await expect(page.getByTestId('layout-name')).toHaveValue('Ferry spares, plate 2');
  await page.getByTestId('title-note').click();
  await expect(page.getByTestId('layout-note')).toHaveValue('Second shift\nchecks the filter');
});
