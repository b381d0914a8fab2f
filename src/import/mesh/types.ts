/**
 * What the mesh readers, the checks and the cutting hand to each other, to the check page and to the command line.
 * Millimetres; +x right, +y back, +z up; a triangle runs counter-clockwise seen from outside (STL; ISO/IEC 25422, 4.1.4.2
 * [memory]). The functions stand in index.ts.
 */
import type { Fault } from '../../layout/result';
import type { Slab } from '../../layout/types';
import type { Degrees, Mm, Mm2, Mm3 } from '../../units/types';

export interface Mesh {
  /** x, y, z of each point, one after the other. */
  readonly points: Float64Array;
  /** Three indices of points for each triangle. */
  readonly triangles: Uint32Array;
}
/** Units of ISO/IEC 25422; an STL has none. */
export type MeshUnit = 'micron' | 'millimeter' | 'centimeter' | 'inch' | 'foot' | 'meter';

/** Where the file builds one copy of a body: the same point of each copy, and its turn from the first one. */
export interface MeshItem {
  readonly x_mm: Mm;
  readonly y_mm: Mm;
  readonly turn_deg: Degrees;
}
export interface MeshBody {
  /** Of the solid or the object; unique within the file. */
  readonly name: string;
  /** In millimetres; an STL's numbers are taken as millimetres. */
  readonly mesh: Mesh;
  /** How often the file builds it (the same but for its place and a turn about z); 1 for an STL. */
  readonly copies: number;
  /** One for each copy where the file places them; absent for an STL. */
  readonly items?: readonly MeshItem[];
}
/** Why something of the file is no body. */
export type MeshLeftOutKind =
  | 'support' // an object of type "support" or "solidsupport"
  | 'surface' // an object of type "surface": it has no inside
  | 'other' // an object of type "other"
  | 'unused' // an object that no build item names
  | 'empty' // a solid or an object without triangles
  | 'unread' // a part of the package that is broken, and nothing to build leads to it
  | 'count' // a header that names no triangles, before so many
  | 'bytes'; // bytes after the last triangle

export interface MeshLeftOut {
  readonly kind: MeshLeftOutKind;
  /** The file's own word for it: a name or an id; "" where it has none. */
  readonly what: string;
  readonly count: number;
}
export interface MeshFile {
  readonly name: string;
  readonly kind: 'stl' | '3mf';
  /** null: the file has no unit, its numbers were taken as millimetres; `orient` takes another scale. */
  readonly unit: MeshUnit | null;
  readonly bodies: readonly MeshBody[];
  readonly leftOut: readonly MeshLeftOut[];
}

/** How a mesh is turned before it lands: about x first, then y, then z; counter-clockwise seen against the axis. */
export interface MeshPlacement {
  readonly turnX_deg?: Degrees;
  readonly turnY_deg?: Degrees;
  readonly turnZ_deg?: Degrees;
  /** Factor on every length, such as 25.4 for an STL in inches; 1 where the unit is right. */
  readonly scale?: number;
}

/** What a mesh is like. Counts are exact. */
export interface MeshCheck {
  readonly size_mm: readonly [Mm, Mm, Mm];
  readonly triangles: number;
  readonly points: number;
  /** Connected surfaces. */
  readonly shells: number;
  /** Shells that lie inside another one and face inwards: they bound a hollow. */
  readonly hollows: number;
  /** Σ of signed tetrahedra after shells that are inside out were turned; null where the mesh is not closed. */
  readonly volume_mm3: Mm3 | null;
  /** Edges with one triangle. */
  readonly openEdges: number;
  /** Edges with three and more triangles. */
  readonly crowdedEdges: number;
  /** Edges along which two triangles cannot face the same way, as on a strip with half a twist. */
  readonly twistedEdges: number;
  /** Triangles that face the other way than their neighbours. */
  readonly turnedTriangles: number;
  /** Shells that face inwards although nothing is around them. */
  readonly insideOutShells: number;
  /** Points along open edges taken as one with another within 0.001 mm, because that closed edges. */
  readonly joinedPoints: number;
  /** Triangles without area. */
  readonly degenerateTriangles: number;
  /** Triangles that are there more than once, counted without the first. */
  readonly repeatedTriangles: number;
  /** Pairs of closed shells that cut each other or of which one lies in the other's solid. */
  readonly overlappingShells: number;
  /** Every edge has exactly two triangles, or as many that run one way as the other. */
  readonly closed: boolean;
  /** `weld` with this much joins the two sides of fine cracks along open edges; null where there are none. */
  readonly crack_mm: Mm | null;
  /** What is wrong, and what can be used all the same, in the words of the message table. */
  readonly findings: readonly Fault[];
}

export interface SectionSettings {
  /** Thickness of a layer; every layer is cut at its middle. At least 1 µm. */
  readonly layer_mm: Mm;
  /** Outlines that do not close are closed over gaps up to this. */
  readonly chainGap_mm: Mm;
}
/** First and last layer, from 1. */
export type LayerRun = readonly [first: number, last: number];

export interface MeshSections {
  /** For `Shape.slabs`: whole micrometres, ascending, the last one's top is the mesh's; rings may be none. */
  readonly slabs: readonly Slab[];
  /** ⌈height / layer_mm⌉ */
  readonly layers: number;
  readonly height_mm: Mm;
  /** Σ area of each slab × its height. */
  readonly volume_mm3: Mm3;
  /** Largest section. */
  readonly largest_mm2: Mm2;
  /** Layers in which outlines stayed open; what does not close is left out of them. */
  readonly openLayers: number;
  /** The widest gap that stayed open; null where none did. With a chainGap_mm of this much all outlines close. */
  readonly widestGap_mm: Mm | null;
  /** Layers in which overlapping outlines were united. */
  readonly unitedLayers: number;
  /** Layers below the last one in which nothing is solid. */
  readonly emptyLayers: number;
  /** The lowest run of them, first and last layer, from 1; null where there are none. */
  readonly firstEmpty: LayerRun | null;
  /** Layers with the same solid section as the layer below them. */
  readonly equalLayers: number;
  /** The lowest run of layers with the same section; null where all differ. */
  readonly firstEqual: LayerRun | null;
  /** True where the last layer's middle lies above the mesh and the slab below reaches the top. */
  readonly topCovered: boolean;
  /** The above as messages. */
  readonly problems: readonly Fault[];
}
/** For whoever waits: `progress` hears the share done, 0 … 1; `cancelled` is asked about as often. */
export interface Watch {
  readonly progress?: (share: number) => void;
  readonly cancelled?: () => boolean;
}
