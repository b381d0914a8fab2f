/** The list of commands: found by a few letters, run by Enter, off with the reason; and the sheet of keys made from the same list. */
import { labelOf } from '../src/commands/labels';
import { COMMANDS } from '../src/commands';
import { expect, focusPlan, openDemo, test } from './page';

test.beforeEach(({ page }) => openDemo(page));

test('a few letters and Enter run a command, and the keys work on the plate again', async ({ page }) => {
  await focusPlan(page);
  await page.keyboard.press('Control+k');
  await expect(page.getByTestId('palette-input')).toBeFocused();
  await page.keyboard.type('select all');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(page.getByTestId('part-inspector')).toContainText('PARTS');
  await expect(page.getByTestId('plan')).toBeFocused();
});

test('what does not apply stays in sight with the reason and is not run', async ({ page }) => {
  await page.keyboard.press('Control+k');
  await expect(page.getByTestId('palette-input')).toBeFocused();
  await page.keyboard.type('undo');
  const entry = page.getByTestId('palette-undo');
  await expect(entry).toContainText('nothing to undo');
  await expect(entry).toHaveAttribute('aria-disabled', 'true');
  await page.keyboard.type(' and nothing of that name');
  await expect(page.getByText('No command of that name.')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
});

test('a command that opens a dialog opens it in place of the list, also from within a field', async ({
  page,
}) => {
  await page.getByTestId('layout-name').focus();
  await page.keyboard.press('Control+k');
  await expect(page.getByTestId('palette-input')).toBeFocused();
  await page.keyboard.type('keys and help');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog', { name: 'Keys and help' })).toBeVisible();
  await expect(page.getByTestId('palette-input')).toBeHidden();
  await page.keyboard.press('Escape');
  await expect(page.getByTestId('layout-name')).toBeFocused();
});

test('the sheet of keys holds every command that has a key', async ({ page }) => {
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog').locator('dd').first()).toBeVisible();
  const labels = await page.getByRole('dialog').locator('dd').allInnerTexts();
  const keyed = COMMANDS.filter(({ keys }) => keys.length > 0).map(labelOf);
  expect([...labels].sort()).toEqual([...keyed].sort());
});
