/** Random operations with the numbers that hands, fields and faults produce: for sessions in property tests. */
import fc from 'fast-check';
import type { Drawing } from '../../src/commands/operations';
import type { Result } from '../../src/layout/result';
import type { Layout, LayoutRing, Point } from '../../src/layout/types';
import { op } from './wholeHeight';

export const SEED = 20261125;

export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

/** Numbers as hands, fields and faults produce them: mostly sensible, now and then not. */
const odd = fc.constantFrom(0, -0, Number.NaN, Infinity, -Infinity, 1e300, 1e-300, 0.0004, 99_999.9);
const wild = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: -250_000, max: 250_000 }).map((n) => n / 997) },
  { weight: 1, arbitrary: odd },
);
const positive = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 1, max: 400_000 }).map((n) => n / 997) },
  { weight: 1, arbitrary: odd },
);
export const few = { size: 'max' } as const;
const count = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 14 }) },
  { weight: 1, arbitrary: wild },
);
const index = fc.integer({ min: -1, max: 3 });
const point: fc.Arbitrary<Point> = fc.tuple(wild, wild);
/** A star around a point, its corners at growing angles. */
const star = fc.tuple(point, fc.array(positive, { minLength: 3, maxLength: 7 })).map(([[x, y], radii]) =>
  radii.map((r, i): Point => {
    const angle = (2 * Math.PI * i) / radii.length;
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  }),
);
const ring: fc.Arbitrary<LayoutRing> = fc.oneof(
  { weight: 6, arbitrary: star },
  { weight: 2, arbitrary: fc.tuple(wild, wild, positive).map((circle_mm) => ({ circle_mm })) },
  { weight: 1, arbitrary: fc.array(point, { maxLength: 7 }) },
);
const rings = fc.array(ring, { minLength: 1, maxLength: 3 });
const laserId = fc.constantFrom('L1', 'L2', 'L3', 'L4', 'L4', 'L5', 'L9');
const laserIds = fc.array(laserId, { maxLength: 4, ...few });
/** Which of the present parts: chosen by position, so that it always means something. */
export const some = fc.array(fc.nat({ max: 4 }), { maxLength: 4, ...few });
export const idsOf = (layout: Layout, positions: readonly number[]) => [
  ...new Set(positions.flatMap((i) => layout.parts[i]?.id ?? 'P999')),
];
const key = fc.oneof(
  fc.constantFrom({ kind: 'quadrantX' } as const, { kind: 'quadrantY' } as const),
  index.map((i) => ({ kind: 'strip', index: i }) as const),
);
const drawing: fc.Arbitrary<Drawing> = fc.oneof(
  fc.record({ kind: fc.constant('rectangle' as const), from: point, to: point }),
  fc.record({ kind: fc.constant('disc' as const), centre: point, radius_mm: positive }),
  fc.record({ kind: fc.constant('ring' as const), centre: point, outer_mm: positive, inner_mm: positive }),
  fc.record({
    kind: fc.constant('polygon' as const),
    points: fc.oneof(star, fc.array(point, { maxLength: 8 })),
  }),
);

type Step = (layout: Layout) => Layout | Result<Layout>;
const step = <A extends unknown[]>(
  name: string,
  args: { [K in keyof A]: fc.Arbitrary<A[K]> },
  run: (layout: Layout, ...values: A) => Layout | Result<Layout>,
): fc.Arbitrary<{ name: string; args: unknown[]; run: Step }> =>
  fc
    .tuple(...(args as fc.Arbitrary<unknown>[]))
    .map((values) => ({ name, args: values, run: (layout) => run(layout, ...(values as A)) }));

/** Those that begin, move or take away a step of the zoning. */
export const OVER_HEIGHT: readonly string[] = [
  'addStep',
  'removeStep',
  'moveStep',
  'moveStepByLayers',
  'wholeFieldBetween',
];
const steps = [
  step('moveParts', [some, wild, wild], (l, p, x, y) => op.moveParts(l, idsOf(l, p), x, y)),
  step('placePart', [some, wild, wild], (l, p, x, y) => op.placePart(l, idsOf(l, p)[0] ?? '', x, y)),
  step('turnParts', [some, wild], (l, p, a) => op.turnParts(l, idsOf(l, p), a)),
  step('turnTogether', [some, wild], (l, p, a) => op.turnTogether(l, idsOf(l, p), a)),
  step('setPartTurn', [some, wild], (l, p, a) => op.setPartTurn(l, idsOf(l, p), a)),
  step('setPartHeight', [some, positive], (l, p, z) => op.setPartHeight(l, idsOf(l, p), z)),
  step('seams', [some, fc.constantFrom('free' as const, 'none' as const)], (l, p, seams) =>
    op.setPartFields(l, idsOf(l, p), { seams }),
  ),
  step('pin', [some, fc.option(laserId)], (l, p, laser) => op.setPartFields(l, idsOf(l, p), { laser })),
  step('timeFactor', [some, positive], (l, p, timeFactor) =>
    op.setPartFields(l, idsOf(l, p), { timeFactor }),
  ),
  step('addDrawnPart', [drawing, positive], op.addDrawnPart),
  step('addPart', [fc.constantFrom('block', 'stepped', 'none', '__proto__'), wild], (l, name, turn) =>
    op.addPart(l, name, undefined, turn),
  ),
  step(
    'addShapes',
    [fc.string({ maxLength: 80 }), positive, rings, fc.integer({ min: 0, max: 3 })],
    (l, name, to, r, n) =>
      op.addShapes(l, [{ name, shape: { slabs: [{ to_mm: to, rings: r }] }, copies: n }]),
  ),
  step('duplicateParts', [some], (l, p) => op.duplicateParts(l, idsOf(l, p))),
  step('copyInRows', [some, fc.nat({ max: 3 }), fc.nat({ max: 3 }), wild, wild], (l, p, nx, ny, x, y) =>
    op.copyInRows(l, idsOf(l, p).slice(0, 1), {
      countX: nx,
      countY: ny,
      pitchX_mm: x,
      pitchY_mm: y,
    }),
  ),
  step('removeParts', [some], (l, p) => op.removeParts(l, idsOf(l, p))),
  step('removeShape', [index], (l, i) => op.removeShape(l, Object.keys(l.shapes)[i] ?? '')),
  step('addStep', [wild], op.addStep),
  step('removeStep', [index], op.removeStep),
  step('moveStep', [index, wild], op.moveStep),
  step('moveStepByLayers', [index, count], op.moveStepByLayers),
  step('wholeFieldBetween', [wild, fc.option(wild)], op.wholeFieldBetween),
  step(
    'setStrategy',
    [
      fc.constantFrom('quadrants' as const, 'strips' as const, 'wholeField' as const, 'drawn' as const),
      count,
    ],
    (l, strategy, run) => op.setStrategy(l, strategy, Number.isFinite(run) ? run : 90),
  ),
  step('setZoneLine', [key, wild], op.setZoneLine),
  step('setStripCount', [count], op.setStripCount),
  step('addStrip', [fc.option(index, { nil: undefined })], op.addStrip),
  step('removeStrip', [fc.option(index, { nil: undefined })], op.removeStrip),
  step('setStripDirection', [wild], op.setStripDirection),
  step('setSharedBand', [wild], op.setSharedBand),
  step('setZoneLasers', [index, laserIds], op.setZoneLasers),
  step('addDrawnZone', [rings, laserIds], op.addDrawnZone),
  step('setDrawnZone', [index, rings], op.setDrawnZone),
  step('removeDrawnZone', [index], op.removeDrawnZone),
  step('moveDrawnZone', [index, wild, wild], op.moveDrawnZone),
  step('moveZoneCorners', [index, index, point], (l, zone, corner, to) =>
    op.moveZoneCorners(l, op.cornersTogether(l, { zone, ring: 0, corner }), to),
  ),
  step('addZoneCorner', [index, index, point], (l, zone, corner, at) =>
    op.addZoneCorner(l, { zone, ring: 0, corner }, at),
  ),
  step('removeZoneCorner', [index, index], (l, zone, corner) =>
    op.removeZoneCorner(l, { zone, ring: 0, corner }),
  ),
  step('setZoneRadius', [index, wild], (l, zone, r) => op.setZoneRadius(l, zone, 0, r)),
  step('setGasFlow', [wild], op.setGasFlow),
  step('setRecoater', [wild], op.setRecoater),
  step('setMachine', [positive, positive], (l, h, s) =>
    op.setMachine(l, { buildHeight_mm: h, recoater: { oneWay_s: s } }),
  ),
  step('setPlatform', [positive, positive, count], (l, w, d, m) =>
    op.setPlatform(l, { width_mm: w, depth_mm: d, margin_mm: m }),
  ),
  step('addKeepOut', [ring], op.addKeepOut),
  step('removeKeepOut', [index], op.removeKeepOut),
  step('setLaser', [laserId, point, fc.option(ring)], (l, id, foot_mm, reach) =>
    op.setLaser(l, id, { foot_mm, reach }),
  ),
  step('switchLaser', [laserId, fc.boolean()], op.switchLaser),
  step('addLaser', [], op.addLaser),
  step('removeLaser', [laserId], op.removeLaser),
  step('setProcess', [positive, positive], (l, layer, v) =>
    op.setProcess(l, { layer_mm: layer / 1000, speed_mm_s: v }),
  ),
  step('setLimits', [positive], (l, s) => op.setLimits(l, { spacing_mm: s })),
  step('setTexts', [fc.string()], (l, name) => op.setTexts(l, { name })),
  step('setAllocation', [fc.constantFrom('balanced' as const, 'wholeParts' as const)], op.setAllocation),
];
const strips = step('strips', [], (l) => op.setStrategy(l, 'strips'));
const drawnZones = step('drawn', [], (l) => op.setStrategy(l, 'drawn'));
export const anyStep = fc.oneof(...steps, strips, strips, drawnZones);
export const applied = (layout: Layout, run: Step): Layout => {
  const next = run(layout);
  if (!('ok' in next)) return next;
  return next.ok ? next.value : layout;
};
