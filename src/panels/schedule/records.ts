/**
 * Finished builds that a correction is learned from: name, planned hours (uncorrected), real hours. They are kept in this
 * browser's database, never in a layout: they say something of a machine and its site, not of a plate.
 */
import { get, update } from 'idb-keyval';
import type { BuildRecord } from '../../build/correction';
import { fail, ok, type Result } from '../../layout/result';

export const RECORDS_KEY = 'evenplate.builds';
const MOST_RECORDS = 500;

/** Where a build was made: what one machine does with one process says nothing of another. */
export interface Site {
  readonly machine: string;
  readonly process: string;
}
export interface NamedRecord extends BuildRecord {
  readonly name: string;
  /** null: recorded before this was kept; it counts everywhere. */
  readonly site: Site | null;
}
type List = readonly NamedRecord[];

/** True for a record that teaches something of a site. */
export const isOf = ({ site }: NamedRecord, { machine, process }: Site): boolean =>
  site === null || (site.machine === machine && site.process === process);

const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

function siteOf(value: unknown): Site | null {
  const { machine, process } = fieldsOf(value);
  return typeof machine === 'string' && typeof process === 'string' ? { machine, process } : null;
}

/** A record as it is kept; none where it makes no sense. */
function recordOf(value: unknown): NamedRecord[] {
  const { name, planned_h, real_h, site } = fieldsOf(value);
  if (typeof name !== 'string' || typeof planned_h !== 'number' || typeof real_h !== 'number') return [];
  return [{ name, planned_h, real_h, site: siteOf(site) }];
}

const sound = (kept: unknown): List => (Array.isArray(kept) ? kept.flatMap(recordOf) : []);

async function tried(work: () => Promise<List>): Promise<Result<List>> {
  try {
    return ok(await work());
  } catch (error) {
    return fail('records-not-kept', { detail: error instanceof Error ? error.message : String(error) });
  }
}

/** The recorded builds. Fault: records-not-kept. */
export const readRecords = (): Promise<Result<List>> => tried(async () => sound(await get(RECORDS_KEY)));

/**
 * Changes the recorded builds as they are kept now, in one step, so that two pages do not undo each other's records; the
 * newest 500 stay. Gives back what is kept. Fault: records-not-kept.
 */
export const changeRecords = (recipe: (kept: List) => List): Promise<Result<List>> =>
  tried(async () => {
    let next: List = [];
    await update(RECORDS_KEY, (kept: unknown) => (next = recipe(sound(kept)).slice(-MOST_RECORDS)));
    return next;
  });
