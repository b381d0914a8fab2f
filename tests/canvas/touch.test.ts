/**
 * Fingers, the menu and the wheel. Expected values: mathematics on a plan at 2 px a
 * millimetre whose middle is the platform's. Screen px, platform millimetres.
 */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { askMenu } from '../../src/canvas/gestures/menu';
import { createTouch } from '../../src/canvas/gestures/touch';
import { toPlate } from '../../src/canvas/camera';
import { planHands } from './hands';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const fingers = () => {
  const hands = planHands();
  const touch = createTouch(hands.host, () => hands.controller.cancel());
  const at = (left: number, top: number) => hands.controller.input({ left, top });
  const underScreen = (left: number, top: number) =>
    toPlate({ left, top }, hands.host.camera(), hands.host.size());
  return { hands, touch, at, underScreen };
};

describe('two fingers', () => {
  it('zoom by the ratio of their distances, and what lies under each stays under it', () => {
    const { hands, touch, at, underScreen } = fingers();
    const [left, right] = [underScreen(300, 200), underScreen(500, 200)];
    expect(touch.down(1, at(300, 200), { left: 0, top: 0 })).toBe(false);
    expect(touch.down(2, at(500, 200), { left: 0, top: 0 })).toBe(true);
    expect(touch.move(1, at(250, 300))).toBe(true);
    expect(touch.move(2, at(650, 300))).toBe(true);
    expect(hands.host.camera().pxPerMm).toBeCloseTo(4, 9);
    for (const [before, now] of [
      [left, underScreen(250, 300)],
      [right, underScreen(650, 300)],
    ] as const) {
      expect(now.x).toBeCloseTo(before.x, 6);
      expect(now.y).toBeCloseTo(before.y, 6);
    }
  });

  it('give up what the first finger had begun, and a finger that stays begins nothing', () => {
    const { hands, touch, at } = fingers();
    const before = hands.layout();
    touch.down(1, at(280, 420), { left: 0, top: 0 });
    hands.press(-60, -60);
    hands.move(-20, -60);
    expect(hands.layout()).not.toEqual(before);
    touch.down(2, at(500, 420), { left: 0, top: 0 });
    expect(hands.layout()).toEqual(before);
    expect(hands.bench.gestureOpen()).toBe(false);
    expect(touch.up(2)).toBe(true);
    expect(touch.move(1, at(300, 300))).toBe(true);
    expect(touch.up(1)).toBe(true);
    expect(touch.down(3, at(280, 420), { left: 0, top: 0 })).toBe(false);
  });
});

describe('a long press', () => {
  it('opens the menu of the part under it after half a second, at the finger', () => {
    const { hands, touch, at } = fingers();
    touch.down(1, at(280, 420), { left: 290, top: 470 });
    vi.advanceTimersByTime(499);
    expect(hands.host.ui.getState().menu).toBeNull();
    vi.advanceTimersByTime(1);
    const menu = hands.host.ui.getState().menu;
    expect(menu).toEqual({ about: 'part', at: { x: -60, y: -60 }, client: { left: 290, top: 470 } });
    expect(hands.view().selection).toEqual(['P01']);
    expect(touch.up(1)).toBe(true);
  });

  it.each([
    ['moves', ({ touch, at }: ReturnType<typeof fingers>) => touch.move(1, at(300, 420))],
    ['is lifted', ({ touch }: ReturnType<typeof fingers>) => touch.up(1)],
    [
      'gets a second one',
      ({ touch, at }: ReturnType<typeof fingers>) => touch.down(2, at(1, 1), { left: 0, top: 0 }),
    ],
  ])('opens nothing where the finger %s before', (_what, act) => {
    const all = fingers();
    all.touch.down(1, all.at(280, 420), { left: 0, top: 0 });
    vi.advanceTimersByTime(300);
    act(all);
    vi.advanceTimersByTime(1000);
    expect(all.hands.host.ui.getState().menu).toBeNull();
  });
});

describe('the menu', () => {
  it('keeps a selection it is asked for on, and takes up a part, a line or nothing else', () => {
    const hands = planHands();
    const ask = (x: number, y: number) => {
      hands.host.ui.setState({ menu: null });
      askMenu(hands.host, { x, y }, { left: 0, top: 0 });
      return hands.host.ui.getState().menu?.about;
    };
    hands.bench.setView({ selection: ['P01', 'P02'] });
    expect(ask(60, -60)).toBe('part');
    expect(hands.view().selection).toEqual(['P01', 'P02']);
    expect(ask(10, 70)).toBe('part');
    expect(hands.view().selection).toEqual(['P03']);
    expect(ask(-100, 0.5)).toBe('line');
    expect(hands.view().activeLine).toBe(1);
    expect(ask(120, 120)).toBe('plate');
    hands.bench.setView({ tool: 'disc' });
    expect(ask(120, 120)).toBeUndefined();
  });
});

describe('the wheel', () => {
  it('zooms about the pointer, or moves the view where it was set so; a pinch always zooms', () => {
    const hands = planHands();
    hands.controller.wheel({ left: 400, top: 300 }, -100, false);
    expect(hands.host.camera()).toMatchObject({ centreX_mm: 0, centreY_mm: 0 });
    expect(hands.host.camera().pxPerMm).toBeGreaterThan(2);
    hands.bench.setView({ wheel: 'pan', camera: { centreX_mm: 0, centreY_mm: 0, pxPerMm: 2 } });
    hands.controller.wheel({ left: 0, top: 0 }, 100, false, 40);
    expect(hands.host.camera()).toEqual({ centreX_mm: 20, centreY_mm: -50, pxPerMm: 2 });
    hands.controller.wheel({ left: 400, top: 300 }, -100, true);
    expect(hands.host.camera().pxPerMm).toBeGreaterThan(2);
  });
});
