/**
 * Drawings that hold little or nothing to place: the check page lists what was left out and why, and offers Cancel only.
 * Coordinates far out and drawings that take seconds leave the page alive. Lengths in millimetres.
 */
import { test as plain, type Page } from '@playwright/test';
import { dxf, dxfLine, svg } from '../tests/import/drawing';
import { checksumNow, chooseFile, expect, figure, openDemo, test, typeInto } from './page';

const check = (page: Page, name: string, text: string): Promise<void> =>
  chooseFile(page, () => page.keyboard.press('i'), {
    name,
    mimeType: 'text/plain',
    buffer: Buffer.from(text),
  });
/** 40 × 30, its last corner open by 0.05. */
const OPEN = dxf(
  dxfLine(0, 0, 40, 0) + dxfLine(40, 0, 40, 30) + dxfLine(40, 30, 0, 30) + dxfLine(0, 30, 0, 0.05),
);
const triangle = (x: number): string =>
  dxf(dxfLine(x, 0, x + 40, 0) + dxfLine(x + 40, 0, x, 30) + dxfLine(x, 30, x, 0));

for (const [what, name, text, reason] of [
  [
    'an SVG of strokes only',
    'stroke.svg',
    svg('<path d="M10 10h50v40h-50z" fill="none" stroke="black"/>'),
    /line without a fill/,
  ],
  [
    'an SVG of a line and a text',
    'line.svg',
    svg('<line x2="50" y2="50" stroke="black"/><text x="5" y="5">M8</text>'),
    /line without a fill.*1 × text/s,
  ],
  ['a DXF open by 0.05 mm', 'open.dxf', OPEN, /ends do not meet .*gap 0\.050/],
  ['a DXF at 10¹² mm', 'far.dxf', triangle(1e12), /3 × objects that reach further than 100 m/],
  ['a DXF at 10³⁰⁰ mm', 'far.dxf', triangle(1e300), /3 × objects that reach further than 100 m/],
  [
    'an SVG whose transforms multiply beyond all numbers',
    'far.svg',
    svg('<g transform="scale(1e200)"><rect transform="scale(1e200)" width="1" height="1"/></g>'),
    /further than 100 m/,
  ],
] as const) {
  test(`${what}: the page says why nothing can be placed, and offers Cancel only`, async ({ page }) => {
    await openDemo(page);
    const before = await checksumNow(page);
    await check(page, name, text);
    await expect(page.getByTestId('import-none')).toBeVisible();
    await expect(page.getByTestId('left-out')).toContainText(reason);
    await expect(page.getByTestId('import-place')).toHaveCount(0);
    await page.getByTestId('import-cancel').click();
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(page.getByTestId('checksum')).toHaveText(before);
  });
}

test('a DXF without objects is one sentence', async ({ page }) => {
  await openDemo(page);
  await check(page, 'empty.dxf', dxf(''));
  await expect(page.getByTestId('notices')).toContainText('holds no outlines');
  await expect(page.getByRole('dialog')).toHaveCount(0);
});

test('closing gaps up to 0.1 mm closes what was open by 0.05 mm', async ({ page }) => {
  await openDemo(page);
  await check(page, 'open.dxf', OPEN);
  await expect(page.getByTestId('import-none')).toBeVisible();
  await typeInto(page, 'import-gap', '0.1');
  await expect(page.getByTestId('import-shape')).toHaveCount(1);
  // 40 × 30; the corner that was open takes or leaves 40 × 0.05 / 2
  expect(Math.abs((await figure(page, 'import-area')) - 1200)).toBeLessThanOrEqual(1);
});

for (const [width, height] of [
  [1440, 900],
  [1024, 768],
] as const) {
  test(`at ${width} × ${height} the unit can be read and chosen, and the buttons stay in sight`, async ({
    page,
  }) => {
    await openDemo(page);
    await page.setViewportSize({ width, height });
    await chooseFile(page, () => page.keyboard.press('i'), 'shared/fixtures/no-units.dxf');
    const unit = page.getByTestId('import-unit');
    expect((await unit.boundingBox())?.width ?? 0).toBeGreaterThan(120);
    await expect(page.getByTestId('import-place')).toBeInViewport({ ratio: 1 });
    const before = await figure(page, 'import-area');
    await unit.selectOption('in');
    // an inch is 25.4 mm, so areas grow by 645.16; three figures are shown
    await expect(async () => {
      expect(Math.abs((await figure(page, 'import-area')) / before / 645.16 - 1)).toBeLessThan(0.005);
    }).toPass();
  });
}

test('a drawing that takes seconds says what it is at, and Cancel is heard', async ({ page }) => {
  await openDemo(page);
  const lines = Array.from({ length: 120_000 }, (_, i) => {
    const [x, y] = [i % 400, Math.floor(i / 400)];
    return dxfLine(x, y, x + 1, y);
  });
  await check(page, 'big.dxf', dxf(lines.join('')));
  await expect(page.getByTestId('import-reading')).toContainText('Reading');
  await page.getByTestId('import-cancel').click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByTestId('notices').locator('p')).toHaveCount(0);
});

// Without the check for a clean console: the request is made to fail.
plain('a dialog whose code does not arrive closes; the last edit stays', async ({ page }) => {
  await page.route(/HelpDialog/, (route) => route.abort());
  await openDemo(page);
  await page.locator('[data-part="P01"]').click();
  await typeInto(page, 'part-turn', '33');
  const edited = await checksumNow(page);
  await page.getByTestId('plan').focus();
  await page.keyboard.press('?');
  await expect(page.getByTestId('notices')).toContainText('was closed');
  await expect(page.getByRole('alert')).toHaveCount(0);
  await expect(page.getByTestId('checksum')).toHaveText(edited);
});
