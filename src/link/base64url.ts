/**
 * base64url: bytes as letters, digits, "-" and "_", six bits a character, without padding [published: RFC 4648,
 * section 5]. Decoding accepts the one text that encoding gives for the bytes and nothing else: no padding, no other
 * character, no bits left over that are not 0.
 */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const BITS_PER_CHARACTER = 6;
const BITS_PER_BYTE = 8;
const UNKNOWN = -1;

const VALUES: readonly number[] = Array.from({ length: 128 }, (_, code) =>
  ALPHABET.indexOf(String.fromCharCode(code)),
);

/** The bytes as base64url. */
export function toBase64url(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const left = Math.min(3, bytes.length - i);
    const word = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    for (let k = 0; k <= left; k++) pieces.push(ALPHABET[(word >> (18 - BITS_PER_CHARACTER * k)) & 63]!);
  }
  return pieces.join('');
}

/** The bytes that a base64url text stands for; null where it is none. */
export function fromBase64url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * BITS_PER_CHARACTER) / BITS_PER_BYTE));
  let [held, bits, at] = [0, 0, 0];
  for (let i = 0; i < text.length; i++) {
    const value = VALUES[text.charCodeAt(i)] ?? UNKNOWN;
    if (value === UNKNOWN) return null;
    held = (held << BITS_PER_CHARACTER) | value;
    bits += BITS_PER_CHARACTER;
    if (bits < BITS_PER_BYTE) continue;
    bits -= BITS_PER_BYTE;
    bytes[at++] = held >> bits;
    held &= (1 << bits) - 1;
  }
  return held === 0 ? bytes : null;
}
