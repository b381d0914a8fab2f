/** Every screen and dialog and how it is come to from the workbench on the demo plate, whatever language is spoken. */
import type { Locator, Page } from '@playwright/test';
import { binaryStl, box } from '../tests/import/mesh/meshes';
import { chooseFile, choosePart, expect, onPlan } from './page';

/** Runs a command by its name in the list of commands. */
async function runByName(page: Page, id: string, label: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await expect(page.getByTestId('palette-input')).toBeFocused();
  await page.keyboard.type(label);
  await page.getByTestId(`palette-${id}`).click();
}

/** Pastes a text as the browser does, whatever the system's clipboard holds. */
const paste = (page: Page, text: string): Promise<void> =>
  page.evaluate((words) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', words);
    const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
    document.body.dispatchEvent(event);
  }, text);

type Come = (page: Page) => Promise<void>;

/** A screen is there once what belongs to it shows, not when it was asked for: its code may still be on its way. */
const until =
  (come: Come, shown: (page: Page) => Locator): Come =>
  async (page) => {
    await come(page);
    await expect(shown(page).first()).toBeVisible();
  };
const testId = (id: string) => (page: Page) => page.getByTestId(id);
const heading = (page: Page) => page.getByRole('dialog').getByRole('heading');
const menu = (page: Page) => page.getByRole('menu');

/** How every screen is come to from the workbench. */
export const SCREENS: Readonly<Record<string, Come>> = {
  workbench: async () => undefined,
  'a part selected': (page) => choosePart(page, 'P01'),
  division: (page) => page.getByTestId('tab-division').click(),
  machine: (page) => page.getByTestId('tab-machine').click(),
  process: (page) => page.getByTestId('tab-process').click(),
  calendar: (page) => page.getByTestId('tab-calendar').click(),
  'the blade': (page) => page.getByTestId('choose-blade').click(),
  'the file menu': until((page) => page.getByTestId('file-menu').click(), menu),
  'the view menu': until((page) => page.getByTestId('view-menu').click(), menu),
  'the list of commands': until((page) => page.keyboard.press('Control+k'), testId('palette-input')),
  help: until((page) => page.keyboard.press('?'), heading),
  about: until((page) => runByName(page, 'about', 'about'), heading),
  revision: until((page) => runByName(page, 'revision', 'revision'), testId('revision-dialog')),
  library: until((page) => runByName(page, 'library', 'library'), heading),
  'side by side': until((page) => runByName(page, 'side-by-side', 'side by side'), heading),
  divisions: until((page) => runByName(page, 'all-divisions', 'all divisions'), testId('division-card')),
  copies: until(async (page) => {
    await page.getByTestId('tab-parts').click();
    await choosePart(page, 'P01');
    await runByName(page, 'copy-in-rows', 'rows');
  }, heading),
  'check of a drawing': until(
    (page) =>
      chooseFile(page, () => runByName(page, 'open-outlines', 'outlines'), 'shared/fixtures/left-out.dxf'),
    testId('import-size'),
  ),
  'check of a mesh': until(
    (page) =>
      chooseFile(page, () => runByName(page, 'open-outlines', 'outlines'), {
        name: 'bracket.stl',
        mimeType: 'model/stl',
        buffer: Buffer.from(binaryStl(box([0, 0, 0], [10, 20, 30]))),
      }),
    testId('mesh-pictures'),
  ),
  'a table of parts': until((page) => paste(page, 'Nr;x mm\nP15;100,5\nQ1;2'), testId('table-row')),
  'the menu of a part': until(
    async (page) => page.mouse.click(...(await onPlan(page, 130 + 17, -62)), { button: 'right' }),
    testId('plan-menu'),
  ),
  'the link': until((page) => runByName(page, 'copy-link', 'copy link'), testId('link-text')),
  'the sheet': until((page) => runByName(page, 'sheet', 'sheet'), testId('sheet-page')),
  'files to hand over': until((page) => runByName(page, 'hand-over', ''), heading),
  'an empty plate': (page) => runByName(page, 'new-plate', 'new plate'),
};
