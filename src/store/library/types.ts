/**
 * What the library holds: entries of four kinds, each a copy of what was saved. What an entry holds is text in the form of a
 * layout file; its head, which lists are made of, stands apart so that a list never reads sections of meshes.
 * Millimetres, mm/s; times in milliseconds since 1970.
 */
import type { Layout, Machine, Process, Revision, Shape } from '../../layout/types';
import type { Mm, MmPerSecond } from '../../units/types';

export const KINDS = ['layout', 'machine', 'process', 'shape'] as const;
export type EntryKind = (typeof KINDS)[number];
export type EntryId = string;

export interface Contents {
  readonly layout: Layout;
  readonly machine: Machine;
  readonly process: Process;
  readonly shape: Shape;
}
/** Something that an entry can hold, with its kind. */
export type Content = {
  readonly [K in EntryKind]: { readonly kind: K; readonly content: Contents[K] };
}[EntryKind];

/** What a list says of an entry beside its name. */
export interface LayoutFacts {
  readonly parts: number;
  readonly lasers: number;
  readonly machine: string;
  readonly process: string;
  /** Name and state of its revision; null where it has none. */
  readonly revision: Pick<Revision, 'name' | 'state'> | null;
}
export interface MachineFacts {
  readonly lasers: number;
  readonly width_mm: Mm;
  readonly depth_mm: Mm;
  readonly height_mm: Mm;
}
export interface ProcessFacts {
  readonly layer_mm: Mm;
  readonly hatch_mm: Mm;
  readonly speed_mm_s: MmPerSecond;
}
export interface ShapeFacts {
  readonly width_mm: Mm;
  readonly depth_mm: Mm;
  readonly height_mm: Mm;
  readonly slabs: number;
}
export interface FactsOf {
  readonly layout: LayoutFacts;
  readonly machine: MachineFacts;
  readonly process: ProcessFacts;
  readonly shape: ShapeFacts;
}

interface Head<K extends EntryKind> {
  readonly id: EntryId;
  readonly kind: K;
  /** What the entry is called; also what a plate calls its copy. */
  readonly name: string;
  readonly saved_ms: number;
  /** Another one after every change: whoever changes an entry says which state of it was seen. */
  readonly stamp: string;
  /** Of the content without its names: a layout's own checksum, for others the same digits over their part. */
  readonly checksum: string;
  /** Of what a checksum leaves out beside the name (a layout's note and revision); '' where there is nothing of it. */
  readonly aside: string;
  readonly facts: FactsOf[K];
}
/** Of a kind; of several kinds, one of these heads. */
export type HeadOf<K extends EntryKind> = K extends EntryKind ? Head<K> : never;
export type EntryHead = HeadOf<EntryKind>;

/** An entry as it is kept. */
export interface StoredEntry {
  readonly head: EntryHead;
  /** The content as JSON. */
  readonly text: string;
}
/** An entry as it is used: its content carries the entry's name. */
export type Entry = {
  readonly [K in EntryKind]: { readonly head: HeadOf<K>; readonly content: Contents[K] };
}[EntryKind];
