/**
 * The arguments of `section -- MESH-OR-OUTLINE [--layer MM] [--height MM]`. Lengths as a person types them: 0.06, "0,06 mm".
 */
import { parseArgs } from 'node:util';
import { DEFAULT_PROCESS } from '../layout/defaults';
import { SIZE_LIMIT_mm } from '../layout/limits';
import { fail, ok, type Result } from '../layout/result';
import { parseLength } from '../units/parse';
import type { Mm } from '../units/types';

export interface SectionArguments {
  readonly file: string;
  /** Meshes: thickness of a layer. */
  readonly layer_mm: Mm;
  /** Outlines: how high they stand. */
  readonly height_mm: Mm;
}

/** What a drawing does not say. */
const OUTLINE_HEIGHT_mm = 10;
/** Thickest layer that a layout's process may have. */
const THICKEST_mm = 10;

/** A length above 0 up to a limit; the default where none is given. */
function lengthOf(given: string | undefined, what: string, most: Mm, otherwise: Mm): Result<Mm> {
  if (given === undefined) return ok(otherwise);
  const length = parseLength(given);
  if (!length.ok) return length;
  if (length.value > 0 && length.value <= most) return length;
  return fail('field-range', { what, found: given, accepted: `0.001 to ${most} mm` });
}

/** Faults: section-usage, length-unreadable, length-too-large, field-range. */
export function sectionArguments(given: readonly string[]): Result<SectionArguments> {
  const parsed = parse(given);
  if (!parsed.ok) return parsed;
  const { values, positionals } = parsed.value;
  const [file] = positionals;
  if (file === undefined) return fail('section-usage', { detail: 'no file is named' });
  if (positionals.length > 1)
    return fail('section-usage', { detail: `${positionals.length} files are named` });
  const layer = lengthOf(values.layer, 'Layer thickness', THICKEST_mm, DEFAULT_PROCESS.layer_mm);
  if (!layer.ok) return layer;
  const height = lengthOf(values.height, 'Height', SIZE_LIMIT_mm, OUTLINE_HEIGHT_mm);
  return height.ok ? ok({ file, layer_mm: layer.value, height_mm: height.value }) : height;
}

interface Parsed {
  readonly values: { readonly layer?: string; readonly height?: string };
  readonly positionals: readonly string[];
}
const OPTIONS = { layer: { type: 'string' }, height: { type: 'string' } } as const;

function parse(given: readonly string[]): Result<Parsed> {
  try {
    const { values, positionals, tokens } = parseArgs({
      args: [...given],
      options: OPTIONS,
      allowPositionals: true,
      tokens: true,
    });
    const named = tokens.flatMap((token) => (token.kind === 'option' ? [token.name] : []));
    const twice = named.find((name, i) => named.indexOf(name) !== i);
    return twice === undefined
      ? ok({ values, positionals })
      : fail('section-usage', { detail: `--${twice} is given twice` });
  } catch (error) {
    const detail = error instanceof Error ? error.message.split('. ')[0] : 'the arguments are unreadable';
    return fail('section-usage', { detail: detail.replace(/\.$/, '') });
  }
}
