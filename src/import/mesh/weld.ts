/**
 * Points that are the same become one. Exactly the same numbers (−0 is 0) while a file is read; nearer than a tolerance
 * where the check page offers it. Millimetres, or the file's own unit while reading.
 */
import type { Mm } from '../../units/types';
import type { Mesh } from './types';

const FIRST_SLOTS = 1 << 12;
const FREE = -1;

const bits = new Float64Array(3);
const words = new Uint32Array(bits.buffer);

/** Mixes the six words of three numbers (multipliers: odd constants after Knuth, TAOCP 3, 6.4 [memory]). */
function hashOf(x: number, y: number, z: number): number {
  bits[0] = x;
  bits[1] = y;
  bits[2] = z;
  let hash = 0;
  for (let i = 0; i < 6; i++) {
    hash = Math.imul(hash ^ words[i], 0x9e3779b1);
    hash ^= hash >>> 15;
  }
  return hash >>> 0;
}

/** Gives every different point an index, in the order in which they come. */
export class PointIndex {
  private points = new Float64Array(3 * 1024);
  private slots = new Int32Array(FIRST_SLOTS).fill(FREE);
  count = 0;

  /** The index of a point; a new one where it was not there before. */
  add(givenX: number, givenY: number, givenZ: number): number {
    // −0 becomes 0.
    const x = givenX + 0;
    const y = givenY + 0;
    const z = givenZ + 0;
    const slot = this.slotOf(x, y, z);
    const at = this.slots[slot];
    return at === FREE ? this.append(slot, x, y, z) : at;
  }

  /** The index of a point; −1 where it is not there. */
  find(x: number, y: number, z: number): number {
    return this.slots[this.slotOf(x + 0, y + 0, z + 0)];
  }

  /** All points, without spare room. */
  all(): Float64Array {
    return this.points.slice(0, 3 * this.count);
  }

  /** Where the point stands in the table, or the free slot where it belongs. */
  private slotOf(x: number, y: number, z: number): number {
    const { points, slots } = this;
    const mask = slots.length - 1;
    let slot = hashOf(x, y, z) & mask;
    for (let at = slots[slot]; at !== FREE; at = slots[slot]) {
      if (points[3 * at] === x && points[3 * at + 1] === y && points[3 * at + 2] === z) break;
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private append(slot: number, x: number, y: number, z: number): number {
    if (3 * this.count === this.points.length) {
      const larger = new Float64Array(2 * this.points.length);
      larger.set(this.points);
      this.points = larger;
    }
    this.points[3 * this.count] = x;
    this.points[3 * this.count + 1] = y;
    this.points[3 * this.count + 2] = z;
    this.slots[slot] = this.count;
    this.count += 1;
    if (2 * this.count > this.slots.length) this.rehash();
    return this.count - 1;
  }

  private rehash(): void {
    const slots = new Int32Array(2 * this.slots.length).fill(FREE);
    const mask = slots.length - 1;
    for (let i = 0; i < this.count; i++) {
      let slot = hashOf(this.points[3 * i], this.points[3 * i + 1], this.points[3 * i + 2]) & mask;
      while (slots[slot] !== FREE) slot = (slot + 1) & mask;
      slots[slot] = i;
    }
    this.slots = slots;
  }
}

/**
 * For each point the first kept one within the tolerance, itself where there is none.
 * @param among the points looked at; all others are kept
 */
export function firstNear(points: Float64Array, tolerance: Mm, among?: Iterable<number>): Uint32Array {
  const cells = new PointIndex();
  const members: number[][] = [];
  const kept = Uint32Array.from({ length: points.length / 3 }, (_, i) => i);
  for (const i of among ?? kept.keys()) {
    const cell = [0, 1, 2].map((axis) => Math.floor(points[3 * i + axis] / tolerance));
    const near = nearIn(points, i, tolerance, cells, members, cell);
    kept[i] = near ?? i;
    if (near === null) (members[cells.add(cell[0], cell[1], cell[2])] ??= []).push(i);
  }
  return kept;
}

/** A kept point within the tolerance of point i, from the 27 cells around its own. */
function nearIn(
  points: Float64Array,
  i: number,
  tolerance: Mm,
  cells: PointIndex,
  members: readonly number[][],
  [cx, cy, cz]: readonly number[],
): number | null {
  for (let k = 0; k < 27; k++) {
    const cell = cells.find(cx + (k % 3) - 1, cy + (Math.floor(k / 3) % 3) - 1, cz + Math.floor(k / 9) - 1);
    if (cell < 0) continue;
    for (const m of members[cell]) if (distance(points, i, m) <= tolerance) return m;
  }
  return null;
}

const distance = (points: Float64Array, i: number, k: number): Mm =>
  Math.hypot(
    points[3 * i] - points[3 * k],
    points[3 * i + 1] - points[3 * k + 1],
    points[3 * i + 2] - points[3 * k + 2],
  );

/**
 * The mesh with points nearer than the tolerance made one; triangles that lose a side are left out.
 * @param among the points looked at; all others stay
 */
export function weld(mesh: Mesh, tolerance_mm: Mm, among?: Iterable<number>): Mesh {
  if (!(tolerance_mm > 0)) throw new Error(`weld: the tolerance ${tolerance_mm} has to be above 0`);
  const near = firstNear(mesh.points, tolerance_mm, among);
  const triangles: number[] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const [a, b, c] = [near[mesh.triangles[t]], near[mesh.triangles[t + 1]], near[mesh.triangles[t + 2]]];
    if (a !== b && b !== c && c !== a) triangles.push(a, b, c);
  }
  return { points: mesh.points, triangles: Uint32Array.from(triangles) };
}
