/** Dragged parts come to rest at what stands around them; a modifier suspends it. */
import { choosePart, expect, grabAndMove, onPlan, openDemo, test, typeInto } from './page';

test('a dragged part comes level with another, says so, and Ctrl lets it go', async ({ page }) => {
  await openDemo(page);
  await choosePart(page, 'P15');
  await typeInto(page, 'part-x', '100');
  await typeInto(page, 'part-y', '-60');
  // Taken by its ring. P16 stands at (130, -112); a hand that is 1 mm beside its middle is meant to be on it.
  const grip = 17;
  await grabAndMove(page, [100 + grip, -60], [129 + grip, -52.6]);
  await expect(page.getByTestId('plan-tip')).toContainText('x 130.0');
  await expect(page.getByTestId('plan-marks').locator('.guide')).not.toHaveCount(0);
  await page.keyboard.down('Control');
  await expect(page.getByTestId('plan-marks')).toHaveCount(0);
  await expect(page.getByTestId('plan-tip')).not.toContainText('x 130.0');
  await page.keyboard.up('Control');
  await page.mouse.move(...(await onPlan(page, 129 + grip, -52.6)));
  await page.mouse.up();
  await expect(page.getByTestId('part-x')).toHaveValue('130');
  await expect(page.getByTestId('plan-marks')).toHaveCount(0);
});

test('with a grid the origin of the part comes to it', async ({ page }) => {
  await openDemo(page);
  await page.getByTestId('grid').fill('7.5');
  await page.getByTestId('grid').press('Enter');
  await choosePart(page, 'P15');
  await typeInto(page, 'part-x', '100');
  await typeInto(page, 'part-y', '-60');
  await grabAndMove(page, [100 + 17, -60], [101 + 17, -45.5]);
  await page.mouse.up();
  const y = Number(await page.getByTestId('part-y').inputValue());
  const x = Number(await page.getByTestId('part-x').inputValue());
  // Each axis stands on the grid, unless an edge or a line has pulled it off.
  expect([x % 7.5, y % 7.5].some((rest) => Math.abs(rest) === 0)).toBe(true);
});
