/** The list of parts: looking for parts, sorting, renaming, locking, hiding. */
import { choosePart, dragOnPlan, expect, focusPlan, openDemo, test, typeInto } from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

test('words find parts, Enter selects them, a column sorts them', async ({ page }) => {
  const ids = page.locator('[data-part]');
  const all = await ids.count();
  await page.getByTestId('part-search').fill('P1');
  await expect(page.getByTestId('part-count')).toHaveText(new RegExp(`^\\d+ of ${all}$`));
  const found = await ids.count();
  expect(found).toBeLessThan(all);
  await page.getByTestId('part-search').press('Enter');
  await expect(page.getByTestId('part-inspector')).toContainText(`${found} PARTS`);
  await page.getByTestId('part-search').press('Escape');
  await expect(ids).toHaveCount(all);
  await page.getByRole('button', { name: 'mm', exact: true }).click();
  const heights = (await page.locator('[data-part] td:nth-child(3)').allInnerTexts()).map(Number);
  expect(heights).toEqual([...heights].sort((a, b) => a - b));
});

test('an id is changed where it is free', async ({ page }) => {
  await choosePart(page, 'P15');
  await typeInto(page, 'part-id', 'P14');
  await expect(page.getByTestId('part-inspector').getByRole('alert')).toContainText('Another part is called');
  await typeInto(page, 'part-id', 'rudder pin');
  await expect(page.getByTestId('part-inspector')).toContainText('rudder pin');
  await expect(page.locator('[data-part="rudder pin"]')).toHaveAttribute('data-selected', 'true');
  await page.getByTestId('command-undo').click();
  await expect(page.locator('[data-part="P15"]')).toBeVisible();
});

test('a locked part is left by drag, arrows and Delete, and stays locked after a reload', async ({
  page,
}) => {
  await choosePart(page, 'P15');
  const place = async () => [
    Number(await page.getByTestId('part-x').inputValue()),
    Number(await page.getByTestId('part-y').inputValue()),
  ];
  const [x, y] = (await place()) as [number, number];
  await page.getByTestId('command-lock').click();
  await expect(page.getByTestId('turn-handle')).toHaveCount(0);
  await dragOnPlan(page, [x, y], [x - 60, y]);
  await choosePart(page, 'P15');
  expect(await place()).toEqual([x, y]);
  await focusPlan(page);
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Delete');
  expect(await place()).toEqual([x, y]);
  await expect(page.getByTestId('notices')).toContainText('Locked, so left where it stands: P15.');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await page.waitForTimeout(1200);
  await page.reload();
  await page.getByRole('button', { name: 'Unlock P15' }).click();
  await choosePart(page, 'P15');
  await typeInto(page, 'part-x', '-=1');
  await expect(page.getByTestId('part-x')).toHaveValue(String(x - 1));
});

test('a hidden part is an outline, and the figures count it', async ({ page }) => {
  const time = await page.getByTestId('layer-time').innerText();
  await choosePart(page, 'P15');
  await page.getByTestId('command-hide').click();
  await expect(page.locator('[data-part="P15"]')).toHaveAttribute('data-hidden', 'true');
  await expect(page.getByTestId('part-inspector')).toContainText('all figures count them');
  await expect(page.getByTestId('layer-time')).toHaveText(time);
});
