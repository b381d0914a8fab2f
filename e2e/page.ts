/**
 * What the browser tests share: a page whose console must stay clean, figures read from the screen, and places of the
 * plate as places of the window. Millimetres; the plan shows the whole platform as long as nobody zooms.
 */
import { test as base, expect, type Page } from '@playwright/test';
import { fitCamera, toScreen } from '../src/canvas/camera';

export { expect };

/** Every test fails on an error in the console, an uncaught exception or a request that fails. */
export const test = base.extend<{ clean: void }>({
  clean: [
    async ({ page }, use) => {
      const faults: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
      });
      page.on('pageerror', (error) => faults.push(error.message));
      page.on('response', (response) => {
        if (response.status() >= 400) faults.push(`${response.status()} ${response.url()}`);
      });
      // from the beginning, so that no file dialog opens before it is listened for
      page.on('filechooser', () => undefined);
      await use();
      expect(faults).toEqual([]);
    },
    { auto: true },
  ],
});

export const DEMO_PLATFORM_MM = 340;

/** Opens the page as a newcomer sees it and waits for the figures. */
export const openDemo = async (page: Page, address = './'): Promise<void> => {
  await page.goto(address);
  await expect(page.getByTestId('layer-time')).toHaveText(/\d/);
  await expect(page.locator('[data-part="P01"]')).toBeVisible();
  await expect(page.locator('main[data-keys]')).toBeVisible();
  await page.getByRole('button', { name: 'Understood' }).click();
};

const numbersIn = (text: string): number[] =>
  (text.replaceAll('−', '-').match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

/** The number a figure of the readout shows. */
export const figure = async (page: Page, name: string): Promise<number> => {
  const [value] = numbersIn(await page.getByTestId(name).innerText());
  if (value === undefined) throw new Error(`the figure ${name} shows no number`);
  return value;
};
export const areas = async (page: Page): Promise<Record<string, number>> => ({
  L1: await figure(page, 'area-L1'),
  L2: await figure(page, 'area-L2'),
  L3: await figure(page, 'area-L3'),
  L4: await figure(page, 'area-L4'),
});
/** The book-keeping line: scanned − double exposed + unassigned = section, in mm². */
export const books = async (page: Page) => {
  const text = await page.getByTestId('book-keeping').innerText();
  const [scanned, double, unassigned, section] = text
    .split(/\s[−+=≠]\s/)
    .map((part) => numbersIn(part)[0] ?? NaN) as [number, number, number, number];
  return { scanned, double, unassigned, section };
};
/** Four numbers with one decimal each: their sum is off by at most 0.2. */
export const expectBooksBalanced = async (page: Page): Promise<void> => {
  await expect(page.getByTestId('book-keeping')).toContainText('=');
  const { scanned, double, unassigned, section } = await books(page);
  expect(Math.abs(scanned - double + unassigned - section)).toBeLessThanOrEqual(0.21);
};

/** Where a point of the plate stands in the window. */
export const onPlan = async (page: Page, x: number, y: number): Promise<readonly [number, number]> => {
  const box = await page.getByTestId('plan').boundingBox();
  if (box === null) throw new Error('the plan is not on the page');
  const camera = fitCamera(DEMO_PLATFORM_MM, DEMO_PLATFORM_MM, box);
  const { left, top } = toScreen({ x, y }, camera, box);
  return [box.x + left, box.y + top];
};
/** Presses at one point of the plate and moves to another, without letting go. */
export const grabAndMove = async (
  page: Page,
  from: readonly [number, number],
  to: readonly [number, number],
): Promise<void> => {
  await page.mouse.move(...(await onPlan(page, ...from)));
  await page.mouse.down();
  await page.mouse.move(...(await onPlan(page, ...to)), { steps: 12 });
};
export const dragOnPlan: typeof grabAndMove = async (page, from, to) => {
  await grabAndMove(page, from, to);
  await page.mouse.up();
};

export const choosePart = async (page: Page, id: string): Promise<void> => {
  await page.locator(`[data-part="${id}"]`).click();
  await expect(page.getByTestId('part-inspector')).toContainText(id);
};
/** Types into a field as a user does, and commits. */
export const typeInto = async (page: Page, field: string, text: string): Promise<void> => {
  await page.getByTestId(field).fill(text);
  await page.getByTestId(field).press('Enter');
};
/** Answers the file dialog that `ask` opens. */
export const chooseFile = async (
  page: Page,
  ask: () => Promise<void>,
  file: string | { name: string; mimeType: string; buffer: Buffer },
): Promise<void> => {
  const chooser = page.waitForEvent('filechooser');
  await ask();
  await (await chooser).setFiles(file);
};
/** Gives the keyboard to the page itself, away from fields. */
export const focusPlan = (page: Page): Promise<void> => page.getByTestId('plan').focus();

/** The checksum of the plate as it is now: the title block follows an edit a frame later. */
export const checksumNow = async (page: Page): Promise<string> => {
  await page.evaluate(async () => {
    for (let frame = 0; frame < 3; frame++) await new Promise(requestAnimationFrame);
  });
  const checksum = page.getByTestId('checksum');
  await expect(checksum).toHaveText(/^[0-9a-f]{12}$/);
  return checksum.innerText();
};

type Places = readonly (readonly [number, number])[];

/** Sends fingers to the page as the system does: the places given are those that touch it from now on. */
export const fingersOn = async (
  page: Page,
): Promise<
  (type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', places: Places) => Promise<unknown>
> => {
  const client = await page.context().newCDPSession(page);
  return (type, places) =>
    client.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: places.map(([x, y], id) => ({ x, y, id })),
    });
};
