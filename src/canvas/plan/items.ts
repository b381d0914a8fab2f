/**
 * What the plan draws, part by part: the pieces and seams of the layer at the present height, and the section they
 * fill. An item stays the same object while nothing about its part has changed, so that a drag redraws only what it
 * changes. Millimetres, platform coordinates.
 */
import { sectionAt } from '../../build/sectionAt';
import type { Analysis, LayerFigures, PartView, Piece, Seam } from '../../build/types';
import { boxOf } from '../../geometry/region';
import type { Box, Region } from '../../geometry/types';
import type { Part } from '../../layout/types';

export interface PartItem {
  readonly part: Part;
  readonly view: PartView;
  /** Section at this height; empty above the part. */
  readonly section: Region;
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
}

const EMPTY: Region = [];

const boxes = new WeakMap<Region, Box>();
/** Box of a part's footprint, kept with the footprint. */
export const footprintBox = ({ footprint }: PartView): Box => {
  const kept = boxes.get(footprint) ?? boxOf(footprint);
  boxes.set(footprint, kept);
  return kept;
};

/** One item per part, in the layout's order. `layer` null: an empty build, footprints only. */
export const planItems = (analysis: Analysis, layer: LayerFigures | null): readonly PartItem[] => {
  const pieces = analysis.parts.map((): Piece[] => []);
  const seams = analysis.parts.map((): Seam[] => []);
  for (const piece of layer?.pieces ?? []) pieces[piece.part]?.push(piece);
  for (const seam of layer?.seams ?? []) seams[seam.part]?.push(seam);
  return analysis.parts.flatMap((view, i) => {
    const part = analysis.layout.parts[i];
    if (!part) return [];
    const section = layer ? sectionAt(view, layer.height_mm) : EMPTY;
    return [{ part, view, section, pieces: pieces[i] ?? [], seams: seams[i] ?? [] }];
  });
};

/** Some items with nothing in them but the outline, for parts that are hidden. */
export const veiled = (items: readonly PartItem[], hidden: readonly string[]): readonly PartItem[] =>
  hidden.length === 0
    ? items
    : items.map((item) =>
        hidden.includes(item.part.id) ? { ...item, section: EMPTY, pieces: [], seams: [] } : item,
      );

const samePieces = (a: readonly Piece[], b: readonly Piece[]): boolean =>
  a.length === b.length && a.every((p, i) => p.region === b[i]?.region && p.laser === b[i]?.laser);

const sameSeams = (a: readonly Seam[], b: readonly Seam[]): boolean =>
  a.length === b.length &&
  a.every((seam, i) => {
    const other = b[i]?.path;
    return (
      seam.path === other || (seam.path.length === other?.length && seam.path.every((v, k) => v === other[k]))
    );
  });

const sameItem = (a: PartItem, b: PartItem): boolean =>
  a.part === b.part &&
  a.view.footprint === b.view.footprint &&
  a.section === b.section &&
  samePieces(a.pieces, b.pieces) &&
  sameSeams(a.seams, b.seams);

/** `next`, with items of `before` kept where they show the same; `before` itself where all do. */
export const keepSame = (before: readonly PartItem[], next: readonly PartItem[]): readonly PartItem[] => {
  const known = new Map(before.map((item) => [item.part.id, item]));
  const kept = next.map((item) => {
    const old = known.get(item.part.id);
    return old && sameItem(old, item) ? old : item;
  });
  const unchanged = kept.length === before.length && kept.every((item, i) => item === before[i]);
  return unchanged ? before : kept;
};
