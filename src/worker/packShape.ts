/**
 * Shapes as one array of numbers, because the sections of a fine mesh hold millions of points: an array goes to another
 * thread without being copied. Per slab: top, number of rings; per ring: number of points, then x, y of each, or −1,
 * then x, y, r of a circle. Millimetres.
 */
import type { LayoutRing, Point, Shape, Slab } from '../layout/types';

const CIRCLE = -1;

const ringLength = (ring: LayoutRing): number => ('circle_mm' in ring ? 4 : 1 + 2 * ring.length);

function packedLength({ slabs }: Shape): number {
  let length = 0;
  for (const { rings } of slabs) {
    length += 2;
    for (const ring of rings) length += ringLength(ring);
  }
  return length;
}

class Writer {
  private at = 0;
  constructor(readonly packed: Float64Array<ArrayBuffer>) {}
  put(...values: readonly number[]): void {
    for (const value of values) this.packed[this.at++] = value;
  }
  ring(ring: LayoutRing): void {
    if ('circle_mm' in ring) return this.put(CIRCLE, ...ring.circle_mm);
    this.put(ring.length);
    for (const point of ring) {
      this.packed[this.at++] = point[0];
      this.packed[this.at++] = point[1];
    }
  }
}

/** A shape as numbers, slab by slab, for whoever has to leave room for other work between them. */
export function* packSteps(shape: Shape): Generator<undefined, Float64Array<ArrayBuffer>> {
  const writer = new Writer(new Float64Array(packedLength(shape)));
  for (const { to_mm, rings } of shape.slabs) {
    writer.put(to_mm, rings.length);
    for (const ring of rings) writer.ring(ring);
    yield;
  }
  return writer.packed;
}

/** The same at once. */
export function packShape(shape: Shape): Float64Array<ArrayBuffer> {
  for (const steps = packSteps(shape); ;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

class Reader {
  private at = 0;
  constructor(private readonly packed: Float64Array) {}
  get done(): boolean {
    return this.at >= this.packed.length;
  }
  next(): number {
    return this.packed[this.at++]!;
  }
  private point(): Point {
    return [this.next(), this.next()];
  }
  ring(): LayoutRing {
    const points = this.next();
    if (points === CIRCLE) return { circle_mm: [this.next(), this.next(), this.next()] };
    return Array.from({ length: points }, () => this.point());
  }
  slab(): Slab {
    const to_mm = this.next();
    const rings = Array.from({ length: this.next() }, () => this.ring());
    return { to_mm, rings };
  }
}

/** Slab by slab, for whoever has to leave room for other work between them. */
export function* unpackSlabs(packed: Float64Array): Generator<Slab, void> {
  const reader = new Reader(packed);
  while (!reader.done) yield reader.slab();
}

/** The shape that was packed. */
export const unpackShape = (packed: Float64Array): Shape => ({ slabs: [...unpackSlabs(packed)] });
