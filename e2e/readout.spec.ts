/**
 * The readout misleads nobody: figures that leave something out say so, explanations add up and cover no row, the lower
 * figures are in sight on a small screen, and what stands far off the platform is found.
 */
import type { Locator, Page } from '@playwright/test';
import { choosePart, expect, figure, focusPlan, openDemo, test, typeInto } from './page';

/** Switches one laser of the demo plate off or on. */
const switchLaser = async (page: Page, index: number): Promise<void> => {
  await page.getByTestId('tab-machine').click();
  await page.getByRole('checkbox').nth(index).click();
};

const boxOf = async (place: Locator) => {
  const box = await place.boundingBox();
  if (box === null) throw new Error('expected something on the page, found nothing');
  return box;
};

/** Figures that a reader needs without scrolling. */
const NEEDED = [
  'load-L4',
  'imbalance-time',
  'layer-time',
  'best-possible',
  'seam-count',
  'unassigned',
  'build-hours',
  'book-keeping',
];

test('figures that leave unassigned area out say how much, and the title block says it blocks hand-over', async ({
  page,
}) => {
  await openDemo(page);
  await expect(page.locator('.figure-missing')).toHaveCount(0);
  await switchLaser(page, 1);
  await expect(page.getByTestId('unassigned')).not.toHaveText(/^0\.00/);
  const area = await page.getByTestId('unassigned').innerText();
  for (const name of ['imbalance-time', 'layer-time', 'best-possible']) {
    const whole = page.locator('.figure', { has: page.getByTestId(name) });
    await expect(whole.locator('.figure-missing')).toHaveText(`without ${area}`);
  }
  const hours = page.locator('.figure', { has: page.getByTestId('build-hours') });
  await expect(hours.locator('.figure-missing')).toHaveText(/without [\d.]+.cm³/);
  await expect(page.getByTestId('sheet-state')).toHaveText('NOT FOR USE');
  await expect(page.locator('.title-block')).toContainText('blocks hand-over');
  await page.getByRole('checkbox').nth(1).click();
  await expect(page.locator('.figure-missing')).toHaveCount(0);
});

test('an explanation stands beside the readout, ends with the figure’s own number and closes with Escape', async ({
  page,
}) => {
  await openDemo(page);
  for (const name of ['load-L2', 'area-L2', 'build-hours', 'laser-hours']) {
    await page.getByTestId(name).hover();
    const card = page.locator('.explain');
    await expect(card).toBeVisible();
    await expect(card.getByTestId('explained-total')).toContainText(await page.getByTestId(name).innerText());
    const [shown, readout] = [await boxOf(card), await boxOf(page.locator('.readout'))];
    expect(shown.x + shown.width).toBeLessThanOrEqual(readout.x + 1);
    expect(shown.y).toBeGreaterThanOrEqual(0);
    expect(shown.y + shown.height).toBeLessThanOrEqual(900);
    await page.keyboard.press('Escape');
    await expect(card).toHaveCount(0);
  }
});

test('explanations open with the focus and go with it', async ({ page }) => {
  await openDemo(page);
  await page.locator('.figure', { has: page.getByTestId('load-L1') }).focus();
  await expect(page.locator('.explain')).toContainText('Load of L1');
  await page.keyboard.press('Tab');
  await expect(page.locator('.explain')).toContainText('Scan area of L1');
  await page.keyboard.press('Escape');
  await expect(page.locator('.explain')).toHaveCount(0);
});

for (const [width, height] of [
  [1024, 768],
  [1440, 900],
] as const)
  test(`at ${width} × ${height} the figures that matter are in sight, also with a laser off`, async ({
    page,
  }) => {
    await openDemo(page);
    await page.setViewportSize({ width, height });
    const inSight = async (): Promise<void> => {
      const [body, books] = [await boxOf(page.locator('.readout-body')), await boxOf(page.locator('.books'))];
      for (const name of NEEDED) {
        const box = await boxOf(page.locator('.figure', { has: page.getByTestId(name) }));
        const end = name === 'book-keeping' ? books.y + books.height : body.y + body.height;
        expect(box.y + box.height, name).toBeLessThanOrEqual(end + 1);
      }
    };
    await inSight();
    await switchLaser(page, 1);
    await expect(page.locator('.figure-missing').first()).toBeVisible();
    await inSight();
  });

test('at 600 × 400 everything can be scrolled to', async ({ page }) => {
  await openDemo(page);
  await page.setViewportSize({ width: 600, height: 400 });
  for (const place of [
    page.getByTestId('sheet-state'),
    page.getByTestId('command-help'),
    page.getByTestId('build-hours'),
  ]) {
    await place.scrollIntoViewIfNeeded();
    await expect(place).toBeInViewport();
  }
  await page.locator('#root').evaluate((root) => root.scrollTo(0, 0));
  await page.mouse.move(580, 20);
  await page.mouse.wheel(2000, 0);
  await expect(page.getByTestId('command-help')).toBeInViewport();
});

test('a laser that is on and has no zone says so and how to give it one', async ({ page }) => {
  await openDemo(page);
  await expect(page.getByTestId('without-zone')).toHaveCount(0);
  await page.getByTestId('tab-machine').click();
  await page.getByRole('button', { name: 'Add a laser' }).click();
  await expect(page.locator('.bar-lack')).toHaveText('no zone');
  await expect(page.getByTestId('without-zone')).toContainText('L5: on, no zone.');
  await focusPlan(page);
  await page.keyboard.press('w');
  await expect(page.getByTestId('without-zone')).toHaveCount(0);
});

test('whole parts say how many parts have a choice of laser', async ({ page }) => {
  await openDemo(page);
  await focusPlan(page);
  await page.keyboard.press('j');
  await expect(page.getByTestId('whole-choices')).toHaveText(/^0 of \d+$/);
  await page.keyboard.press('r');
  await expect(page.getByTestId('whole-choices')).toHaveText(/^(\d+) of \1$/);
});

test('a part two metres off is one problem; the problem and Fit, pressed again, show it', async ({
  page,
}) => {
  await openDemo(page);
  await choosePart(page, 'P15');
  await typeInto(page, 'part-x', '2000');
  await expect(page.getByTestId('problem-count')).toHaveText('1');
  const fit = page.getByTestId('command-zoom-fit');
  const before = await page.getByTestId('plan').screenshot();
  await fit.click();
  await expect.poll(async () => (await page.getByTestId('plan').screenshot()).equals(before)).toBe(false);
  await fit.click();
  await page.locator('.problem').click();
  await page.mouse.move(5, 5);
  await expect(page.getByTestId('part-inspector')).toContainText('P15');
  // its turn handle stands beside it, inside the plan
  const [handle, plan] = [
    await boxOf(page.getByTestId('turn-handle')),
    await boxOf(page.getByTestId('plan')),
  ];
  expect(handle.x).toBeGreaterThan(plan.x);
  expect(handle.x + handle.width).toBeLessThan(plan.x + plan.width);
  expect(await figure(page, 'unassigned')).toBeGreaterThan(0);
});
