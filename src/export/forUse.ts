/**
 * Whether what is handed over may be used: files of a plate with something that blocks hand-over say "NOT FOR USE", in
 * their names and, where their form allows it, inside. Areas in mm².
 */
import type { Text } from '../language/index';
import { leavesOut } from '../build/leftOut';
import type { Analysis } from '../build/types';
import { reviewedByAuthor } from '../layout/revisionNames';
import type { Layout } from '../layout/types';

export const NOT_FOR_USE = 'NOT FOR USE' satisfies Text;

/** Looked through as it is now: only then it is known whether something blocks hand-over. */
export const isChecked = ({ whole, checks }: Analysis): boolean => whole === 'present' && checks > 0;

/** Something blocks hand-over: a fault, section area that no laser exposes, a superseded revision. */
export const isBlocked = ({ problems, stretches, layout }: Analysis): boolean =>
  problems.some(({ blocks }) => blocks) ||
  stretches.some(({ figures }) => leavesOut(figures)) ||
  layout.revision?.state === 'superseded';

/** In a column or a line of a file: what its plate is. A review by nobody but the author is called that. */
export function stateWords(analysis: Analysis): string {
  const { revision } = analysis.layout;
  if (isBlocked(analysis)) return NOT_FOR_USE;
  if (revision === null) return 'draft';
  const alone = revision.state !== 'draft' && reviewedByAuthor(revision);
  return alone ? `${revision.state} (author and reviewer are one name)` : revision.state;
}

const LONGEST_NAME = 80;

/** "Ferry spares, plate 1" → "ferry-spares-plate-1": letters and digits of any script, joined by hyphens. */
export function fileWords(layoutName: string): string {
  const words = layoutName.toLowerCase().match(/[\p{Letter}\p{Mark}\p{Number}]+/gu) ?? ['layout'];
  return words.join('-').slice(0, LONGEST_NAME);
}

/** What a plate's files are called after. */
export interface FileSource {
  readonly layout: Layout;
  readonly checksum: string;
  readonly blocked: boolean;
}

/**
 * Name of a file of the plate, by its name, revision and checksum: "ferry-spares-rev-b-0123456789ab-parts.csv",
 * "ferry-spares-0123456789ab-NOT-FOR-USE-parts.csv".
 */
export function exportName({ layout, checksum, blocked }: FileSource, ending: string): string {
  const { name, revision } = layout;
  const filed = revision === null ? [] : ['rev', fileWords(revision.name)];
  return [fileWords(name), ...filed, checksum, ...(blocked ? ['NOT-FOR-USE'] : []), ending].join('-');
}
