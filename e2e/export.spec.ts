/**
 * Files that the page hands over, each downloaded from it and read: by dxf-parser, fflate, the browser's own readers of
 * pictures and XML. The demo plate has 27 parts on a platform of 340 × 340 mm, 1,800 layers of 0.05 mm.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import DxfParser from 'dxf-parser';
import { strFromU8, unzipSync } from 'fflate';
import { areas, chooseFile, DEMO_PLATFORM_MM, expect, figure, focusPlan, openDemo, test } from './page';

const DEMO = fileURLToPath(new URL('../shared/examples/demo.json', import.meta.url));

interface Saved {
  readonly name: string;
  readonly bytes: Buffer;
}

async function save(page: Page, kind: string): Promise<Saved> {
  const download = page.waitForEvent('download');
  await page.getByTestId(`make-${kind}`).click();
  const file = await download;
  await expect(page.getByTestId('file-done')).toContainText(file.suggestedFilename());
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}
async function openFiles(page: Page): Promise<void> {
  await focusPlan(page);
  await page.keyboard.press('Shift+O');
  await expect(page.getByTestId('make-parts')).toBeEnabled();
}
/** No cell of these tables holds its separator. */
const rowsOf = ({ bytes }: Saved, separator = ','): Record<string, string>[] => {
  const [header = [], ...rows] = bytes
    .toString('utf8')
    .trimEnd()
    .split('\r\n')
    .map((line) => line.split(separator));
  return rows.map((row) => Object.fromEntries(row.map((cell, i) => [header[i] ?? '', cell])));
};

test.describe('of the demo plate', () => {
  test.beforeEach(async ({ page }) => openDemo(page));

  test('by the keyboard alone, which stays on the button that was pressed', async ({ page }) => {
    await openFiles(page);
    const button = page.getByTestId('make-report');
    await button.focus();
    const download = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    expect((await download).suggestedFilename()).toMatch(/-report\.json$/);
    await expect(button).toBeFocused();
  });

  test('the table of layers holds what the readout shows', async ({ page }) => {
    const shown = await areas(page);
    const time_s = await figure(page, 'layer-time');
    await openFiles(page);
    const saved = await save(page, 'layers');
    expect(saved.name).toMatch(/^ferry-spares-plate-1-[0-9a-f]{12}-layers\.csv$/);
    const rows = rowsOf(saved);
    expect(rows).toHaveLength(1800);
    // shown to four or five digits
    for (const [laser, area] of Object.entries(shown))
      expect(Number(rows[0]?.[`${laser} area_mm2`])).toBeCloseTo(area, -1);
    expect(Number(rows[0]?.['time_s'])).toBeCloseTo(time_s, 1);
  });

  test('the table of parts names each part, also with decimal commas', async ({ page }) => {
    await openFiles(page);
    const plain = rowsOf(await save(page, 'parts'));
    expect(new Set(plain.map(({ part }) => part)).size).toBe(27);
    await page.getByTestId('file-cells').selectOption('semicolonComma');
    const written = rowsOf(await save(page, 'parts'), ';');
    const numbers = (rows: Record<string, string>[]) =>
      rows.map((row) => Number(row['volume_cm3']?.replace(',', '.')));
    expect(numbers(written)).toEqual(numbers(plain));
    expect(numbers(plain).every((volume) => volume > 0)).toBe(true);
  });

  test('the plan is a picture: SVG well-formed, PNG of one to three times its size', async ({ page }) => {
    await openFiles(page);
    const svg = (await save(page, 'picture')).bytes.toString('utf8');
    const [root, texts, faults] = await page.evaluate((text) => {
      const xml = new DOMParser().parseFromString(text, 'image/svg+xml');
      const all = [...xml.querySelectorAll('text')].map((node) => node.textContent);
      return [xml.documentElement.localName, all, xml.querySelectorAll('parsererror').length] as const;
    }, svg);
    expect([root, faults]).toEqual(['svg', 0]);
    expect(texts).toEqual(expect.arrayContaining(['P01', 'P27', 'FRONT']));
    for (const scale of [1, 2, 3]) {
      await page.getByTestId('file-picture-form').selectOption(`png${scale}`);
      const { name, bytes } = await save(page, 'picture');
      expect(name).toMatch(/\.png$/);
      const read = await page.evaluate(async (base64) => {
        const all = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        const bitmap = await createImageBitmap(new Blob([all], { type: 'image/png' }));
        const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
        const context = canvas.getContext('2d')!;
        context.drawImage(bitmap, 0, 0);
        const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
        const colours = new Set<number>();
        for (let i = 0; i < data.length; i += 4 * 97)
          colours.add((data[i]! << 16) | (data[i + 1]! << 8) | data[i + 2]!);
        return { width: bitmap.width, height: bitmap.height, colours: colours.size };
      }, bytes.toString('base64'));
      expect(read.width).toBe(1200 * scale);
      expect(read.height).toBe(1250 * scale);
      expect(read.colours).toBeGreaterThan(20);
    }
  });

  test('zones and seams are read by another reader in true size', async ({ page }) => {
    await openFiles(page);
    const { bytes } = await save(page, 'zones');
    const entities = (new DxfParser().parseSync(bytes.toString('utf8'))?.entities ?? []) as unknown as {
      layer: string;
      vertices: { x: number; y: number }[];
    }[];
    const platform = entities.find(({ layer }) => layer === 'PLATFORM');
    expect(Math.max(...(platform?.vertices ?? []).map(({ x }) => x))).toBe(DEMO_PLATFORM_MM / 2);
    expect(new Set(entities.map(({ layer }) => layer))).toEqual(
      new Set(['PLATFORM', 'ZONE_L1', 'ZONE_L2', 'ZONE_L3', 'ZONE_L4', 'SEAMS']),
    );
  });

  test('the report holds the figures on screen, the bodies every part', async ({ page }) => {
    const time_s = await figure(page, 'layer-time');
    const hours = await figure(page, 'build-hours');
    await openFiles(page);
    const report = JSON.parse((await save(page, 'report')).bytes.toString('utf8')) as {
      layer: { time_s: number };
      build: { time_h: number };
    };
    expect(report.layer.time_s).toBeCloseTo(time_s, 1);
    expect(report.build.time_h).toBeCloseTo(hours, 1);
    const { name, bytes } = await save(page, 'mesh');
    expect(name).toMatch(/-plate\.3mf$/);
    const model = strFromU8(unzipSync(new Uint8Array(bytes))['3D/3dmodel.model']!);
    expect(model.match(/<item /g)).toHaveLength(27);
  });

  test('the bodies come in again by the check page', async ({ page }) => {
    await openFiles(page);
    const [first] = rowsOf(await save(page, 'parts'));
    const volume = Number(first?.['volume_cm3']);
    const { name, bytes } = await save(page, 'mesh');
    await page.keyboard.press('Escape');
    await chooseFile(page, () => page.keyboard.press('i'), { name, mimeType: 'model/3mf', buffer: bytes });
    const check = page.getByRole('dialog');
    await expect(check).toContainText('watertight');
    await expect(check).not.toContainText('not watertight');
    // the impeller, P01: as the table of parts has it
    expect(Math.round(100 * volume)).toBe(6744);
    await expect(check).toContainText('67.44');
  });
});

test('a plate with something that blocks hand-over says so in every file', async ({ page }) => {
  await openDemo(page);
  const layout = JSON.parse(readFileSync(DEMO, 'utf8')) as { machine: { lasers: { on?: boolean }[] } };
  layout.machine.lasers[1]!.on = false;
  const buffer = Buffer.from(JSON.stringify(layout));
  const file = { name: 'one-off.json', mimeType: 'application/json', buffer };
  await chooseFile(page, () => page.keyboard.press('Control+o'), file);
  await expect(page.getByTestId('unassigned')).not.toHaveText(/^0\.00/);
  await openFiles(page);
  await expect(page.getByTestId('files-blocked')).toContainText('NOT FOR USE');
  for (const kind of ['parts', 'layers', 'picture', 'zones', 'report', 'mesh']) {
    const { name, bytes } = await save(page, kind);
    expect(name).toContain('-NOT-FOR-USE-');
    const inside = kind === 'mesh' ? unzipSync(new Uint8Array(bytes))['3D/3dmodel.model']! : bytes;
    expect(Buffer.from(inside).toString('utf8')).toContain('NOT FOR USE');
  }
});
