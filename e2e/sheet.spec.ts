/**
 * The operator's sheet: on screen, on paper, as PDF. The tall-one plate by hand (process numbers common practice, no
 * source): 4000 layers, 109.113 h; L4 exposes the tall part alone, from 0 to 240 mm. Paper by ISO 216 and ANSI, in points.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { chooseFile, expect, focusPlan, openDemo, test } from './page';

const example = (name: string): string =>
  fileURLToPath(new URL(`../shared/examples/${name}.json`, import.meta.url));
const LONG = { timeout: 30_000 };

interface ReadPage {
  readonly words: string;
  readonly width: number;
  readonly height: number;
}
async function readPdf(bytes: Uint8Array): Promise<ReadPage[]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    const words = items.map((item) => ('str' in item ? item.str : '')).join(' ');
    pages.push({ words: words.replaceAll(/\s+/g, ' '), width, height });
  }
  return pages;
}
/** Widths of the lines around letters on the first page, in mm. */
async function haloWidths(bytes: Uint8Array): Promise<number[]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const { fnArray, argsArray } = await (await pdf.getPage(1)).getOperatorList();
  let width = 0;
  return fnArray.flatMap((operator, i) => {
    if (operator === OPS.setLineWidth) width = Number(argsArray[i][0]);
    return operator === OPS.setTextRenderingMode && argsArray[i][0] === 2 ? [width] : [];
  });
}
async function openSheet(page: Page): Promise<void> {
  await page.getByTestId('command-sheet').click();
  await expect(page.getByTestId('sheet-page').first()).toBeVisible(LONG);
}
async function checksumOf(page: Page): Promise<string> {
  await expect(page.getByTestId('checksum')).toHaveText(/^[0-9a-f]{12}$/);
  return page.getByTestId('checksum').innerText();
}
async function openTallOne(page: Page): Promise<void> {
  await openDemo(page);
  await focusPlan(page);
  await chooseFile(page, () => page.keyboard.press('Control+o'), example('tall-one'));
  await expect(page.getByTestId('title-hours')).toContainText('109.1', LONG);
}
async function savePdf(page: Page) {
  const download = page.waitForEvent('download');
  await page.getByTestId('sheet-pdf').click();
  const file = await download;
  const bytes = readFileSync(await file.path());
  return { name: file.suggestedFilename(), bytes, pages: await readPdf(bytes) };
}

test.describe('of the tall-one plate', () => {
  test.beforeEach(async ({ page }) => openTallOne(page));

  test('shows the page with what was computed by hand', async ({ page }) => {
    const checksum = await checksumOf(page);
    await openSheet(page);
    await expect(page.getByTestId('sheet-standing')).toContainText('One page.');
    const sheet = page.getByTestId('sheet-page');
    for (const words of ['Tall one', '4000 × 0.06 mm', /109\.1\sh/, /L4\s0–240/, /L1\s0–60/, checksum])
      await expect(sheet).toContainText(words);
    for (const words of ['FRONT', 'GAS', 'BLADE', 'actual start', 'reviewed', 'No part is cut.'])
      await expect(sheet).toContainText(words);
    // all thirteen parts stand on the platform, so the plan is cut there
    await expect(sheet).toContainText('PLAN at z 0.03 mm');
  });

  test('prints as one page of A4 and as one of Letter, the sheet and nothing else', async ({ page }) => {
    await openSheet(page);
    for (const [format, width, height] of [
      ['A4', 595.3, 841.9],
      ['Letter', 612, 792],
    ] as const) {
      const printed = await readPdf(await page.pdf({ format, preferCSSPageSize: false }));
      expect(printed).toHaveLength(1);
      expect(printed[0]!.width).toBeCloseTo(width, -1);
      expect(printed[0]!.height).toBeCloseTo(height, -1);
      expect(printed[0]!.words).toContain('PART, LASER, HEIGHTS');
      expect(printed[0]!.words).toContain('signature, date');
      expect(printed[0]!.words).not.toContain('Side by side');
      expect(printed[0]!.words).not.toContain('Save as PDF');
    }
  });

  test('saves as a PDF whose words can be read, on the paper that was chosen', async ({ page }) => {
    const checksum = await checksumOf(page);
    await openSheet(page);
    const a4 = await savePdf(page);
    expect(a4.name).toBe(`tall-one-quadrants-${checksum}-sheet.pdf`);
    expect(a4.pages).toHaveLength(1);
    expect(a4.pages[0]!.width).toBeCloseTo(595.28, 0);
    expect(a4.pages[0]!.height).toBeCloseTo(841.89, 0);
    for (const words of ['Tall one, quadrants', checksum, 'B12', 'DRAFT, NOT RELEASED', 'IF A LASER FAILS'])
      expect(a4.pages[0]!.words).toContain(words);
    // 4 px at 4.2 px/mm: a wider one would cover the names beside it
    const halos = await haloWidths(a4.bytes);
    expect(halos.length).toBeGreaterThanOrEqual(13);
    for (const width of halos) expect(width).toBeCloseTo(4 / 4.2, 2);
    await page.getByTestId('sheet-paper').selectOption('Letter');
    const letter = await savePdf(page);
    expect(letter.pages[0]!.width).toBeCloseTo(612, 0);
    expect(letter.pages[0]!.height).toBeCloseTo(792, 0);
  });
});

test('says NOT FOR USE on screen and in the PDF while a laser is off whose parts nobody exposes', async ({
  page,
}) => {
  await openTallOne(page);
  await page.getByTestId('tab-machine').click();
  await page.getByRole('checkbox').nth(3).click();
  await expect(page.getByTestId('sheet-state')).toContainText('NOT FOR USE');
  await openSheet(page);
  await expect(page.getByTestId('sheet-standing')).toContainText('NOT FOR USE');
  await expect(page.getByTestId('sheet-page').first()).toContainText('NOT FOR USE');
  const { name, pages } = await savePdf(page);
  expect(name).toContain('NOT-FOR-USE');
  for (const { words } of pages) expect(words).toContain('NOT FOR USE');
});
