/**
 * How much a drawing may hold. The limits stop files made to exhaust memory; drawings of parts stay far below them.
 */

/** Characters; 100 million, the largest file that is opened at all. */
export const MOST_CHARACTERS = 100_000_000;
/** Lines, arcs and curves after blocks and repeated elements are written out. */
export const MOST_CURVES = 500_000;
/** Points of all outlines together. */
export const MOST_POINTS = 300_000;
/** Blocks within blocks, groups within groups. */
export const MOST_LEVELS = 64;
/** Objects counted, blocks and groups included, before the reader gives up. */
export const MOST_VISITS = 2_000_000;
/** No coordinate lies further out: 100 m. */
export const FURTHEST_mm = 100_000;
/** Places and lines that are kept for the picture of what was left out. */
export const MOST_PLACES = 200;

/** Outer rings and holes together. */
export const MOST_RINGS = 20_000;

/** Counts what is used up; `left` turns false for good once a limit is passed. */
export class Budget {
  private curves = 0;
  private visits = 0;
  private points = 0;

  get left(): boolean {
    return this.curves <= MOST_CURVES && this.visits <= MOST_VISITS && this.points <= MOST_POINTS;
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
