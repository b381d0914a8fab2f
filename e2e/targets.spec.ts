/**
 * Fingers and shaking hands: every target is 24 × 24 CSS px, or stands so far from the next that a circle of 24 px around its
 * middle meets no other (WCAG 2.2, success criterion 2.5.8, with its exception for spacing). Measured by what a press at a
 * point would hit, so that areas beyond an element's own box count.
 */
import type { Page } from '@playwright/test';
import { expect, openDemo, test } from './page';
import { SCREENS } from './screens';

const TARGETS =
  'button, a[href], input, select, textarea, summary, [role=slider], [role=tab], [role=menuitem], [role=menuitemradio], [role=option]';

/** Targets that are too small and too near to another one, as words. */
const crowded = (page: Page): Promise<string[]> =>
  page.evaluate((selector) => {
    const LEAST_PX = 24;
    const targetAt = (x: number, y: number): Element | null => {
      const hit = document.elementFromPoint(x, y);
      const label = hit?.closest('label');
      return label?.control ?? hit?.closest(selector) ?? null;
    };
    /** Px that a press may go from a point in a direction and still hit. */
    const reach = (element: Element, x: number, y: number, dx: number, dy: number): number => {
      let px = 0;
      while (px < LEAST_PX && targetAt(x + dx * (px + 1), y + dy * (px + 1)) === element) px++;
      return px;
    };
    /** True where the end of what scrolls runs through it. */
    const cutOff = (element: Element): boolean => {
      const own = (element.closest('tr') ?? element).getBoundingClientRect();
      for (let at = element.parentElement; at; at = at.parentElement) {
        if (!/auto|scroll/.test(getComputedStyle(at).overflowY)) continue;
        const { top, bottom } = at.getBoundingClientRect();
        if (own.top < top - 1 || own.bottom > bottom + 1) return true;
      }
      return false;
    };
    const found: { element: Element; x: number; y: number; small: boolean }[] = [];
    for (const element of document.querySelectorAll(selector)) {
      const { left, top, width, height } = element.getBoundingClientRect();
      const [x, y] = [left + width / 2, top + height / 2];
      const corners = [left + 3, left + width - 3].flatMap((at) =>
        [top + 3, top + height - 3].map((down) => targetAt(at, down)),
      );
      // what is scrolled away, covered by something, a part of it included, or disabled is no target now
      if (width === 0 || element.matches(':disabled') || cutOff(element)) continue;
      if (targetAt(x, y) !== element || corners.some((hit) => hit !== element)) continue;
      const wide = reach(element, x, y, 1, 0) + reach(element, x, y, -1, 0) >= LEAST_PX - 1;
      const high = reach(element, x, y, 0, 1) + reach(element, x, y, 0, -1) >= LEAST_PX - 1;
      found.push({ element, x, y, small: !(wide && high) });
    }
    const small = found.filter((one) => one.small);
    const meetsOther = ({ element, x, y }: (typeof found)[number]): boolean => {
      for (let k = 0; k < 16; k++) {
        const angle = (Math.PI * k) / 8;
        const other = targetAt(x + (LEAST_PX / 2) * Math.cos(angle), y + (LEAST_PX / 2) * Math.sin(angle));
        if (other !== null && other !== element) return true;
      }
      return small.some((one) => one.element !== element && Math.hypot(one.x - x, one.y - y) < LEAST_PX);
    };
    return small.filter(meetsOther).map(({ element }) => {
      const { width, height } = element.getBoundingClientRect();
      const name =
        element.getAttribute('data-testid') ?? element.getAttribute('aria-label') ?? element.textContent;
      return `${element.tagName.toLowerCase()}.${element.className} "${name}" ${width.toFixed(0)} × ${height.toFixed(0)}`;
    });
  }, TARGETS);

for (const [device, use] of [
  ['a mouse', {}],
  ['fingers', { hasTouch: true, isMobile: true }],
] as const)
  test.describe(`with ${device}`, () => {
    test.use(use);
    test('no target is small and crowded', async ({ page }) => {
      test.setTimeout(180_000);
      await openDemo(page);
      for (const [screen, come] of Object.entries(SCREENS))
        await test.step(screen, async () => {
          await come(page);
          await page.waitForTimeout(300);
          expect.soft(await crowded(page), screen).toEqual([]);
          await page.keyboard.press('Escape');
          await expect(page.getByRole('dialog')).toHaveCount(0);
        });
    });
  });
