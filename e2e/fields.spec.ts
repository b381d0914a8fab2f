/** Fields for numbers: sums, values of several parts, scrubbing, typed offsets. */
import { choosePart, expect, openDemo, test, typeInto } from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await choosePart(page, 'P15');
});

test('sums are read, and added to what is there', async ({ page }) => {
  const x = page.getByTestId('part-x');
  for (const [typed, mm] of [
    ['120-8,5', '111.5'],
    ['1/2 in + 3', '15.7'],
    ['+=5', '20.7'],
    ['-=1 cm', '10.7'],
  ] as const) {
    await typeInto(page, 'part-x', typed);
    await expect(x).toHaveValue(mm);
  }
  await typeInto(page, 'part-x', '3+2 ft');
  await expect(page.getByTestId('part-inspector').getByRole('alert')).toContainText('“2 ft” is not a length');
});

test('values that differ are called mixed; a sum changes each, a value all, one undo each', async ({
  page,
}) => {
  const x = page.getByTestId('part-x');
  await page.locator('[data-part="P01"]').click({ modifiers: ['Control'] });
  await expect(page.getByTestId('part-inspector')).toContainText('2 PARTS');
  await expect(x).toHaveValue('');
  await expect(x).toHaveAttribute('placeholder', 'mixed');
  await typeInto(page, 'part-x', '+=5');
  await expect(x).toHaveAttribute('placeholder', 'mixed');
  await choosePart(page, 'P15');
  await expect(x).toHaveValue('135');
  await page.locator('[data-part="P01"]').click({ modifiers: ['Control'] });
  await typeInto(page, 'part-x', '12');
  await expect(x).toHaveValue('12');
  await page.getByTestId('command-undo').click();
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await choosePart(page, 'P15');
  await expect(x).toHaveValue('130');
});

test('a drag along the label is one undo; Escape takes it back', async ({ page }) => {
  const x = page.getByTestId('part-x');
  const label = page.getByTestId('part-inspector').locator('label', { hasText: /^x$/ });
  const box = (await label.boundingBox())!;
  const [left, top] = [box.x + 10, box.y + box.height / 2];
  await page.mouse.move(left, top);
  await page.mouse.down();
  await page.mouse.move(left + 40, top, { steps: 5 });
  await expect(x).toHaveValue('140');
  await page.keyboard.press('Escape');
  await expect(x).toHaveValue('130');
  await page.mouse.up();
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await page.mouse.move(left, top);
  await page.mouse.down();
  await page.mouse.move(left - 20, top, { steps: 5 });
  await page.mouse.up();
  await expect(x).toHaveValue('125');
  await page.getByTestId('command-undo').click();
  await expect(x).toHaveValue('130');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
});

test('the wheel and Alt with an arrow step the field that has the focus', async ({ page }) => {
  const x = page.getByTestId('part-x');
  await x.focus();
  await x.press('Alt+ArrowUp');
  await expect(x).toHaveValue('130.1');
  await x.hover();
  await page.mouse.wheel(0, -200);
  await expect(x).toHaveValue('132.1');
});

test('typed offsets move the selection; a distance moves the part selected last', async ({ page }) => {
  await page.getByTestId('offsets').locator('summary').click();
  await typeInto(page, 'offset-x', '-1/2 in');
  await expect(page.getByTestId('part-x')).toHaveValue('117.3');
  await expect(page.getByTestId('offset-x')).toHaveValue('0');
  await page.locator('[data-part="P14"]').click({ modifiers: ['Control'] });
  await typeInto(page, 'part-distance', '7,5');
  await expect(page.getByTestId('part-distance')).toHaveValue('7.5');
});
