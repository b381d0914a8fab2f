/**
 * What of a drawing is no outline, counted by kind and by the file's own word, with places for the picture.
 */
import { plainName } from '../layout/ids';
import type { Point } from '../layout/types';
import { MOST_PLACES } from './limits';
import type { LeftOut, LeftOutKind } from './types';

/** Different words kept per import; the rest is counted under "…". */
const MOST_WORDS = 200;
const LONGEST_WORD = 60;

interface Entry {
  kind: LeftOutKind;
  what: string;
  count: number;
  places: Point[];
  lines: (readonly Point[])[];
  gap_mm: number | null;
}
export interface Detail {
  readonly count?: number;
  readonly places?: readonly Point[];
  readonly lines?: readonly (readonly Point[])[];
  readonly gap_mm?: number;
}

export class LeftOutList {
  private readonly entries = new Map<string, Entry>();

  /** Counts one more thing (or `detail.count`) of a kind under the file's word for it. */
  add(kind: LeftOutKind, word: string, detail: Detail = {}): void {
    const entry = this.entry(kind, tidy(word));
    entry.count += detail.count ?? 1;
    for (const place of detail.places ?? []) if (entry.places.length < MOST_PLACES) entry.places.push(place);
    for (const line of detail.lines ?? []) if (entry.lines.length < MOST_PLACES) entry.lines.push(line);
    if (detail.gap_mm !== undefined) entry.gap_mm = Math.min(entry.gap_mm ?? Infinity, detail.gap_mm);
  }

  /** In the order of first appearance. */
  list(): LeftOut[] {
    return [...this.entries.values()];
  }

  private entry(kind: LeftOutKind, word: string): Entry {
    const what = this.entries.size < MOST_WORDS || this.entries.has(`${kind} ${word}`) ? word : '…';
    const key = `${kind} ${what}`;
    let entry = this.entries.get(key);
    if (entry === undefined) {
      entry = { kind, what, count: 0, places: [], lines: [], gap_mm: null };
      this.entries.set(key, entry);
    }
    return entry;
  }
}

const tidy = (word: string): string =>
  [...plainName(word, ' ').replace(/\s+/g, ' ').trim()].slice(0, LONGEST_WORD).join('') || '?';
