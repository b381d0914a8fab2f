// Parts on the platform. Expected values: mathematics, on blocks and discs placed by hand.
import { describe, expect, it } from 'vitest';
import { checkPlate } from '../../src/build/checks';
import type { PartView } from '../../src/build/types';
import { placedPart } from '../../src/exposure/prepared';
import { circleRing } from '../../src/geometry/circle';
import { rectangle, turnAndMove } from '../../src/geometry/region';
import { reversed } from '../../src/geometry/ring';
import type { Region } from '../../src/geometry/types';
import { emptyLayout } from '../../src/layout/defaults';
import { messageAdvice, messageText, paramText } from '../../src/layout/messages';
import type { Layout, LayoutRing, Part, Shape } from '../../src/layout/types';

const square = (x: number, y: number, half: number): LayoutRing => [
  [x - half, y - half],
  [x + half, y - half],
  [x + half, y + half],
  [x - half, y + half],
];

function layoutWith(change: {
  margin?: number;
  keepOuts?: LayoutRing[];
  reach?: (LayoutRing | null)[];
  on?: boolean[];
}): Layout {
  const layout = emptyLayout();
  const { machine } = layout;
  return {
    ...layout,
    limits: { ...layout.limits, spacing_mm: 3 },
    machine: {
      ...machine,
      buildHeight_mm: 200,
      platform: {
        width_mm: 340,
        depth_mm: 300,
        margin_mm: change.margin ?? 8,
        keepOuts: change.keepOuts ?? [],
      },
      lasers: machine.lasers.slice(0, 2).map((laser, i) => ({
        ...laser,
        reach: change.reach?.[i] ?? null,
        on: change.on?.[i] ?? true,
      })),
    },
  };
}
const plain = layoutWith({});

const view = (id: string, footprint: Region, height_mm = 40): PartView => ({
  id,
  height_mm,
  footprint,
  sections: [{ from_mm: 0, to_mm: height_mm, section: footprint }],
});
const block = (id: string, x: number, y: number, height = 40): PartView =>
  view(id, rectangle(x - 10, y - 10, x + 10, y + 10), height);

const codes = (layout: Layout, ...parts: PartView[]) =>
  checkPlate(layout, parts).problems.map(({ code, parts: ids }) => [code, ...ids].join(' '));

describe('one part on the platform', () => {
  it('well inside has no problem', () => {
    expect(checkPlate(plain, [block('P1', 0, 0)])).toEqual({ problems: [], checks: 4 });
  });
  it('past the edge is off the platform by the area outside', () => {
    const [found] = checkPlate(plain, [block('P1', 165, 0)]).problems;
    expect([found.code, paramText(found.params.area), found.blocks]).toEqual([
      'part-off-platform',
      '100',
      true,
    ]);
    expect(messageText(found.code, found.params)).toBe('P1 stands off the platform by 100 mm².');
    expect(codes(plain, block('P1', 0, -145))).toEqual(['part-off-platform P1']);
    expect(codes(plain, block('P1', 500, 0))).toEqual(['part-off-platform P1']);
  });
  it('in the margin is told how far', () => {
    const [found] = checkPlate(plain, [block('P1', 0, 135.5)]).problems;
    expect([found.code, found.params.by]).toEqual(['part-in-margin', 3.5]);
    expect(messageAdvice(found.code, found.params)).toContain('8 mm');
    expect(codes(plain, block('P1', 152, 132))).toEqual([]);
    expect(codes(plain, block('P1', 152.01, 0))).toEqual(['part-in-margin P1']);
    expect(codes(layoutWith({ margin: 0 }), block('P1', 160, 140))).toEqual([]);
  });
  it('as a disc that just fits the margin is no fault, at any turn', () => {
    for (const turn of [0, 11, 45]) {
      const disc = turnAndMove([circleRing(0, 0, 142)], turn, 0, 0);
      expect(codes(plain, view('P1', disc))).toEqual([]);
    }
  });
  it('on a keep-out is told the area, and not where it only touches it', () => {
    const layout = layoutWith({ keepOuts: [square(40, 0, 10), { circle_mm: [-60, -60, 5] }] });
    const result = checkPlate(layout, [block('P1', 25, 0), block('P2', -25, 0)]);
    expect(result.problems.map((p) => [p.code, paramText(p.params.area)])).toEqual([
      ['part-in-keep-out', '100'],
    ]);
    expect(result.checks).toBe(2 * 6 + 1);
    expect(codes(layout, block('P1', 20, 0))).toEqual([]);
    expect(codes(layout, block('P1', -60, -60))).toEqual(['part-in-keep-out P1']);
  });
  it('higher than the machine builds is named with both heights', () => {
    const [found] = checkPlate(plain, [block('P1', 0, 0, 200.5)]).problems;
    expect([found.code, found.params.height, found.params.limit]).toEqual(['part-too-high', 200.5, 200]);
    expect(codes(plain, block('P1', 0, 0, 200))).toEqual([]);
  });
  it('out of every working laser’s reach is told the area', () => {
    const reach = [square(-100, 0, 100), square(50, 0, 50)];
    const both = layoutWith({ reach });
    expect(codes(both, block('P1', 0, 0))).toEqual([]);
    const [found] = checkPlate(both, [block('P1', 95, 0)]).problems;
    expect([found.code, paramText(found.params.area)]).toEqual(['part-out-of-reach', '100']);
    const first = layoutWith({ reach, on: [true, false] });
    expect(codes(first, block('P1', 0, 0))).toEqual(['part-out-of-reach P1']);
    expect(codes(layoutWith({ reach: [reach[0], null] }), block('P1', 95, 0))).toEqual([]);
    expect(codes(layoutWith({ reach, on: [false, false] }), block('P1', 95, 0))).toEqual([]);
  });
});

describe('two parts', () => {
  it('closer than the spacing are told their distance', () => {
    const [found] = checkPlate(plain, [block('P1', 0, 0), block('P2', 22.5, 0)]).problems;
    expect([found.code, found.params.gap, found.params.spacing, found.blocks]).toEqual([
      'parts-too-close',
      2.5,
      3,
      false,
    ]);
    expect(found.parts).toEqual(['P1', 'P2']);
    expect(codes(plain, block('P1', 0, 0), block('P2', 23, 0))).toEqual([]);
    expect(codes(plain, block('P1', 0, 0), block('P2', 22, 22))).toEqual(['parts-too-close P1 P2']);
    expect(codes(plain, block('P1', 0, 0), block('P2', 22.2, 22.2))).toEqual([]);
  });
  it('overlapping are told the area; touching is too close', () => {
    const [found] = checkPlate(plain, [block('P1', 0, 0), block('P2', 15, 10)]).problems;
    expect([found.code, paramText(found.params.area), found.blocks]).toEqual(['parts-overlap', '50.0', true]);
    expect(codes(plain, block('P1', 0, 0), block('P2', 20, 0))).toEqual(['parts-too-close P1 P2']);
    expect(codes(plain, block('P1', 0, 0), view('P2', rectangle(-3, -3, 3, 3)))).toEqual([
      'parts-overlap P1 P2',
    ]);
  });
  it('may stand in one another’s holes with the spacing kept', () => {
    const ring = view('P1', [circleRing(0, 0, 60), reversed(circleRing(0, 0, 30))]);
    expect(codes(plain, ring, view('P2', [circleRing(0, 0, 26.9)]))).toEqual([]);
    expect(codes(plain, ring, view('P2', [circleRing(0, 0, 28)]))).toEqual(['parts-too-close P1 P2']);
  });
});

describe('a mushroom, stem Ø20 to z = 50 under a cap Ø100 [computed by hand]', () => {
  const shape: Shape = {
    slabs: [
      { to_mm: 50, rings: [{ circle_mm: [0, 0, 10] }] },
      { to_mm: 70, rings: [{ circle_mm: [0, 0, 50] }] },
    ],
  };
  const part: Part = {
    id: 'P1',
    shape: 'mushroom',
    at_mm: [0, 0],
    turn_deg: 0,
    seams: 'free',
    laser: null,
    timeFactor: 1,
  };
  const mushroom = placedPart({ ...plain, shapes: { mushroom: shape }, parts: [part] }, part);
  const pair = (other: PartView) => checkPlate(plain, [mushroom, other]).problems;

  it('collides with a low neighbour 10 mm from the stem, though no section of theirs meets', () => {
    const [found, ...more] = pair(block('P2', 30, 0, 40));
    expect(more).toEqual([]);
    expect([found.code, found.blocks, found.parts]).toEqual(['footprints-overlap', true, ['P1', 'P2']]);
    // The block's far corners, 40 and ±10 from the middle, lie within 50: all of its 20 × 20 mm is under the cap.
    expect(messageText(found.code, found.params)).toBe(
      'P1 and P2 overlap by 400 mm² seen from above, though at no height their sections do.',
    );
  });
  it('collides with a high neighbour 10 mm from the stem where that one stands in the cap', () => {
    const [found] = pair(block('P2', 30, 0, 60));
    expect([found.code, found.blocks]).toEqual(['parts-overlap', true]);
    expect(messageText(found.code, found.params)).toBe(
      'P1 and P2 overlap by 400 mm² seen from above, their sections between z 50 and 60 mm.',
    );
  });
  it('keeps its spacing from the cap, not from the stem', () => {
    expect(pair(block('P2', 62, 0, 40)).map((p) => [p.code, p.params.gap])).toEqual([['parts-too-close', 2]]);
    expect(pair(block('P2', 63.1, 0, 40))).toEqual([]);
  });
  it('reaches into the margin with its cap', () => {
    const near: Part = { ...part, at_mm: [120, 0] };
    const placed = placedPart({ ...plain, shapes: { mushroom: shape }, parts: [near] }, near);
    expect(checkPlate(plain, [placed]).problems.map((p) => [p.code, p.params.by])).toEqual([
      ['part-in-margin', 8],
    ]);
  });
});

describe('a plate of 100 parts', () => {
  const grid = Array.from({ length: 100 }, (_, i) =>
    view(
      `P${i}`,
      turnAndMove([circleRing(0, 0, 12)], 0, -135 + 30 * (i % 10), -117 + 26 * Math.floor(i / 10)),
    ),
  );
  it('is checked in full: 4 checks a part and every pair', () => {
    expect(checkPlate(plain, grid).checks).toBe(400 + 4950);
    // Columns stand 30 − 24 = 6 mm apart, rows 26 − 24 = 2 mm: 90 pairs are closer than 3 mm.
    expect(checkPlate(plain, grid).problems.map((p) => p.code)).toEqual(Array(90).fill('parts-too-close'));
  });
  it('gives the same answer after a move as from nothing', () => {
    checkPlate(plain, grid);
    const moved = grid.with(44, view('P44', turnAndMove(grid[44].footprint, 0, 7.5, 3)));
    const fresh = moved.map((part) => ({ ...part, footprint: [...part.footprint] }));
    expect(checkPlate(plain, moved)).toEqual(checkPlate(plain, fresh));
  });
  it('follows a changed spacing and a changed machine', () => {
    const wide = { ...plain, limits: { ...plain.limits, spacing_mm: 7 } };
    expect(checkPlate(wide, grid).problems).toHaveLength(90 + 90);
    const low = { ...plain, machine: { ...plain.machine, buildHeight_mm: 30 } };
    expect(checkPlate(low, grid).problems.filter((p) => p.code === 'part-too-high')).toHaveLength(100);
  });
});
