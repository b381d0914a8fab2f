/**
 * Appending lists of any length. `push(...more)` hands every element over as an argument and fails from about a hundred
 * thousand of them on.
 */

/** Adds the elements of `more` to the end of `list`. */
export function append<T>(list: T[], more: Iterable<T>): void {
  for (const element of more) list.push(element);
}
