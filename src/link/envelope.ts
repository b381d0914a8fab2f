/**
 * The outside of a link: kind and prefix, length, body, check. The length tells a cut link from an altered one: too few
 * characters were cut off, as many or more with a wrong check were altered.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { fail, ok, type Result } from '../layout/result';
import { fromBase64url } from './base64url';
import { readBody, type Body } from './body';
import { inflate, TooLarge } from './deflate';
import { DICTIONARY_1 } from './dictionary1';

export type LinkKind = 'layout' | 'comparison';

const LETTERS: Readonly<Record<LinkKind, string>> = { layout: 'L', comparison: 'C' };
/** Kind and prefix; the rest of the head may be cut off. */
export const PREFIX = /^([LC])([1-9]\d{0,3})(?=\.|$)/;
const HEAD = /^[LC]\d+\.([0-9a-z]{1,8})\./;
const NEWEST_PREFIX = 1;
const LENGTH_BASE = 36;
const CHECK_DIGITS = 8;

const checkOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text))).slice(0, CHECK_DIGITS);

/** The whole text of a link around its body. */
export function sealed(kind: LinkKind, body: string): string {
  const text = `${LETTERS[kind]}${NEWEST_PREFIX}.${body.length.toString(LENGTH_BASE)}.${body}`;
  return text + checkOf(text);
}

/** What a sentence around a link puts behind it. */
const BEHIND = /^[).,;:!?>\]}'"]*$/;

/** The part after "#" without what mail programs put between. */
const bare = (text: string): string => text.slice(text.indexOf('#') + 1).replace(/\s|%0[AaDd]|%20/g, '');

/** The body's characters. Faults: link-cut, link-altered. */
function unsealed(text: string): Result<string> {
  const head = HEAD.exec(text);
  if (!head) return fail(/^[LC]\d+(\.[0-9a-z]{0,8})?$/.test(text) ? 'link-cut' : 'link-altered');
  const length = Number.parseInt(head[1]!, LENGTH_BASE);
  const end = head[0].length + length;
  const missing = end + CHECK_DIGITS - text.length;
  if (missing > 0) return fail('link-cut');
  const check = text.slice(end, end + CHECK_DIGITS);
  if (!BEHIND.test(text.slice(end + CHECK_DIGITS)) || checkOf(text.slice(0, end)) !== check)
    return fail('link-altered');
  return ok(text.slice(head[0].length, end));
}

/**
 * What a link's text holds, nothing of it checked yet.
 * Faults: link-none, link-other-kind, link-newer, link-cut, link-altered, link-too-large.
 */
export function opened(given: string, kind: LinkKind): Result<Body> {
  const text = bare(given);
  const [, letter, prefix] = PREFIX.exec(text) ?? [];
  if (letter === undefined) return fail('link-none');
  if (letter !== LETTERS[kind]) return fail('link-other-kind');
  if (Number(prefix) > NEWEST_PREFIX)
    return fail('link-newer', { found: Number(prefix), newest: NEWEST_PREFIX });
  const body = unsealed(text);
  if (!body.ok) return body;
  const data = fromBase64url(body.value);
  if (data === null) return fail('link-altered');
  try {
    return ok(readBody(inflate(data, DICTIONARY_1)));
  } catch (error) {
    return fail(error instanceof TooLarge ? 'link-too-large' : 'link-altered');
  }
}
