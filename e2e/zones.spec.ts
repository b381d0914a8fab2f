/** Drawn zones, several parts turned together, the note: in the real page, by hand and by key. */
import type { Page } from '@playwright/test';
import {
  checksumNow,
  choosePart,
  expect,
  expectBooksBalanced,
  figure,
  focusPlan,
  onPlan,
  openDemo,
  test,
} from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

const dragHandle = async (page: Page, handle: string, right: number, down: number): Promise<void> => {
  const box = await page.getByTestId(handle).boundingBox();
  if (box === null) throw new Error(`no handle ${handle} on the plan`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + right, y + down, { steps: 8 });
  await page.mouse.up();
};

test('a drawn zone is reshaped by hand, by key and by number; every way is one undo', async ({ page }) => {
  await focusPlan(page);
  await page.keyboard.press('a');
  await page.getByTestId('tab-division').click();
  // the quadrant in front on the right; its first corner is behind on the left: (−10, 10) with the band of 20 mm
  await page.getByTestId('choose-zone-1').click();
  const x = page.getByTestId('zone-0-0-x');
  await expect(x).toHaveValue('-10');
  const drawn = await checksumNow(page);

  await dragHandle(page, 'zone-corner-0-0', 40, 0);
  await expect(x).not.toHaveValue('-10');
  await expect(page.getByTestId('zone-0-0-y')).toHaveValue('10');
  expect(await figure(page, 'unassigned')).toBeGreaterThan(0);
  await expectBooksBalanced(page);
  await page.getByTestId('command-undo').click();
  await expect(x).toHaveValue('-10');

  await page.getByTestId('zone-corner-0-0').focus();
  await page.keyboard.press('ArrowLeft');
  await expect(x).toHaveValue('-11');
  await page.keyboard.press('Insert');
  await expect(page.getByTestId('zone-0-4-x')).toBeVisible();
  await page.keyboard.press('Delete');
  await expect(page.getByTestId('zone-0-4-x')).toHaveCount(0);
  for (let i = 0; i < 3; i++) await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('checksum')).toHaveText(drawn);

  await dragHandle(page, 'zone-middle', 0, 30);
  await expect(x).toHaveValue('-10');
  await expect(page.getByTestId('zone-0-0-y')).not.toHaveValue('10');
});

test('two parts turn about the middle between them, and four quarters bring them back', async ({ page }) => {
  const before = await checksumNow(page);
  await choosePart(page, 'P15');
  await page.locator('[data-part="P16"]').click({ modifiers: ['Control'] });
  await expect(page.getByTestId('part-inspector')).toContainText('2 PARTS');
  await focusPlan(page);
  await page.keyboard.press('y');
  // seal rings at (130, −62) and (130, −112): a quarter about (130, −87) puts them at x = 105 and 155
  await choosePart(page, 'P15');
  await expect(page.getByTestId('part-x')).toHaveValue('105');
  await expect(page.getByTestId('part-y')).toHaveValue('-87');
  await page.locator('[data-part="P16"]').click({ modifiers: ['Control'] });
  await page.getByTestId('turn-handle').focus();
  for (let i = 0; i < 18; i++) await page.keyboard.press('Shift+ArrowUp');
  await choosePart(page, 'P15');
  expect(Number(await page.getByTestId('part-x').inputValue())).toBeCloseTo(130, 1);
  expect(Number(await page.getByTestId('part-turn').inputValue())).toBe(0);
  for (let i = 0; i < 19; i++) await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('checksum')).toHaveText(before);
});

test('a note, and a name not yet confirmed, survive a reload while they are typed', async ({ page }) => {
  await page.getByTestId('title-note').click();
  await page.getByTestId('layout-note').fill('Second shift\nchecks the filter');
  await page.getByTestId('layout-name').fill('Ferry spares, plate 2');
  await page.reload();
  await expect(page.getByTestId('layout-name')).toHaveValue('Ferry spares, plate 2');
  await page.getByTestId('title-note').click();
  await expect(page.getByTestId('layout-note')).toHaveValue('Second shift\nchecks the filter');
});

/** Corners clicked on the plan, in mm. */
const clickCorners = async (page: Page, corners: readonly (readonly [number, number])[]): Promise<void> => {
  for (const corner of corners) await page.mouse.click(...(await onPlan(page, ...corner)));
};
/** Takes up the zone tool and opens the panel that lists the zones. */
const takeZoneTool = async (page: Page): Promise<void> => {
  await page.getByTestId('tab-division').click();
  await focusPlan(page);
  await page.keyboard.press('d');
};

test('a corner of a zone can stand on the grip of a zone line', async ({ page }) => {
  await takeZoneTool(page);
  for (const grip of ['line-quadrantX', 'line-quadrantY', 'line-quadrantX-rear']) {
    const box = (await page.getByTestId(grip).boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  }
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('choose-drawn')).toHaveAttribute('data-state', 'on');
  await page.getByTestId('choose-zone-0').click();
  await expect(page.getByTestId('zone-0-2-x')).toBeVisible();
  await expect(page.getByTestId('zone-0-3-x')).toHaveCount(0);
  // the grips stand on the demo plate's lines x = 0 and y = 0, the rear one behind the front one
  await expect(page.getByTestId('zone-0-0-x')).toHaveValue(/^-?0(\.\d)?$/);
  await expect(page.getByTestId('zone-0-1-y')).toHaveValue(/^-?0(\.\d)?$/);
  const y = async (corner: number) => Number(await page.getByTestId(`zone-0-${corner}-y`).inputValue());
  expect((await y(2)) - (await y(0))).toBeGreaterThan(300);
});

test('Enter with too few corners says how many are missing, and the tool’s key starts afresh', async ({
  page,
}) => {
  await takeZoneTool(page);
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('plan-tip')).toHaveText('No corner yet, 3 more needed');
  await clickCorners(page, [
    [-150, 150],
    [150, 150],
  ]);
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('plan-tip')).toHaveText('2 corners so far, 1 more needed');
  await page.keyboard.press('d');
  await expect(page.getByTestId('plan-tip')).toHaveCount(0);
  await clickCorners(page, [
    [-100, -100],
    [0, -100],
    [0, 0],
  ]);
  await page.keyboard.press('Enter');
  await page.getByTestId('choose-zone-0').click();
  await expect(page.getByTestId('zone-0-2-x')).toBeVisible();
  await expect(page.getByTestId('zone-0-3-x')).toHaveCount(0);
  expect(Number(await page.getByTestId('zone-0-0-x').inputValue())).toBeCloseTo(-100, 0);
});

test('a drawn zone that crosses itself is taken, and one sentence says how', async ({ page }) => {
  await takeZoneTool(page);
  await clickCorners(page, [
    [-60, -60],
    [60, 60],
    [60, -60],
    [-60, 60],
  ]);
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('choose-drawn')).toHaveAttribute('data-state', 'on');
  await expect(page.getByTestId('notices').locator('p')).toHaveCount(1);
  await expect(page.getByTestId('notices')).toContainText('crosses itself');
  await expectBooksBalanced(page);
});
