// @vitest-environment jsdom
/** The browser's side: file dialog, download, dropped files. */
import { afterEach, expect, test, vi } from 'vitest';
import { holdsFiles } from '../../src/commands/holdsFiles';
import { listenToDrops } from '../../src/commands/listenToDrops';
import { pagePorts } from '../../src/commands/pagePorts';
import { demoLayout } from '../../src/layout/demo';
import { writeLayout } from '../../src/layout/write';
import { workplace } from './bench';

const nothing = () => undefined;
const screens = { showImport: nothing, showComparison: nothing, showTable: nothing, showDialog: nothing };
afterEach(() => void vi.restoreAllMocks());

/** Catches the input that the file dialog is opened by. */
function openedInput(): HTMLInputElement[] {
  const opened: HTMLInputElement[] = [];
  vi.spyOn(HTMLInputElement.prototype, 'click').mockImplementation(function (this: HTMLInputElement) {
    opened.push(this);
  });
  return opened;
}

test('the chosen file is handed over, a cancelled dialog gives null', async () => {
  const opened = openedInput();
  const ports = pagePorts(document, screens);
  const chosen = ports.pickFile('.json');
  const cancelled = ports.pickFile('.svg');
  const file = new File(['{}'], 'plate.json');
  Object.defineProperty(opened[0]!, 'files', { value: [file] });
  opened[0]!.dispatchEvent(new Event('change'));
  opened[1]!.dispatchEvent(new Event('cancel'));
  expect(await chosen).toBe(file);
  expect(await cancelled).toBeNull();
  expect(opened.map((input) => `${input.type} ${input.accept}`)).toEqual(['file .json', 'file .svg']);
});

test('a download carries name and content', async () => {
  const blobs: Blob[] = [];
  const clicked: string[] = [];
  URL.createObjectURL = (blob) => `blob:${blobs.push(blob as Blob)}`;
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    clicked.push(`${this.download} ${this.href}`);
  });
  pagePorts(document, screens).download('plate.json', '{"a":1}', 'application/json');
  expect(clicked).toEqual(['plate.json blob:1']);
  expect(blobs[0]!.type).toBe('application/json');
  expect(blobs[0]!.size).toBe(7);
});

const dropEvent = (type: string, files: readonly File[], types: readonly string[] = ['Files']) =>
  Object.assign(new Event(type, { cancelable: true }), { dataTransfer: { files, types } });

test('dropped files are opened in turn, each by its kind, until listening stops', async () => {
  const place = workplace();
  const stop = listenToDrops(window, place.context);
  const plate = new File([writeLayout({ ...demoLayout(), name: 'Dropped' })], 'plate.json');
  const over = dropEvent('dragover', []);
  window.dispatchEvent(over);
  const drop = dropEvent('drop', [plate, new File(['0'], 'flange.dxf'), new File(['?'], 'notes.txt')]);
  window.dispatchEvent(drop);
  expect([over.defaultPrevented, drop.defaultPrevented]).toEqual([true, true]);
  await vi.waitFor(() => expect(place.bench.store.getState().view.notices).toHaveLength(1));
  expect(place.layout().name).toBe('Dropped');
  expect(place.asked.imports).toEqual(['flange.dxf']);
  stop();
  const late = dropEvent('drop', [plate]);
  window.dispatchEvent(late);
  expect(late.defaultPrevented).toBe(false);
});

test('dragged text is left to the browser', () => {
  const place = workplace();
  const stop = listenToDrops(window, place.context);
  const text = dropEvent('drop', [], ['text/plain']);
  window.dispatchEvent(text);
  expect(text.defaultPrevented).toBe(false);
  expect(holdsFiles(null)).toBe(false);
  stop();
});

test('without the browser’s clipboard a text is copied from a field, and the focus goes back', async () => {
  const menu = document.body.appendChild(document.createElement('div'));
  menu.setAttribute('role', 'menu');
  const entry = menu.appendChild(document.createElement('button'));
  entry.focus();
  const copied: unknown[] = [];
  const { writeClipboard } = pagePorts(document, screens);
  document.execCommand = (command) => {
    const field = document.activeElement as HTMLTextAreaElement;
    copied.push([command, field.value, field.selectionEnd, menu.contains(field)]);
    return true;
  };
  expect(await writeClipboard('P01')).toBe(true);
  expect(copied).toEqual([['copy', 'P01', 3, true]]);
  expect(document.activeElement).toBe(entry);
  document.execCommand = () => {
    throw new Error('not here');
  };
  expect(await writeClipboard('P01')).toBe(false);
  expect(document.querySelector('textarea')).toBeNull();
  menu.remove();
});
