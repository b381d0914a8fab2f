// @vitest-environment jsdom
/** Keys: which ones are commands, which belong to a field or widget, and held keys as one history entry. */
import { beforeEach, describe, expect, test } from 'vitest';
import { CLAIMED_WITH_CTRL, noteKeys } from '../../src/commands/earlyKeys';
import { COMMANDS } from '../../src/commands/index';
import { commandForKey, createKeyboard, listenToKeys, type Keyboard } from '../../src/commands/keyboard';
import { demoLayout } from '../../src/layout/demo';
import { keyEvent, workplace } from './bench';

let place: ReturnType<typeof workplace>;
let keyboard: Keyboard;
const first = () => place.layout().parts[0]!;

beforeEach(() => {
  place = workplace();
  place.bench.setView({ selection: [first().id] });
  keyboard = createKeyboard(place.context);
});

const idFor = (chord: string, target?: unknown) =>
  commandForKey(keyEvent(chord, { target }), place.context)?.id ?? null;

describe('which command a key stands for', () => {
  test.each([
    ['Ctrl+S', 'save-layout'],
    ['q', 'divide-quadrants'],
    ['Shift+T', 'turn-clockwise-15'],
    ['Shift+ArrowLeft', 'move-left-by-10'],
    ['Delete', 'delete-parts'],
    ['3', 'pin-laser-3'],
  ])('%s is %s', (chord, id) => {
    expect(idFor(chord)).toBe(id);
  });

  test('Cmd counts as Ctrl, a locked Caps key as nothing, Shift only with letters and named keys', () => {
    const { context } = place;
    const id = (more: object) => commandForKey({ ...keyEvent('s'), ...more }, context)?.id ?? null;
    expect(id({ metaKey: true })).toBe('save-layout');
    expect(id({ key: 'Q' })).toBe('divide-quadrants');
    expect(id({ key: '?', shiftKey: true })).toBe('help');
    expect(id({ key: '7', altKey: true })).toBeNull();
  });

  test('a command that does not apply has no key', () => {
    place.bench.setView({ selection: [] });
    expect(idFor('Delete')).toBeNull();
    expect(idFor('Ctrl+Z')).toBeNull();
  });

  test('composing text and events that someone has handled are left alone', () => {
    const { context } = place;
    expect(commandForKey(keyEvent('q', { isComposing: true }), context)).toBeNull();
    expect(commandForKey(keyEvent('q', { defaultPrevented: true }), context)).toBeNull();
  });
});

describe('the focus', () => {
  const page = document.createElement('div');
  page.innerHTML = `<input id="text"><input id="number" type="number"><textarea id="area"></textarea>
     <input id="range" type="range"><input id="box" type="checkbox"><button id="button"></button>
     <select id="select"></select><div role="slider" id="slider"></div>
     <div role="dialog"><button id="inside"></button></div><div role="radiogroup"><button id="radio"></button></div>`;
  const at = (id: string) => page.querySelector(`#${id}`)!;

  test.each(['text', 'number', 'area'])('a %s field keeps every key but Escape', (id) => {
    for (const chord of ['q', '3', 'Delete', 'ArrowLeft', 'Ctrl+Z', 'Ctrl+A'])
      expect(idFor(chord, at(id))).toBeNull();
    expect(idFor('Escape', at(id))).toBe('step-back');
  });

  test.each(['range', 'select', 'slider', 'radio'])('a %s keeps the arrows but not the letters', (id) => {
    place.bench.setView({ height_mm: 1 });
    expect(idFor('PageUp')).toBe('height-up');
    for (const chord of ['ArrowLeft', 'Shift+ArrowUp', 'PageUp']) expect(idFor(chord, at(id))).toBeNull();
    expect(idFor('q', at(id))).toBe('divide-quadrants');
  });

  test('buttons and boxes keep no letters and no arrows', () => {
    for (const id of ['box', 'button']) {
      expect(idFor('q', at(id))).toBe('divide-quadrants');
      expect(idFor('ArrowLeft', at(id))).toBe('move-left-by-1');
    }
  });

  test('a dialog answers to its own keys only', () => {
    for (const chord of ['q', 'Escape', 'Ctrl+Z', 'Delete']) expect(idFor(chord, at('inside'))).toBeNull();
  });
});

describe('held keys', () => {
  const hold = (chord: string, times: number) => {
    for (let i = 0; i < times; i++) keyboard.down(keyEvent(chord, { repeat: i > 0 }));
  };

  test('a held arrow is one entry, however long it is held', () => {
    const x = first().at_mm[0];
    hold('ArrowRight', 25);
    expect(first().at_mm[0]).toBeCloseTo(x + 25, 9);
    expect(place.bench.gestureOpen()).toBe(true);
    keyboard.up({ key: 'ArrowRight' });
    expect(place.bench.gestureOpen()).toBe(false);
    place.bench.undo();
    expect(place.layout()).toEqual(demoLayout());
    expect(place.bench.history()).toEqual({ undo: null, redo: 'Move 1 mm to the right' });
  });

  test.each([
    ['a key that the browser answers itself', () => keyboard.down(keyEvent('Ctrl+C'))],
    ['Cmd let go, which hides that the arrow was', () => keyboard.up({ key: 'Meta' })],
  ])('%s ends it', (_, next) => {
    hold('ArrowRight', 1);
    next();
    expect(place.bench.gestureOpen()).toBe(false);
    expect(place.bench.history().undo).toBe('Move 1 mm to the right');
  });

  test('two presses are two entries', () => {
    for (let i = 0; i < 2; i++) {
      keyboard.down(keyEvent('ArrowUp'));
      keyboard.up({ key: 'ArrowUp' });
    }
    place.bench.undo();
    expect(place.bench.history().undo).toBe('Move 1 mm to the back');
  });

  test('losing the window ends the gesture', () => {
    hold('ArrowUp', 3);
    keyboard.blur();
    expect(place.bench.gestureOpen()).toBe(false);
    expect(place.bench.history().undo).toBe('Move 1 mm to the back');
  });

  test('another key ends the gesture; letting go of it does not end the next one', () => {
    hold('ArrowUp', 3);
    hold('ArrowLeft', 3);
    keyboard.up({ key: 'ArrowUp' });
    expect(place.bench.gestureOpen()).toBe(true);
    keyboard.up({ key: 'ArrowLeft' });
    place.bench.undo();
    place.bench.undo();
    expect(place.layout()).toEqual(demoLayout());
    expect(place.bench.history().undo).toBeNull();
  });

  test('Shift let go before the letter still ends the held turn', () => {
    hold('Shift+T', 2);
    keyboard.up({ key: 't' });
    expect(place.bench.gestureOpen()).toBe(false);
  });

  test('Escape during a held key takes the whole movement back', () => {
    hold('ArrowUp', 5);
    keyboard.down(keyEvent('Escape'));
    expect(place.layout()).toEqual(demoLayout());
    keyboard.up({ key: 'ArrowUp' });
    expect(place.bench.history()).toEqual({ undo: null, redo: null });
  });

  test('a held duplicate makes one copy, a held undo goes on', () => {
    const before = place.layout().parts.length;
    hold('Ctrl+D', 10);
    expect(place.layout().parts).toHaveLength(before + 1);
    for (let i = 0; i < 3; i++) {
      keyboard.down(keyEvent('ArrowUp'));
      keyboard.up({ key: 'ArrowUp' });
    }
    hold('Ctrl+Z', 4);
    expect(place.layout()).toEqual(demoLayout());
  });

  test('a drag of the pointer is not disturbed by keys, and Escape cancels it', () => {
    place.bench.beginGesture('Drag');
    place.bench.change('frame', (layout) => ({ ...layout, name: 'dragged' }));
    for (const chord of ['q', 'Delete', 'ArrowLeft', 'Ctrl+Z'])
      expect(keyboard.down(keyEvent(chord))).toBe(chord !== 'Ctrl+Z');
    expect(place.layout()).toEqual({ ...demoLayout(), name: 'dragged' });
    expect(place.bench.gestureOpen()).toBe(true);
    keyboard.down(keyEvent('Escape'));
    expect(place.layout()).toEqual(demoLayout());
  });
});

test('on a window, a command prevents the browser’s own meaning and stopping lets go', () => {
  const stop = listenToKeys(window, place.context);
  const press = (key: string, more: object = {}) => {
    const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more });
    document.body.dispatchEvent(event);
    return event.defaultPrevented;
  };
  expect(press('s', { ctrlKey: true })).toBe(true);
  expect(place.asked.downloads).toHaveLength(1);
  expect(press('F7')).toBe(false);
  press('ArrowUp');
  stop();
  expect(place.bench.gestureOpen()).toBe(false);
  expect(press('s', { ctrlKey: true })).toBe(false);
  expect(place.asked.downloads).toHaveLength(1);
});

describe('keys pressed before the shortcuts have arrived', () => {
  const dispatch = (
    type: 'keydown' | 'keyup',
    key: string,
    more: object = {},
    at: EventTarget = document.body,
  ) => {
    const event = new KeyboardEvent(type, { key, bubbles: true, cancelable: true, ...more });
    at.dispatchEvent(event);
    return event.defaultPrevented;
  };

  test('run once the shortcuts listen, in their order, one entry for each', () => {
    const early = noteKeys(window);
    const { layout } = place;
    const x = first().at_mm[0];
    dispatch('keydown', 'w');
    dispatch('keyup', 'w');
    dispatch('keydown', 'ArrowRight');
    dispatch('keydown', 'ArrowRight', { repeat: true });
    dispatch('keyup', 'ArrowRight');
    expect(layout()).toEqual(demoLayout());
    const stop = listenToKeys(window, place.context, early);
    expect(first().at_mm[0]).toBeCloseTo(x + 2, 9);
    expect(place.bench.gestureOpen()).toBe(false);
    place.bench.undo();
    place.bench.undo();
    expect(layout()).toEqual(demoLayout());
    expect(place.bench.history().undo).toBeNull();
    stop();
    expect(early.take()).toEqual([]);
  });

  test('are kept from the browser where it would answer them, and run nevertheless', () => {
    const early = noteKeys(window);
    expect(dispatch('keydown', 's', { ctrlKey: true })).toBe(true);
    expect(dispatch('keydown', 'r', { ctrlKey: true })).toBe(false);
    expect(dispatch('keydown', 'w')).toBe(false);
    listenToKeys(window, place.context, early)();
    expect(place.asked.downloads).toHaveLength(1);
  });

  test('stay with a field that has the focus, and a key still held ends with the window’s focus', () => {
    const field = document.body.appendChild(document.createElement('input'));
    const early = noteKeys(window);
    expect(dispatch('keydown', 'a', { ctrlKey: true }, field)).toBe(false);
    dispatch('keydown', 'q', {}, field);
    dispatch('keydown', 'ArrowUp');
    window.dispatchEvent(new Event('blur'));
    field.remove();
    listenToKeys(window, place.context, early)();
    expect(place.bench.history().undo).toBe('Move 1 mm to the back');
    place.bench.undo();
    expect(place.layout()).toEqual(demoLayout());
  });

  test('every letter that is a command with Ctrl is kept from the browser', () => {
    const answered = COMMANDS.filter(({ native }) => native !== true);
    const letters = answered
      .flatMap(({ keys }) => keys)
      .flatMap((key) => /^Ctrl\+(?:Shift\+)?([A-Z])$/.exec(key)?.[1] ?? []);
    expect([...new Set(letters)].sort().join('').toLowerCase()).toBe(CLAIMED_WITH_CTRL);
  });
});
