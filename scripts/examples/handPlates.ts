/**
 * Plates computed by hand: what each is for stands in its note. Millimetres; corner-based figures in comments.
 */
import type { Layout, Outline, Part, Zoning } from '../../src/layout/types';
import {
  block,
  example,
  fromCorner,
  HAND_PROCESS,
  halves,
  machine,
  part,
  QUADRANTS,
  rectangle,
  strips,
} from './common';

const at = fromCorner(400);

/** Ring Ø300/Ø240 at (200,200), three blocks 40×40 and one 40×20 in the corners, all 120 mm high. */
const ringPlate = (name: string, zoning: Zoning): Layout =>
  example({
    name,
    note: 'A ring and four corner blocks, computed by hand.',
    shapes: {
      ring: {
        slabs: [{ to_mm: 120, rings: [{ circle_mm: [0, 0, 150] }, { circle_mm: [0, 0, 120] }] }],
      },
      block: block(40, 40, 120),
      'half block': block(40, 20, 120),
    },
    parts: [
      part('Ring', 'ring', at(200, 200)),
      part('Front left', 'block', at(20, 20)),
      part('Front right', 'block', at(340, 20)),
      part('Rear left', 'block', at(20, 340)),
      part('Rear right', 'half block', at(340, 350)),
    ],
    zoning,
  });

/** Twelve blocks 50×50×60 in three corners, one part 100×100×240 over 250..350 both ways in the fourth. */
function tallOne(name: string, zoning: Zoning): Layout {
  const near = [60, 140];
  const far = [260, 340];
  const centres = [
    ...near.flatMap((x) => near.map((y) => [x, y] as const)),
    ...far.flatMap((x) => near.map((y) => [x, y] as const)),
    ...near.flatMap((x) => far.map((y) => [x, y] as const)),
  ];
  const low: readonly Part[] = centres.map(([x, y], index) =>
    part(`B${String(index + 1).padStart(2, '0')}`, 'low block', at(x - 25, y - 25)),
  );
  return example({
    name,
    note: 'Balanced at the bottom, one laser alone at the top.',
    shapes: { 'low block': block(50, 50, 60), tall: block(100, 100, 240) },
    parts: [...low, part('Tall', 'tall', at(250, 250))],
    zoning,
  });
}

const stepped = (below: Outline, above: Outline) => ({
  slabs: [
    { to_mm: 50, rings: [below] },
    { to_mm: 100, rings: [above] },
  ],
});
const equalTotals = example({
  name: 'Equal totals lie',
  note: 'Two parts of one volume, large below and large above: the totals agree, no layer does.',
  machine: machine(400, 2),
  shapes: {
    'large below': stepped(rectangle(100, 100), rectangle(50, 50)),
    'large above': stepped(rectangle(50, 50), rectangle(100, 100)),
  },
  parts: [part('A', 'large below', at(50, 150)), part('B', 'large above', at(250, 150))],
  zoning: halves(90),
});

const mushroom = example({
  name: 'Mushroom',
  note: 'A cap Ø100 over a stem Ø20: a neighbour 10 mm from the stem stands under the cap.',
  shapes: {
    mushroom: {
      slabs: [
        { to_mm: 50, rings: [{ circle_mm: [0, 0, 10] }] },
        { to_mm: 70, rings: [{ circle_mm: [0, 0, 50] }] },
      ],
    },
    neighbour: block(30, 30, 40),
  },
  parts: [part('Mushroom', 'mushroom', at(200, 200)), part('Neighbour', 'neighbour', at(220, 185))],
  zoning: QUADRANTS,
});

const FINS = 12;
const FIN_PITCH_mm = 5;
const fins: readonly Outline[] = Array.from({ length: FINS }, (_, index) =>
  rectangle(1, 100).map(([x, y]) => [x + index * FIN_PITCH_mm, y] as const),
);
const thinWalls = example({
  name: 'Thin walls',
  note: 'Twelve fins 1 × 100 mm and a block 30 × 40 mm: one section area, two loads.',
  machine: machine(400, 2),
  process: { ...HAND_PROCESS, vectorCount: 'areaAndOutline' },
  shapes: { fins: { slabs: [{ to_mm: 30, rings: fins }] }, block: block(30, 40, 30) },
  parts: [part('Fins', 'fins', at(70, 150)), part('Block', 'block', at(285, 180))],
  zoning: halves(90),
});

const downwind = example({
  name: 'Downwind',
  note: 'Two equal loads 160 mm wide in line with the gas flow, which runs to the front.',
  machine: machine(400, 2),
  shapes: { slab: block(160, 100, 30) },
  parts: [part('Front', 'slab', at(120, 60)), part('Rear', 'slab', at(120, 240))],
  zoning: halves(0),
});

/** Graham (1969): longest-first on 7 7 6 6 5 5 4 4 4 gives 15 on four machines where 12 is possible. */
const GRAHAM = [7, 7, 6, 6, 5, 5, 4, 4, 4];
const graham = example({
  name: 'Whole parts',
  note: 'Nine parts of 700 to 400 mm² for four lasers, none of them cut; load is area alone.',
  process: { ...HAND_PROCESS, vectorGap_ms: 0, contours: 0, pieceGap_s: 0 },
  shapes: Object.fromEntries([4, 5, 6, 7].map((n) => [`bar ${n}`, block(20, 5 * n, 30)])),
  parts: GRAHAM.map((n, index) =>
    part(`P${index + 1}`, `bar ${n}`, at(50 + 60 * (index % 5), index < 5 ? 80 : 240)),
  ),
  zoning: { strategy: 'wholeField' },
  allocation: 'wholeParts',
});

/** File name → layout. */
export const HAND_PLATES: Readonly<Record<string, Layout>> = {
  'ring.json': ringPlate('Ring, quadrants', QUADRANTS),
  'ring-strips.json': ringPlate('Ring, strips', strips(90, 400)),
  'tall-one.json': tallOne('Tall one, quadrants', QUADRANTS),
  'tall-one-strips.json': tallOne('Tall one, strips', strips(90, 400)),
  'equal-totals.json': equalTotals,
  'mushroom.json': mushroom,
  'thin-walls.json': thinWalls,
  'downwind.json': downwind,
  'whole-parts.json': graham,
};
