/**
 * What page and worker say to each other about the whole height of a plate. Shapes are sent once and known by a number
 * from then on; layouts come without them. The page asks, the newest question counts; the worker answers with how far
 * it is (0 to 1), a first look, the whole, its problems, and the layout's checksum, which takes a second for fine meshes.
 */
import type { Found } from '../build/findProblems';
import type { Rules } from '../build/rules';
import type { Portion } from '../build/stack';
import type { BuildFigures } from '../build/types';
import type { Layout, ShapeId } from '../layout/types';

export interface HeightQuestion {
  readonly id: number;
  readonly layout: Omit<Layout, 'shapes'>;
  /** The layout's shapes by their numbers. */
  readonly shapes: Readonly<Record<ShapeId, number>>;
  /** Packed shapes that were not sent before. */
  readonly sent: readonly (readonly [number, Float64Array<ArrayBuffer>])[];
}
export interface HeightFound {
  readonly kind: 'height';
  readonly id: number;
  /** 1: every range of layers was computed; n: one of n in a row stands for all of them. */
  readonly every: number;
  readonly stretches: Float64Array<ArrayBuffer>;
  readonly build: BuildFigures;
  readonly rules: Rules;
}
export type HeightAnswer =
  | { readonly kind: 'progress'; readonly id: number; readonly share: number }
  | HeightFound
  /** Of the whole height that was told last. */
  | { readonly kind: 'problems'; readonly id: number; readonly found: Found }
  | { readonly kind: 'checksum'; readonly id: number; readonly checksum: string }
  | { readonly kind: 'failed'; readonly id: number; readonly detail: string };

/** A portion of a plate's ranges that a thread beside the first one computes; the rules follow where parts keep a laser. */
export interface PortionQuestion extends HeightQuestion, Portion {}
export type PortionWord =
  | { readonly kind: 'question'; readonly question: PortionQuestion }
  | { readonly kind: 'rules'; readonly id: number; readonly rules: Rules };
/** The stretches of the portion; null where they could not be computed. */
export interface PortionAnswer {
  readonly id: number;
  readonly stretches: Float64Array<ArrayBuffer> | null;
}
