/**
 * Brings a layout that was read in an older version to the newest one, one numbered step at a time. Step n turns version
 * n into version n + 1; the steps are numbered 1, 2, 3 … without gaps. Each version is read by its own schema first, so
 * that a fault is reported where it stands in the file.
 */
import { valueText } from './path';
import { fail, ok, type Result } from './result';

export type JsonObject = Readonly<Record<string, unknown>>;
export type Migration = (older: JsonObject) => JsonObject;

/** Version 2 divides the platform by height and knows a schedule: one division from the platform up, no schedule. */
const divisionFromThePlatformUp: Migration = (older) => ({
  ...older,
  zoning: [{ from_mm: 0, zoning: older['zoning'] }],
  schedule: null,
});

/** Version 3 knows revisions: a layout that nobody has filed yet. */
const noRevision: Migration = (older) => ({ ...older, revision: null });

/** MIGRATIONS[n − 1] is step n. */
const MIGRATIONS: readonly Migration[] = [divisionFromThePlatformUp, noRevision];

/**
 * The version a file says it has, from 1 to the newest.
 * Faults: layout-wrong-version (not a whole number from 1), layout-newer-version.
 */
export function versionOf(value: JsonObject, newest: number = MIGRATIONS.length + 1): Result<number> {
  const version = value['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return fail('layout-wrong-version', { found: valueText(version), newest });
  }
  return version > newest ? fail('layout-newer-version', { found: version, newest }) : ok(version);
}

/** A sound value of a version that is known, in the newest version, its "version" key included. */
export function migrate(
  value: JsonObject,
  version: number,
  steps: readonly Migration[] = MIGRATIONS,
): JsonObject {
  return steps
    .slice(version - 1)
    .reduce((older, step, index) => ({ ...step(older), version: version + index + 1 }), value);
}
