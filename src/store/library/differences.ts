/**
 * Where two machines or two processes differ, value by value. Lists of things with ids are compared by id; lists of
 * numbers and outlines are one value each. What they are called does not count. Units as in the layout.
 */
import { sameValue } from '../../layout/same';

export interface Difference {
  /** Keys that lead to the value; an id where things are listed by id. */
  readonly path: readonly string[];
  /** undefined: it does not have it. */
  readonly entry: unknown;
  readonly plate: unknown;
}

type Branch = Readonly<Record<string, unknown>>;
const isBranch = (value: unknown): value is Branch =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A list of things with ids as a record by id; the value itself where it is anything else. */
function byId(value: unknown): unknown {
  if (!Array.isArray(value) || value.length === 0) return value;
  const things = value.filter((item): item is { readonly id: string } => isBranch(item) && 'id' in item);
  if (things.length < value.length) return value;
  return Object.fromEntries(things.map(({ id, ...rest }) => [id, rest]));
}

function between(entry: unknown, plate: unknown, path: readonly string[]): Difference[] {
  const [a, b] = [byId(entry), byId(plate)];
  if (sameValue(a, b)) return [];
  if (!isBranch(a) || !isBranch(b)) return [{ path, entry, plate }];
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((key) => between(a[key], b[key], [...path, key]));
}

/** The differences, in the order of the entry's keys. */
export function differences(entry: object, plate: object): readonly Difference[] {
  const nameless = (thing: object): object => ({ ...thing, name: '' });
  return between(nameless(entry), nameless(plate), []);
}
