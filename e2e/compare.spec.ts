/**
 * Layouts side by side, and the open plate under every division. Tall one was computed by hand: quadrants 109.113 h, strips
 * 72.446 h with one seam of 100 mm, so that the seam buys 36.667 h (process numbers common practice, no source).
 */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readLayout } from '../src/layout/read';
import { decodeComparison, encodeLink } from '../src/link';
import { chooseFile, expect, figure, focusPlan, openDemo, test } from './page';

const columns = (page: Page) => page.getByTestId('compare-column');

test.describe('Tall one', () => {
  test.beforeEach(async ({ page }) => {
    await openDemo(page);
    await chooseFile(page, () => page.keyboard.press('Control+o'), 'shared/examples/tall-one.json');
    await expect.poll(() => figure(page, 'build-hours')).toBeCloseTo(109.1, 1);
    await focusPlan(page);
  });

  test('in quadrants and in strips: hours, difference, best, and what the seam buys', async ({ page }) => {
    await page.keyboard.press('Shift+C');
    await expect(columns(page)).toHaveCount(1);
    await expect(page.getByTestId('compare-few')).toContainText('1 more');
    await page.keyboard.press('Escape');
    await page.keyboard.press('w');
    await page.keyboard.press('Shift+C');
    await page.getByTestId('compare-open-plate').click();
    await expect(columns(page)).toHaveCount(2);
    await page.getByTestId('compare-height').fill('150');
    await page.getByTestId('compare-height').press('Enter');
    await expect(page.getByTestId('time_h-0')).toContainText('109.1');
    await expect(page.getByTestId('time_h-1')).toContainText('72.45');
    await expect(page.getByTestId('time_h-1')).toContainText('−36.67');
    await expect(page.getByTestId('time_h-1')).toContainText('best');
    await expect(page.getByTestId('seams-0')).toContainText('0 best');
    await expect(page.getByTestId('seams-1')).toContainText('1');
    await expect(page.getByTestId('perSeam_h-1')).toContainText('36.67');
    await expect(page.getByTestId('perMm_h-1')).toContainText('0.3667');
    await expect(columns(page).nth(1)).toContainText('zones');
    await columns(page).first().getByRole('button', { name: 'Open this one' }).click();
    await expect.poll(() => figure(page, 'build-hours')).toBeCloseTo(109.1, 1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => figure(page, 'build-hours')).toBeCloseTo(72.4, 1);
  });

  test('one link holds the comparison: another browser shows the same figures at the same height', async ({
    page,
    browser,
  }) => {
    await page.keyboard.press('Shift+C');
    await page.getByTestId('compare-file').setInputFiles('shared/examples/ring.json');
    await page.getByTestId('compare-height').fill('60');
    await page.getByTestId('compare-height').press('Enter');
    // Tall one and Ring in quadrants, computed by hand: 109.113 h and 44.748 h
    await expect(page.getByTestId('time_h-0')).toContainText('109.1');
    await expect(page.getByTestId('time_h-1')).toContainText('44.75');
    await page.getByTestId('compare-link').click();
    await expect(page.getByTestId('link-text')).toHaveValue(/#C1\./);
    const text = await page.getByTestId('link-text').inputValue();
    const other = await (await browser.newContext()).newPage();
    await other.goto(text);
    await expect(columns(other)).toHaveCount(2);
    await expect(other.getByTestId('compare-height')).toHaveValue('60');
    for (const row of ['time_h', 'seams'])
      for (const i of [0, 1])
        await expect(other.getByTestId(`${row}-${i}`)).toHaveText(
          await page.getByTestId(`${row}-${i}`).innerText(),
        );
    await other.context().close();
  });

  test('a pasted link stands beside it; a cut one says so and stays in its field', async ({ page }) => {
    const ring = readLayout(readFileSync('shared/examples/ring.json', 'utf8'));
    if (!ring.ok) throw new Error('the example opens');
    const link = encodeLink(ring.value);
    await page.keyboard.press('Shift+C');
    const field = page.getByTestId('compare-paste-link');
    await field.fill(link.slice(0, -20));
    await field.press('Enter');
    await expect(page.getByTestId('dialog-notices')).toContainText('cut');
    await expect(columns(page)).toHaveCount(1);
    await field.fill(`https://plates.example/evenplate/#${link}`);
    await field.press('Enter');
    await expect(columns(page)).toHaveCount(2);
    await expect(field).toHaveValue('');
    await expect(page.getByTestId('time_h-1')).toContainText('44.75');
  });

  test('the link puts the reference first; a pasted comparison without room is refused whole', async ({
    page,
  }) => {
    await page.keyboard.press('Shift+C');
    await page.getByTestId('compare-file').setInputFiles('shared/examples/ring.json');
    await expect(columns(page)).toHaveCount(2);
    await columns(page).nth(1).getByRole('button', { name: 'Make reference' }).click();
    await page.getByTestId('compare-link').click();
    await expect(page.getByTestId('link-text')).toHaveValue(/#C1\./);
    const text = await page.getByTestId('link-text').inputValue();
    const linked = decodeComparison(text);
    const names = linked.ok ? linked.value.layouts.map(({ name }) => name) : [];
    const heads = await columns(page).getByRole('heading').allInnerTexts();
    expect(names).toEqual([heads[1], heads[0]]);
    await page.getByTestId('compare-open-plate').click();
    const field = page.getByTestId('compare-paste-link');
    await field.fill(text);
    await field.press('Enter');
    await expect(page.getByTestId('dialog-notices')).toContainText('room for 1 more');
    await expect(columns(page)).toHaveCount(3);
    await expect(field).toHaveValue(text);
  });

  test('a file stands beside it; what is no layout is refused and the comparison stays', async ({ page }) => {
    await page.keyboard.press('Shift+C');
    await page.getByTestId('compare-file').setInputFiles('shared/examples/ring.json');
    await expect(columns(page)).toHaveCount(2);
    // Ring in quadrants takes 44.748 h
    await expect(page.getByTestId('time_h-1')).toContainText('44.75');
    await expect(page.getByTestId('perSeam_h-1')).toContainText('another job');
    await page
      .getByTestId('compare-file')
      .setInputFiles({ name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from('{"format"') });
    await expect(page.getByTestId('dialog-notices')).toContainText('JSON');
    await expect(columns(page)).toHaveCount(2);
  });

  test('four plans fit their columns at 1024 px, all at one zoom', async ({ page }) => {
    await page.setViewportSize({ width: 1024, height: 768 });
    await page.keyboard.press('Shift+C');
    for (const count of [2, 3, 4]) {
      await page.getByTestId('compare-open-plate').click();
      await expect(columns(page)).toHaveCount(count);
    }
    const plans = page.locator('img.plan-picture');
    await expect(plans).toHaveCount(4);
    for (const plan of await plans.all()) {
      const [drawn, shown] = [Number(await plan.getAttribute('width')), await plan.boundingBox()];
      expect(drawn).toBeGreaterThan(150);
      expect(shown?.width).toBeCloseTo(drawn, 0);
    }
  });

  test('under every division: strips take 72.45 h, and one press takes them over', async ({ page }) => {
    await page.keyboard.press('Shift+A');
    const cards = page.getByTestId('division-card');
    await expect(cards.first()).toContainText('as it is');
    const strips = cards.filter({ hasText: 'side by side in x' }).filter({ hasNotText: 'band' });
    await expect(strips).toContainText('72.45');
    await strips.getByRole('button', { name: 'Take this one' }).click();
    await expect.poll(() => figure(page, 'build-hours')).toBeCloseTo(72.4, 1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => figure(page, 'build-hours')).toBeCloseTo(109.1, 1);
  });
});
