/** Outlines of known area through the check page. Areas are closed forms of the drawings' dimensions. */
import { readFileSync } from 'node:fs';
import { checksumNow, chooseFile, expect, figure, openDemo, test } from './page';

// plate 120 × 80 with corners r 8, two slots, one bore
const SLOTTED_MM2 = 120 * 80 - (4 - Math.PI) * 64 - 2 * (30 * 10 + Math.PI * 25) - Math.PI * 225;
// gasket 90 × 60 with corners r 10, bore d 36, four holes d 7
const GASKET_MM2 = 90 * 60 - (4 - Math.PI) * 100 - Math.PI * 324 - 4 * Math.PI * 3.5 ** 2;

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

for (const [file, area, holes] of [
  ['slotted-plate.dxf', SLOTTED_MM2, 3],
  ['gasket.svg', GASKET_MM2, 5],
] as const) {
  test(`${file} lands with its area and its holes`, async ({ page }) => {
    await page.keyboard.press('n');
    const parts = await page.locator('[data-part]').count();
    const before = await figure(page, 'section-area');
    await chooseFile(page, () => page.keyboard.press('i'), `shared/fixtures/${file}`);
    await expect(page.getByTestId('import-shape')).toHaveCount(1);
    await expect(page.getByTestId('import-shape')).toContainText(`${holes} holes`);
    expect(await figure(page, 'import-area')).toBeCloseTo(area, -1);
    await page.getByTestId('import-place').click();
    await expect(page.locator('[data-part]')).toHaveCount(parts + 1);
    // four digits of some 50000 mm²
    expect(Math.abs((await figure(page, 'section-area')) - before - area)).toBeLessThanOrEqual(20);
  });
}

test('what a drawing holds besides outlines is counted and named', async ({ page }) => {
  await chooseFile(page, () => page.keyboard.press('i'), 'shared/fixtures/left-out.svg');
  await expect(page.getByTestId('import-shape')).toHaveCount(1);
  await expect(page.getByTestId('left-out').locator('li')).not.toHaveCount(0);
});

test('a drawing without a unit asks for it', async ({ page }) => {
  await chooseFile(page, () => page.keyboard.press('i'), 'shared/fixtures/no-units.dxf');
  await expect(page.getByTestId('import-unit-asked')).toBeVisible();
});

test('a broken drawing dropped on the page is one sentence, and nothing changes', async ({ page }) => {
  const before = await checksumNow(page);
  const text = readFileSync('shared/fixtures/broken.dxf', 'utf8');
  const transfer = await page.evaluateHandle((content) => {
    const files = new DataTransfer();
    files.items.add(new File([content], 'broken.dxf'));
    return files;
  }, text);
  await page.getByTestId('plan').dispatchEvent('drop', { dataTransfer: transfer });
  await expect(page.getByTestId('notices').locator('p')).toHaveCount(1);
  await expect(page.getByTestId('notices')).toContainText('DXF is cut off');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByTestId('checksum')).toHaveText(before);
});
