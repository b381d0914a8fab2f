/**
 * A shape as a stack of prisms, one for each connected piece of each slab's section: closed by themselves, facing outwards.
 * Prisms of neighbouring slabs touch and share no points. Millimetres; z from the shape's foot.
 */
import { clean } from '../../geometry/clipper';
import { ringFromLayout } from '../../geometry/ring';
import { pieces, trianglesOf, type Triangles } from '../../geometry/triangles';
import type { Region } from '../../geometry/types';
import type { Shape } from '../../layout/types';
import type { Mm } from '../../units/types';

export interface Prism {
  /** x, y, z of each point: those of the lower face, then those of the upper one. */
  readonly points: readonly number[];
  /** Three indices of points each, counter-clockwise seen from outside. */
  readonly triangles: readonly number[];
}

/** The sides between the lower ring's points and the same ones `up` further on. */
function sides(starts: readonly number[], up: number): number[] {
  const triangles: number[] = [];
  for (let r = 0; r + 1 < starts.length; r++) {
    const [first, end] = [starts[r]!, starts[r + 1]!];
    for (let a = first; a < end; a++) {
      const b = a + 1 === end ? first : a + 1;
      triangles.push(a, b, b + up, a, b + up, a + up);
    }
  }
  return triangles;
}

function prism({ points, starts, triangles }: Triangles, from_mm: Mm, to_mm: Mm): Prism {
  const up = points.length / 2;
  const at = (z: Mm): number[] =>
    Array.from({ length: up }, (_, i) => [points[2 * i]!, points[2 * i + 1]!, z]).flat();
  const upper = triangles.map((point) => point + up);
  return {
    points: [...at(from_mm), ...at(to_mm)],
    triangles: [...triangles.toReversed(), ...upper, ...sides(starts, up)],
  };
}

/** One slab after the other; nothing where a section is empty. */
export function* prismsOf({ slabs }: Shape): Generator<readonly Prism[], void> {
  let from_mm: Mm = 0;
  for (const { rings, to_mm } of slabs) {
    const section: Region = clean(rings.map(ringFromLayout), 'evenOdd').region;
    const [lower, upper] = [from_mm, to_mm];
    yield pieces(section).map((piece) => prism(trianglesOf(piece), lower, upper));
    from_mm = to_mm;
  }
}
