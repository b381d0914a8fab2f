/**
 * English and German: chosen in the page, kept over a reload, taken from the browser at the first visit; numbers by locale;
 * and on no screen is a word of the program left in English.
 */
import type { Page } from '@playwright/test';
import { FIRST } from '../src/language/de/first';
import { REST } from '../src/language/de/rest';
import { demoLayout } from '../src/layout/demo';
import { choosePart, expect, openDemo, test } from './page';
import { SCREENS } from './screens';

const choose = async (page: Page, language: 'system' | 'en' | 'de'): Promise<void> => {
  await page.getByTestId('view-menu').click();
  await page.getByTestId(`language-${language}`).click();
};

test('German is chosen in the page and kept; the plate, what is selected and what can be undone stay', async ({
  page,
}) => {
  await openDemo(page);
  await choosePart(page, 'P03');
  await page.getByTestId('part-x').fill('25,4');
  await page.getByTestId('part-x').press('Enter');
  await expect(page.getByTestId('part-x')).toHaveValue('25.4');
  await choose(page, 'de');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.getByTestId('view-menu')).toBeFocused();
  await expect(page.getByTestId('file-menu')).toHaveText('Datei');
  await expect(page.getByTestId('layer-time')).toHaveText(/\d,\d/);
  await expect(page.getByTestId('part-x')).toHaveValue('25,4');
  await expect(page.locator('tr[data-part="P03"]')).toHaveAttribute('data-selected', 'true');
  await expect(page.getByTestId('command-undo')).toHaveAttribute('aria-label', /^Rückgängig: x$/);
  for (const [typed, kept] of [
    ['12.5', '12,5'],
    ['1,25 in', '31,75'],
  ] as const) {
    await page.getByTestId('part-x').fill(typed);
    await page.getByTestId('part-x').press('Enter');
    await expect(page.getByTestId('part-x')).toHaveValue(kept);
  }
  await page.reload();
  await expect(page.getByTestId('file-menu')).toHaveText('Datei');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await page.keyboard.press('Control+z');
  await choosePart(page, 'P03');
  await expect(page.getByTestId('part-x')).toHaveValue('12,5');
  await choose(page, 'en');
  await expect(page.getByTestId('file-menu')).toHaveText('File');
  await expect(page.getByTestId('part-x')).toHaveValue('12.5');
});

const KEYS = Object.entries<string>({ ...FIRST, ...REST }).filter(([english, german]) => english !== german);
/** Texts without values, as they stand on the page, that are other words in German. */
const ENGLISH = new Set(
  KEYS.map(([english]) => english.split(' ¦ ', 1)[0] ?? '')
    .filter((text) => !/[[{]/.test(text) && /\p{L}{3}/u.test(text))
    .filter((text) => !KEYS.some(([, german]) => german === text)),
);
/** Words that no German sentence holds. */
const STOP_WORDS = /(^|[^\p{L}])(the|of|and|is|are|to|with|from|not|each|by|or|at|no|it)(?!\p{L})/iu;
const { name, note, machine, process, shapes } = demoLayout();
/** What a user or a file called something is theirs. */
const THEIRS = [
  note,
  name,
  machine.name,
  process.name,
  ...Object.keys(shapes),
  'left-out.dxf',
  'bracket.stl',
  'English',
];

/** Every text and every name of the page, as a reader or a listener meets it. */
const textsOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
    for (let node = walker.nextNode(); node; node = walker.nextNode())
      if (node instanceof Element)
        texts.push(
          ...['aria-label', 'title', 'placeholder', 'alt'].map((key) => node.getAttribute(key) ?? ''),
        );
      else if (!/^(SCRIPT|STYLE|NOSCRIPT)$/.test(node.parentElement?.tagName ?? ''))
        texts.push(node.textContent ?? '');
    return texts.map((text) => text.trim()).filter((text) => text !== '');
  });

const withoutTheirs = (text: string): string => THEIRS.reduce((left, own) => left.replaceAll(own, ''), text);

test.describe('a browser that speaks German', () => {
  test.use({ locale: 'de-DE' });

  test('no screen is left in English', async ({ page }) => {
    test.setTimeout(180_000);
    await page.goto('./');
    await expect(page.getByTestId('layer-time')).toHaveText(/\d,\d/);
    await expect(page.locator('main[data-keys]')).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('lang', 'de');
    await page.getByTestId('first-run-dismiss').click();
    for (const [screen, come] of Object.entries(SCREENS))
      await test.step(screen, async () => {
        await come(page);
        await page.waitForTimeout(400);
        const texts = (await textsOf(page)).map(withoutTheirs);
        const left = texts.filter((text) => ENGLISH.has(text.trim()) || STOP_WORDS.test(text));
        expect.soft([...new Set(left)], screen).toEqual([]);
        await page.keyboard.press('Escape');
        await expect(page.getByRole('dialog')).toHaveCount(0);
      });
  });

  test('the first paint is German', async ({ page }) => {
    await page.addInitScript(() => {
      const seen: (string | null)[] = [];
      Object.assign(window, { seen });
      new MutationObserver(() => seen.push(document.body?.textContent ?? '')).observe(document, {
        childList: true,
        subtree: true,
      });
    });
    await page.goto('./');
    await expect(page.getByTestId('layer-time')).toHaveText(/\d,\d/);
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen.join(' '));
    expect(seen).toContain('Schichtzeit');
    expect(seen).not.toContain('Layer time');
  });
});
