/** Editing: typed lengths, undo and redo, a reload in mid-edit, files that are bad. */
import { readFileSync } from 'node:fs';
import {
  checksumNow,
  chooseFile,
  choosePart,
  expect,
  figure,
  focusPlan,
  grabAndMove,
  openDemo,
  test,
  typeInto,
} from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
});

test('typed lengths read a decimal comma and inches, and refuse what is no length', async ({ page }) => {
  await choosePart(page, 'P15');
  const x = page.getByTestId('part-x');
  for (const [typed, mm] of [
    ['25,4', '25.4'],
    ['1/4 in', '6.35'],
    ['1 in', '25.4'],
    ['-2 cm', '-20'],
  ] as const) {
    await typeInto(page, 'part-x', typed);
    await expect(x).toHaveValue(mm);
  }
  await typeInto(page, 'part-x', 'far away');
  await expect(page.getByTestId('part-inspector').getByRole('alert')).toContainText('Kept: -20 mm');
  await typeInto(page, 'part-x', '1e5');
  await expect(page.getByTestId('part-inspector').getByRole('alert')).toContainText('Type all digits');
  await x.press('Escape');
  await expect(x).toHaveValue('-20');
});

test('fifty steps are undone one by one and done again', async ({ page }) => {
  const before = await checksumNow(page);
  await choosePart(page, 'P15');
  await focusPlan(page);
  for (let i = 0; i < 50; i++) await page.keyboard.press(i % 5 === 4 ? 't' : 'ArrowLeft');
  await expect(page.getByTestId('part-x')).toHaveValue('90');
  await expect(page.getByTestId('part-turn')).toHaveValue('150');
  await expect(page.getByTestId('checksum')).not.toHaveText(before);
  const after = await checksumNow(page);
  for (let i = 0; i < 50; i++) await page.keyboard.press('Control+z');
  await expect(page.getByTestId('part-x')).toHaveValue('130');
  await expect(page.getByTestId('part-turn')).toHaveValue('0');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await expect(page.getByTestId('checksum')).toHaveText(before);
  for (let i = 0; i < 50; i++) await page.keyboard.press('Control+y');
  await expect(page.getByTestId('command-redo')).toBeDisabled();
  await expect(page.getByTestId('checksum')).toHaveText(after);
});

test('a reload in the middle of a drag brings back the plate from before it, with its history', async ({
  page,
}) => {
  await choosePart(page, 'P15');
  const former = await checksumNow(page);
  await typeInto(page, 'part-y', '-60');
  await expect(page.getByTestId('checksum')).not.toHaveText(former);
  const checksum = await checksumNow(page);
  await grabAndMove(page, [130 + 17, -60], [100 + 17, -60]);
  await expect(page.getByTestId('part-x')).not.toHaveValue('130');
  const savedPlace = () =>
    page.evaluate(() => {
      const { parts } = JSON.parse(localStorage.getItem('evenplate.layout') ?? '{"parts":[]}') as {
        parts: { id: string; at_mm: number[] }[];
      };
      return parts.find(({ id }) => id === 'P15')?.at_mm;
    });
  await expect.poll(savedPlace).toEqual([130, -60]);
  await page.reload();
  await choosePart(page, 'P15');
  await expect(page.getByTestId('part-x')).toHaveValue('130');
  await expect(page.getByTestId('part-y')).toHaveValue('-60');
  await expect(page.getByTestId('checksum')).toHaveText(checksum);
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('part-y')).toHaveValue('-62');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await page.getByTestId('command-redo').click();
  await expect(page.getByTestId('checksum')).toHaveText(checksum);
});

/** A layout whose one shape has 700 sections of 100 points each: more text than browsers give a page. */
const largeLayout = (): string => {
  const slabs = Array.from({ length: 700 }, (_, k) => ({
    to_mm: (k + 1) / 10,
    rings: [
      Array.from({ length: 100 }, (__, i) => {
        const [r, angle] = [20 + k / 1000, (Math.PI * i) / 50];
        return [r * Math.cos(angle), r * Math.sin(angle)].map((v) => Number(v.toFixed(3)));
      }),
    ],
  }));
  const ring = JSON.parse(readFileSync('shared/examples/ring.json', 'utf8')) as object;
  const parts = [{ id: 'P01', shape: 'mesh', at_mm: [10, 20] }];
  return JSON.stringify({ ...ring, name: 'Large', shapes: { mesh: { slabs } }, parts });
};

test('a plate too large for the page’s own storage comes back, with what was done at the last moment', async ({
  page,
}) => {
  await chooseFile(page, () => page.keyboard.press('Control+o'), {
    name: 'large.json',
    mimeType: 'application/json',
    buffer: Buffer.from(largeLayout()),
  });
  await expect(page.locator('[data-part]')).toHaveCount(1);
  const saved = () => page.evaluate(() => localStorage.getItem('evenplate.layout.large'));
  await expect.poll(saved).not.toBeNull();
  await expect.poll(async () => (await saved())?.includes('"before"')).toBe(false);
  await choosePart(page, 'P01');
  await typeInto(page, 'part-x', '33');
  await page.reload();
  await choosePart(page, 'P01');
  await expect(page.getByTestId('part-x')).toHaveValue('33');
  await expect(page.getByTestId('part-height')).toHaveValue('70');
  await expect(page.getByTestId('notices').locator('p')).toHaveCount(0);
});

test('arrows in the part list walk it with the selection; on the plan they move the part', async ({
  page,
}) => {
  await choosePart(page, 'P15');
  for (const key of ['ArrowDown', 'ArrowRight', 'Shift+ArrowLeft']) await page.keyboard.press(key);
  await expect(page.getByTestId('part-inspector')).toContainText('P16');
  await expect(page.locator('[data-part="P16"] button')).toBeFocused();
  await expect(page.getByTestId('part-x')).toHaveValue('130');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
  await page.keyboard.press('Shift+ArrowUp');
  await expect(page.getByTestId('part-inspector')).toContainText('2 PARTS');
  await page.keyboard.press('ArrowUp');
  await focusPlan(page);
  await page.keyboard.press('ArrowRight');
  await expect(page.getByTestId('part-inspector')).toContainText('P14');
  await expect(page.getByTestId('command-undo')).toBeEnabled();
});

test('the copies form waits for whole counts, and says what it will place', async ({ page }) => {
  await choosePart(page, 'P15');
  await focusPlan(page);
  await page.keyboard.press('k');
  const place = page.getByRole('dialog').getByTestId('rows-place');
  await expect(place).toHaveText('Place 1 copy');
  const count = page.getByRole('dialog').getByTestId('rows-countX');
  for (const text of ['1000', '-3', '2.5', 'abc']) {
    await count.fill(text);
    await expect(page.getByRole('dialog').getByRole('alert')).toContainText('a whole number, 1 to 100');
    await expect(place).toBeDisabled();
  }
  const parts = await page.locator('[data-part]').count();
  await count.fill('3');
  await expect(place).toHaveText('Place 2 copies');
  await place.click();
  await expect(page.locator('[data-part]')).toHaveCount(parts + 2);
});

test('keys pressed before the shortcuts have arrived are not lost', async ({ page }) => {
  let arrive = (): void => undefined;
  const arrived = new Promise<void>((resolve) => {
    arrive = resolve;
  });
  // the bundler puts the shortcuts into either of these
  await page.route(/\/(keyboard|aroundPlate)[^/]*\.js$/, async (route) => {
    await arrived;
    await route.continue();
  });
  await page.reload();
  await expect(page.getByTestId('layer-time')).toHaveText(/\d/);
  await expect(page.locator('main[data-keys]')).toHaveCount(0);
  for (const key of ['w', '+', 'Control+z', 'e']) await page.keyboard.press(key);
  arrive();
  await expect(page.locator('main[data-keys]')).toBeVisible();
  await expect(page.getByTestId('choose-strips-y')).toHaveAttribute('data-state', 'on');
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('choose-quadrants')).toHaveAttribute('data-state', 'on');
  await expect(page.getByTestId('command-undo')).toBeDisabled();
});

const whole = readFileSync('shared/examples/ring.json', 'utf8');
for (const [what, name, text, says] of [
  ['a file that is no JSON', 'torn.json', whole.slice(0, 700), /JSON/],
  ['an unknown key', 'odd.json', whole.replace('"machine"', '"press": 1, "machine"'), /press/],
  ['a newer version', 'newer.json', whole.replace('"version": 1', '"version": 9'), /9/],
] as const) {
  test(`${what} is refused in one sentence and leaves the layout alone`, async ({ page }) => {
    const before = await checksumNow(page);
    await chooseFile(page, () => page.keyboard.press('Control+o'), {
      name,
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await expect(page.getByTestId('notices').locator('p')).toHaveCount(1);
    await expect(page.getByTestId('notices')).toContainText(says);
    await expect(page.getByTestId('checksum')).toHaveText(before);
    await expect(page.getByTestId('command-undo')).toBeDisabled();
  });
}

test('a layout file opens, and saves to a file that opens as the same layout', async ({ page }) => {
  await chooseFile(page, () => page.keyboard.press('Control+o'), 'shared/examples/ring.json');
  // the ring plate computed by hand: slowest laser 70.546 s, imbalance by time 2.56 %
  await expect.poll(() => figure(page, 'exposure')).toBeCloseTo(70.55, 1);
  expect(await figure(page, 'imbalance-time')).toBeCloseTo(2.56, 1);
  const sum = await checksumNow(page);
  const download = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  const path = await (await download).path();
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('checksum')).not.toHaveText(sum);
  await chooseFile(page, () => page.keyboard.press('Control+o'), {
    name: 'saved.json',
    mimeType: 'application/json',
    buffer: readFileSync(path),
  });
  await expect(page.getByTestId('checksum')).toHaveText(sum);
});
