/**
 * A layout's checksum: the first 12 hexadecimal digits of SHA-256 over its canonical JSON (RFC 8785) in UTF-8, without
 * name, note and revision. Two files with the same checksum give the same figures. Synchronous, because pages served
 * without TLS have no WebCrypto.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Layout } from './types';
import { fileForm } from './write';

const CHECKSUM_DIGITS = 12;

/** The canonical JSON that the checksum is taken over. */
export function canonical(layout: Layout): string {
  const { name: _name, note: _note, ...rest } = fileForm({ ...layout, revision: null });
  return canonicalize(rest) ?? '';
}

/** The first twelve hexadecimal digits of a text's SHA-256. */
export const digest = (text: string): string =>
  bytesToHex(sha256(utf8ToBytes(text))).slice(0, CHECKSUM_DIGITS);

/**
 * The same a shape's slab at a time, for layouts of many megabytes beside other work. Yields between pieces. The shapes
 * take the place that their key has among the sorted keys of canonical JSON.
 */
export function* checksumSteps(layout: Layout): Generator<undefined, string, undefined> {
  const { name: _name, note: _note, shapes, ...rest } = fileForm({ ...layout, revision: null });
  const hash = sha256.create();
  const take = (text: string): void => void hash.update(utf8ToBytes(text));
  const members = (value: object): string => canonicalize(value)!.slice(1, -1);
  const keys = Object.entries({ ...rest, shapes: null });
  const part = (keep: (key: string) => boolean): string =>
    members(Object.fromEntries(keys.filter(([key]) => keep(key))));
  take(`{${part((key) => key < 'shapes')},"shapes":{`);
  for (const [i, id] of Object.keys(shapes).sort().entries()) {
    take(`${i === 0 ? '' : ','}${JSON.stringify(id)}:{"slabs":[`);
    for (const [k, slab] of shapes[id]!.slabs.entries()) {
      take((k === 0 ? '' : ',') + canonicalize(slab)!);
      yield;
    }
    take(']}');
  }
  take(`},${part((key) => key > 'shapes')}}`);
  return bytesToHex(hash.digest()).slice(0, CHECKSUM_DIGITS);
}

/** Twelve hexadecimal digits. */
export const checksum = (layout: Layout): string => digest(canonical(layout));
