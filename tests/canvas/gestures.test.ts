/**
 * Dragging, selecting and turning on the plan. Expected values: mathematics, areas and places worked out by hand on the plate
 * of hands.ts. Plate millimetres with y to the back, mm², degrees counter-clockwise.
 */
import { describe, expect, it, vi } from 'vitest';
import { removeParts } from '../../src/commands/operations';
import { streamGesture } from '../../src/canvas/gestures/streams';
import { turnGesture } from '../../src/canvas/gestures/turning';
import { ALT, SHIFT, planHands } from './hands';

describe('moving parts', () => {
  it('moves a part across a zone line: both lasers change as the rectangle says, the sum stays', () => {
    // by hand: the 20 × 20 block at x −14 … 6 has 14 × 20 mm² left of the line and 6 × 20 right of it
    const hands = planHands();
    const areas = () => hands.bench.analysis().stretches[0].figures.lasers.map((laser) => laser.scanArea_mm2);
    const [l1, l2, l3, l4] = areas();
    expect([l1, l2]).toEqual([expect.closeTo(400, 6), expect.closeTo(400, 6)]);
    hands.press(-60, -60);
    hands.move(-4, -60);
    expect(areas()).toEqual([280, 520, l3, l4].map((area) => expect.closeTo(area, 6)));
    hands.release(-4, -60);
    expect(hands.part('P01')?.at_mm).toEqual([-4, -60]);
  });

  it('leaves one entry of history for a drag, whatever its length, and undo brings the part back', () => {
    const hands = planHands();
    const before = hands.layout();
    hands.press(-60, -60);
    for (let x = -59; x < -20; x++) hands.move(x, -55);
    hands.release(-20, -55);
    hands.bench.undo();
    expect(hands.layout()).toEqual(before);
    expect(hands.bench.history().undo).toBeNull();
  });

  it('keeps the grabbed part on 0.1 mm steps, with Alt on micrometres', () => {
    const hands = planHands();
    hands.press(-60, -60);
    hands.move(-41.23, -47.77);
    expect(hands.part('P01')?.at_mm).toEqual([-41.2, -47.8]);
    hands.move(-41.2346, -47.77, ALT);
    expect(hands.part('P01')?.at_mm).toEqual([-41.235, -47.77]);
    hands.release(-41.2346, -47.77, ALT);
    expect(hands.part('P01')?.at_mm).toEqual([-41.235, -47.77]);
  });

  it('takes the whole selection along and keeps its distances', () => {
    const hands = planHands();
    hands.bench.setView({ selection: ['P01', 'P02', 'P03'] });
    hands.press(-60, -60);
    hands.move(-50.3, -40);
    hands.release(-50.3, -40);
    expect(['P01', 'P02', 'P03'].map((id) => hands.part(id)?.at_mm)).toEqual([
      [-50.3, -40],
      [69.7, -40],
      [9.7, 80],
    ]);
  });

  it('changes the layout once per frame with the newest place, and ends where the pointer was let go', () => {
    const hands = planHands();
    const change = vi.spyOn(hands.bench, 'change');
    hands.press(-60, -60);
    for (let x = -59; x <= -30; x++) hands.wander(x, -60);
    expect(change).not.toHaveBeenCalled();
    hands.frame();
    expect(change).toHaveBeenCalledTimes(1);
    expect(hands.part('P01')?.at_mm).toEqual([-30, -60]);
    hands.wander(-29, -60);
    hands.release(-25, -60);
    hands.frame();
    expect(hands.part('P01')?.at_mm).toEqual([-25, -60]);
  });

  it('is a click, not a drag, below 3 px: the part is selected, nothing moves, no entry is left', () => {
    const hands = planHands();
    hands.press(60, -60);
    hands.move(61, -60);
    hands.release(61, -60);
    expect(hands.view().selection).toEqual(['P02']);
    expect(hands.part('P02')?.at_mm).toEqual([60, -60]);
    expect(hands.bench.history().undo).toBeNull();
  });

  it('cancels with Escape: the part is back, no entry, and the pointer moves nothing any more', () => {
    const hands = planHands();
    const before = hands.layout();
    hands.press(-60, -60);
    hands.move(0, 0);
    expect(hands.controller.key('Escape')).toBe(true);
    hands.move(20, 20);
    hands.release(20, 20);
    expect(hands.layout()).toEqual(before);
    expect(hands.bench.history().undo).toBeNull();
    expect(hands.bench.gestureOpen()).toBe(false);
    expect(hands.host.ui.getState()).toMatchObject({ moving: [], tip: null });
  });

  it('stops when the entry is closed by an undo in mid-drag, and begins no other', () => {
    const hands = planHands();
    hands.press(-60, -60);
    hands.move(-20, -60);
    hands.bench.undo();
    hands.move(40, 40);
    hands.release(40, 40);
    expect(hands.part('P01')?.at_mm).toEqual([-60, -60]);
    expect(hands.controller.busy()).toBe(false);
  });

  it('survives the part being removed under the hand', () => {
    const hands = planHands();
    hands.press(-60, -60);
    hands.move(-20, -60);
    hands.bench.change('Remove', (layout) => removeParts(layout, ['P01']));
    hands.move(0, 0);
    hands.release(0, 0);
    expect(hands.part('P01')).toBeUndefined();
    expect(hands.part('P02')?.at_mm).toEqual([60, -60]);
    expect(hands.bench.gestureOpen()).toBe(false);
  });
});

describe('selecting', () => {
  it('adds and takes away with Shift, and selects none with a click beside the parts', () => {
    const hands = planHands();
    hands.click(-60, -60);
    hands.click(60, -60, SHIFT);
    expect(hands.view().selection).toEqual(['P01', 'P02']);
    hands.click(-60, -60, SHIFT);
    expect(hands.view().selection).toEqual(['P02']);
    hands.click(120, 120);
    expect(hands.view().selection).toEqual([]);
  });

  it('chooses what lies whole inside a box', () => {
    const hands = planHands();
    hands.press(-120, -120);
    hands.move(75, -30);
    expect(hands.view().selection).toEqual(['P01', 'P02']);
    hands.move(65, -30);
    expect(hands.view().selection).toEqual(['P01']);
    hands.release(65, -30);
    expect(hands.host.ui.getState().draft).toBeNull();
  });

  it('shows the figures of a seam that is clicked and selects its part', () => {
    const hands = planHands();
    hands.click(0, 60);
    expect(hands.view().selection).toEqual(['P03']);
    expect(hands.host.ui.getState().seam).toEqual({ part: 'P03', at: { x: 0, y: 60 } });
    expect(hands.layout().zoning).toMatchObject([{ zoning: { at_mm: [0, 0] } }]);
  });

  it('lights up the part under the pointer, the seam before the part, and nothing once the pointer leaves', () => {
    const hands = planHands();
    hands.move(60, -60);
    expect(hands.view().hover).toEqual({ kind: 'part', part: 'P02' });
    hands.move(1, 60);
    expect(hands.view().hover).toEqual({ kind: 'seam', seam: 0 });
    hands.controller.leave();
    expect(hands.view().hover).toBeNull();
  });
});

describe('turning', () => {
  it('turns freely to 0.1 degrees, in steps of 15 with Shift, as one entry', () => {
    const hands = planHands();
    hands.controller.begin(turnGesture(hands.host, hands.input(-60, -40), 'P01', ['P01']));
    hands.move(-80, -59);
    expect(hands.part('P01')?.turn_deg).toBe(87.1); // 90° less atan(1/20) = 2.86°
    hands.move(-80, -59, SHIFT);
    expect(hands.part('P01')?.turn_deg).toBe(90);
    hands.release(-80, -59, SHIFT);
    hands.bench.undo();
    expect(hands.part('P01')?.turn_deg).toBe(0);
  });
});

describe('turning several parts', () => {
  it('swings them about the middle of their common box, in one entry, and as drawn at every angle on the way', () => {
    const hands = planHands();
    const places = () => ['P01', 'P02'].map((id) => hands.part(id)?.at_mm);
    // common box x ±70, y −70 … −50: middle (0, −60); the press is right of it
    hands.controller.begin(turnGesture(hands.host, hands.input(100, -60), 'P02', ['P01', 'P02']));
    for (let i = 1; i <= 72; i++) {
      const angle = (i * Math.PI) / 36;
      hands.move(100 * Math.cos(angle), -60 + 100 * Math.sin(angle));
    }
    // a full round in 72 frames comes back to the micrometre
    expect(places()).toEqual([
      [-60, -60],
      [60, -60],
    ]);
    hands.move(5, 80, SHIFT);
    expect(hands.host.ui.getState().tip?.lines).toEqual(['by 90.0°']);
    expect(places()).toEqual([
      [0, -120],
      [0, 0],
    ]);
    hands.release(5, 80, SHIFT);
    expect(hands.part('P02')?.turn_deg).toBe(90);
    hands.bench.undo();
    expect(places()).toEqual([
      [-60, -60],
      [60, -60],
    ]);
    expect(hands.bench.history().undo).toBeNull();
  });
});

describe('words beside the pointer', () => {
  it('make room from pressing to letting go, whatever the gesture', () => {
    const hands = planHands();
    const pressed = () => hands.host.ui.getState().pressed;
    hands.press(-60, -60);
    expect(pressed()).toBe(true);
    hands.move(-50, -60);
    expect(pressed()).toBe(true);
    hands.release(-50, -60);
    expect(pressed()).toBe(false);
    hands.press(-50, -60);
    hands.controller.cancel();
    expect(pressed()).toBe(false);
  });
});

describe('zone lines', () => {
  it('moves the line that is pressed, in steps of 0.1 mm, and not below the narrowest zone', () => {
    const hands = planHands();
    hands.press(0, -120);
    hands.move(33.33, -100);
    expect(hands.layout().zoning).toMatchObject([{ zoning: { at_mm: [33.3, 0] } }]);
    expect(hands.host.ui.getState().tip?.lines).toEqual(['x 33.3\u202fmm']);
    hands.move(900, -100);
    expect(hands.layout().zoning).toMatchObject([{ zoning: { at_mm: [169, 0] } }]);
    hands.release(900, -100);
    hands.bench.undo();
    expect(hands.layout().zoning).toMatchObject([{ zoning: { at_mm: [0, 0] } }]);
  });

  it('moves both lines of the quadrants by their crossing', () => {
    const hands = planHands();
    hands.press(2, 2);
    hands.move(12, -18);
    hands.release(12, -18);
    expect(hands.layout().zoning).toMatchObject([{ zoning: { at_mm: [10, -20] } }]);
  });

  it('leaves a line alone under a part that is selected', () => {
    const hands = planHands();
    hands.bench.setView({ selection: ['P03'] });
    hands.press(0, 60);
    hands.move(20, 60);
    hands.release(20, 60);
    expect(hands.part('P03')?.at_mm).toEqual([20, 60]);
    expect(hands.layout().zoning).toMatchObject([{ zoning: { at_mm: [0, 0] } }]);
  });
});

describe('flow and blade', () => {
  it('come from where the arrow is put: whole degrees or 15° steps for gas, the four sides for the blade', () => {
    const hands = planHands();
    const dragged = (stream: 'gas' | 'blade', x: number, y: number, held = ALT) => {
      hands.controller.begin(streamGesture(hands.host, hands.input(0, 180), stream));
      hands.move(x, y, held);
      hands.release(x, y, held);
      const { gasFlow, recoater } = hands.layout().machine;
      return stream === 'gas' ? gasFlow.towards_deg : recoater.towards_deg;
    };
    expect(dragged('gas', 180, 0)).toBe(180);
    expect(dragged('gas', -180, -180)).toBe(45);
    expect(dragged('gas', 100, 33)).toBe(198); // atan(0.33) = 18.26°
    expect(dragged('gas', 100, 33, SHIFT)).toBe(195);
    expect(dragged('blade', 100, 33)).toBe(180);
    expect(dragged('blade', 20, -150)).toBe(90);
  });
});

describe('looking', () => {
  it('pans and zooms without touching the document', () => {
    const hands = planHands();
    const before = hands.layout();
    hands.controller.press(hands.input(0, 0), true);
    hands.controller.move({ ...hands.input(0, 0), screen: { left: 450, top: 280 } });
    hands.frame();
    expect(hands.view().camera).toEqual({ centreX_mm: -25, centreY_mm: -10, pxPerMm: 2 });
    hands.controller.release({ ...hands.input(0, 0), screen: { left: 450, top: 280 } });
    hands.controller.wheel({ left: 400, top: 300 }, -100, false);
    expect(hands.view().camera?.pxPerMm).toBeGreaterThan(2);
    expect(hands.layout()).toBe(before);
    expect(hands.bench.history().undo).toBeNull();
  });
});
