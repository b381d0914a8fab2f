/**
 * The layout file as schemas, one per version: the one description that reading, layout.schema.json and the types in
 * types.ts agree on (the agreement with the types is checked below by the compiler). An unknown key is refused, a
 * missing optional key gets its default. What one value alone cannot tell is checked in semantics.ts.
 */
import * as v from 'valibot';
import { DEFAULT_LIMITS, DEFAULT_POWDER } from './defaults';
import { accepts } from './accepted';
import { MOST_LASERS, MOST_PARTS, MOST_SLABS, SIZE_LIMIT_mm } from './limits';
import {
  angle,
  calendarDate,
  checksumText,
  choice,
  clockDate,
  clockRange,
  coordinate,
  flag,
  id,
  length,
  list,
  name,
  note,
  point,
  quantity,
  quantityAbove,
  ring,
  rings,
  runAngle,
  size,
  wholeNumber,
} from './schemaValues';
import type { Layout } from './types';

export const FORMAT = 'evenplate-layout';
const MOST_ZONES = 500;
const MOST_STEPS = 100;
const MOST_RANGES = 24;
const MOST_KEEP_OUTS = 500;
/** Strips come in 2 to 12. */
const MOST_STRIP_LINES = 11;
const LONGEST_TIME_s = 1_000_000;
const object = accepts('an object');

const platform = v.strictObject(
  {
    width_mm: size(),
    depth_mm: size(),
    margin_mm: v.optional(length(0, SIZE_LIMIT_mm), 0),
    keepOuts: v.optional(list(ring, MOST_KEEP_OUTS, 'outlines ¦ counted'), []),
  },
  object,
);
const recoater = v.strictObject(
  {
    towards_deg: angle,
    mode: choice(['oneWay', 'bothWays']),
    oneWay_s: quantity(0, LONGEST_TIME_s),
    bothWays_s: quantity(0, LONGEST_TIME_s),
  },
  object,
);
const laser = v.strictObject(
  {
    id,
    power_W: quantity(0, 100_000),
    foot_mm: point,
    workingHeight_mm: size(),
    reach: v.optional(v.nullable(ring), null),
    on: v.optional(flag, true),
  },
  object,
);
const powder = v.strictObject(
  {
    feed_l: quantity(0, 100_000),
    overflow_l: quantity(0, 100_000),
    residueInterval_laserH: quantity(0, 1_000_000),
  },
  object,
);
const machine = v.strictObject(
  {
    name,
    platform,
    buildHeight_mm: size(),
    gasFlow: v.strictObject({ towards_deg: angle }, object),
    recoater,
    lasers: v.pipe(
      list(laser, MOST_LASERS, 'lasers ¦ counted'),
      v.minLength(
        1,
        accepts('a list of 1 to {longest} {what}', {
          longest: MOST_LASERS,
          what: { text: 'lasers ¦ counted' },
        }),
      ),
    ),
    powder: v.optional(v.nullable(powder), DEFAULT_POWDER),
  },
  object,
);
const process = v.strictObject(
  {
    name,
    density_g_cm3: quantityAbove(0, 100),
    packing: quantityAbove(0, 1),
    doseFactor: quantityAbove(0, 100),
    layer_mm: size(10),
    hatch_mm: size(100),
    speed_mm_s: quantity(0.001, 1_000_000),
    hatchInset_mm: length(0, 100),
    vector_mm: size(),
    vectorGap_ms: quantity(0, 1_000_000),
    vectorCount: choice(['areaAndOutline', 'area']),
    contours: wholeNumber(0, 100),
    contourSpeed_mm_s: quantity(0.001, 1_000_000),
    pieceGap_s: quantity(0, LONGEST_TIME_s),
    minLayer_s: quantity(0, LONGEST_TIME_s),
    seamOverlap_mm: length(0, 100),
  },
  object,
);
const slab = v.strictObject({ to_mm: size(), rings }, object);
const shape = v.strictObject(
  {
    slabs: v.pipe(
      list(slab, MOST_SLABS, 'slabs ¦ counted'),
      v.minLength(1, accepts('a list of at least one slab')),
    ),
  },
  object,
);
const part = v.strictObject(
  {
    id,
    shape: id,
    at_mm: point,
    turn_deg: v.optional(angle, 0),
    seams: v.optional(choice(['free', 'none']), 'free'),
    laser: v.optional(v.nullable(id), null),
    timeFactor: v.optional(quantity(0.001, 1000), 1),
  },
  object,
);
const sharedBand_mm = v.optional(length(0, SIZE_LIMIT_mm), 0);
const laserList = list(id, MOST_LASERS, 'laser ids ¦ counted');
const quadrants = v.strictObject({
  strategy: v.literal('quadrants'),
  at_mm: point,
  sharedBand_mm,
  lasers: laserList,
});
const strips = v.strictObject({
  strategy: v.literal('strips'),
  run_deg: runAngle,
  lines_mm: v.pipe(
    list(coordinate, MOST_STRIP_LINES, 'numbers ¦ counted'),
    v.minLength(
      1,
      accepts('a list of 1 to {longest} {what}', {
        longest: MOST_STRIP_LINES,
        what: { text: 'numbers ¦ counted' },
      }),
    ),
  ),
  sharedBand_mm,
  lasers: laserList,
});
const wholeField = v.strictObject({ strategy: v.literal('wholeField') });
const drawnZone = v.strictObject(
  {
    lasers: v.pipe(laserList, v.minLength(1, accepts('a list of at least one laser id'))),
    rings: v.pipe(rings, v.minLength(1, accepts('a list of at least one ring'))),
  },
  object,
);
const drawn = v.strictObject({
  strategy: v.literal('drawn'),
  zones: list(drawnZone, MOST_ZONES, 'zones ¦ counted'),
});
const zoning = v.variant(
  'strategy',
  [quadrants, strips, wholeField, drawn],
  accepts('one of the strategies "quadrants", "strips", "wholeField", "drawn"'),
);
const limits = v.strictObject(
  {
    crumbArea_mm2: v.optional(quantity(0, 1_000_000), DEFAULT_LIMITS.crumbArea_mm2),
    crumbWidth_mm: v.optional(length(0, SIZE_LIMIT_mm), DEFAULT_LIMITS.crumbWidth_mm),
    plumeHalfWidth_mm: v.optional(length(0, SIZE_LIMIT_mm), DEFAULT_LIMITS.plumeHalfWidth_mm),
    spacing_mm: v.optional(length(0, SIZE_LIMIT_mm), DEFAULT_LIMITS.spacing_mm),
    chainGap_mm: v.optional(length(0, SIZE_LIMIT_mm), DEFAULT_LIMITS.chainGap_mm),
  },
  object,
);

const zoningSteps = v.pipe(
  list(
    v.strictObject({ from_mm: length(0, SIZE_LIMIT_mm), zoning }, object),
    MOST_STEPS,
    'objects with "from_mm" and "zoning" ¦ counted',
  ),
  v.minLength(1, accepts('a list of at least one object with "from_mm" and "zoning"')),
);
const attendedOn = v.optional(list(clockRange, MOST_RANGES, 'pairs of clock times ¦ counted'), []);
const schedule = v.strictObject(
  {
    start: clockDate,
    attended: v.strictObject(
      {
        mon: attendedOn,
        tue: attendedOn,
        wed: attendedOn,
        thu: attendedOn,
        fri: attendedOn,
        sat: attendedOn,
        sun: attendedOn,
      },
      object,
    ),
    feedFilled_l: quantity(0, 100_000),
    overflowFilled_l: quantity(0, 100_000),
    residue_laserH: quantity(0, 1_000_000),
    correction: v.strictObject({ factor: quantity(0.01, 100), spread_pct: quantity(0, 1000) }, object),
  },
  object,
);

/** Names and dates may be empty while a draft is being written; a name may not. */
const revision = v.strictObject(
  {
    name: id,
    date: calendarDate,
    reason: v.optional(note, ''),
    state: choice(['draft', 'reviewed', 'released', 'superseded']),
    author: v.optional(name, ''),
    reviewer: v.optional(name, ''),
    derivedFrom: v.optional(v.nullable(checksumText), null),
  },
  object,
);

const format = v.literal(FORMAT, `"${FORMAT}"`);
/** In the order in which files are written. */
const plate = {
  name,
  note: v.optional(note, ''),
  machine,
  process,
  shapes: v.record(id, shape, object),
  parts: list(part, MOST_PARTS, 'parts ¦ counted'),
};
const rules = { allocation: choice(['balanced', 'wholeParts']), limits: v.optional(limits, {}) };
/** A layout file of version 1: one division for all heights, no schedule. */
const layoutSchema1 = v.strictObject(
  { format, version: v.literal(1, '1'), ...plate, zoning, ...rules },
  object,
);
/** What version 2 adds: divisions over height, and a schedule where one is known. */
const overTime = { zoning: zoningSteps, ...rules, schedule: v.optional(v.nullable(schedule), null) };
const layoutSchema2 = v.strictObject({ format, version: v.literal(2, '2'), ...plate, ...overTime }, object);
/** Version 3 adds what the layout is filed under. */
const layoutSchema3 = v.strictObject(
  {
    format,
    version: v.literal(3, '3'),
    ...plate,
    ...overTime,
    revision: v.optional(v.nullable(revision), null),
  },
  object,
);
/** SCHEMAS[n − 1] reads version n. */
export const SCHEMAS = [layoutSchema1, layoutSchema2, layoutSchema3] as const;

type Primitive = string | number | boolean | null;
type Frozen<T> = T extends Primitive ? T : { readonly [K in keyof T]: Frozen<T[K]> };
type SchemaLayout = Frozen<v.InferOutput<typeof layoutSchema3>>;
/** Layouts of older versions after reading. */
export type Layout1 = Frozen<v.InferOutput<typeof layoutSchema1>>;
export type Layout2 = Frozen<v.InferOutput<typeof layoutSchema2>>;
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
/** A check at compile time, which nothing reads: it stands only while what the schema gives out and the types of types.ts are the same. */
export const schemaMatchesTypes: Same<SchemaLayout, Layout> = true;
