// @vitest-environment jsdom
/** When the screen fails, the work can still be saved, and nothing on the page erases it. */
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import { readLayout } from '../../src/layout/read';
import { ErrorBoundary } from '../../src/screens/ErrorBoundary';
import { createWorkbench } from '../../src/store/workbench';

const download = vi.fn<(name: string, content: string | Uint8Array, mime: string) => void>();
const bench = createWorkbench({ layout: demoLayout() });
let host: HTMLElement;
let root: ReturnType<typeof createRoot>;

function Broken(): never {
  throw new Error('the plan has no width');
}

beforeEach(() => {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  host = document.body.appendChild(document.createElement('div'));
  root = createRoot(host);
  act(() =>
    root.render(
      <ErrorBoundary bench={bench} download={download}>
        <Broken />
      </ErrorBoundary>,
    ),
  );
});
afterEach(() => {
  act(() => root.unmount());
  host.remove();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const button = (text: string): HTMLButtonElement | undefined =>
  [...host.querySelectorAll('button')].find((candidate) => candidate.textContent === text);

test('it says what failed and that the layout is intact', () => {
  expect(host.textContent).toContain('the plan has no width');
  expect(host.textContent).toContain('The layout is intact');
});
test('the file it offers opens as the same layout', () => {
  act(() => button('Save layout file')!.click());
  const [, content] = download.mock.calls[0]!;
  expect(readLayout(String(content))).toEqual({ ok: true, value: demoLayout() });
});
test('no button erases, deletes or resets', () => {
  const words = [...host.querySelectorAll('button')].map((candidate) => candidate.textContent).join(' ');
  expect(words).not.toMatch(/eras|delet|reset|clear|discard|new plate|demo/i);
});
