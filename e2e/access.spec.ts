/** Every screen and dialog, on both grounds: axe finds nothing serious or critical. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, openDemo, test } from './page';
import { SCREENS } from './screens';

/** What axe finds serious or critical: rule, and the first places. */
async function findings(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 3)
          .map((node) => node.html.slice(0, 160))
          .join(' | ')}`,
    );
}

/** Long enough for what is loaded on opening and for what moves to stand still. */
const SETTLED_MS = 400;

for (const theme of ['light', 'dark'] as const)
  test(`every screen on the ${theme} ground`, async ({ page }) => {
    test.setTimeout(240_000);
    await page.emulateMedia({ colorScheme: theme, reducedMotion: 'reduce' });
    await openDemo(page);
    for (const [name, come] of Object.entries(SCREENS))
      await test.step(name, async () => {
        await come(page);
        await page.waitForTimeout(SETTLED_MS);
        expect.soft(await findings(page), name).toEqual([]);
        await page.keyboard.press('Escape');
        await expect(page.getByRole('dialog')).toHaveCount(0);
      });
  });
