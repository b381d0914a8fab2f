/** Measuring on the plan: corners catch, the result stands in words, keys do it too, and nothing of it enters the layout. */
import { checksumNow, choosePart, dragOnPlan, expect, onPlan, openDemo, test } from './page';

test('a drag from the middle of one ring to that of the next is exactly 50 mm, and leaves the layout alone', async ({
  page,
}) => {
  await openDemo(page);
  const before = await checksumNow(page);
  await page.keyboard.press('Shift+R');
  // the seal rings of the demo plate stand at (130, −62) and (130, −112)
  await page.mouse.move(...(await onPlan(page, 130.8, -61.5)));
  await expect(page.getByTestId('caught')).toHaveAttribute('data-by', 'centre');
  await dragOnPlan(page, [130.8, -61.5], [129.4, -112.6]);
  await expect(page.getByTestId('measured')).toHaveText(
    /^50\.00\u202fmm, Δx 0\.?0*\u202fmm, Δy −50\.00\u202fmm/,
  );
  await expect(page.getByTestId('spoken')).toContainText('50.00');
  expect(await checksumNow(page)).toBe(before);
  await page.keyboard.press('Escape');
  await expect(page.getByTestId('measured')).toHaveCount(0);
  await expect(page.getByTestId('choose-measure')).toHaveAttribute('aria-checked', 'true');
});

test('by keys: the distance of the selected part to its nearest neighbour', async ({ page }) => {
  await openDemo(page);
  await choosePart(page, 'P15');
  await page.keyboard.press('Alt+Shift+R');
  await expect(page.getByTestId('measured')).toContainText(/^P15 to P\d\d: \d/);
});
