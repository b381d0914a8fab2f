/** Selecting, arranging and copying on the real page, and the clipboard between two windows. Places as on the demo plate. */
import { choosePart, expect, focusPlan, grabAndMove, onPlan, openDemo, test, fingersOn } from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

const rows = (page: Parameters<typeof openDemo>[0]) => page.locator('[data-part]');

test('parts copied in one window are pasted in another one, in place and at the pointer', async ({
  page,
  context,
}) => {
  const count = await rows(page).count();
  await choosePart(page, 'P15');
  await focusPlan(page);
  await page.keyboard.press('Control+c');
  const other = await context.newPage();
  await other.goto('./');
  await expect(other.locator('main[data-keys]')).toBeVisible();
  await expect(rows(other)).toHaveCount(count);
  await focusPlan(other);
  await other.keyboard.press('Control+Shift+v');
  await expect(rows(other)).toHaveCount(count + 1);
  await expect(other.getByTestId('part-x')).toHaveValue('130');
  await other.mouse.move(...(await onPlan(other, 0, 0)));
  await other.keyboard.press('Control+v');
  await expect(rows(other)).toHaveCount(count + 2);
  await expect(other.getByTestId('part-x')).not.toHaveValue('130');
  for (let i = 0; i < 2; i++) await other.getByTestId('command-undo').click();
  await expect(rows(other)).toHaveCount(count);
  await other.close();
});

test('a cut part is gone and comes back by paste; a text from elsewhere is refused in words', async ({
  page,
}) => {
  const count = await rows(page).count();
  await choosePart(page, 'P15');
  await focusPlan(page);
  await page.keyboard.press('Control+x');
  await expect(rows(page)).toHaveCount(count - 1);
  await page.keyboard.press('Control+v');
  await expect(page.locator('[data-part="P15"]')).toBeVisible();
  const field = page.getByTestId('part-x');
  await field.fill('id;x;y');
  await field.selectText();
  await page.keyboard.press('Control+c');
  await page.keyboard.press('Escape');
  await focusPlan(page);
  await page.keyboard.press('Control+v');
  await expect(page.getByTestId('notices')).toContainText('The clipboard holds no parts: “id;x;y”.');
  await expect(rows(page)).toHaveCount(count);
});

test('a drag with Alt leaves the original and moves a copy; Escape takes it away', async ({ page }) => {
  const count = await rows(page).count();
  await page.keyboard.down('Alt');
  await grabAndMove(page, [130 + 17, -62], [60, 0]);
  await expect(rows(page)).toHaveCount(count + 1);
  await page.keyboard.press('Escape');
  await expect(rows(page)).toHaveCount(count);
  await page.mouse.up();
  await grabAndMove(page, [130 + 17, -62], [60, 0]);
  await page.mouse.up();
  await page.keyboard.up('Alt');
  await expect(rows(page)).toHaveCount(count + 1);
  await page.getByTestId('command-undo').click();
  await expect(rows(page)).toHaveCount(count);
});

test('a box to the left takes what it touches, and the plan says so', async ({ page }) => {
  await grabAndMove(page, [168, -168], [-168, 168]);
  await expect(page.getByTestId('plan-tip')).toContainText('touched');
  await page.keyboard.press('Delete');
  await expect(rows(page)).toHaveCount(27);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await grabAndMove(page, [-168, 168], [168, -168]);
  await expect(page.getByTestId('plan-tip')).toContainText('whole inside');
  await page.mouse.up();
});

test('the selection is aligned and spread by keys, each one step back', async ({ page }) => {
  await focusPlan(page);
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Control+Shift+ArrowLeft');
  await expect(page.getByTestId('command-undo')).toBeEnabled();
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await choosePart(page, 'P15');
  await focusPlan(page);
  await page.keyboard.press('z');
  await page.keyboard.press('Shift+Q');
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
});

test('a right click opens the menu of what stands there, made of commands; they act on it', async ({
  page,
}) => {
  const count = await rows(page).count();
  await page.mouse.click(...(await onPlan(page, 130 + 17, -62)), { button: 'right' });
  const menu = page.getByTestId('plan-menu');
  await expect(menu).toBeVisible();
  await expect(page.getByTestId('part-inspector')).toContainText('P15');
  await expect(page.getByTestId('plan-menu-one-per-laser')).toBeVisible();
  await page.getByTestId('plan-menu-duplicate').click();
  await expect(menu).toBeHidden();
  await expect(rows(page)).toHaveCount(count + 1);
  await page.keyboard.press('Control+z');
  await expect(rows(page)).toHaveCount(count);
  // a press elsewhere closes it and does nothing else
  await choosePart(page, 'P15');
  await page.mouse.click(...(await onPlan(page, 130 + 17, -62)), { button: 'right' });
  await expect(menu).toBeVisible();
  await page.mouse.click(...(await onPlan(page, -165, 165)));
  await expect(menu).toBeHidden();
  await expect(page.getByTestId('part-inspector')).toContainText('P15');
});

test('the menu is walked by keys, opens its groups, and Escape gives the plan the keyboard back', async ({
  page,
}) => {
  await page.mouse.click(...(await onPlan(page, 130 + 17, -62)));
  await focusPlan(page);
  await page.keyboard.press('Shift+F10');
  await expect(page.getByTestId('plan-menu')).toBeVisible();
  await page.getByTestId('plan-menu-Turn').hover();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('plan-menu')).toBeHidden();
  await expect(page.getByTestId('part-turn')).toHaveValue('90');
  await page.keyboard.press('Shift+F10');
  await page.keyboard.press('Escape');
  await expect(page.getByTestId('plan')).toBeFocused();
});

test('a pointer that the system takes away in mid-drag puts everything back', async ({ page }) => {
  for (const lost of ['pointercancel', 'lostpointercapture', 'blur', 'visibilitychange'] as const) {
    await grabAndMove(page, [130 + 17, -62], [60, 20]);
    await expect(page.getByTestId('part-x')).not.toHaveValue('130');
    await page.getByTestId('plan').evaluate((plan, type) => {
      const at = type === 'blur' ? window : type === 'visibilitychange' ? document : plan;
      const pointer = { bubbles: true, pointerId: 1, pointerType: 'mouse' };
      at.dispatchEvent(type.includes('pointer') ? new PointerEvent(type, pointer) : new Event(type));
    }, lost);
    await expect(page.getByTestId('part-x')).toHaveValue('130');
    await page.mouse.move(...(await onPlan(page, -40, 90)));
    await page.mouse.up();
    await expect(page.getByTestId('part-x')).toHaveValue('130');
    await expect(page.getByTestId('command-undo')).toBeDisabled();
  }
});

test('the wheel moves the view where it is set so, also after a reload', async ({ page }) => {
  await focusPlan(page);
  const scale = () => page.evaluate(() => localStorage.getItem('evenplate.view') ?? '');
  await page.keyboard.press('Shift+W');
  await expect.poll(scale).toContain('"wheel":"pan"');
  await page.reload();
  await expect(page.locator('main[data-keys]')).toBeVisible();
  const [x, y] = await onPlan(page, 130 + 17, -62);
  await page.mouse.move(x, y);
  await page.mouse.wheel(0, 60);
  await page.mouse.click(x, y - 60);
  await expect(page.getByTestId('part-inspector')).toContainText('P15');
});

test.describe('with fingers', () => {
  test.use({ hasTouch: true });

  test('two of them zoom and pan; one that rests opens the menu', async ({ page }) => {
    const touch = await fingersOn(page);
    const part = await onPlan(page, 130 + 17, -62);
    const [x, y] = await onPlan(page, 0, 0);
    await touch('touchStart', [[x - 50, y]]);
    await touch('touchStart', [
      [x - 50, y],
      [x + 50, y],
    ]);
    for (let i = 1; i <= 10; i++)
      await touch('touchMove', [
        [x - 50 - 5 * i, y],
        [x + 50 + 5 * i, y],
      ]);
    await touch('touchEnd', []);
    await expect(page.getByTestId('command-undo')).toBeDisabled();
    // twice as large about the middle
    await page.mouse.click(2 * part[0] - x, 2 * part[1] - y);
    await expect(page.getByTestId('part-inspector')).toContainText('P15');
    await page.keyboard.press('Home');
    await touch('touchStart', [part]);
    await expect(page.getByTestId('plan-menu')).toBeVisible();
    await touch('touchEnd', []);
    await expect(page.getByTestId('plan-menu')).toBeVisible();
    await expect(page.getByTestId('command-undo')).toBeDisabled();
  });
});
