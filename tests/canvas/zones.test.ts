/** Drawn zones under the hand: 2 px a millimetre, so an outline is caught within 2.5 mm of it. */
import { describe, expect, it } from 'vitest';
import { cornerGesture, newCornerGesture, radiusGesture } from '../../src/canvas/gestures/zones';
import { NO_MODIFIERS } from '../../src/canvas/snapping';
import { drawnZones } from '../../src/commands/operations';
import { layoutAt } from '../../src/layout/steps';
import type { Layout, Point } from '../../src/layout/types';
import { planHands, quadrantsPlate, SHIFT } from './hands';

const CTRL = { ...NO_MODIFIERS, ctrl: true };
const square = (left: number, right: number): readonly Point[] => [
  [left, 100],
  [right, 100],
  [right, 150],
  [left, 150],
];
/** Zones side by side behind the parts, 50 mm deep, and a disc in front. */
const zonesPlate = (): Layout => ({
  ...quadrantsPlate(),
  zoning: [
    {
      from_mm: 0,
      zoning: {
        strategy: 'drawn',
        zones: [
          { lasers: ['L1'], rings: [square(-100, 0)] },
          { lasers: ['L2'], rings: [square(0, 100)] },
          { lasers: ['L3'], rings: [{ circle_mm: [0, -130, 20] }] },
        ],
      },
    },
  ],
});
const hands = (activeZone: number | null = null) => planHands(zonesPlate(), { activeZone });
type Hands = ReturnType<typeof hands>;
const ring = (on: Hands, zone: number) => drawnZones(layoutAt(on.layout(), 0))[zone]?.rings[0];
const at = (zone: number, corner: number) => ({ zone, ring: 0, corner });

describe('a drawn zone', () => {
  it('is chosen by a press on its outline, and only then moved by a drag', () => {
    const on = hands();
    on.press(-50, 101);
    on.move(-40, 91);
    on.release(-40, 91);
    expect(on.view().activeZone).toBe(0);
    expect(ring(on, 0)).toEqual(square(-100, 0));
    on.press(-50, 101);
    on.move(-40, 91);
    on.release(-40, 91);
    expect(ring(on, 0)).toEqual([
      [-90, 90],
      [10, 90],
      [10, 140],
      [-90, 140],
    ]);
    on.bench.undo();
    expect(ring(on, 0)).toEqual(square(-100, 0));
    expect(on.bench.history().undo).toBeNull();
  });

  it('is let go by a press beside it', () => {
    const on = hands(1);
    on.click(-150, 0);
    expect(on.view().activeZone).toBeNull();
  });

  it('that is gone is no longer chosen', () => {
    const on = hands(2);
    on.bench.change('test', (layout) => ({
      ...layout,
      zoning: [{ from_mm: 0, zoning: { strategy: 'wholeField' } }],
    }));
    expect(on.view().activeZone).toBeNull();
  });
});

describe('a corner', () => {
  it('takes the neighbour along, leaves it where it was with Ctrl, and passes others by', () => {
    const on = hands(0);
    on.controller.begin(cornerGesture(on.host, on.input(0, 100), at(0, 1)));
    on.move(20, 110);
    expect([ring(on, 0), ring(on, 1)].flat()).toContainEqual([20, 110]);
    expect(ring(on, 1)).toContainEqual([20, 110]);
    // over the neighbour's other corner and on
    on.move(100, 100);
    on.move(40, 105);
    expect(ring(on, 1)).toEqual([
      [40, 105],
      [100, 100],
      [100, 150],
      [0, 150],
    ]);
    on.move(20, 110, CTRL);
    on.release(20, 110, CTRL);
    expect(ring(on, 0)).toContainEqual([20, 110]);
    expect(ring(on, 1)).toEqual(square(0, 100));
    on.bench.undo();
    expect(ring(on, 0)).toEqual(square(-100, 0));
  });

  it('goes with Shift and a click', () => {
    const on = hands(1);
    on.controller.begin(cornerGesture(on.host, on.input(100, 150), at(1, 2)));
    on.release(100, 150, SHIFT);
    expect(ring(on, 1)).toEqual([
      [0, 100],
      [100, 100],
      [0, 150],
    ]);
  });

  it('is pulled out of a side', () => {
    const on = hands(1);
    on.controller.begin(newCornerGesture(on.host, on.input(50, 100), at(1, 0)));
    on.move(52, 90);
    on.move(55, 80.04);
    on.release(55, 80.04);
    expect(ring(on, 1)).toEqual([
      [0, 100],
      [55, 80],
      [100, 100],
      [100, 150],
      [0, 150],
    ]);
    on.bench.undo();
    expect(ring(on, 1)).toEqual(square(0, 100));
  });
});

it('a disc takes its radius from the hand', () => {
  const on = hands(2);
  on.controller.begin(radiusGesture(on.host, on.input(20, -130), 2, 0));
  on.move(30, -90);
  on.release(30, -90);
  // 30² + 40² = 50²
  expect(ring(on, 2)).toEqual({ circle_mm: [0, -130, 50] });
});
