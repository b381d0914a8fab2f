/**
 * Decides whether two plain values (numbers, strings, lists, records) hold the same content. Branches shared by
 * reference are not walked, so two layouts that share their shapes compare in the time of what differs. No units.
 */

type Branch = Readonly<Record<string, unknown>>;

const isBranch = (value: unknown): value is Branch => typeof value === 'object' && value !== null;

/** True where both values hold the same content; NaN equals NaN. Plain JSON values only. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (!isBranch(a) || !isBranch(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => Object.hasOwn(b, key) && sameValue(a[key], b[key]));
}
