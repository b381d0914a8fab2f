/**
 * What a figure or row lights up, as one word, so that components may compare it: "laser:2", "part:P03", "seams" …
 */
import type { Hover } from '../store/types';

export type Lights =
  | `laser:${number}`
  | `part:${string}`
  | `seam:${number}`
  | `problem:${number}`
  | 'seams'
  | 'unassigned'
  | 'sections'
  | 'worst'
  | 'binding'
  | 'none';

type Whole = 'seams' | 'unassigned' | 'sections' | 'worst' | 'binding';
/** Lights that are one word. */
const WHOLE: readonly Lights[] = ['seams', 'unassigned', 'sections', 'worst', 'binding'] satisfies Whole[];

/** The store's form of a light; null for "none". */
export function hoverOf(lights: Lights): Hover | null {
  if (lights === 'none') return null;
  if (WHOLE.includes(lights)) return { kind: lights as Whole };
  const at = lights.indexOf(':');
  const [kind, word] = [lights.slice(0, at), lights.slice(at + 1)];
  if (kind === 'part') return { kind, part: word };
  if (kind === 'laser') return { kind, laser: Number(word) };
  if (kind === 'seam') return { kind, seam: Number(word) };
  return { kind: 'problem', problem: Number(word) };
}

/** The word of what is lit up. */
export function lightsOf(hover: Hover | null): Lights {
  if (hover === null) return 'none';
  if (hover.kind === 'part') return `part:${hover.part}`;
  if (hover.kind === 'laser') return `laser:${hover.laser}`;
  if (hover.kind === 'seam') return `seam:${hover.seam}`;
  if (hover.kind === 'problem') return `problem:${hover.problem}`;
  return hover.kind;
}
