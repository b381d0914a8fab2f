/** The demo plate: what is first seen, a part dragged over a zone line, zone lines, flow, divisions by key. */
import {
  expectBooksBalanced,
  areas,
  books,
  dragOnPlan,
  expect,
  figure,
  focusPlan,
  openDemo,
  test,
} from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

test('a newcomer sees a working plate with figures and no problem', async ({ page }) => {
  await expect(page.locator('[data-part]')).toHaveCount(27);
  await expect(page.getByTestId('problem-count')).toHaveText('0');
  expect(await figure(page, 'exposure')).toBeGreaterThanOrEqual(await figure(page, 'best-possible'));
  expect(await figure(page, 'build-hours')).toBeGreaterThan(0);
  await expectBooksBalanced(page);
});

test('a part dragged over a zone line takes its area from one laser to the other', async ({ page }) => {
  // without a shared band nobody but the two lasers concerned may change
  await page.getByTestId('tab-division').click();
  await page.getByTestId('shared-band').fill('0');
  await page.getByTestId('shared-band').press('Enter');
  await expect(page.getByTestId('command-undo')).toBeEnabled();
  const before = { areas: await areas(page), books: await books(page) };
  // P18, a seal ring, from front left to front right; grabbed between its bore and its outside
  await dragOnPlan(page, [-90 + 17, -140], [60 + 17, -60]);
  await expect(page.getByTestId('area-L1')).not.toHaveText(String(before.areas['L1']));
  const after = { areas: await areas(page), books: await books(page) };
  const moved = before.areas['L1']! - after.areas['L1']!;
  expect(moved).toBeGreaterThan(100);
  // five digits each
  expect(Math.abs(after.areas['L2']! - before.areas['L2']! - moved)).toBeLessThanOrEqual(2);
  expect(after.areas['L3']).toBe(before.areas['L3']);
  expect(after.areas['L4']).toBe(before.areas['L4']);
  expect(after.books.section).toBeCloseTo(before.books.section, 1);
  expect(after.books.unassigned).toBe(0);
  await expectBooksBalanced(page);
});

test('a zone line dragged on the plan moves area between its two sides', async ({ page }) => {
  const before = { areas: await areas(page), books: await books(page) };
  const handle = (await page.getByTestId('line-quadrantX').boundingBox())!;
  const middle = [handle.x + handle.width / 2, handle.y + handle.height / 2] as const;
  await page.mouse.move(...middle);
  await page.mouse.down();
  await page.mouse.move(middle[0] + 60, middle[1], { steps: 10 });
  await page.mouse.up();
  await page.getByTestId('tab-division').click();
  const x = Number(await page.getByTestId('crossing-x').inputValue());
  expect(x).toBeGreaterThan(10);
  const after = { areas: await areas(page), books: await books(page) };
  expect(after.areas['L1']! + after.areas['L3']!).toBeGreaterThan(before.areas['L1']! + before.areas['L3']!);
  expect(after.areas['L2']! + after.areas['L4']!).toBeLessThan(before.areas['L2']! + before.areas['L4']!);
  expect(after.books.section).toBe(before.books.section);
  await expectBooksBalanced(page);
});

test('each division is chosen by its key', async ({ page }) => {
  const seen = new Map<string, string>();
  for (const [key, choice] of [
    ['w', 'strips-x'],
    ['e', 'strips-y'],
    ['r', 'wholeField'],
    ['a', 'drawn'],
    ['q', 'quadrants'],
  ] as const) {
    await focusPlan(page);
    await page.keyboard.press(key);
    await expect(page.getByTestId(`choose-${choice}`)).toHaveAttribute('data-state', 'on');
    await expectBooksBalanced(page);
    seen.set(choice, (await page.getByTestId('seam-length').innerText()) + JSON.stringify(await areas(page)));
  }
  const lined = ['strips-x', 'strips-y', 'wholeField', 'quadrants'].map((choice) => seen.get(choice));
  expect(new Set(lined).size).toBe(4);
});

test('the whole field is never faster than the best possible time, whole parts do not beat it', async ({
  page,
}) => {
  await focusPlan(page);
  await page.keyboard.press('r');
  const balanced = await figure(page, 'exposure');
  expect(balanced).toBeGreaterThanOrEqual(await figure(page, 'best-possible'));
  await focusPlan(page);
  await page.keyboard.press('j');
  await expect(page.getByTestId('seam-count')).toHaveText('0');
  expect(await figure(page, 'exposure')).toBeGreaterThanOrEqual(balanced);
  await expectBooksBalanced(page);
});

test('the gas flow turned on the plan changes the plumes over the beams', async ({ page }) => {
  const plumes = (): Promise<number[]> =>
    Promise.all(['L1', 'L2', 'L3', 'L4'].map((id) => figure(page, `plumes-${id}`)));
  const before = await plumes();
  const arrow = page.getByTestId('gas-arrow');
  const handle = (await arrow.boundingBox())!;
  const plan = (await page.getByTestId('plan').boundingBox())!;
  await page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
  await page.mouse.down();
  await page.mouse.move(plan.x + plan.width * 0.9, plan.y + plan.height * 0.45, { steps: 12 });
  await page.mouse.up();
  await expect(arrow).not.toHaveAttribute('aria-valuenow', '270');
  expect(await plumes()).not.toEqual(before);
});
