/**
 * `analyse -- FILE [--height MM]`: reads a layout file and gives the report of one layer. Without a height: the first
 * layer. `--height z` means the layer k with (k−1)·t ≤ z < k·t; the top belongs to the last layer.
 */
import { readFileSync, statSync } from 'node:fs';
import { analyse, layerAtHeight } from '../build/analyse';
import { report, type Report } from '../export/report';
import { LAYOUT_LIMIT_MB, readLayout } from '../layout/read';
import { fail, ok, type Result } from '../layout/result';
import type { Layout } from '../layout/types';
import { formatField } from '../units/format';
import type { Mm } from '../units/types';
import { analyseArguments } from './arguments';
import { outcome, refusal, type Outcome } from './output';

const BYTES_PER_MB = 1_000_000;

const reasonOf = (error: unknown): string => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOENT') return 'there is no such file';
  if (code === 'EISDIR') return 'it is a folder';
  if (code === 'EACCES') return 'it may not be read';
  return code === '' ? 'reading failed' : `reading failed (${code})`;
};

/** The file's text. Faults: file-not-read, file-too-large, layout-not-json (not UTF-8). */
export function readText(file: string): Result<string> {
  try {
    const bytes = statSync(file).size;
    if (bytes > LAYOUT_LIMIT_MB * BYTES_PER_MB) {
      return fail('file-too-large', { found: Math.ceil(bytes / BYTES_PER_MB), limit: LAYOUT_LIMIT_MB });
    }
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file)));
  } catch (error) {
    if (error instanceof TypeError) return fail('layout-not-json', { detail: 'it is not UTF-8 text' });
    return fail('file-not-read', { reason: reasonOf(error) });
  }
}

/** The report of the layer at a height (null: the first). Fault: height-outside-build. */
export function reportAt(layout: Layout, height_mm: Mm | null): Result<Report> {
  const analysis = analyse(layout);
  const at = layerAtHeight(analysis, height_mm ?? 0);
  if (at) return ok(report(analysis, at.figures, at.height_mm));
  const params = { found: formatField(height_mm ?? 0), top: formatField(analysis.build.height_mm) };
  return fail('height-outside-build', params);
}

/** The whole command, from its arguments to its exit code and text. */
export function analyseCommand(given: readonly string[]): Outcome {
  const parsed = analyseArguments(given);
  if (!parsed.ok) return refusal(parsed.fault);
  const { file, height_mm } = parsed.value;
  const text = readText(file);
  if (!text.ok) return refusal(text.fault, file);
  const layout = readLayout(text.value);
  if (!layout.ok) return refusal(layout.fault, file);
  return outcome(reportAt(layout.value, height_mm), file);
}
