/** Selecting, arranging and copying on the real page, and the clipboard between two windows. Places as on the demo plate. */
import { choosePart, expect, focusPlan, grabAndMove, onPlan, openDemo, test } from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

const rows = (page: Parameters<typeof openDemo>[0]) => page.locator('[data-part]');

test('parts copied in one window are pasted in another one, in place and at the pointer', async ({
  page,
  context,
}) => {
  const count = await rows(page).count();
  await choosePart(page, 'P15');
  await focusPlan(page);
  await page.keyboard.press('Control+c');
  const other = await context.newPage();
  await openDemo(other);
  await focusPlan(other);
  await other.keyboard.press('Control+Shift+v');
  await expect(rows(other)).toHaveCount(count + 1);
  await expect(other.getByTestId('part-x')).toHaveValue('130');
  await other.mouse.move(...(await onPlan(other, 0, 0)));
  await other.keyboard.press('Control+v');
  await expect(rows(other)).toHaveCount(count + 2);
  await expect(other.getByTestId('part-x')).not.toHaveValue('130');
  for (let i = 0; i < 2; i++) await other.getByTestId('command-undo').click();
  await expect(rows(other)).toHaveCount(count);
  await other.close();
});

test('a cut part is gone and comes back by paste; a text from elsewhere is refused in words', async ({
  page,
}) => {
  const count = await rows(page).count();
  await choosePart(page, 'P15');
  await focusPlan(page);
  await page.keyboard.press('Control+x');
  await expect(rows(page)).toHaveCount(count - 1);
  await page.keyboard.press('Control+v');
  await expect(page.locator('[data-part="P15"]')).toBeVisible();
  const field = page.getByTestId('part-x');
  await field.fill('id;x;y');
  await field.selectText();
  await page.keyboard.press('Control+c');
  await page.keyboard.press('Escape');
  await focusPlan(page);
  await page.keyboard.press('Control+v');
  await expect(page.getByText('The clipboard holds no parts: “id;x;y”.')).toBeVisible();
  await expect(rows(page)).toHaveCount(count);
});

test('a drag with Alt leaves the original and moves a copy; Escape takes it away', async ({ page }) => {
  const count = await rows(page).count();
  await page.keyboard.down('Alt');
  await grabAndMove(page, [130 + 17, -62], [60, 0]);
  await expect(rows(page)).toHaveCount(count + 1);
  await page.keyboard.press('Escape');
  await expect(rows(page)).toHaveCount(count);
  await page.mouse.up();
  await grabAndMove(page, [130 + 17, -62], [60, 0]);
  await page.mouse.up();
  await page.keyboard.up('Alt');
  await expect(rows(page)).toHaveCount(count + 1);
  await page.getByTestId('command-undo').click();
  await expect(rows(page)).toHaveCount(count);
});

test('a box to the left takes what it touches, and the plan says so', async ({ page }) => {
  await grabAndMove(page, [168, -168], [-168, 168]);
  await expect(page.getByTestId('plan-tip')).toContainText('touched');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await grabAndMove(page, [-168, 168], [168, -168]);
  await expect(page.getByTestId('plan-tip')).toContainText('whole inside');
  await page.mouse.up();
});

test('the selection is aligned and spread by keys, each one step back', async ({ page }) => {
  await focusPlan(page);
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Control+Shift+ArrowLeft');
  await expect(page.getByTestId('command-undo')).toBeEnabled();
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await choosePart(page, 'P15');
  await focusPlan(page);
  await page.keyboard.press('z');
  await page.keyboard.press('Shift+Q');
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
});
