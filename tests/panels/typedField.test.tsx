// @vitest-environment jsdom
/**
 * A typed field in a page: Enter commits, Escape restores, a text that is no length says so and changes nothing.
 * 1 in = 25.4 mm exactly (international yard and pound agreement of 1959).
 */
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { TypedField, type Hold, type TypedFieldProps } from '../../src/panels/controls/TypedField';
import { formatField } from '../../src/units/format';
import { parseLength } from '../../src/units/parse';

let host: HTMLElement;
let root: ReturnType<typeof createRoot>;
const committed = vi.fn<(value: number) => void>();
const held = vi.fn<(phase: Hold) => void>();

const show = (more: Partial<TypedFieldProps> = {}): void =>
  act(() =>
    root.render(
      <TypedField
        label="x"
        what="x"
        unit="mm"
        value={10}
        step={1}
        parse={parseLength}
        format={formatField}
        onCommit={committed}
        onHold={held}
        {...more}
      />,
    ),
  );
beforeEach(() => {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
  host = document.body.appendChild(document.createElement('div'));
  root = createRoot(host);
  show();
});
afterEach(() => {
  act(() => root.unmount());
  host.remove();
  vi.clearAllMocks();
  vi.unstubAllGlobals();
});

const input = (): HTMLInputElement => host.querySelector('input')!;
const type = (text: string): void =>
  act(() => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!.call(input(), text);
    input().dispatchEvent(new Event('input', { bubbles: true }));
  });
const press = (key: string, type = 'keydown', more: KeyboardEventInit = {}): void =>
  act(
    () =>
      void input().dispatchEvent(new KeyboardEvent(type, { key, bubbles: true, cancelable: true, ...more })),
  );

describe('a typed field', () => {
  test('commits an inch as 25.4 mm on Enter', () => {
    type('1 in');
    expect(committed).not.toHaveBeenCalled();
    press('Enter');
    expect(committed).toHaveBeenCalledExactlyOnceWith(25.4);
  });
  test('goes back to the value on Escape and keeps the key from the page', () => {
    const page = vi.fn<() => void>();
    document.addEventListener('keydown', page);
    type('77');
    press('Escape');
    document.removeEventListener('keydown', page);
    expect(input().value).toBe('10');
    expect(committed).not.toHaveBeenCalled();
    expect(page).not.toHaveBeenCalled();
  });
  test('says why a text is refused, beside what it keeps, and commits nothing', () => {
    type('wide');
    press('Enter');
    expect(input().getAttribute('aria-invalid')).toBe('true');
    expect(host.querySelector('[role=alert]')?.textContent).toContain('“wide” is not a length');
    expect(host.querySelector('[role=alert]')?.textContent).toContain('Kept: 10 mm');
    expect(committed).not.toHaveBeenCalled();
  });
  test('steps with the arrows, one gesture from press to release', () => {
    press('ArrowUp');
    press('ArrowUp');
    press('ArrowUp', 'keyup');
    expect(committed).toHaveBeenCalledWith(11);
    expect(held.mock.calls.flat()).toEqual(['begin', 'end']);
  });
});

describe('an entry that changes what is there', () => {
  test.each([
    ['+=5', 15],
    ['-= 1/2 in', -2.7],
    ['+=1+1,5', 12.5],
    ['3+2 mm', 5],
  ])('%j makes 10 into %d', (text, value) => {
    type(text);
    press('Enter');
    expect(committed).toHaveBeenCalledExactlyOnceWith(value);
  });
  test('is refused where it leads out of the limits', () => {
    show({ min: 0, max: 12 });
    type('+=5');
    press('Enter');
    expect(host.querySelector('[role=alert]')?.textContent).toContain('“+=5” is out of range');
    expect(committed).not.toHaveBeenCalled();
  });
  test('names the part of a sum that was not understood', () => {
    type('+=3+2 ft');
    press('Enter');
    expect(host.querySelector('[role=alert]')?.textContent).toContain('“2 ft” is not a length');
  });
});

describe('a field of several values', () => {
  const each = vi.fn<(to: (now: number) => number) => void>();
  const changed = (): number[] => [10, 40].map(each.mock.lastCall![0]);
  beforeEach(() => {
    each.mockClear();
    show({ values: [10, 40], onEach: each });
  });
  test('says that they differ, and leaving it changes nothing', () => {
    expect(input().value).toBe('');
    expect(input().placeholder).toBe('mixed');
    press('Enter');
    expect(committed).not.toHaveBeenCalled();
  });
  test('gives a typed value to all, the one shown before included', () => {
    type('10');
    press('Enter');
    expect(committed).toHaveBeenCalledExactlyOnceWith(10);
  });
  test('changes each for itself', () => {
    type('+=5');
    press('Enter');
    expect(changed()).toEqual([15, 45]);
    expect(committed).not.toHaveBeenCalled();
  });
  test('steps each for itself', () => {
    press('ArrowDown', 'keydown', { shiftKey: true });
    expect(changed()).toEqual([0, 30]);
  });
  test('is refused where one of them would leave the limits', () => {
    show({ values: [10, 40], onEach: each, max: 42 });
    type('+=5');
    press('Enter');
    expect(each).not.toHaveBeenCalled();
    expect(input().getAttribute('aria-invalid')).toBe('true');
  });
  test('shows the value where they are all the same', () => {
    show({ values: [10, 10], onEach: each });
    expect(input().value).toBe('10');
  });
});

describe('scrubbing', () => {
  const wheel = (deltaY: number): WheelEvent => {
    const event = new WheelEvent('wheel', { deltaY, bubbles: true, cancelable: true });
    act(() => void input().dispatchEvent(event));
    return event;
  };
  const pointer = (type: string, clientX: number): void =>
    act(() => {
      const event = new MouseEvent(type, { clientX, button: 0, bubbles: true, cancelable: true });
      host.querySelector('label')!.dispatchEvent(event);
    });
  beforeEach(() => {
    HTMLElement.prototype.setPointerCapture = () => undefined;
  });

  test('Alt and an arrow takes a tenth of a step', () => {
    press('ArrowUp', 'keydown', { altKey: true });
    expect(committed).toHaveBeenLastCalledWith(10.1);
  });
  test('Escape under a held arrow takes the gesture back, once', () => {
    press('ArrowUp');
    press('Escape');
    press('ArrowUp');
    press('ArrowUp', 'keyup');
    expect(committed).toHaveBeenCalledTimes(1);
    expect(held.mock.calls.flat()).toEqual(['begin', 'cancel']);
  });
  test('without a gesture to take back, Escape gives the first value again', () => {
    show({ onHold: undefined });
    press('ArrowUp');
    press('Escape');
    expect(committed.mock.calls.flat()).toEqual([11, 10]);
  });
  test('the wheel steps the field that has the focus, and only that', () => {
    expect(wheel(-100).defaultPrevented).toBe(false);
    act(() => input().focus());
    expect(wheel(-100).defaultPrevented).toBe(true);
    expect(committed.mock.calls.flat()).toEqual([11]);
  });
  test('a drag along the label is one gesture of steps', () => {
    pointer('pointerdown', 0);
    pointer('pointermove', 2);
    expect(held).not.toHaveBeenCalled();
    pointer('pointermove', 8);
    pointer('pointermove', 20);
    pointer('pointerup', 20);
    pointer('lostpointercapture', 20);
    expect(committed.mock.calls.flat()).toEqual([12, 15]);
    expect(held.mock.calls.flat()).toEqual(['begin', 'end']);
  });
  test.each(['pointercancel', 'lostpointercapture', 'blur'])('%s takes a drag back', (type) => {
    pointer('pointerdown', 0);
    pointer('pointermove', 20);
    if (type === 'blur') act(() => void window.dispatchEvent(new Event('blur')));
    else pointer(type, 20);
    pointer('pointermove', 40);
    pointer('pointerup', 40);
    expect(held.mock.calls.flat()).toEqual(['begin', 'cancel']);
    expect(committed).toHaveBeenCalledTimes(1);
  });
  test('values that differ come to a limit together and keep their differences', () => {
    let values = [2, 10];
    const onEach = (to: (now: number) => number): null => {
      values = values.map(to);
      show({ values, onEach, min: 1 });
      return null;
    };
    show({ values, onEach, min: 1 });
    pointer('pointerdown', 0);
    pointer('pointermove', -40);
    expect(values).toEqual([1, 9]);
    pointer('pointermove', -20);
    expect(values).toEqual([6, 14]);
    pointer('pointerup', -20);
  });
  test('Escape takes a drag back and keeps the key from the page', () => {
    const page = vi.fn<() => void>();
    document.addEventListener('keydown', page);
    pointer('pointerdown', 0);
    pointer('pointermove', 20);
    press('Escape');
    pointer('pointermove', 40);
    document.removeEventListener('keydown', page);
    expect(held.mock.calls.flat()).toEqual(['begin', 'cancel']);
    expect(committed).toHaveBeenCalledTimes(1);
    expect(page).not.toHaveBeenCalled();
  });
});
