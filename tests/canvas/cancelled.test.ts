/**
 * Gestures that the system takes away: a cancelled touch, a lost pointer, a window or tab that is left. Each leaves the
 * plate, its history and the hand as they were before it began. Platform millimetres.
 */
import { describe, expect, it } from 'vitest';
import type { Gesture, Input } from '../../src/canvas/gestures/gesture';
import { streamGesture } from '../../src/canvas/gestures/streams';
import { turnGesture } from '../../src/canvas/gestures/turning';
import {
  cornerGesture,
  moveZoneGesture,
  newCornerGesture,
  radiusGesture,
} from '../../src/canvas/gestures/zones';
import type { Layout } from '../../src/layout/types';
import { ALT, planHands, quadrantsPlate } from './hands';

/** A triangle and a circle drawn as zones. */
const drawnPlate = (): Layout => ({
  ...quadrantsPlate(),
  zoning: [
    {
      from_mm: 0,
      zoning: {
        strategy: 'drawn',
        zones: [
          {
            lasers: ['L1'],
            rings: [
              [
                [-100, -100],
                [0, -100],
                [-100, 0],
              ],
            ],
          },
          { lasers: ['L2'], rings: [{ circle_mm: [60, 60, 40] }] },
        ],
      },
    },
  ],
});

describe('a gesture that the system cancels', () => {
  const GESTURES = {
    'a drag of a part': [-60, -60, undefined],
    'a drag of a copy': [-60, -60, ALT],
    'a zone line': [-100, 0, undefined],
    'the crossing of two lines': [0, 0, undefined],
    'a box': [-120, -120, undefined],
  } as const;

  it.each(Object.entries(GESTURES))('leaves nothing stuck: %s', (_name, [x, y, held]) => {
    const hands = planHands();
    const [before, view] = [hands.layout(), hands.view()];
    hands.press(x, y, held);
    hands.move(x + 30, y + 25, held);
    hands.controller.cancel();
    hands.move(x + 60, y + 60, held);
    hands.frame();
    expect(hands.layout()).toEqual(before);
    expect(hands.controller.busy()).toBe(false);
    expect(hands.bench.gestureOpen()).toBe(false);
    expect(hands.bench.history()).toEqual({ undo: null, redo: null });
    expect(hands.host.ui.getState()).toMatchObject({ pressed: false, moving: [], tip: null, draft: null });
    expect(hands.view().camera).toEqual(view.camera);
    hands.click(60, -60);
    expect(hands.view().selection).toEqual(['P02']);
  });

  const corner = { zone: 0, ring: 0, corner: 0 };
  const begun: Readonly<Record<string, (hands: ReturnType<typeof planHands>, start: Input) => Gesture>> = {
    'the turn of a part': ({ host }, start) => turnGesture(host, start, 'P01', ['P01']),
    'the turn of several parts': ({ host }, start) => turnGesture(host, start, 'P01', ['P01', 'P02']),
    'the gas flow': ({ host }, start) => streamGesture(host, start, 'gas'),
    'the blade': ({ host }, start) => streamGesture(host, start, 'blade'),
    'a drawn zone': ({ host }, start) => moveZoneGesture(host, start, 0),
    'a corner of a zone': ({ host }, start) => cornerGesture(host, start, corner),
    'a new corner of a zone': ({ host }, start) => newCornerGesture(host, start, corner),
    'the radius of a zone': ({ host }, start) => radiusGesture(host, start, 1, 0),
  };

  it.each(Object.entries(begun))('leaves nothing stuck: %s', (_name, begin) => {
    const hands = planHands(drawnPlate());
    const before = hands.layout();
    const start = hands.input(-60, -60);
    hands.controller.begin(begin(hands, start));
    hands.move(-20, 50);
    expect(hands.layout()).not.toEqual(before);
    hands.controller.cancel();
    hands.move(40, 50);
    expect(hands.layout()).toEqual(before);
    expect(hands.controller.busy()).toBe(false);
    expect(hands.bench.gestureOpen()).toBe(false);
    expect(hands.bench.history()).toEqual({ undo: null, redo: null });
    expect(hands.host.ui.getState()).toMatchObject({ pressed: false, moving: [], tip: null, draft: null });
  });

  it.each(['rectangle', 'disc', 'ring', 'polygon', 'zone', 'measure', 'pan'] as const)(
    'leaves nothing stuck: the tool %s',
    (tool) => {
      const hands = planHands();
      const before = hands.layout();
      hands.bench.setView({ tool });
      hands.press(-100, 100);
      hands.move(-60, 120);
      hands.controller.cancel();
      expect(hands.host.ui.getState()).toMatchObject({ measureFrom: null, caught: null });
      expect(hands.view().measured).toBeNull();
      hands.move(-20, 150);
      expect(hands.layout()).toEqual(before);
      expect(hands.controller.busy()).toBe(false);
      expect(hands.bench.gestureOpen()).toBe(false);
      expect(hands.host.ui.getState()).toMatchObject({ pressed: false, draft: null });
      expect(hands.view().camera).toEqual({ centreX_mm: 0, centreY_mm: 0, pxPerMm: 2 });
    },
  );
});
