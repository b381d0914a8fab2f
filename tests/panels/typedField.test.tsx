// @vitest-environment jsdom
/**
 * A typed field in a page: Enter commits, Escape restores, a text that is no length says so and changes nothing.
 * 1 in = 25.4 mm exactly (international yard and pound agreement of 1959).
 */
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { TypedField } from '../../src/panels/controls/TypedField';
import { formatField } from '../../src/units/format';
import { parseLength } from '../../src/units/parse';

let host: HTMLElement;
let root: ReturnType<typeof createRoot>;
const committed = vi.fn<(value: number) => void>();
const held = vi.fn<(phase: 'begin' | 'end') => void>();

beforeEach(() => {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
  host = document.body.appendChild(document.createElement('div'));
  root = createRoot(host);
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
      />,
    ),
  );
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
const press = (key: string, type = 'keydown'): void =>
  act(() => void input().dispatchEvent(new KeyboardEvent(type, { key, bubbles: true, cancelable: true })));

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
