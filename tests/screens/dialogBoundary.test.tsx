// @vitest-environment jsdom
/** A dialog that fails closes, says so and leaves the plate and its history alone. */
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import { messageText } from '../../src/layout/messages';
import { DialogBoundary } from '../../src/screens/DialogBoundary';
import { ErrorBoundary } from '../../src/screens/ErrorBoundary';
import { createWorkbench } from '../../src/store/workbench';

const close = vi.fn<() => void>();
let host: HTMLElement;
let root: ReturnType<typeof createRoot>;

function Broken(): never {
  throw new Error('the outline has no box');
}
beforeEach(() => {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  close.mockClear();
  host = document.body.appendChild(document.createElement('div'));
  root = createRoot(host);
});
afterEach(() => {
  act(() => root.unmount());
  host.remove();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('it closes, one notice names the failure, the page stays and the last edit with it', () => {
  const bench = createWorkbench({ layout: demoLayout() });
  bench.change('Rename', (layout) => ({ ...layout, name: 'after an edit' }));
  act(() =>
    root.render(
      <ErrorBoundary bench={bench} download={() => undefined}>
        <p>the plate</p>
        <DialogBoundary bench={bench} onClose={close}>
          <Broken />
        </DialogBoundary>
      </ErrorBoundary>,
    ),
  );
  expect(close).toHaveBeenCalledTimes(1);
  expect(host.textContent).toBe('the plate');
  const { layout, view } = bench.store.getState();
  expect(view.notices.map(({ fault }) => messageText(fault.code, fault.params))).toEqual([
    'The window that was open failed and was closed: the outline has no box.',
  ]);
  expect(layout.name).toBe('after an edit');
  expect(bench.history().undo).toBe('Rename');
});

test('a dialog that does not fail is shown as it is', () => {
  const bench = createWorkbench({ layout: demoLayout() });
  act(() =>
    root.render(
      <DialogBoundary bench={bench} onClose={close}>
        <p>a dialog</p>
      </DialogBoundary>,
    ),
  );
  expect(host.textContent).toBe('a dialog');
  expect(close).not.toHaveBeenCalled();
  expect(bench.store.getState().view.notices).toEqual([]);
});
