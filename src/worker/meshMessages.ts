/**
 * What the check page and its worker say to each other about one mesh file. The worker keeps the meshes; the page sees
 * figures, pictures and, in the end, packed shapes. A question is answered by its number; a newer one makes an older one
 * idle. Millimetres, degrees, shares 0 … 1.
 */
import type { Region } from '../geometry/types';
import type { MeshCheck, MeshFile, MeshItem, MeshPlacement, MeshSections } from '../import/mesh/types';
import type { Fault } from '../layout/result';
import type { Mm, Mm3 } from '../units/types';
import type { MeshViews } from './meshPicture';

/** How the bodies of the file shall stand; holds for all of them. */
export interface MeshSettings {
  /** Turns and scale. */
  readonly placement: MeshPlacement;
  /** Joins the two sides of fine cracks, each body by its own `crack_mm`. */
  readonly joinCracks: boolean;
  /** Sections are closed over gaps up to this. */
  readonly chainGap_mm: Mm;
}
export type MeshQuestion =
  | {
      readonly kind: 'read';
      readonly id: number;
      readonly name: string;
      readonly bytes: Uint8Array<ArrayBuffer>;
    }
  /** Checks all bodies; draws the one named. */
  | { readonly kind: 'look'; readonly id: number; readonly settings: MeshSettings; readonly shown: number }
  | {
      readonly kind: 'cut';
      readonly id: number;
      readonly settings: MeshSettings;
      /** Places in the file. */
      readonly bodies: readonly number[];
      readonly layer_mm: Mm;
    }
  /** Whatever is being done is dropped. */
  | { readonly kind: 'stop' };

/** A body as the page knows it before anything was looked at. */
export interface MeshBodyNamed {
  readonly name: string;
  readonly copies: number;
  /** Where the file builds the copies; none for an STL. */
  readonly items: readonly MeshItem[];
  /** Middle of the first copy's footprint, in the file's coordinates. */
  readonly middle_mm: readonly [Mm, Mm];
  readonly triangles: number;
}
export interface MeshFileFound extends Pick<MeshFile, 'name' | 'kind' | 'unit'> {
  readonly bodies: readonly MeshBodyNamed[];
  /** About the file itself: its unit, what was left out. */
  readonly findings: readonly Fault[];
}
export interface MeshBodyLook {
  /** After scaling and, where asked, joining cracks; before any turn. */
  readonly check: MeshCheck;
  /** As it is turned. */
  readonly size_mm: readonly [Mm, Mm, Mm];
  /** The width of the cracks that can be joined or were; null where there were none. */
  readonly crack_mm: Mm | null;
}
/** What came out of one body: everything but its slabs, which come packed. */
export interface MeshBodyCut extends Omit<MeshSections, 'slabs'> {
  readonly slabCount: number;
  /** Of the mesh; null where it is not closed. */
  readonly meshVolume_mm3: Mm3 | null;
}
export type MeshCutOutcome =
  | {
      readonly ok: true;
      readonly cut: MeshBodyCut;
      readonly packed: Float64Array<ArrayBuffer>;
      /** All sections united. */
      readonly footprint: Region;
    }
  | { readonly ok: false; readonly fault: Fault };

export type MeshDoing =
  | { readonly doing: 'reading'; readonly share: number }
  | { readonly doing: 'checking'; readonly share: number; readonly body: string }
  | {
      readonly doing: 'cutting';
      readonly share: number;
      readonly body: string;
      readonly layer: number;
      readonly layers: number;
    };
export type MeshAnswer =
  | { readonly kind: 'progress'; readonly id: number; readonly at: MeshDoing }
  | { readonly kind: 'read'; readonly id: number; readonly file: MeshFileFound }
  | {
      readonly kind: 'looked';
      readonly id: number;
      readonly bodies: readonly MeshBodyLook[];
      readonly shown: number;
      readonly views: MeshViews;
    }
  /** In the order asked. */
  | { readonly kind: 'cut'; readonly id: number; readonly bodies: readonly MeshCutOutcome[] }
  /** The file cannot be read. */
  | { readonly kind: 'fault'; readonly id: number; readonly fault: Fault }
  | { readonly kind: 'failed'; readonly id: number; readonly detail: string };
