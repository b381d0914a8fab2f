/**
 * Revisions, as far as only their own screens need it: the first one, and who is named in one. Names of people are records,
 * not proofs: a page cannot tell who types.
 */
import type { Text } from '../language/index';
import type { Revision } from './types';

/** What a revision's states are called. */
export const STATE_NAMES: Readonly<Record<Revision['state'], Text>> = {
  draft: 'draft ¦ state',
  reviewed: 'reviewed ¦ state',
  released: 'released ¦ state',
  superseded: 'superseded ¦ state',
};

/** The first revision of a layout that has none. */
export const firstRevision = (date: string): Revision => ({
  name: 'A',
  date,
  reason: '',
  state: 'draft',
  author: '',
  reviewer: '',
  derivedFrom: null,
});

const plain = (name: string): string => name.trim().replace(/\s+/g, ' ').toLocaleLowerCase();
/** True where author and reviewer are recorded under one name, however it is spaced or capitalised. */
export const reviewedByAuthor = ({ author, reviewer }: Revision): boolean =>
  plain(author) !== '' && plain(author) === plain(reviewer);
