/**
 * Reads a layout file: size, JSON without repeated keys, format, version, that version's schema, then what concerns
 * several values at once. Whatever the text holds, the answer is a layout or one fault; nothing is thrown. Lengths come
 * out in whole micrometres, angles in whole thousandths of a degree, every optional key with its default.
 */
import * as v from 'valibot';
import { acceptedIn } from './accepted';
import { migrate, versionOf, type JsonObject } from './migrate';
import { pathText, valueText } from './path';
import { repeatedKey } from './repeatedKeys';
import { fail, ok, type Fault, type Param, type Result, type Words } from './result';
import { FORMAT, SCHEMAS } from './schema';
import { semanticFault } from './semantics';
import type { Layout } from './types';

/** Largest layout file: some four thousand sections of 700 points; reading one takes 3 s and 1.1 GB for as long (measured in Node). */
export const LAYOUT_LIMIT_MB = 64;
const CHARACTERS_PER_MB = 1_000_000;
const LONGEST_DETAIL = 120;
/** Names that JavaScript objects keep for themselves. */
const RESERVED_IDS = ['__proto__', 'constructor', 'prototype'];

const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function faultOf(issue: v.BaseIssue<unknown>): Fault {
  const path = (issue.path ?? []).map((item) => item.key as string | number);
  const where = pathText(path);
  if (issue.type === 'strict_object' && issue.path?.at(-1)?.origin === 'key') {
    const key = String(path.at(-1));
    const code = issue.expected === 'never' ? 'layout-unknown-key' : 'layout-missing-key';
    return { code, params: { key: valueText(key), path: pathText(path.slice(0, -1)) } };
  }
  return {
    code: 'layout-wrong-value',
    params: { path: where, found: valueText(issue.input), accepted: acceptedIn(issue.message) },
  };
}

const listFault = (
  path: string,
  found: readonly unknown[],
  accepted: Words = { text: 'an object' },
): Fault => ({
  code: 'layout-wrong-value',
  params: { path, found: valueText(found), accepted },
});

/** A list where an object belongs, which the schema library lets pass or reports by what the list lacks. */
function listForObject({ schedule, revision, zoning, ...value }: JsonObject, version: number): Fault | null {
  for (const key of ['shapes', 'limits']) {
    const found = value[key];
    if (Array.isArray(found)) return listFault(key, found);
  }
  if (version === 1 && Array.isArray(zoning))
    return listFault('zoning', zoning, {
      text: 'one division; a list of divisions over height needs version 2',
    });
  if (Array.isArray(schedule)) return listFault('schedule', schedule);
  if (Array.isArray(revision)) return listFault('revision', revision);
  const attended = isObject(schedule) ? schedule['attended'] : null;
  return Array.isArray(attended) ? listFault('schedule.attended', attended) : null;
}

/** What the schema library lets pass: lists where objects belong, and ids that it drops. */
function formFault(value: JsonObject, version: number): Fault | null {
  const list = listForObject(value, version);
  if (list) return list;
  const shapes = value['shapes'];
  const reserved = isObject(shapes) && RESERVED_IDS.find((id) => Object.hasOwn(shapes, id));
  if (!reserved) return null;
  const accepted: Words = {
    text: 'any id except {names} and {last}',
    values: { names: RESERVED_IDS.slice(0, -1).join(', '), last: RESERVED_IDS.at(-1)! },
  };
  return { code: 'layout-wrong-value', params: { path: 'shapes', found: `"${reserved}"`, accepted } };
}

function checked(value: JsonObject, version: number): Result<Layout> {
  const formal = formFault(value, version);
  if (formal) return { ok: false, fault: formal };
  const parsed = v.safeParse(SCHEMAS[version - 1]!, value, { abortEarly: true });
  if (!parsed.success) return { ok: false, fault: faultOf(parsed.issues[0]) };
  // What a schema accepted, its step brings into the form of the next version; the newest is the type's own.
  const layout = migrate(parsed.output, version) as unknown as Layout;
  const fault = semanticFault(layout, version);
  return fault ? { ok: false, fault } : ok(layout);
}

/**
 * Reads a layout from a JSON value.
 * Faults: layout-not-object, layout-wrong-format, layout-wrong-version, layout-newer-version, layout-unknown-key, layout-missing-key,
 * layout-wrong-value and those of semantics.ts.
 */
export function readLayoutValue(value: unknown): Result<Layout> {
  if (!isObject(value)) return fail('layout-not-object', { found: valueText(value) });
  if (value['format'] !== FORMAT) return fail('layout-wrong-format', { found: valueText(value['format']) });
  const version = versionOf(value);
  return version.ok ? checked(value, version.value) : version;
}

/** Where reading stopped: line and column where the parser gives a position, else its own words and excerpt. */
function jsonPlace(text: string, message: string): Param {
  const position = /position (\d+)/.exec(message)?.[1];
  if (position === undefined && /NaN|Infinity/.test(text))
    return { text: 'NaN and Infinity are no JSON numbers' };
  if (position === undefined) return message.replace(/\s+/g, ' ').slice(0, LONGEST_DETAIL);
  const lines = text.slice(0, Number(position)).split('\n');
  const [line, column] = [lines.length, (lines.at(-1)?.length ?? 0) + 1];
  return { text: 'it cannot be read from line {line}, column {column} on', values: { line, column } };
}

/** Any JSON text without repeated keys. Faults: layout-not-json, layout-repeated-key. */
export function parseJson(text: string): Result<unknown> {
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text;
  if (plain.trim() === '') return fail('layout-not-json', { detail: { text: 'it is empty' } });
  let value: unknown;
  try {
    value = JSON.parse(plain);
  } catch (error) {
    const message = error instanceof Error ? error.message : '';
    return fail('layout-not-json', { detail: jsonPlace(plain, message) });
  }
  const twice = repeatedKey(plain);
  if (twice === null) return ok(value);
  const { key, path, line } = twice;
  return fail('layout-repeated-key', { key: valueText(key), path: pathText(path), line });
}

/**
 * Reads a layout file's text (UTF-8 already decoded; at most LAYOUT_LIMIT_MB million characters).
 * Faults: file-too-large, layout-not-json, layout-repeated-key and those of readLayoutValue.
 */
export function readLayout(text: string): Result<Layout> {
  if (text.length > LAYOUT_LIMIT_MB * CHARACTERS_PER_MB) {
    const found = Math.ceil(text.length / CHARACTERS_PER_MB);
    return fail('file-too-large', { found, limit: LAYOUT_LIMIT_MB });
  }
  const json = parseJson(text);
  return json.ok ? readLayoutValue(json.value) : json;
}
