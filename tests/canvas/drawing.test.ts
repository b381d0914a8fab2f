/**
 * Drawing tools under the hand: what a press, a drag and a release leave in the layout. Expected values: mathematics, shapes
 * laid out by hand. Plate millimetres with y to the back; drags keep to 0.1 mm (common practice, no source).
 */
import { describe, expect, it } from 'vitest';
import { emptyLayout } from '../../src/layout/defaults';
import { layoutAt } from '../../src/layout/steps';
import { paramText } from '../../src/layout/messages';
import { planHands } from './hands';

const drawing = (tool: 'rectangle' | 'disc' | 'ring' | 'polygon' | 'zone') =>
  planHands(emptyLayout(), { tool, drawHeight_mm: 12 });

type Hands = ReturnType<typeof drawing>;

describe('drawing tools', () => {
  it('draw a rectangle from corner to corner on 0.1 mm steps, select it and free the hand', () => {
    const hands = drawing('rectangle');
    hands.press(10, 10);
    hands.move(40.04, 30.06);
    expect(hands.host.ui.getState().tip?.lines).toEqual(['x 40.0  y 30.1\u202fmm', '30.0 × 20.1\u202fmm']);
    hands.release(40.04, 30.06);
    const { parts, shapes } = hands.layout();
    expect(parts).toHaveLength(1);
    expect(parts[0].at_mm).toEqual([25, 20.05]);
    expect(shapes[parts[0].shape].slabs[0].to_mm).toBe(12);
    expect(hands.bench.analysis().stretches[0].figures.sectionArea_mm2).toBeCloseTo(30 * 20.1, 6);
    expect(hands.view()).toMatchObject({ selection: [parts[0].id], tool: 'select' });
    hands.bench.undo();
    expect(hands.layout().parts).toHaveLength(0);
  });

  it('draw a disc from its centre: the circle stays a circle', () => {
    const hands = drawing('disc');
    hands.press(0, 0);
    hands.move(30, 40);
    hands.release(30, 40);
    const { parts, shapes } = hands.layout();
    expect(shapes[parts[0].shape].slabs[0].rings).toEqual([{ circle_mm: [0, 0, 50] }]);
  });

  it('draw a ring with two presses: outer circle, then the inner one', () => {
    const hands = drawing('ring');
    hands.press(0, 0);
    hands.move(40, 0);
    hands.release(40, 0);
    hands.move(0, 25);
    hands.press(0, 25);
    const { parts, shapes } = hands.layout();
    expect(shapes[parts[0].shape].slabs[0].rings).toEqual([
      { circle_mm: [0, 0, 40] },
      { circle_mm: [0, 0, 25] },
    ]);
    // mathematics: π (40² − 25²); the polygon that stands for a circle is within 0.005 mm of it
    const area = hands.bench.analysis().stretches[0].figures.sectionArea_mm2;
    expect(Math.abs(area / (Math.PI * (1600 - 625)) - 1)).toBeLessThan(5e-4);
  });

  it.each([
    ['Enter', (hands: Hands) => void hands.controller.key('Enter')],
    ['a double click', (hands: Hands) => hands.controller.doubleClick()],
    ['a click on its first corner', (hands: Hands) => hands.click(1, 1)],
  ])('end a polygon with %s', (_, end) => {
    const hands = drawing('polygon');
    hands.click(0, 0);
    hands.click(60, 0);
    hands.click(0, 40);
    end(hands);
    expect(hands.layout().parts).toHaveLength(1);
    expect(hands.bench.analysis().stretches[0].figures.sectionArea_mm2).toBeCloseTo(1200, 6);
  });

  it('take a corner back with Backspace and the whole drawing back with Escape', () => {
    const hands = drawing('polygon');
    hands.click(0, 0);
    hands.click(60, 0);
    hands.click(99, 99);
    expect(hands.controller.key('Backspace')).toBe(true);
    hands.click(0, 40);
    expect(hands.host.ui.getState().draft).toMatchObject({ points: [{ x: 0 }, { x: 60 }, { x: 0 }] });
    expect(hands.controller.key('Escape')).toBe(true);
    expect(hands.host.ui.getState().draft).toBeNull();
    expect(hands.controller.key('Enter')).toBe(false);
    expect(hands.layout().parts).toHaveLength(0);
  });

  it('leave nothing after a slip: a click without a drag, two corners only', () => {
    for (const tool of ['rectangle', 'disc', 'ring'] as const) {
      const hands = drawing(tool);
      hands.click(10, 10);
      expect(hands.layout().parts).toHaveLength(0);
      expect(hands.host.ui.getState().draft).toBeNull();
      expect(hands.bench.history().undo).toBeNull();
    }
  });

  it.each([
    ['polygon', 1, '1 corner so far, 2 more needed'],
    ['zone', 2, '2 corners so far, 1 more needed'],
  ] as const)('a %s of %i corners goes on, and words say how many are missing', (tool, corners, words) => {
    for (const end of ['Enter', 'double click'] as const) {
      const hands = drawing(tool);
      const before = hands.layout();
      for (let i = 0; i < corners; i++) hands.click(60 * i, 0);
      if (end === 'Enter') expect(hands.controller.key('Enter')).toBe(true);
      else hands.controller.doubleClick();
      expect(hands.host.ui.getState().tip?.lines).toEqual([words]);
      expect(hands.host.ui.getState().draft).toMatchObject({ kind: tool });
      expect(hands.layout()).toBe(before);
    }
  });

  it('an outline without a corner says so where it is to be ended, and leaves Enter to others', () => {
    const hands = drawing('zone');
    expect(hands.controller.key('Enter')).toBe(false);
    hands.controller.doubleClick();
    expect(hands.host.ui.getState().tip).toBeNull();
    hands.controller.finish();
    expect(hands.host.ui.getState().tip?.lines).toEqual(['No corner yet, 3 more needed']);
  });

  it.each(['polygon', 'zone'] as const)(
    'a %s: a drag draws a side, from where it begins to where it ends',
    (tool) => {
      const hands = drawing(tool);
      const drag = (from: readonly [number, number], to: readonly [number, number]): void => {
        hands.press(...from);
        hands.move(...to);
        hands.release(...to);
      };
      drag([0, 0], [60, 0]);
      const sides = () => hands.host.ui.getState().draft;
      expect(sides()).toMatchObject({
        points: [
          { x: 0, y: 0 },
          { x: 60, y: 0 },
        ],
      });
      // on from the last corner, pressed again where it stands: one corner more
      drag([60, 0], [60, 40]);
      expect(sides()).toMatchObject({ points: [{ x: 0 }, { x: 60 }, { x: 60, y: 40 }] });
      // 2 px of a trembling hand are a click
      drag([0, 40], [1, 40]);
      expect(sides()).toMatchObject({ points: [{ x: 0 }, { x: 60 }, { x: 60 }, { x: 0, y: 40 }] });
      hands.controller.key('Enter');
      expect(sides()).toBeNull();
      if (tool === 'polygon')
        expect(hands.bench.analysis().stretches[0].figures.sectionArea_mm2).toBeCloseTo(60 * 40, 6);
      else expect(layoutAt(hands.layout(), 0).zoning).toMatchObject({ zones: [{ rings: [{ length: 4 }] }] });
    },
  );

  it('a drag that is cancelled takes both its corners back', () => {
    const hands = drawing('zone');
    hands.click(0, 0);
    hands.press(60, 0);
    hands.move(60, 40);
    hands.controller.cancel();
    expect(hands.host.ui.getState().draft).toMatchObject({ points: [{ x: 0, y: 0 }] });
  });

  it('a press that closes an outline leaves nothing for its drag to draw on', () => {
    const hands = drawing('zone');
    for (const [x, y] of [
      [0, 0],
      [60, 0],
      [0, 40],
    ] as const)
      hands.click(x, y);
    hands.press(1, 1);
    hands.move(30, 30);
    hands.release(30, 30);
    expect(hands.host.ui.getState().draft).toBeNull();
    const { zoning } = layoutAt(hands.layout(), 0);
    expect(zoning).toMatchObject({
      zones: [
        {
          rings: [
            [
              [0, 0],
              [60, 0],
              [0, 40],
            ],
          ],
        },
      ],
    });
  });

  it('give drawn zones to the lasers in turn', () => {
    const hands = drawing('zone');
    for (const x of [-100, 50]) {
      hands.click(x, 0);
      hands.click(x + 40, 0);
      hands.click(x, 40);
      hands.controller.key('Enter');
    }
    const { zoning } = layoutAt(hands.layout(), 0);
    expect(zoning.strategy === 'drawn' && zoning.zones.map((zone) => zone.lasers)).toEqual([['L1'], ['L2']]);
    expect(hands.view().tool).toBe('zone');
  });
});

describe('an outline that is not what it seems', () => {
  const codes = (hands: Hands) =>
    hands.view().notices.map(({ fault }) => [fault.code, paramText(fault.params['what']!)]);
  const drawn = (tool: 'polygon' | 'zone', corners: readonly (readonly [number, number])[]) => {
    const hands = drawing(tool);
    for (const [x, y] of corners) hands.click(x, y);
    hands.controller.key('Enter');
    return hands;
  };
  const bowTie = [
    [0, 0],
    [40, 40],
    [40, 0],
    [0, 40],
  ] as const;

  it('crosses itself: it is taken by the even-odd rule, as in files, and said', () => {
    const part = drawn('polygon', bowTie);
    // two triangles of base 40 and height 20
    expect(part.bench.analysis().stretches[0].figures.sectionArea_mm2).toBeCloseTo(800, 6);
    expect(codes(part)).toEqual([['drawing-crosses-itself', 'part']]);
    const zone = drawn('zone', bowTie);
    expect(layoutAt(zone.layout(), 0).zoning).toMatchObject({
      strategy: 'drawn',
      zones: [{ rings: [bowTie] }],
    });
    expect(codes(zone)).toEqual([['drawing-crosses-itself', 'zone']]);
  });

  it('encloses nothing: nothing is put on the plate, and it is said', () => {
    const line = [
      [0, 0],
      [20, 20],
      [40, 40],
    ] as const;
    for (const tool of ['polygon', 'zone'] as const) {
      const hands = drawn(tool, line);
      expect(codes(hands)).toEqual([['drawing-without-area', tool === 'zone' ? 'zone' : 'part']]);
      expect(hands.bench.history().undo).toBeNull();
    }
  });

  it('is simple, or touches itself in a corner: nothing is said', () => {
    const square = [bowTie[0], bowTie[2], bowTie[1], bowTie[3]];
    expect(codes(drawn('zone', square))).toEqual([]);
    const touching = [
      [0, 0],
      [40, 0],
      [20, 20],
      [40, 40],
      [0, 40],
      [20, 20],
    ] as const;
    expect(codes(drawn('polygon', touching))).toEqual([]);
  });
});
