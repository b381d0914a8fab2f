/**
 * What a table of parts does to a plate, row by row, before it is done. A part that stands there already is changed where
 * its row says so, or a new one is added beside it; an empty cell leaves a value as it is. Platform millimetres, degrees.
 */
import type { Entry } from '../../import/table/cells';
import type { TableRow } from '../../import/table/readTable';
import { isId } from '../../layout/ids';
import { MOST_PARTS } from '../../layout/limits';
import { fail, ok, type Fault, type Result } from '../../layout/result';
import { sameValue } from '../../layout/same';
import type { LaserId, Layout, Part, PartId, ShapeId } from '../../layout/types';
import { newPart } from './shapes';

/** What a row with the number of a part that stands on the plate means. */
export type OnTaken = 'change' | 'add';
export type Effect = 'add' | 'change' | 'same' | 'repeat' | 'refuse';
export interface PlannedRow {
  readonly row: TableRow;
  readonly effect: Effect;
  /** As it will stand; null where the row does nothing. */
  readonly part: Part | null;
  /** Why it is refused, or what is to be known. */
  readonly remark: Fault | null;
}

/** What the rows before left behind. */
interface Ledger {
  readonly layout: Layout;
  readonly onTaken: OnTaken;
  readonly locked: ReadonlySet<PartId>;
  readonly standing: ReadonlyMap<PartId, Part>;
  /** Numbers that a new one may not be. */
  readonly reserved: Set<PartId>;
  /** Looked at last for a new one. */
  lastNumber: number;
  /** Rows by the number written in them. */
  readonly seen: Map<PartId, TableRow>;
}

/** The name that `wanted` means: itself, else the only one that differs by capitals alone. */
function nameAmong(names: readonly string[], wanted: string): string | null {
  if (names.includes(wanted)) return wanted;
  const alike = names.filter((name) => name.toLowerCase() === wanted.toLowerCase());
  return alike.length === 1 ? alike[0]! : null;
}

function shapeOf({ layout }: Ledger, wanted: string): Result<ShapeId> {
  const name = nameAmong(Object.keys(layout.shapes), wanted);
  return name === null ? fail('table-unknown-shape', { found: wanted }) : ok(name);
}

/** A laser by its id, or by its number alone where the ids are L1, L2 … */
function laserOf({ layout }: Ledger, wanted: string): Result<LaserId> {
  const ids = layout.machine.lasers.map(({ id }) => id);
  const id = nameAmong(ids, wanted) ?? nameAmong(ids, `L${wanted}`);
  return id === null ? fail('table-unknown-laser', { found: wanted, lasers: ids.join(', ') }) : ok(id);
}

/** `part` with what the row says of it. */
function changed(ledger: Ledger, part: Part, entry: Entry): Result<Part> {
  const shape = entry.shape === undefined ? ok(part.shape) : shapeOf(ledger, entry.shape);
  if (!shape.ok) return shape;
  const pin = entry.laser ?? null;
  const laser = pin === null ? ok(entry.laser === undefined ? part.laser : null) : laserOf(ledger, pin);
  if (!laser.ok) return laser;
  return ok({
    ...part,
    shape: shape.value,
    laser: laser.value,
    at_mm: [entry.x ?? part.at_mm[0], entry.y ?? part.at_mm[1]],
    turn_deg: entry.turn ?? part.turn_deg,
    seams: entry.seams ?? part.seams,
    timeFactor: entry.timeFactor ?? part.timeFactor,
  });
}

/** "P01", "P02" …: the next that is free. */
function freshId(ledger: Ledger): PartId {
  for (;;) {
    const id = `P${String(++ledger.lastNumber).padStart(2, '0')}`;
    if (!ledger.reserved.has(id)) return id;
  }
}

const refused = (row: TableRow, remark: Fault): PlannedRow => ({ row, effect: 'refuse', part: null, remark });

/** The number that a new part gets, and what is to be said of it. */
function numbered(ledger: Ledger, { id: from }: Entry): { id: PartId; remark: Fault | null } {
  const before = from === undefined ? undefined : ledger.seen.get(from);
  if (from !== undefined && before === undefined && !ledger.standing.has(from))
    return { id: from, remark: null };
  const to = freshId(ledger);
  if (from === undefined) return { id: to, remark: null };
  const twice: Fault = { code: 'table-id-twice', params: { from, to, row: before?.line ?? 0 } };
  return { id: to, remark: before ? twice : { code: 'table-id-taken', params: { from, to } } };
}

function added(ledger: Ledger, row: TableRow, entry: Entry): PlannedRow {
  const { shape, x, y } = entry;
  if (shape === undefined) return refused(row, { code: 'table-no-shape', params: {} });
  if (x === undefined || y === undefined) return refused(row, { code: 'table-no-place', params: {} });
  const { id, remark } = numbered(ledger, entry);
  const part = changed(ledger, newPart(id, shape, [x, y], 0), entry);
  if (!part.ok) return refused(row, part.fault);
  ledger.reserved.add(id);
  return { row, effect: 'add', part: part.value, remark };
}

const moved = (a: Part, b: Part): boolean => !sameValue([a.at_mm, a.turn_deg], [b.at_mm, b.turn_deg]);

function altered(ledger: Ledger, row: TableRow, was: Part, entry: Entry): PlannedRow {
  const next = changed(ledger, was, entry);
  if (!next.ok) return refused(row, next.fault);
  if (sameValue(was, next.value)) return { row, effect: 'same', part: null, remark: null };
  if (ledger.locked.has(was.id) && moved(was, next.value))
    return refused(row, { code: 'table-locked', params: { part: was.id } });
  return { row, effect: 'change', part: next.value, remark: null };
}

function planned(ledger: Ledger, row: TableRow): PlannedRow {
  if (!row.entry.ok) return refused(row, row.entry.fault);
  const entry = row.entry.value;
  const { id } = entry;
  if (id === undefined) return added(ledger, row, entry);
  if (!isId(id)) return refused(row, { code: 'table-no-id', params: { found: id.slice(0, 40) } });
  const before = ledger.seen.get(id);
  if (before?.entry.ok && sameValue(before.entry.value, entry)) {
    const remark: Fault = { code: 'table-repeated', params: { row: before.line } };
    return { row, effect: 'repeat', part: null, remark };
  }
  const was = before === undefined && ledger.onTaken === 'change' ? ledger.standing.get(id) : undefined;
  const plan = was ? altered(ledger, row, was, entry) : added(ledger, row, entry);
  if (before === undefined) ledger.seen.set(id, row);
  return plan;
}

/** What each row would do, in order. */
export function planTable(
  layout: Layout,
  rows: readonly TableRow[],
  onTaken: OnTaken,
  locked: readonly PartId[] = [],
): readonly PlannedRow[] {
  const written = rows.flatMap(({ entry }) => (entry.ok ? (entry.value.id ?? []) : []));
  const ledger: Ledger = {
    layout,
    onTaken,
    locked: new Set(locked),
    standing: new Map(layout.parts.map((part) => [part.id, part])),
    reserved: new Set([...layout.parts.map(({ id }) => id), ...written]),
    lastNumber: 0,
    seen: new Map(),
  };
  return rows.map((row) => planned(ledger, row));
}

/** The layout with what the rows do. Fault: too-many-parts. */
export function placeTable(layout: Layout, plan: readonly PlannedRow[]): Result<Layout> {
  const parts = (effect: Effect): readonly Part[] =>
    plan.flatMap((row) => (row.effect === effect && row.part ? [row.part] : []));
  const fresh = parts('add');
  const found = layout.parts.length + fresh.length;
  if (found > MOST_PARTS) return fail('too-many-parts', { found, limit: MOST_PARTS });
  const next = new Map(parts('change').map((part) => [part.id, part]));
  if (fresh.length + next.size === 0) return ok(layout);
  return ok({ ...layout, parts: [...layout.parts.map((part) => next.get(part.id) ?? part), ...fresh] });
}
