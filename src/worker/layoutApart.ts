/**
 * A layout in two halves, so that sections of meshes can go to another thread and back without being copied: everything but
 * the shapes, and the shapes packed, with the footprints of those that have many slabs. Reading and writing a file of tens
 * of megabytes takes seconds: it is done over there. Millimetres.
 */
import { footprintOf, knowFootprint } from '../exposure/prepared';
import type { Region } from '../geometry/types';
import { readLayout } from '../layout/read';
import { ok, type Fault, type Result } from '../layout/result';
import type { Layout, Shape, ShapeId } from '../layout/types';
import { writeLayout } from '../layout/write';
import { packShape, packSteps, unpackShape, unpackSlabs } from './packShape';

/** Shapes of fewer slabs have their footprint worked out where it is needed. */
const MANY_SLABS = 50;

export interface PackedShape {
  readonly id: ShapeId;
  readonly packed: Float64Array<ArrayBuffer>;
  /** null: not worked out. */
  readonly footprint: Region | null;
}
export interface LayoutApart {
  /** Without shapes. */
  readonly rest: Layout;
  readonly shapes: readonly PackedShape[];
}
export type LayoutQuestion =
  { readonly kind: 'read'; readonly file: Blob } | { readonly kind: 'write'; readonly apart: LayoutApart };
export type LayoutAnswer =
  | { readonly kind: 'read'; readonly apart: LayoutApart }
  | { readonly kind: 'written'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'fault'; readonly fault: Fault };

/** Buffers that may be handed over instead of being copied. */
export const buffersOf = ({ shapes }: LayoutApart): ArrayBuffer[] =>
  shapes.map(({ packed }) => packed.buffer);

const packedOf = (id: ShapeId, shape: Shape, footprints: boolean): PackedShape => ({
  id,
  packed: packShape(shape),
  footprint: footprints && shape.slabs.length >= MANY_SLABS ? footprintOf(shape) : null,
});

/** @param footprints works them out as well */
export const takeApart = (layout: Layout, footprints: boolean): LayoutApart => ({
  rest: { ...layout, shapes: {} },
  shapes: Object.entries(layout.shapes).map(([id, shape]) => packedOf(id, shape, footprints)),
});

/** The same without footprints, slab by slab. */
export function* takeApartSteps(layout: Layout): Generator<undefined, LayoutApart> {
  const shapes: PackedShape[] = [];
  for (const [id, shape] of Object.entries(layout.shapes))
    shapes.push({ id, packed: yield* packSteps(shape), footprint: null });
  return { rest: { ...layout, shapes: {} }, shapes };
}

const whole = ({ rest }: LayoutApart, shapes: readonly (readonly [ShapeId, Shape])[]): Layout => ({
  ...rest,
  shapes: Object.fromEntries(shapes),
});

/** The layout at one go. */
export const putTogether = (apart: LayoutApart): Layout =>
  whole(
    apart,
    apart.shapes.map(({ id, packed }) => [id, unpackShape(packed)]),
  );

/** The layout, with a pause whenever `due` says so; footprints are known from then on. */
export async function putTogetherSlowly(
  apart: LayoutApart,
  due: () => boolean,
  pause: () => Promise<void>,
): Promise<Layout> {
  const shapes: [ShapeId, Shape][] = [];
  for (const { id, packed, footprint } of apart.shapes) {
    const slabs = [];
    for (const slab of unpackSlabs(packed)) {
      slabs.push(slab);
      if (due()) await pause();
    }
    const shape: Shape = { slabs };
    if (footprint) knowFootprint(shape, footprint);
    shapes.push([id, shape]);
  }
  return whole(apart, shapes);
}

/** Reads a file's text. Faults: those of readLayout. */
export function readApart(text: string): Result<LayoutApart> {
  const read = readLayout(text);
  return read.ok ? ok(takeApart(read.value, true)) : read;
}

/** The file as UTF-8. */
export const writeApart = (apart: LayoutApart): Uint8Array<ArrayBuffer> =>
  new TextEncoder().encode(writeLayout(putTogether(apart)));
