// @vitest-environment jsdom
/** The binding to React: what re-renders a component and what does not. */
import { act, createElement, type ReactNode } from 'react';
import { createRoot } from 'react-dom/client';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { BenchProvider, useAnalysis, useBench, useHistory } from '../../src/canvas/bench';
import type { Workbench } from '../../src/store/types';
import { createWorkbench } from '../../src/store/workbench';
import { countingAnalyse, smallPlate } from '../store/plates';

(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true;
const box = document.createElement('div');
let root: ReturnType<typeof createRoot>;
let bench: Workbench;
let engine: ReturnType<typeof countingAnalyse>;

beforeEach(() => {
  root = createRoot(box);
  engine = countingAnalyse();
  bench = createWorkbench({ layout: smallPlate(), analyse: engine.analyse });
});
afterEach(() => act(() => root.unmount()));

const show = (children: ReactNode) =>
  act(() => root.render(<BenchProvider bench={bench}>{children}</BenchProvider>));
const rename = (name: string) => act(() => bench.change(name, (layout) => ({ ...layout, name })));

test('a component re-renders for what it selects and for nothing else', () => {
  let renders = 0;
  const Height = () => {
    renders++;
    return <p>{useBench((state) => state.view.height_mm)}</p>;
  };
  show(<Height />);
  act(() => bench.setView({ selection: ['P01'] }));
  rename('other');
  expect(renders).toBe(1);
  act(() => bench.setView({ height_mm: 7 }));
  expect(box.textContent).toBe('7');
  expect(renders).toBe(2);
});

test('two readers of the analysis share one computation, and both see a change', () => {
  const Name = () => <p>{useAnalysis().layout.name}</p>;
  show(createElement('div', null, <Name />, <Name />));
  expect(box.textContent).toBe('Small plateSmall plate');
  rename('Next');
  expect(box.textContent).toBe('NextNext');
  expect(engine.asked).toHaveLength(2);
});

test('the labels for undo and redo follow changes, gestures, undo and redo', () => {
  const Labels = () => {
    const { undo, redo } = useHistory();
    return <p>{`${undo}/${redo}`}</p>;
  };
  show(<Labels />);
  expect(box.textContent).toBe('null/null');
  rename('Rename');
  expect(box.textContent).toBe('Rename/null');
  act(() => {
    bench.beginGesture('Drag');
    bench.change('', (layout) => ({ ...layout, note: 'x' }));
  });
  act(() => bench.endGesture());
  expect(box.textContent).toBe('Drag/null');
  act(() => bench.undo());
  expect(box.textContent).toBe('Rename/Drag');
});

test('without a provider the fault names what is missing', () => {
  const Lost = () => <p>{useBench((state) => state.view.height_mm)}</p>;
  expect(() => act(() => root.render(<Lost />))).toThrow('BenchProvider');
});
