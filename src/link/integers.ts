/**
 * Whole numbers as few bytes: seven bits a byte, lowest first, the top bit says that more follow (LEB128); signed ones
 * folded to 0, −1, 1, −2, 2 … first (zigzag). Up to 2^53 − 1, so nothing here uses 32-bit operators on the value.
 */
const BASE = 128;
const MORE = 0x80;
/** 2^53 takes eight bytes. */
const MOST_BYTES = 8;

/** What is thrown inside this folder when a body does not hold what it should; no caller outside sees it. */
export class Unreadable extends Error {}

/** Collects numbers as bytes. */
export class IntegerWriter {
  private readonly bytes: number[] = [];

  /** A whole number from 0 on. */
  whole(value: number): void {
    let rest = value;
    for (; rest >= BASE; rest = Math.floor(rest / BASE)) this.bytes.push((rest % BASE) | MORE);
    this.bytes.push(rest);
  }
  /** A whole number of either sign. */
  signed(value: number): void {
    this.whole(value < 0 ? -2 * value - 1 : 2 * value);
  }
  done(): Uint8Array {
    return Uint8Array.from(this.bytes);
  }
}

/** Gives the numbers back in the order in which they were written. */
export class IntegerReader {
  private at = 0;
  constructor(private readonly bytes: Uint8Array) {}

  whole(): number {
    let [value, unit] = [0, 1];
    for (let k = 0; k < MOST_BYTES; k++, unit *= BASE) {
      const byte = this.bytes[this.at++];
      if (byte === undefined) throw new Unreadable('the body ends within a number');
      value += (byte & ~MORE) * unit;
      if (byte >= MORE) continue;
      if (!Number.isSafeInteger(value)) break;
      return value;
    }
    throw new Unreadable('a number is too long');
  }
  signed(): number {
    const folded = this.whole();
    return folded % 2 === 0 ? folded / 2 : -(folded + 1) / 2;
  }
  /** As many bytes as they are. */
  take(count: number): Uint8Array {
    if (count > this.bytes.length - this.at) throw new Unreadable('the body is shorter than it says');
    this.at += count;
    return this.bytes.subarray(this.at - count, this.at);
  }
  get ended(): boolean {
    return this.at === this.bytes.length;
  }
}
