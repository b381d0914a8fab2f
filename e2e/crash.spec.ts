/** What fails is one place of the sheet: the others go on, and the work can be taken along. The console is full of it, so it is not watched. */
import { readFile } from 'node:fs/promises';
import { expect, test, type Page } from '@playwright/test';
import { readLayout } from '../src/layout/read';
import { choosePart, openDemo, typeInto } from './page';

declare global {
  interface Window {
    mend(): void;
  }
}

/** From here on nothing can be stroked on a canvas. */
const breakInk = (page: Page) =>
  page.evaluate(() => {
    const { stroke } = CanvasRenderingContext2D.prototype;
    CanvasRenderingContext2D.prototype.stroke = () => {
      throw new Error('the ink has run dry');
    };
    window.mend = () => {
      CanvasRenderingContext2D.prototype.stroke = stroke;
    };
  });
/** From here on the table of parts cannot tell the names of the lasers apart. */
const breakTable = (page: Page) =>
  page.evaluate(() => {
    const { split } = String.prototype;
    const fails = function (this: string, ...by: [never]) {
      if (this.startsWith('L1 L2')) throw new Error('no such laser');
      return split.apply(this, by);
    };
    Object.assign(String.prototype, { split: fails });
    window.mend = () => Object.assign(String.prototype, { split });
  });
const place = (page: Page, name: string) => page.locator(`[data-place="${name}"]`);

test.beforeEach(({ page }) => openDemo(page));

test('a plan that cannot be drawn says so in its place; the figures stay, and it is drawn again', async ({
  page,
}) => {
  await choosePart(page, 'P01');
  await breakInk(page);
  await page.keyboard.press('ArrowRight');
  await page.getByTestId('plan').press('ArrowRight');
  await expect(place(page, 'The plan')).toContainText('the ink has run dry');
  await expect(page.getByTestId('layer-time')).toHaveText(/\d/);
  await expect(page.locator('[data-part="P01"]')).toBeVisible();
  await page.evaluate(() => window.mend());
  await place(page, 'The plan').getByRole('button', { name: 'Draw it again' }).click();
  await expect(page.getByTestId('plan')).toBeVisible();
  await expect(place(page, 'The plan')).toBeHidden();
});

test('a menu whose code does not arrive says so and leaves the plan', async ({ page }) => {
  await page.route('**/PlanMenu*.js', (route) => route.abort());
  await page.getByTestId('plan').click({ button: 'right', position: { x: 200, y: 200 } });
  await expect(page.getByTestId('notices')).toContainText('failed and was closed');
  await expect(page.getByTestId('plan')).toBeVisible();
  await expect(page.locator('[data-place]')).toHaveCount(0);
});

test('a list that fails leaves the plan; the layout is taken along as a file, and undo goes on', async ({
  page,
}) => {
  await choosePart(page, 'P01');
  await typeInto(page, 'part-x', '-100');
  await breakTable(page);
  await page.getByTestId('plan').press('f');
  await expect(place(page, 'The list')).toContainText('no such laser');
  await expect(page.getByTestId('plan')).toBeVisible();
  const download = page.waitForEvent('download');
  await place(page, 'The list').getByRole('button', { name: 'Save layout file' }).click();
  const read = readLayout(await readFile(await (await download).path(), 'utf8'));
  expect(read.ok && read.value.parts.find(({ id }) => id === 'P01')?.at_mm[0]).toBe(-100);
  await page.evaluate(() => window.mend());
  await place(page, 'The list').getByRole('button', { name: 'Undo the last change' }).click();
  await expect(page.getByTestId('layer-time')).toHaveText(/\d/);
  await expect(page.locator('[data-place]')).toHaveCount(0);
});
