/** What can be handed over as a file, and how it is to be written. mm above the platform. */
import type { Mm } from '../../units/types';
import type { PlanGround } from '../plan/ink';
import type { CsvForm } from '../table/csv';

/** Made from every section of every part: not in the page's own thread. */
export type LongFile = { readonly kind: 'parts'; readonly csv: CsvForm } | { readonly kind: 'mesh' };

export interface PictureAsked {
  readonly kind: 'picture';
  readonly height_mm: Mm;
  readonly ground: PlanGround;
  /** Names of the parts. */
  readonly labels: boolean;
}
export interface ZonesAsked {
  readonly kind: 'zones';
  readonly height_mm: Mm;
  readonly form: 'dxf' | 'svg';
}
export interface ReportAsked {
  readonly kind: 'report';
  readonly height_mm: Mm;
}
export interface LayersAsked {
  readonly kind: 'layers';
  readonly csv: CsvForm;
}
/** Made from an analysis as it stands. */
export type ShortFile = LayersAsked | PictureAsked | ZonesAsked | ReportAsked;
export type FileAsked = LongFile | ShortFile;
export type FileKind = FileAsked['kind'];

export const isLong = (asked: FileAsked): asked is LongFile =>
  asked.kind === 'parts' || asked.kind === 'mesh';

export interface FileMade {
  readonly name: string;
  readonly mime: string;
  readonly content: string | Uint8Array<ArrayBuffer>;
}
