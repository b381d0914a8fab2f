/**
 * Locked and hidden parts. Both belong to the one who looks at the plate, not to the plate: they are part of the view, saved
 * with the browser's work, and no file or link carries them; a colleague opens the same plate free to move, and the
 * checksum does not depend on who has put a padlock where. A locked part keeps its place, its turn, and stays on the plate,
 * whatever would change them. Undo is no edit: it brings back what was.
 */
import { sameValue } from '../layout/same';
import type { Layout, Part, PartId } from '../layout/types';

export interface Kept {
  readonly layout: Layout;
  /** Locked parts that an edit would have moved, turned or taken away. */
  readonly held: readonly PartId[];
}

const stands = (a: Part, b: Part): boolean =>
  a.at_mm[0] === b.at_mm[0] && a.at_mm[1] === b.at_mm[1] && a.turn_deg === b.turn_deg;

const isNamed = ({ parts }: Layout, id: PartId): boolean => parts.some((part) => part.id === id);

/** Names that are gone, each with the new one of the very same part at the same place of the list. */
export function renamed(before: Layout, after: Layout): ReadonlyMap<PartId, PartId> {
  const names = new Map<PartId, PartId>();
  if (before.parts === after.parts || before.parts.length !== after.parts.length) return names;
  for (const [i, was] of before.parts.entries()) {
    const now = after.parts[i];
    if (was.id === now.id || !sameValue({ ...now, id: was.id }, was)) continue;
    if (!isNamed(after, was.id) && !isNamed(before, now.id)) names.set(was.id, now.id);
  }
  return names;
}

/** What of `after` may be: the parts locked stand as they did before. */
export function keepLocked(before: Layout, after: Layout, locked: readonly PartId[]): Kept {
  if (locked.length === 0 || before.parts === after.parts) return { layout: after, held: [] };
  const fixed = new Map(before.parts.filter(({ id }) => locked.includes(id)).map((part) => [part.id, part]));
  const held: PartId[] = [];
  const parts = after.parts.map((part) => {
    const was = fixed.get(part.id);
    fixed.delete(part.id);
    if (was === undefined || stands(was, part)) return part;
    held.push(part.id);
    const back = { ...part, at_mm: was.at_mm, turn_deg: was.turn_deg };
    return sameValue(was, back) ? was : back;
  });
  // Those still in the map were renamed where they stand, or taken away: then they come back to their place in the list.
  const names = fixed.size > 0 ? renamed(before, after) : null;
  for (const part of fixed.values()) {
    if (names?.has(part.id)) continue;
    held.push(part.id);
    parts.splice(before.parts.indexOf(part), 0, part);
  }
  if (held.length === 0) return { layout: after, held };
  const same = parts.length === before.parts.length && parts.every((part, i) => part === before.parts[i]);
  return { layout: { ...after, parts: same ? before.parts : parts }, held };
}

/** Of these ids, those that name the very same part in another layout. */
export const stillNamed = (ids: readonly PartId[], before: Layout, after: Layout): readonly PartId[] => {
  if (ids.length === 0) return ids;
  const find = ({ parts }: Layout, id: PartId): Part | undefined => parts.find((part) => part.id === id);
  return ids.filter((id) => sameValue(find(before, id), find(after, id)));
};
