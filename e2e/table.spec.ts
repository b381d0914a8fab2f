/** A table of parts from a spreadsheet lands through its check page. Shapes and parts of the demo plate. */
import { expect, focusPlan, openDemo, test } from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

/** Puts a text into the system's clipboard by way of a field of the page. */
async function toClipboard(page: Parameters<typeof openDemo>[0], text: string): Promise<void> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.evaluate((words) => navigator.clipboard.writeText(words), text);
}

test('Ctrl+V of a table shows row by row what it will do; placing it is one step', async ({ page }) => {
  const rows = page.locator('[data-part]');
  const count = await rows.count();
  await toClipboard(page, 'Nr;Form;x mm;y in\nP15;;100,5;\nQ1;no such;0;0\nP02;;links;');
  await focusPlan(page);
  await page.keyboard.press('Control+v');
  await expect(page.getByTestId('table-count')).toHaveText('3 rows: 1 changed, 2 refused');
  await expect(page.getByTestId('table-row').nth(1)).toContainText('No shape “no such” on this plate.');
  await expect(page.getByTestId('table-row').nth(2)).toContainText('x mm: “links” is not read.');
  await page.getByTestId('table-place').click();
  await expect(page.getByTestId('part-x')).toHaveValue('100.5');
  await expect(rows).toHaveCount(count);
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('part-x')).toHaveValue('130');
});

test('typed by keyboard alone: the command opens an empty field, and a column is chosen', async ({
  page,
}) => {
  const rows = page.locator('[data-part]');
  const count = await rows.count();
  await toClipboard(page, 'no table');
  await focusPlan(page);
  await page.keyboard.press('Shift+X');
  await expect(page.getByTestId('table-place')).toBeDisabled();
  await page.getByTestId('table-text').fill('P15\tP15\t100\nP02\tP02\t-50');
  await page.getByTestId('table-field-1').selectOption('');
  await expect(page.getByTestId('table-place')).toHaveText('Change 2 parts');
  await page.getByTestId('table-on-taken').selectOption('add');
  await expect(page.getByTestId('table-count')).toHaveText('2 rows: 2 refused');
  await page.keyboard.press('Escape');
  await expect(rows).toHaveCount(count);
});
