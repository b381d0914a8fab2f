/** The store's promises about history, gestures and what a subscriber may see. */
import { describe, expect, test } from 'vitest';
import { createWorkbench } from '../../src/store/workbench';
import type { Layout } from '../../src/layout/types';
import type { Workbench } from '../../src/store/types';
import { countingAnalyse, smallPlate } from './plates';

const open = (historyLimit?: number): Workbench =>
  createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse, historyLimit });
const layoutOf = (bench: Workbench): Layout => bench.store.getState().layout;
const xOf = (bench: Workbench): number => layoutOf(bench).parts[0]!.at_mm[0];
const moveTo =
  (x: number) =>
  (layout: Layout): Layout => ({
    ...layout,
    parts: layout.parts.map((part, i) => (i === 0 ? { ...part, at_mm: [x, part.at_mm[1]] as const } : part)),
  });

describe('history', () => {
  test('a change is one entry under its label, undone and redone', () => {
    const bench = open();
    expect(bench.history()).toEqual({ undo: null, redo: null });
    bench.change('Move', moveTo(1));
    bench.change('Shift', moveTo(2));
    expect(bench.history()).toEqual({ undo: 'Shift', redo: null });
    bench.undo();
    expect(xOf(bench)).toBe(1);
    expect(bench.history()).toEqual({ undo: 'Move', redo: 'Shift' });
    bench.undo();
    expect(layoutOf(bench)).toEqual(smallPlate());
    bench.redo();
    bench.redo();
    expect(xOf(bench)).toBe(2);
    expect(bench.history()).toEqual({ undo: 'Shift', redo: null });
  });

  test('a change that changes nothing leaves no entry and keeps what can be redone', () => {
    const bench = open();
    bench.change('Move', moveTo(1));
    bench.undo();
    bench.change('Nothing', (layout) => structuredClone(layout));
    expect(bench.history()).toEqual({ undo: null, redo: 'Move' });
  });

  test('selecting, hovering and looking around never clear what can be redone', () => {
    const bench = open();
    bench.change('Move', moveTo(1));
    bench.undo();
    bench.setView({ selection: ['P01'], hover: { kind: 'laser', laser: 1 }, height_mm: 12, tool: 'disc' });
    bench.notify({ code: 'work-not-saved-full', params: {} });
    expect(bench.history().redo).toBe('Move');
    bench.redo();
    expect(xOf(bench)).toBe(1);
    expect(bench.store.getState().view.selection).toEqual(['P01']);
  });

  test('two hundred changes are undone to the start and redone to the end', () => {
    const bench = open();
    for (let i = 1; i <= 200; i++) bench.change('Move', moveTo(i));
    for (let i = 199; i >= 1; i--) {
      bench.undo();
      expect(xOf(bench)).toBe(i);
    }
    bench.undo();
    expect(layoutOf(bench)).toEqual(smallPlate());
    for (let i = 0; i < 200; i++) bench.redo();
    expect(xOf(bench)).toBe(200);
  });

  test('the oldest entries give way at the limit, for changes and gestures alike', () => {
    const bench = open(60);
    for (let i = 1; i <= 50; i++) bench.change('Move', moveTo(i));
    for (let i = 51; i <= 100; i++) {
      bench.beginGesture('Drag');
      bench.change('', moveTo(i));
      bench.endGesture();
    }
    let steps = 0;
    for (; bench.history().undo !== null; steps++) bench.undo();
    expect(steps).toBe(60);
    expect(xOf(bench)).toBe(40);
  });

  test('listeners hear of every change of the labels', () => {
    const bench = open();
    const heard: (string | null)[] = [];
    const stop = bench.onHistory(() => heard.push(bench.history().undo));
    bench.change('Move', moveTo(1));
    bench.beginGesture('Drag');
    bench.change('', moveTo(2));
    bench.endGesture();
    bench.undo();
    stop();
    bench.undo();
    expect(heard.filter((label, i) => label !== heard[i - 1])).toEqual(['Move', 'Drag', 'Move']);
  });
});

describe('gestures', () => {
  test('everything within one gesture is one entry under its label', () => {
    const bench = open();
    bench.beginGesture('Drag');
    expect(bench.gestureOpen()).toBe(true);
    for (let i = 1; i <= 30; i++) bench.change('frame', moveTo(i));
    bench.endGesture();
    expect(bench.gestureOpen()).toBe(false);
    expect(bench.history().undo).toBe('Drag');
    bench.undo();
    expect(layoutOf(bench)).toEqual(smallPlate());
    bench.redo();
    expect(xOf(bench)).toBe(30);
    expect(bench.history()).toEqual({ undo: 'Drag', redo: null });
  });

  test('a cancelled gesture goes back to where it began, leaves no entry and keeps what can be redone', () => {
    const bench = open();
    bench.change('Move', moveTo(5));
    bench.change('Move on', moveTo(6));
    bench.undo();
    const start = layoutOf(bench);
    bench.beginGesture('Drag');
    bench.change('frame', moveTo(99));
    bench.cancelGesture();
    expect(layoutOf(bench)).toBe(start);
    expect(bench.history()).toEqual({ undo: 'Move', redo: 'Move on' });
    bench.change('After', moveTo(7));
    expect(bench.history().undo).toBe('After');
  });

  test('a gesture that comes back to where it began leaves no entry', () => {
    const bench = open();
    bench.change('Move', moveTo(1));
    bench.undo();
    bench.beginGesture('Drag');
    bench.change('frame', moveTo(50));
    bench.change('frame', moveTo(-60));
    bench.endGesture();
    expect(layoutOf(bench)).toEqual(smallPlate());
    expect(bench.history()).toEqual({ undo: null, redo: 'Move' });
  });

  test('a gesture begun while another is open ends that one first', () => {
    const bench = open();
    bench.beginGesture('First');
    bench.change('frame', moveTo(1));
    bench.beginGesture('Second');
    bench.change('frame', moveTo(2));
    bench.endGesture();
    bench.undo();
    expect(xOf(bench)).toBe(1);
    expect(bench.history()).toEqual({ undo: 'First', redo: 'Second' });
  });

  test('undo in the middle of a gesture ends it and takes it back', () => {
    const bench = open();
    bench.beginGesture('Drag');
    bench.change('frame', moveTo(1));
    bench.undo();
    expect(bench.gestureOpen()).toBe(false);
    expect(layoutOf(bench)).toEqual(smallPlate());
    expect(bench.history().redo).toBe('Drag');
  });

  test('ending and cancelling without a gesture do nothing', () => {
    const bench = open();
    bench.change('Move', moveTo(1));
    bench.endGesture();
    bench.cancelGesture();
    expect(xOf(bench)).toBe(1);
    expect(bench.history().undo).toBe('Move');
  });

  test('a recipe that throws leaves layout, gesture and history as they were', () => {
    const bench = open();
    bench.beginGesture('Drag');
    bench.change('frame', moveTo(1));
    expect(() =>
      bench.change('frame', () => {
        throw new Error('broken recipe');
      }),
    ).toThrow('broken recipe');
    expect(xOf(bench)).toBe(1);
    expect(bench.gestureOpen()).toBe(true);
    bench.cancelGesture();
    expect(layoutOf(bench)).toEqual(smallPlate());
  });
});

describe('what a subscriber sees', () => {
  const without = (id: string) => (layout: Layout) => ({
    ...layout,
    parts: layout.parts.filter((part) => part.id !== id),
  });

  test('selection, hover and height never point at what is gone, undo and redo included', () => {
    const bench = open();
    bench.change('Delete', without('P03'));
    bench.undo();
    bench.setView({ selection: ['P01', 'P03'], hover: { kind: 'part', part: 'P03' }, height_mm: 45 });
    const seen: boolean[] = [];
    bench.store.subscribe(({ layout, view }) => {
      const ids = layout.parts.map((part) => part.id);
      const { hover } = view;
      const hovered = hover?.kind !== 'part' || ids.includes(hover.part);
      seen.push(view.selection.every((id) => ids.includes(id)) && hovered && view.height_mm <= 50);
    });
    bench.redo();
    expect(seen).toEqual([true]);
    expect(bench.store.getState().view).toMatchObject({ selection: ['P01'], hover: null, height_mm: 30 });
  });

  test('the height stays between the platform and the top of the highest part', () => {
    const bench = open();
    const height = () => bench.store.getState().view.height_mm;
    bench.setView({ height_mm: 1e6 });
    expect(height()).toBe(50);
    bench.setView({ height_mm: -3 });
    expect(height()).toBe(0);
    bench.setView({ height_mm: 20 });
    bench.setView({ height_mm: Number.NaN });
    expect(height()).toBe(20);
    bench.change('Clear', (layout) => ({ ...layout, parts: [] }));
    expect(height()).toBe(0);
  });

  test('a hovered seam is let go when the layout or the height changes, a hovered laser is not', () => {
    const bench = open();
    const hover = () => bench.store.getState().view.hover;
    bench.setView({ hover: { kind: 'seam', seam: 0 } });
    expect(hover()).toEqual({ kind: 'seam', seam: 0 });
    bench.setView({ height_mm: 10 });
    expect(hover()).toBeNull();
    bench.setView({ hover: { kind: 'laser', laser: 3 } });
    bench.change('Move', moveTo(3));
    expect(hover()).toEqual({ kind: 'laser', laser: 3 });
    bench.change('One laser less', (layout) => ({
      ...layout,
      machine: { ...layout.machine, lasers: layout.machine.lasers.slice(0, 3) },
    }));
    expect(hover()).toBeNull();
  });

  test('the zone line for the keys is always one of the lines', () => {
    const bench = open();
    const line = () => bench.store.getState().view.activeLine;
    bench.setView({ activeLine: 1 });
    expect(line()).toBe(1);
    for (const none of [2, -1, 0.5, Number.NaN]) {
      bench.setView({ activeLine: none });
      expect(line()).toBe(0);
    }
    bench.setView({ activeLine: 1 });
    bench.change('Whole field', (layout) => ({
      ...layout,
      zoning: [{ from_mm: 0, zoning: { strategy: 'wholeField' } }],
    }));
    expect(line()).toBe(0);
  });

  test('a view that is given from the last visit is settled too', () => {
    const view = { height_mm: 400, selection: ['P99', 'P02'] };
    const bench = createWorkbench({ layout: smallPlate(), analyse: countingAnalyse().analyse, view });
    expect(bench.store.getState().view).toMatchObject({ height_mm: 50, selection: ['P02'] });
    expect(bench.history().undo).toBeNull();
  });

  test('the analysis is asked for once per layout and only when someone reads it', () => {
    const { asked, analyse } = countingAnalyse();
    const bench = createWorkbench({ layout: smallPlate(), analyse });
    bench.setView({ height_mm: 3 });
    expect(asked).toHaveLength(0);
    const first = bench.analysis();
    bench.setView({ height_mm: 4, selection: ['P01'] });
    expect(bench.analysis()).toBe(first);
    expect(asked).toHaveLength(1);
    bench.change('Move', moveTo(2));
    expect(bench.analysis().layout).toBe(layoutOf(bench));
    expect(asked).toHaveLength(2);
  });
});
