/** Opening and saving: what is opened can be undone, what cannot be opened leaves the layout. */
import { describe, expect, test } from 'vitest';
import { command, runCommand } from '../../src/commands';
import { fileName } from '../../src/commands/file/saveLayout';
import { demoLayout } from '../../src/layout/demo';
import { readLayout } from '../../src/layout/read';
import { writeLayout } from '../../src/layout/write';
import { chosen, workplace } from './bench';

const file = (text: string, name: string) => new File([text], name);

describe('files', () => {
  test('what is saved reads back as the layout, under a name made from its own', () => {
    const place = workplace();
    runCommand('save-layout', place.context);
    const [saved] = place.asked.downloads;
    expect(saved!.mime).toBe('application/json');
    expect(readLayout(saved!.content as string)).toEqual({ ok: true, value: demoLayout() });
  });

  test.each([
    ['Ferry spares, plate 1', 'ferry-spares-plate-1.json'],
    ['  ../Größe: 2/3? ', 'größe-2-3.json'],
    ['***', 'layout.json'],
  ])('%j is saved as %j', (name, expected) => {
    expect(fileName(name)).toBe(expected);
  });

  test('an opened layout file takes the place of the layout, and undo brings the former one back', async () => {
    const other = { ...demoLayout(), name: 'Other plate', parts: [] };
    const place = workplace(demoLayout(), file(writeLayout(other), 'other.JSON'));
    chosen(place);
    await command('open-layout').run(place.context);
    expect(place.layout()).toEqual(other);
    expect(place.bench.store.getState().view.selection).toEqual([]);
    expect(place.bench.history().undo).toBe('Open other.JSON');
    runCommand('undo', place.context);
    expect(place.layout()).toEqual(demoLayout());
  });

  test.each([
    ['broken.json', '{', 'layout-not-json'],
    ['newer.json', '{"format":"evenplate-layout","version":9}', 'layout-newer-version'],
    ['notes.txt', 'hello', 'file-unknown-kind'],
    ['no ending', '{}', 'file-unknown-kind'],
  ])('%s leaves the layout and says why', async (name, text, code) => {
    const place = workplace(demoLayout(), file(text, name));
    const before = place.layout();
    await command('open-layout').run(place.context);
    expect(place.layout()).toBe(before);
    expect(place.bench.history().undo).toBeNull();
    expect(place.bench.store.getState().view.notices.map(({ fault }) => fault.code)).toEqual([code]);
  });

  test('a file that cannot be read or is far too large is refused before it is parsed', async () => {
    const gone = file('{}', 'gone.json');
    gone.text = () => Promise.reject(new DOMException('gone', 'NotFoundError'));
    const huge = file('', 'huge.dxf');
    Object.defineProperty(huge, 'size', { value: 101e6 });
    for (const [chosenFile, code] of [
      [gone, 'file-unreadable'],
      [huge, 'file-too-large'],
    ] as const) {
      const place = workplace(demoLayout(), chosenFile);
      await command('open-outlines').run(place.context);
      expect(place.bench.store.getState().view.notices.map(({ fault }) => fault.code)).toEqual([code]);
      expect(place.asked.imports).toEqual([]);
    }
  });

  test('outlines go to the check page; a cancelled dialog does nothing', async () => {
    const place = workplace(demoLayout(), file('<svg/>', 'gasket.SVG'));
    await command('open-outlines').run(place.context);
    expect(place.asked.imports).toEqual(['gasket.SVG']);
    const cancelled = workplace();
    await command('open-layout').run(cancelled.context);
    expect(cancelled.layout()).toEqual(demoLayout());
    expect(cancelled.bench.store.getState().view.notices).toEqual([]);
  });

  test('a new plate keeps machine, process and division and has no parts; the demo comes back by its command', () => {
    const place = workplace();
    const { machine, process, zoning } = place.layout();
    place.bench.change('test', (layout) => ({
      ...layout,
      zoning: [...layout.zoning, { from_mm: 20, zoning: { strategy: 'wholeField' } }],
    }));
    runCommand('new-plate', place.context);
    expect(place.layout()).toMatchObject({ machine, process, zoning, parts: [], shapes: {}, schedule: null });
    runCommand('open-demo', place.context);
    expect(place.layout()).toEqual(demoLayout());
  });
});
