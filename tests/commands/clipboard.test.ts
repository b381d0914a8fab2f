// @vitest-environment jsdom
/** Cut, copy and paste: from a menu, and by the browser's own events. Expected values: by hand on the small plate. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runCommand } from '../../src/commands';
import { listenToClipboard } from '../../src/commands/clipboard/events';
import { createKeyboard } from '../../src/commands/keyboard';
import { answerForPointer } from '../../src/commands/pointerPlace';
import { smallPlate } from '../store/plates';
import { keyEvent, workplace } from './bench';

type Place = ReturnType<typeof workplace>;
const ids = (place: Place) => place.layout().parts.map(({ id }) => id);
const selection = (place: Place) => place.bench.store.getState().view.selection;
const notices = (place: Place) => place.bench.store.getState().view.notices.map(({ fault }) => fault.code);

describe('from a menu', () => {
  test('what was cut on one plate is pasted on another one, each as one entry of history', async () => {
    const [from, to] = [workplace(smallPlate()), workplace()];
    from.bench.setView({ selection: ['P01', 'P03'] });
    runCommand('cut', from.context);
    await expect.poll(() => ids(from)).toEqual(['P02']);
    expect(from.bench.history().undo).toBe('Cut');
    to.asked.clipboard.push(...from.asked.clipboard);
    const before = to.layout();
    runCommand('paste-in-place', to.context);
    await expect.poll(() => selection(to)).toHaveLength(2);
    expect(to.bench.history().undo).toBe('Paste');
    expect(
      to
        .layout()
        .parts.slice(-2)
        .map(({ at_mm }) => at_mm),
    ).toEqual([
      [-60, -60],
      [0, 60],
    ]);
    runCommand('undo', to.context);
    expect(to.layout()).toEqual(before);
    runCommand('undo', from.context);
    expect(from.layout()).toEqual(smallPlate());
  });

  test('says so where the browser keeps its clipboard to itself, and takes nothing away', async () => {
    const place = workplace(smallPlate());
    place.bench.setView({ selection: ['P01'] });
    const ports = {
      ...place.context.ports,
      readClipboard: async () => null,
      writeClipboard: async () => false,
    };
    const context = { ...place.context, ports };
    runCommand('cut', context);
    runCommand('paste', context);
    await expect.poll(() => notices(place).toSorted()).toEqual(['clip-not-read', 'clip-not-written']);
    expect(place.layout()).toEqual(smallPlate());
  });
});

/** A clipboard event with a text of its own. */
function send(type: 'copy' | 'cut' | 'paste', text: string, at: EventTarget = document.body) {
  const held = { text };
  const clipboardData = {
    setData: (_: string, next: string) => (held.text = next),
    getData: () => held.text,
  };
  const event = new Event(type, { bubbles: true, cancelable: true });
  Object.assign(event, { clipboardData });
  at.dispatchEvent(event);
  return { text: held.text, taken: event.defaultPrevented };
}

describe('a table from a menu', () => {
  test.each([
    ['id;x\nP01;3', 'id;x\nP01;3'],
    ['hello', ''],
    [null, ''],
  ])('of the clipboard %j opens on %j', async (text, opened) => {
    const place = workplace(smallPlate());
    const ports = { ...place.context.ports, readClipboard: async () => text };
    runCommand('paste-table', { ...place.context, ports });
    await expect.poll(() => place.asked.tables).toEqual([opened]);
  });
});

describe('by the browser’s events', () => {
  let place: Place;
  let stop: () => void;
  beforeEach(() => {
    place = workplace(smallPlate());
    stop = listenToClipboard(window, place.context);
  });
  afterEach(() => stop());

  test('copies, cuts, and pastes with the middle at the pointer', () => {
    place.bench.setView({ selection: ['P02'] });
    const { text, taken } = send('copy', '');
    expect(taken).toBe(true);
    expect(send('cut', '').text).toBe(text);
    expect(ids(place)).toEqual(['P01', 'P03']);
    const silent = answerForPointer(place.bench, () => ({ x: 30, y: 31 }));
    send('paste', text);
    silent();
    expect(place.layout().parts.at(-1)).toMatchObject({ id: 'P02', at_mm: [30, 31] });
    expect(selection(place)).toEqual(['P02']);
  });

  test('with Shift pastes where the parts were, though the pointer is elsewhere', () => {
    place.bench.setView({ selection: ['P02'] });
    const { text } = send('cut', '');
    const silent = answerForPointer(place.bench, () => ({ x: 30, y: 31 }));
    window.dispatchEvent(new KeyboardEvent('keydown', { key: 'V', shiftKey: true, ctrlKey: true }));
    send('paste', text);
    silent();
    expect(place.layout().parts.at(-1)?.at_mm).toEqual([60, -60]);
  });

  test('with Shift and Insert pastes at the pointer, as with Ctrl and V', () => {
    place.bench.setView({ selection: ['P02'] });
    const { text } = send('cut', '');
    const silent = answerForPointer(place.bench, () => ({ x: 30, y: 31 }));
    window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Shift', shiftKey: true }));
    window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Insert', shiftKey: true }));
    send('paste', text);
    silent();
    expect(place.layout().parts.at(-1)?.at_mm).toEqual([30, 31]);
  });

  test('with Shift let go pastes at the pointer, by whatever menu', () => {
    place.bench.setView({ selection: ['P02'] });
    const { text } = send('cut', '');
    const silent = answerForPointer(place.bench, () => ({ x: 30, y: 31 }));
    window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Shift', shiftKey: true }));
    window.dispatchEvent(new KeyboardEvent('keyup', { key: 'Shift' }));
    send('paste', text);
    silent();
    expect(place.layout().parts.at(-1)?.at_mm).toEqual([30, 31]);
  });

  test('leaves fields, marked text and a drag under way alone', () => {
    place.bench.setView({ selection: ['P02'] });
    const field = document.body.appendChild(document.createElement('input'));
    expect(send('copy', '', field).taken).toBe(false);
    expect(send('paste', 'abc', field).taken).toBe(false);
    field.remove();
    const words = document.body.appendChild(document.createElement('p'));
    words.textContent = '12.5 h';
    document.getSelection()?.selectAllChildren(words);
    expect(send('copy', '').taken).toBe(false);
    document.getSelection()?.removeAllRanges();
    words.remove();
    place.bench.beginGesture('Drag');
    expect(send('cut', '').taken).toBe(false);
    place.bench.endGesture();
    expect(place.layout()).toEqual(smallPlate());
  });

  test('says what a foreign text is, and pastes nothing', () => {
    send('paste', '');
    send('paste', 'hello');
    expect(notices(place)).toEqual(['clip-nothing', 'clip-no-parts']);
    expect(place.layout()).toEqual(smallPlate());
  });

  test('hands a table to its check page, and pastes nothing by itself', () => {
    send('paste', 'id;x\nP01;3');
    expect(place.asked.tables).toEqual(['id;x\nP01;3']);
    expect(notices(place)).toEqual([]);
    expect(place.layout()).toEqual(smallPlate());
  });

  test('the keys themselves are left to the browser', () => {
    const keyboard = createKeyboard(place.context);
    place.bench.setView({ selection: ['P02'] });
    for (const chord of ['Ctrl+C', 'Ctrl+X', 'Ctrl+V', 'Ctrl+Shift+V'])
      expect(keyboard.down(keyEvent(chord))).toBe(false);
    expect(place.layout()).toEqual(smallPlate());
  });
});
