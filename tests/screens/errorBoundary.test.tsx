// @vitest-environment jsdom
/** When the screen fails, the work can still be saved, and nothing on the page erases it. */
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import { readLayout } from '../../src/layout/read';
import { ErrorBoundary } from '../../src/screens/ErrorBoundary';
import { hasCrashed } from '../../src/store/crashes';
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

test('it says what failed and that nothing of the layout is lost', () => {
  expect(host.textContent).toContain('the plan has no width');
  expect(host.textContent).toContain('Nothing of the layout is lost');
});
test('the file it offers opens as the same layout', async () => {
  act(() => button('Save layout file')!.click());
  await vi.waitFor(() => expect(download).toHaveBeenCalled());
  const [, content] = download.mock.calls[0]!;
  expect(readLayout(String(content))).toEqual({ ok: true, value: demoLayout() });
});
test('no button erases, deletes or resets', () => {
  const words = [...host.querySelectorAll('button')].map((candidate) => candidate.textContent).join(' ');
  expect(words).not.toMatch(/eras|delet|reset|clear|discard|new plate|demo/i);
});

describe('a place of the sheet', () => {
  let breaks = true;
  const Fragile = () => {
    if (breaks) throw new Error('no such figure');
    return <p>the figures</p>;
  };
  const sheet = () =>
    act(() =>
      root.render(
        <>
          <ErrorBoundary bench={bench} download={download} place="The readout" className="view readout">
            <Fragile />
          </ErrorBoundary>
          <p>the plan</p>
        </>,
      ),
    );
  beforeEach(() => {
    breaks = true;
    sheet();
  });

  test('fails on its own: what stands beside it stays', () => {
    expect(host.textContent).toContain('The readout could not be drawn');
    expect(host.textContent).toContain('the plan');
    expect(host.querySelector('.readout[role=alert]')).not.toBeNull();
  });
  test('is drawn again by its button', () => {
    breaks = false;
    act(() => button('Draw it again')!.click());
    expect(host.textContent).toBe('the figuresthe plan');
  });
  test('is drawn again after any change of the plate, and says it again where it fails again', () => {
    act(() => bench.change('Rename', (layout) => ({ ...layout, name: 'Other' })));
    expect(host.textContent).toContain('could not be drawn');
    breaks = false;
    act(() => bench.undo());
    expect(host.textContent).toBe('the figuresthe plan');
  });
  test('leaves word that something failed', () => {
    const { layout } = bench.store.getState();
    const other = createWorkbench({ layout });
    expect([hasCrashed(bench), hasCrashed(other)]).toEqual([true, false]);
  });
});
