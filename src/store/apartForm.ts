/**
 * A saved plate whose shapes lie apart, in the large storage: which plates do, the text that names them by a stamp, and the
 * stamps.
 */
import type { Layout, Shape } from '../layout/types';

/** Characters that one layout may take in the page's own storage. */
const MOST_CHARACTERS = 1_000_000;
/** What a point takes as text: "[-123.456,-123.456],". */
const CHARACTERS_PER_POINT = 20;

/** About how many characters a shape takes as text; counted by its points, not written out. */
export function charactersOf({ slabs }: Shape): number {
  let points = 0;
  for (const { rings } of slabs) for (const ring of rings) points += 'circle_mm' in ring ? 2 : ring.length;
  return points * CHARACTERS_PER_POINT;
}

/** True where the shapes are too much for the page's own storage. */
export const isLarge = ({ shapes }: Layout): boolean =>
  Object.values(shapes).reduce((sum, shape) => sum + charactersOf(shape), 0) > MOST_CHARACTERS;

/** What LARGE_KEY holds. */
export interface Apart {
  /** Under which the shapes lie in the large storage. */
  readonly stamp: string;
  /** The layout with no shapes. */
  readonly layout: Layout;
  /** What LARGE_KEY held before, as long as it is not certain that the shapes have arrived. */
  readonly before?: string;
}

export const apartText = (stamp: string, layout: Layout, before: string | null = null): string => {
  const apart: Apart = { stamp, layout: { ...layout, shapes: {} }, ...(before === null ? {} : { before }) };
  return JSON.stringify(apart);
};

/** What a text of LARGE_KEY says; null where it is none. */
export function readApart(text: string): Apart | null {
  try {
    const value = JSON.parse(text) as Partial<Apart> | null;
    if (typeof value?.stamp !== 'string' || typeof value.layout !== 'object') return null;
    return value as Apart;
  } catch {
    return null;
  }
}

/** A new stamp: the time in ms, and what keeps two pages apart that write in the same one. */
export const newStamp = (): string => `${Date.now()}-${Math.random().toString(36).slice(2, 8)}`;

/** When a stamp was made, in ms since 1970; NaN where it is no stamp. */
export const stampTime = (stamp: string): number => Number(/^(\d+)-/.exec(stamp)?.[1] ?? NaN);
