/**
 * A workbench with the real engine under a plan of 800 × 600 px at 2 px a millimetre, and a hand whose frames come when
 * the test says so. Plate (x, y) stands at screen (400 + 2x, 300 − 2y).
 */
import { analyse } from '../../src/build/analyse';
import * as drawing from '../../src/canvas/gestures/later';
import { createController } from '../../src/canvas/gestures/controller';
import type { PlanHost } from '../../src/canvas/gestures/gesture';
import { createPlanUi } from '../../src/canvas/gestures/planUi';
import { NO_MODIFIERS, type Modifiers } from '../../src/canvas/snapping';
import { cameraOf } from '../../src/canvas/viewport';
import type { Layout } from '../../src/layout/types';
import type { View } from '../../src/store/types';
import { createWorkbench } from '../../src/store/workbench';
import { smallPlate } from '../store/plates';

export const SHIFT: Modifiers = { ...NO_MODIFIERS, shift: true };
export const ALT: Modifiers = { ...NO_MODIFIERS, alt: true };

/** Two blocks 20 × 20 at (±60, −60), a stepped part (30 × 30 below z = 20) at (0, 60), four quadrants, no band, no overlap. */
export const quadrantsPlate = (): Layout => ({
  ...smallPlate(),
  process: { ...smallPlate().process, seamOverlap_mm: 0 },
  zoning: [
    {
      from_mm: 0,
      zoning: { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: 0, lasers: ['L1', 'L2', 'L3', 'L4'] },
    },
  ],
});

export function planHands(layout: Layout = quadrantsPlate(), view: Partial<View> = {}) {
  const camera = { centreX_mm: 0, centreY_mm: 0, pxPerMm: 2 };
  const bench = createWorkbench({ layout, analyse, view: { height_mm: 10, camera, ...view } });
  const host: PlanHost = {
    bench,
    ui: createPlanUi(),
    camera: () => cameraOf(bench),
    size: () => ({ width: 800, height: 600 }),
  };
  const frames: (() => void)[] = [];
  const controller = createController(
    host,
    (run) => frames.push(run),
    () => drawing,
  );
  const input = (x: number, y: number, held: Modifiers = NO_MODIFIERS) =>
    controller.input({ left: 400 + 2 * x, top: 300 - 2 * y }, held);
  return {
    bench,
    host,
    controller,
    input,
    layout: () => bench.store.getState().layout,
    view: () => bench.store.getState().view,
    part: (id: string) => bench.store.getState().layout.parts.find((part) => part.id === id),
    press: (x: number, y: number, held?: Modifiers) => controller.press(input(x, y, held), false),
    /** Moves without a frame. */
    wander: (x: number, y: number, held?: Modifiers) => controller.move(input(x, y, held)),
    frame: () => frames.splice(0).forEach((run) => run()),
    move(x: number, y: number, held?: Modifiers) {
      controller.move(input(x, y, held));
      frames.splice(0).forEach((run) => run());
    },
    release: (x: number, y: number, held?: Modifiers) => controller.release(input(x, y, held)),
    click(x: number, y: number, held?: Modifiers) {
      controller.press(input(x, y, held), false);
      controller.release(input(x, y, held));
    },
  };
}
