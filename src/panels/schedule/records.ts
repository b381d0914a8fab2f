/**
 * Finished builds that a correction is learned from: name, planned hours (uncorrected), real hours. They are kept in this
 * browser's database, never in a layout: they say something of a machine and its site, not of a plate.
 */
import { get, update } from 'idb-keyval';
import type { BuildRecord } from '../../build/correction';
import { fail, ok, type Result } from '../../layout/result';

export const RECORDS_KEY = 'evenplate.builds';
const MOST_RECORDS = 500;

export interface NamedRecord extends BuildRecord {
  readonly name: string;
}
type List = readonly NamedRecord[];

const isRecord = (value: unknown): value is NamedRecord => {
  if (typeof value !== 'object' || value === null) return false;
  const { name, planned_h, real_h } = value as Record<string, unknown>;
  return typeof name === 'string' && typeof planned_h === 'number' && typeof real_h === 'number';
};

/** What is kept, without what makes no sense in it. */
const sound = (kept: unknown): List => (Array.isArray(kept) ? kept.filter(isRecord) : []);

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
