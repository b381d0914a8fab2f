/** What page and thread say to each other about a file that is handed over. */
import type { LongSource } from '../export/files/long';
import type { FileMade, LongFile } from '../export/files/types';
import type { Result } from '../layout/result';
import type { LayoutApart } from './layoutApart';

export interface FileQuestion {
  readonly apart: LayoutApart;
  readonly source: Omit<LongSource, 'layout'>;
  readonly file: LongFile;
}
export type FileNews =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'made'; readonly made: Result<FileMade> };
