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

/** Twelve hexadecimal digits. */
export const checksum = (layout: Layout): string => digest(canonical(layout));
