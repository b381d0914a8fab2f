/**
 * How much a drawing may hold. The limits stop files made to exhaust memory; drawings of parts stay far below them.
 */

/** Characters; 100 million, the largest file that is opened at all. */
export const MOST_CHARACTERS = 100_000_000;
/** Lines, arcs and curves after blocks and repeated elements are written out. */
export const MOST_CURVES = 500_000;
/** Points of all outlines together. */
export const MOST_POINTS = 300_000;
/** Effort of computing points on curves: a point of an arc is 1, one of a spline the square of its degree. */
export const MOST_EFFORT = 40_000_000;
/** Blocks within blocks, groups within groups. */
export const MOST_LEVELS = 64;
/** Objects counted, blocks and groups included, before the reader gives up. */
export const MOST_VISITS = 1_000_000;
/** No coordinate of an outline lies further out: 100 m. */
export const FURTHEST_mm = 100_000;
/** Centres and radii of arcs: a nearly straight arc may have them far outside. Doubles still tell 1e-5 mm there. */
export const FURTHEST_CENTRE_mm = 1e11;
/** Places and lines that are kept for the picture of what was left out. */
export const MOST_PLACES = 200;

/** Outer rings and holes together. */
export const MOST_RINGS = 20_000;

/** What reading a file has cost so far. */
export interface Used {
  readonly curves: number;
  readonly visits: number;
  readonly points: number;
  /** Points computed on curves, those of tries that were too coarse included. */
  readonly tried: number;
}

/** Counts what is used up; `left` turns false for good once a limit is passed. */
export class Budget {
  private curves = 0;
  private visits = 0;
  private points = 0;
  private tries = 0;
  private effort = 0;

  get left(): boolean {
    const few = this.curves <= MOST_CURVES && this.visits <= MOST_VISITS && this.points <= MOST_POINTS;
    return few && this.effort <= MOST_EFFORT;
  }
  /** Points that may still be made. */
  get room(): number {
    return this.left ? MOST_POINTS - this.points : 0;
  }
  get used(): Used {
    return { curves: this.curves, visits: this.visits, points: this.points, tried: this.tries };
  }
  /** `count` points were computed, whether they are kept or not. */
  tried(count: number, effort = 1): void {
    this.tries += count;
    this.effort += count * effort;
  }
  /** One more object was looked at; false where that was too many. */
  visit(): boolean {
    this.visits += 1;
    return this.left;
  }
  /** `count` more curves were made; false where that was too many. */
  take(count: number): boolean {
    this.curves += count;
    return this.left;
  }
  /** `count` more points were made; false where that was too many. */
  takePoints(count: number): boolean {
    this.points += count;
    return this.left;
  }
}
