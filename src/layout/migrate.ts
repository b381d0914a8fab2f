/**
 * Brings the JSON value of an older layout file to the newest version, one numbered step at a time, before the schema
 * looks at it. Step n turns version n into version n + 1; the steps are numbered 1, 2, 3 … without gaps. Version 1 is
 * the newest today, so there is no step yet.
 */
import { valueText } from './path';
import { fail, ok, type Result } from './result';

export type JsonObject = Readonly<Record<string, unknown>>;
export type Migration = (older: JsonObject) => JsonObject;

/** MIGRATIONS[n − 1] is step n. */
const MIGRATIONS: readonly Migration[] = [];

/**
 * The value in the newest version, its "version" key included.
 * Faults: layout-wrong-version (not a whole number from 1), layout-newer-version.
 */
export function migrate(value: JsonObject, steps: readonly Migration[] = MIGRATIONS): Result<JsonObject> {
  const newest = steps.length + 1;
  const version = value['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return fail('layout-wrong-version', { found: valueText(version), newest });
  }
  if (version > newest) return fail('layout-newer-version', { found: version, newest });
  const migrated = steps
    .slice(version - 1)
    .reduce((older, step, index) => ({ ...step(older), version: version + index + 1 }), value);
  return ok(migrated);
}
