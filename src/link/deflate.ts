/**
 * Deflate [published: RFC 1951] with a dictionary, which both ends know. Inflating is fed a kilobyte at a time and stops
 * as soon as more comes out than a layout can be: a short text may stand for gigabytes.
 */
import { deflateSync, Inflate } from 'fflate';
import { Unreadable } from './integers';

/** As much as the largest layout file. */
export const MOST_BYTES = 64_000_000;
const PUSH_BYTES = 1024;

/** The same bytes for the same input on every machine: one pinned library does it. */
export const deflate = (bytes: Uint8Array, dictionary: Uint8Array): Uint8Array =>
  deflateSync(bytes, { level: 9, mem: 8, dictionary });

/** Throws Unreadable where the data is none or more than `most` bytes. */
export function inflate(data: Uint8Array, dictionary: Uint8Array, most: number = MOST_BYTES): Uint8Array {
  const pieces: Uint8Array[] = [];
  let [length, ended] = [0, false];
  const stream = new Inflate({ dictionary }, (piece, final) => {
    length += piece.length;
    if (length > most) throw new TooLarge('it holds more than a layout can');
    pieces.push(piece.slice());
    ended = final;
  });
  for (let at = 0; at < data.length; at += PUSH_BYTES) {
    stream.push(data.subarray(at, at + PUSH_BYTES), at + PUSH_BYTES >= data.length);
  }
  if (!ended) throw new Unreadable('the data ends too early');
  const bytes = new Uint8Array(length);
  pieces.reduce((at, piece) => (bytes.set(piece, at), at + piece.length), 0);
  return bytes;
}

/** More comes out than can be a layout. */
export class TooLarge extends Unreadable {}
