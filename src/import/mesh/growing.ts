/**
 * Lists of number triples that grow by doubling, for readers that do not know beforehand how much will come.
 */
/** Small: a file may name thousands of empty objects. */
const FIRST_ROOM = 48;

class Triples<List extends Float64Array | Uint32Array> {
  /** Numbers, three for each triple. */
  length = 0;

  constructor(
    private values: List,
    private readonly make: (room: number) => List,
  ) {}

  push(a: number, b: number, c: number): void {
    if (this.length + 3 > this.values.length) {
      const larger = this.make(2 * this.values.length);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[this.length] = a;
    this.values[this.length + 1] = b;
    this.values[this.length + 2] = c;
    this.length += 3;
  }

  /** What was pushed, without spare room. */
  all(): List {
    return this.values.slice(0, this.length) as List;
  }
}

export class PointTriples extends Triples<Float64Array> {
  constructor() {
    super(new Float64Array(FIRST_ROOM), (room) => new Float64Array(room));
  }
}
export class IndexTriples extends Triples<Uint32Array> {
  constructor() {
    super(new Uint32Array(FIRST_ROOM), (room) => new Uint32Array(room));
  }
}
