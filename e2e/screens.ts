/** Every screen and dialog and how it is come to from the workbench on the demo plate, whatever language is spoken. */
import type { Page } from '@playwright/test';
import { binaryStl, box } from '../tests/import/mesh/meshes';
import { chooseFile, choosePart, expect } from './page';

/** Runs a command by its name in the list of commands. */
async function runByName(page: Page, id: string, label: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await expect(page.getByTestId('palette-input')).toBeFocused();
  await page.keyboard.type(label);
  await page.getByTestId(`palette-${id}`).click();
}

/** How every screen is come to from the workbench. */
export const SCREENS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  workbench: async () => undefined,
  'a part selected': (page) => choosePart(page, 'P01'),
  division: (page) => page.getByTestId('tab-division').click(),
  machine: (page) => page.getByTestId('tab-machine').click(),
  process: (page) => page.getByTestId('tab-process').click(),
  calendar: (page) => page.getByTestId('tab-calendar').click(),
  'the blade': (page) => page.getByTestId('choose-blade').click(),
  'the file menu': (page) => page.getByTestId('file-menu').click(),
  'the view menu': (page) => page.getByTestId('view-menu').click(),
  'the list of commands': (page) => page.keyboard.press('Control+k'),
  help: (page) => page.keyboard.press('?'),
  about: (page) => runByName(page, 'about', 'about'),
  revision: (page) => runByName(page, 'revision', 'revision'),
  library: (page) => runByName(page, 'library', 'library'),
  'side by side': (page) => runByName(page, 'side-by-side', 'side by side'),
  divisions: (page) => runByName(page, 'all-divisions', 'all divisions'),
  copies: async (page) => {
    await page.getByTestId('tab-parts').click();
    await choosePart(page, 'P01');
    await runByName(page, 'copy-in-rows', 'rows');
  },
  'check of a drawing': (page) =>
    chooseFile(page, () => runByName(page, 'open-outlines', 'outlines'), 'shared/fixtures/left-out.dxf'),
  'check of a mesh': (page) =>
    chooseFile(page, () => runByName(page, 'open-outlines', 'outlines'), {
      name: 'bracket.stl',
      mimeType: 'model/stl',
      buffer: Buffer.from(binaryStl(box([0, 0, 0], [10, 20, 30]))),
    }),
  'the link': async (page) => {
    await runByName(page, 'copy-link', 'copy link');
    await expect(page.getByTestId('link-text')).toBeVisible();
  },
  'the sheet': async (page) => {
    await runByName(page, 'sheet', 'sheet');
    await expect(page.getByTestId('sheet-page')).toBeVisible();
  },
  'files to hand over': (page) => runByName(page, 'hand-over', ''),
  'an empty plate': (page) => runByName(page, 'new-plate', 'new plate'),
};
