// What the blade meets over height, which part makes it, and what a turn would change. Expected values: mathematics, on
// blocks, discs and wedges placed by hand.
import { describe, expect, it } from 'vitest';
import { bladeBuild } from '../../src/build/bladeBuild';
import { bladeProblems } from '../../src/build/bladeProblems';
import { findTurn, longestSide, turnWithoutSides, type TurnAdvice } from '../../src/build/bladeTurn';
import { finished } from '../../src/build/finished';
import { placedPart } from '../../src/exposure/prepared';
import { demoLayout } from '../../src/layout/demo';
import { messageAdvice, messageText, paramText } from '../../src/layout/messages';
import type { Layout } from '../../src/layout/types';
import { plate, QUADRANTS, rect } from '../support/plates';
import { steepestOf } from './blade';

/** Shapes about their own origin. */
const block = (width: number, depth: number) => rect(-width / 2, -depth / 2, width / 2, depth / 2);
const disc = (r: number) => ({ circle_mm: [0, 0, r] });
type Slabs = readonly (readonly [top: number, ring: unknown])[];
const part = (id: string, at: readonly [number, number], slabs: Slabs, turn_deg = 0) => ({
  id,
  at,
  turn_deg,
  slabs: slabs.map(([to_mm, ring]) => ({ to_mm, rings: [ring] })),
});
const bothWays = {
  recoater: { towards_deg: 0, mode: 'bothWays', oneWay_s: 10, bothWays_s: 7.5 },
};

function run(layout: Layout) {
  const steps: number[] = [];
  const generator = bladeBuild(layout);
  for (;;) {
    const step = generator.next();
    if (step.done) return { build: step.value, steps };
    steps.push(step.value);
  }
}
const blade = (layout: Layout) => ({
  recoater: layout.machine.recoater,
  layer_mm: layout.process.layer_mm,
});
const placed = (layout: Layout, index = 0) => placedPart(layout, layout.parts[index]);

/** The turn that the first part is advised, at once. */
const adviceFor = (layout: Layout): TurnAdvice | null => finished(findTurn(placed(layout), blade(layout)));

describe('the blade over height', () => {
  // P1 is 40 wide to z = 12, then 60 wide to z = 30; P2 beside it is 50 wide from z = 0 to 18 only.
  const steps = plate(
    [
      part(
        'P1',
        [0, -50],
        [
          [12, block(20, 40)],
          [30, block(20, 60)],
        ],
      ),
      part('P2', [0, 50], [[18, block(20, 50)]]),
    ],
    QUADRANTS,
  );
  const { build, steps: progress } = run(steps);

  it('finds the largest met length and the steepest rise with their heights', () => {
    expect(build.largest.value).toEqual({ met_mm: 110, at_mm: -10 });
    expect(build.largest.heights).toEqual({ from_mm: expect.closeTo(12, 9), to_mm: expect.closeTo(18, 9) });
    expect(build.steepest.value.rise.rise_mm).toBe(110);
    expect(build.steepest.heights).toEqual(build.largest.heights);
  });
  it('names the part that adds most to the rise', () => {
    expect([build.steepest.value.part, build.steepest.value.part_mm]).toEqual([0, 60]);
  });
  it('counts the sides that run along the blade at their worst height', () => {
    expect(build.sides.value).toEqual({ count: 2, length_mm: 110, parts: ['P1', 'P2'] });
  });
  it('tells how far it is, up to the end', () => {
    expect(progress).toEqual([1 / 3, 2 / 3, 1]);
  });
  it('joins ranges in which only other parts change', () => {
    const layout = plate(
      [
        part('P1', [0, 0], [[30, block(20, 40)]]),
        part(
          'P2',
          [-60, 0],
          [
            [12, disc(5)],
            [24, disc(4)],
          ],
        ),
      ],
      QUADRANTS,
    );
    expect(run(layout).build.largest.heights).toEqual({ from_mm: 0, to_mm: 30 });
  });
  it('stops at the first gap in height: the lowest heights are named', () => {
    const layout = plate(
      [
        part(
          'P1',
          [0, 0],
          [
            [6, block(20, 40)],
            [12, disc(5)],
            [18, block(20, 40)],
          ],
        ),
      ],
      QUADRANTS,
    );
    expect(run(layout).build.largest.heights).toEqual({ from_mm: 0, to_mm: expect.closeTo(6, 9) });
  });
  it('does not see a slab that no layer is cut in', () => {
    // Layers of 0.06 are cut at their middles: 11.97 and 12.03, none from 11.98 to 12.02.
    const layout = plate(
      [
        part(
          'P1',
          [0, 0],
          [
            [11.98, block(20, 40)],
            [12.02, block(20, 90)],
            [24, block(20, 40)],
          ],
        ),
      ],
      QUADRANTS,
    );
    expect(run(layout).build.largest.value.met_mm).toBe(40);
    expect(adviceFor(layout)?.now_mm).toBe(40);
  });
  it('of an empty plate meets nothing', () => {
    const { build: none, steps: nowhere } = run(plate([], QUADRANTS));
    expect([none.largest.value.met_mm, none.steepest.value.part, none.sides.value.count]).toEqual([0, -1, 0]);
    expect(nowhere).toEqual([]);
  });
  it('names the part that the blade runs on to on its way back', () => {
    const wedge = [
      [0, 0],
      [40, -15],
      [40, 15],
    ];
    const parts = [part('P1', [-60, 60], [[12, block(20, 20)]]), part('P2', [0, 0], [[12, wedge]])];
    expect(run(plate(parts, QUADRANTS)).build.steepest.value).toMatchObject({ part: 0, part_mm: 20 });
    const back = run(plate(parts, QUADRANTS, { machine: bothWays })).build.steepest.value;
    expect(back).toMatchObject({
      part: 1,
      part_mm: 30,
      rise: { rise_mm: 30, from_mm: 40, to_mm: 40, back: true },
    });
  });
});

describe('turning one part', () => {
  it('a block of 20 × 40 mm is advised 45°: 40 mm at once become 2 mm a millimetre', () => {
    const layout = plate([part('P1', [30, -20], [[12, block(20, 40)]])], QUADRANTS);
    const advice = adviceFor(layout);
    expect(advice?.turn_deg).toBe(45);
    expect(advice?.now_mm).toBe(40);
    expect(advice?.then_mm).toBeCloseTo(2, 9);
  });
  it('the advice holds: the part turned by it rises as said', () => {
    const outline = [
      [0, 0],
      [50, -4],
      [46, 30],
      [-6, 22],
    ];
    const layout = plate([part('P1', [12, 5], [[12, outline]], 17)], QUADRANTS);
    const advice = adviceFor(layout)!;
    const turned = plate([part('P1', [12, 5], [[12, outline]], 17 + advice.turn_deg)], QUADRANTS);
    expect(steepestOf(placed(turned), turned)).toBeCloseTo(advice.then_mm, 9);
    expect(steepestOf(placed(layout), layout)).toBeCloseTo(advice.now_mm, 9);
    for (let d = 5; d < 360; d += 5) {
      const other = plate([part('P1', [12, 5], [[12, outline]], (17 + d) % 360)], QUADRANTS);
      expect(steepestOf(placed(other), other)).toBeGreaterThan(advice.then_mm - 0.1 - 1e-9);
    }
  });
  it('looks at all slabs: what helps one slab must not spoil another', () => {
    // A block across the blade below, the same block turned by 45° above: 20° to 25° is between the two.
    const diamond = [
      [21.2132, 7.0711],
      [7.0711, 21.2132],
      [-21.2132, -7.0711],
      [-7.0711, -21.2132],
    ];
    const layout = plate(
      [
        part(
          'P1',
          [0, 0],
          [
            [12, block(20, 40)],
            [24, diamond],
          ],
        ),
      ],
      QUADRANTS,
    );
    const advice = adviceFor(layout)!;
    expect(Math.abs(advice.turn_deg) % 45).toSatisfy((rest: number) => rest === 20 || rest === 25);
    // 20° off: 1/(sin 20° cos 20°) = 3.1114 mm over the first millimetre.
    expect(advice.then_mm).toBeCloseTo(1 / (Math.sin(Math.PI / 9) * Math.cos(Math.PI / 9)), 4);
  });
  it('a disc has nothing to gain', () => {
    const layout = plate([part('P1', [0, 0], [[12, disc(15)]])], QUADRANTS);
    expect(adviceFor(layout)).toBeNull();
  });
});

describe('long sides along the blade', () => {
  const listed = (...args: Parameters<typeof plate>) => bladeProblems(plate(...args));
  const text = (problem: ReturnType<typeof bladeProblems>[number]) =>
    `${messageText(problem.code, problem.params)} ${messageAdvice(problem.code, problem.params)}`;

  it('are listed with length, angle, heights and the turn that is enough', () => {
    const slabs: Slabs = [
      [12, disc(8)],
      [30, block(20, 40)],
    ];
    const [found, ...more] = listed([part('P1', [0, 0], slabs, 3)], QUADRANTS);
    expect(more).toEqual([]);
    expect([found.code, found.blocks, found.parts]).toEqual(['side-along-blade', false, ['P1']]);
    // At 3° the side stands 2° short of the limit of 5° on one side and 8° on the other: +5 makes 8°.
    expect(text(found)).toBe(
      'A 40 mm side of P1 meets the blade 3° from parallel to it, between z 12 and 30 mm. ' +
        'Turned by 5°, no side over 20 mm does. Geometry alone; the maker’s instructions decide.',
    );
  });
  it('square to the blade need 10°: at 5° they still count', () => {
    expect(listed([part('P1', [0, 0], [[12, block(20, 40)]])], QUADRANTS)[0].params.turn).toBe(10);
  });
  it('of 20 mm or less are not listed', () => {
    expect(listed([part('P1', [0, 0], [[12, block(40, 20)]])], QUADRANTS)).toEqual([]);
    expect(listed([part('P1', [0, 0], [[12, block(40, 20.1)]])], QUADRANTS)).toHaveLength(1);
  });
  it('that face away count only where the blade lays powder both ways', () => {
    const wedge = [
      [0, 0],
      [40, -15],
      [40, 15],
    ];
    expect(listed([part('P1', [0, 0], [[12, wedge]])], QUADRANTS)).toEqual([]);
    expect(listed([part('P1', [0, 0], [[12, wedge]])], QUADRANTS, { machine: bothWays })).toHaveLength(1);
  });
  it('of parts with one shape and turn are one entry', () => {
    const layout = plate([part('P1', [0, 0], [[12, block(20, 40)]])], QUADRANTS);
    const copy = (id: string, x: number, turn_deg: number) => ({
      ...layout.parts[0],
      id,
      turn_deg,
      at_mm: [x, 0] as const,
    });
    const parts = [copy('P1', -90, 0), copy('P2', 0, 0), copy('P3', 90, 0), copy('P4', 150, 90)];
    const [found, ...more] = bladeProblems({ ...layout, parts });
    expect(more).toEqual([]);
    expect([paramText(found.params.parts), found.parts]).toEqual(['P1 and 2 like it', ['P1', 'P2', 'P3']]);
  });
  it('that no turn avoids are said to be so', () => {
    // A regular 40-gon of 25 mm sides has a side within 4.5° of any direction.
    const r = 25 / (2 * Math.sin(Math.PI / 40));
    const ring = Array.from({ length: 40 }, (_, i) => [
      r * Math.cos((i * Math.PI) / 20),
      r * Math.sin((i * Math.PI) / 20),
    ]);
    const layout = plate([part('P1', [0, 0], [[12, ring]])], QUADRANTS);
    expect(turnWithoutSides(placed(layout), blade(layout), 20)).toBeNull();
    expect(bladeProblems(layout).map(({ code }) => code)).toEqual(['side-along-blade-always']);
  });
  it('on the demo plate are those of valve blocks, 36 mm between their rounded corners, and brackets', () => {
    const layout = demoLayout();
    const found = bladeProblems(layout);
    const shapes = found.flatMap(({ parts }) =>
      parts.map((id) => layout.parts.find((p) => p.id === id)!.shape),
    );
    expect(new Set(shapes)).toEqual(new Set(['valve block', 'bracket']));
    const valveBlock = layout.parts.findIndex(({ shape }) => shape === 'valve block');
    expect(longestSide(placed(layout, valveBlock), blade(layout), 20)?.side.length_mm).toBeCloseTo(36, 2);
  });
});
