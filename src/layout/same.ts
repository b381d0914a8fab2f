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

/** The name that an entry of a list goes by; entries without one go by their place. */
function keyOf(entry: unknown, place: number): string | number {
  const { id } = isBranch(entry) ? entry : {};
  return typeof id === 'string' ? id : place;
}

/**
 * `next` with every branch that holds the same content as in `before` taken over from there, so that caches by identity
 * find what they know; entries of a list that have an id are known by it, wherever they stand. Plain JSON values only.
 */
export function takenOver<T>(before: unknown, next: T): T {
  if (!isBranch(before) || !isBranch(next) || Array.isArray(before) !== Array.isArray(next)) return next;
  if (sameValue(before, next)) return before as T;
  const old: Branch = before;
  if (Array.isArray(next)) {
    const known = new Map(Object.values(old).map((entry, i) => [keyOf(entry, i), entry]));
    return next.map((entry: unknown, i) => takenOver(known.get(keyOf(entry, i)), entry)) as T;
  }
  return Object.fromEntries(
    Object.entries(next).map(([key, value]) => [key, takenOver(old[key], value)]),
  ) as T;
}
