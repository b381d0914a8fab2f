/**
 * Meshes through their check page. The files are written here, corner by corner; sizes, areas and volumes are those of
 * boxes [mathematics], the inch is 25.4 mm (international yard and pound agreement of 1959).
 */
import type { Page } from '@playwright/test';
import {
  binaryStl,
  box,
  loft,
  meshXml,
  rectangle,
  textStl,
  threeMf,
  together,
  without,
} from '../tests/import/mesh/meshes';
import { checksumNow, chooseFile, expect, figure, openDemo, test, typeInto } from './page';

const cube = box([0, 0, 0], [20, 20, 20]);
/** A flange 40 × 40 × 10 with a boss 20 × 20 on it, 30 high in all. */
const flange = together(box([-20, -20, 0], [20, 20, 10]), box([-10, -10, 10], [10, 10, 30]));

const open = async (page: Page, name: string, content: Uint8Array | string): Promise<void> => {
  const buffer = Buffer.from(content);
  await chooseFile(page, () => page.keyboard.press('i'), { name, mimeType: 'model/stl', buffer });
};
const cut = async (page: Page): Promise<void> => {
  await page.getByTestId('mesh-cut').click();
  await expect(page.getByTestId('mesh-place')).toBeVisible();
};
/** Numbers of a text, in order. */
const numbers = async (page: Page, name: string): Promise<number[]> =>
  ((await page.getByTestId(name).first().innerText()).match(/\d+(\.\d+)?/g) ?? []).map(Number);

const emptyPlate = async (page: Page): Promise<void> => {
  await page.getByTestId('file-menu').click();
  await page.getByTestId('menu-new-plate').click();
  await expect(page.locator('[data-part]')).toHaveCount(0);
};

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await emptyPlate(page);
});

for (const [kind, content] of [
  ['binary', binaryStl(cube)],
  ['text', textStl(cube)],
] as const)
  test(`a cube of 20 mm from a ${kind} STL lands with a section of 400 mm²`, async ({ page }) => {
    await open(page, 'test-bar.stl', content);
    await expect(page.getByTestId('mesh-size')).toHaveText('20.00 × 20.00 × 20.00 mm');
    await expect(page.getByTestId('mesh-facts')).toContainText('watertight, 8.00');
    await expect(page.getByTestId('mesh-file-findings')).toContainText('does not say its unit');
    // 20 mm in layers of 0.05 mm
    await expect(page.getByTestId('mesh-cut')).toHaveText('Cut into 400 layers of 0.05 mm');
    await cut(page);
    await expect(page.getByTestId('mesh-outcome')).toContainText('1 slab of 400 layers');
    await expect(page.getByTestId('mesh-outcome')).toContainText('100.00 %');
    await typeInto(page, 'mesh-copies-0', '3');
    await page.getByTestId('mesh-place').click();
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(page.locator('[data-part]')).toHaveCount(3);
    expect(await figure(page, 'section-area')).toBeCloseTo(3 * 400, 1);
    await page.keyboard.press('Control+z');
    await expect(page.locator('[data-part]')).toHaveCount(0);
  });

test('an STL in inches is 25.4 times as large once the unit is chosen', async ({ page }) => {
  await open(page, 'test-bar.stl', binaryStl(box([0, 0, 0], [1, 2, 3])));
  await page.getByTestId('mesh-unit').selectOption('inch');
  await expect(page.getByTestId('mesh-size')).toHaveText('25.40 × 50.80 × 76.20 mm');
});

test('a 3MF in inches needs no question; its copies and names come along', async ({ page }) => {
  const object = `<object id="1" name="valve block" type="model">${meshXml(box([0, 0, 0], [1, 1, 2]))}</object>`;
  const content = threeMf(object, '<item objectid="1"/><item objectid="1"/>', 'unit="inch"');
  await open(page, 'valves.3mf', content);
  await expect(page.getByTestId('mesh-size')).toHaveText('25.40 × 25.40 × 50.80 mm');
  await expect(page.getByTestId('mesh-name-0')).toHaveValue('valve block');
  await expect(page.getByTestId('mesh-copies-0')).toHaveValue('2');
  await cut(page);
  await page.getByTestId('mesh-place').click();
  await expect(page.locator('[data-part]')).toHaveCount(2);
  expect(await figure(page, 'section-area')).toBeCloseTo(2 * 25.4 ** 2, 0);
});

test('a 3MF that places several parts keeps their places on an empty plate; beside other parts they stand where there is room', async ({
  page,
}) => {
  const object = `<object id="1" name="bracket" type="model">${meshXml(box([0, 0, 0], [40, 20, 10]))}</object>`;
  const at = (x: number, y: number, turn = '1 0 0 0 1 0 0 0 1') =>
    `<item objectid="1" transform="${turn} ${x} ${y} 0"/>`;
  // from the front left corner of a platform of 340 mm: middles at (30, 20) and, turned a quarter, at (90, 70)
  const content = threeMf(object, at(10, 10) + at(100, 50, '0 1 0 -1 0 0 0 0 1'));
  await open(page, 'brackets.3mf', content);
  await expect(page.getByTestId('mesh-keep-places')).toBeChecked();
  await cut(page);
  await page.getByTestId('mesh-place').click();
  await expect(page.locator('[data-part]')).toHaveCount(2);
  const placeOf = async (id: string) => {
    await page.locator(`[data-part="${id}"]`).click();
    return Promise.all(
      ['part-x', 'part-y', 'part-turn'].map((field) => page.getByTestId(field).inputValue()),
    );
  };
  expect(await placeOf('P01')).toEqual(['-140', '-150', '0']);
  expect(await placeOf('P02')).toEqual(['-80', '-100', '90']);
  await open(page, 'brackets.3mf', content);
  await expect(page.getByTestId('mesh-keep-places')).not.toBeChecked();
  await cut(page);
  await page.getByTestId('mesh-place').click();
  await expect(page.locator('[data-part]')).toHaveCount(4);
  const [x, y, turn] = await placeOf('P04');
  expect([`${x}/${y}`, turn]).not.toEqual(['-80/-100', '90']);
  expect(turn).toBe('90');
  await expect(page.getByTestId('problem-count')).toHaveText('0');
});

test('turning what is seen about x puts the front face down', async ({ page }) => {
  await open(page, 'bracket.stl', binaryStl(box([0, 0, 0], [10, 20, 30])));
  await expect(page.getByTestId('mesh-size')).toHaveText('10.00 × 20.00 × 30.00 mm');
  await page.getByTestId('mesh-turn-x+').click();
  await expect(page.getByTestId('mesh-size')).toHaveText('10.00 × 30.00 × 20.00 mm');
  await typeInto(page, 'mesh-turn-z', '90');
  await expect(page.getByTestId('mesh-size')).toHaveText('30.00 × 10.00 × 20.00 mm');
});

test('an open cube says what is wrong and can still be cut where its outlines close', async ({ page }) => {
  // the two triangles of its top are missing
  await open(page, 'housing.stl', binaryStl(without(cube, 7, 11)));
  await expect(page.getByTestId('mesh-facts')).toContainText('not watertight');
  await expect(page.getByTestId('mesh-findings')).toContainText('4 edges are open');
  await cut(page);
  await expect(page.getByTestId('mesh-outcome')).toContainText('no volume to compare with');
  await page.getByTestId('mesh-place').click();
  await expect.poll(() => figure(page, 'section-area')).toBeCloseTo(400, 1);
});

test('a broken file is one sentence, and the plate is untouched', async ({ page }) => {
  await open(page, 'impeller.stl', binaryStl(cube).subarray(0, 300));
  await expect(page.getByTestId('notices').locator('p')).toHaveCount(1);
  await expect(page.getByTestId('notices')).toContainText('cut off');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.locator('[data-part]')).toHaveCount(0);
});

test('cutting that is cancelled leaves nothing, and may begin again', async ({ page }) => {
  // 60 columns of another section at each of 6,000 layers
  const columns = Array.from({ length: 60 }, (_, i) =>
    loft(rectangle(12 * i, 0, 12 * i + 4, 4), rectangle(12 * i, 0, 12 * i + 10, 10), 0, 300),
  );
  await open(page, 'pins.stl', binaryStl(together(...columns)));
  await page.getByTestId('mesh-cut').click();
  await expect(page.getByTestId('mesh-progress')).toContainText(/layer \d+ of 6000/);
  await page.getByTestId('mesh-cancel').click();
  await expect(page.getByTestId('mesh-progress')).toHaveCount(0);
  await expect(page.getByTestId('mesh-outcome')).toHaveCount(0);
  await expect(page.getByTestId('mesh-cut')).toBeEnabled();
  await page.getByRole('button', { name: 'Close' }).click();
  await expect(page.locator('[data-part]')).toHaveCount(0);
  expect((await page.getByTestId('notices').innerText()).trim()).toBe('');
});

test('a flange with a boss has two stretches of height, and its section follows the height', async ({
  page,
}) => {
  await open(page, 'flange.stl', binaryStl(flange));
  await cut(page);
  await page.getByTestId('mesh-seams-none').check();
  await page.getByTestId('mesh-place').click();
  const stretches = page.getByTestId('stretches').locator('option');
  await expect(stretches).toHaveText(['z 0–10 mm, layers 1–200', 'z 10–30 mm, layers 201–600']);
  expect(await figure(page, 'section-area')).toBeCloseTo(1600, 0);
  const chart = page.getByTestId('times-view');
  await expect(chart).toHaveAttribute('data-whole', 'present');
  await typeInto(page, 'height', '20');
  await expect.poll(() => figure(page, 'section-area')).toBeCloseTo(400, 0);
  // a part without seams keeps one laser: three lasers have nothing at all
  const areas = await Promise.all(['L1', 'L2', 'L3', 'L4'].map((laser) => figure(page, `area-${laser}`)));
  expect(areas.filter((value) => value > 0)).toHaveLength(1);
});

test('files dropped together are checked one after the other', async ({ page }) => {
  const contents = [textStl(cube), textStl(box([0, 0, 0], [30, 30, 5]))];
  const transfer = await page.evaluateHandle((texts) => {
    const files = new DataTransfer();
    texts.forEach((text, i) => files.items.add(new File([text], `spare-${i + 1}.stl`)));
    return files;
  }, contents);
  await page.getByTestId('plan').dispatchEvent('drop', { dataTransfer: transfer });
  await expect(page.getByRole('dialog')).toContainText('Check spare-1.stl, 1 of 2');
  await cut(page);
  await page.getByTestId('mesh-place').click();
  await expect(page.getByRole('dialog')).toContainText('Check spare-2.stl, 2 of 2');
  await expect(page.getByTestId('mesh-size')).toHaveText('30.00 × 30.00 × 5.000 mm');
  await page.getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.locator('[data-part]')).toHaveCount(1);
});

test('sections of a mesh survive a reload and a saved file', async ({ page }) => {
  test.slow();
  // 1,200 slabs of 200 corners: too large for the page's own storage
  const ring = (radius: number) =>
    Array.from({ length: 200 }, (_, i): [number, number] => {
      const angle = (2 * Math.PI * i) / 200;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
  await open(page, 'cone.stl', binaryStl(loft(ring(10), ring(40), 0, 60)));
  await cut(page);
  await page.getByTestId('mesh-place').click();
  await expect(page.locator('[data-part]')).toHaveCount(1);
  const before = await numbers(page, 'section-area');
  // a large plate's checksum follows its whole height
  await expect(page.getByTestId('checksum')).toHaveText(/[0-9a-f]{12}/, { timeout: 30_000 });
  const checksum = await checksumNow(page);
  const saved = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  const file = await (await saved).path();
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('evenplate.layout.large') !== null))
    .toBe(true);
  await page.waitForTimeout(1500);
  await page.reload();
  await expect(page.locator('[data-part]')).toHaveCount(1);
  expect(await numbers(page, 'section-area')).toEqual(before);
  await expect(page.getByTestId('checksum')).toHaveText(checksum, { timeout: 30_000 });
  await expect(page.locator('main[data-keys]')).toBeVisible();
  await emptyPlate(page);
  await chooseFile(page, () => page.keyboard.press('Control+o'), {
    name: 'cone.json',
    mimeType: 'application/json',
    buffer: (await import('node:fs')).readFileSync(file),
  });
  await expect(page.locator('[data-part]')).toHaveCount(1);
  await expect(page.getByTestId('checksum')).toHaveText(checksum, { timeout: 30_000 });
});
