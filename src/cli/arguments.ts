/**
 * The arguments of `analyse -- FILE [--height MM]`. A height is a length as a person types it: 25.4, "25,4 mm", "1 in".
 */
import { fail, ok, type Result } from '../layout/result';
import { parseLength } from '../units/parse';
import type { Mm } from '../units/types';

export interface AnalyseArguments {
  readonly file: string;
  /** null: the first layer. */
  readonly height_mm: Mm | null;
}

const HEIGHT = '--height';
const usage = (detail: string): Result<never> => fail('command-usage', { detail });

interface Sorted {
  readonly files: readonly string[];
  readonly heights: readonly string[];
  readonly unknown: readonly string[];
}

/** Takes "--height MM" and "--height=MM" out; what follows "--" is a file whatever it looks like. */
function sortArguments(given: readonly string[]): Sorted {
  const files: string[] = [];
  const heights: string[] = [];
  const unknown: string[] = [];
  for (let i = 0; i < given.length; i++) {
    const word = given[i] ?? '';
    if (word === '--') files.push(...given.slice(i + 1));
    if (word === '--') break;
    if (word === HEIGHT) heights.push(given[++i] ?? '');
    else if (word.startsWith(`${HEIGHT}=`)) heights.push(word.slice(HEIGHT.length + 1));
    else if (word.startsWith('-')) unknown.push(word);
    else files.push(word);
  }
  return { files, heights, unknown };
}

/** Faults: command-usage, length-unreadable, length-too-large. */
export function analyseArguments(given: readonly string[]): Result<AnalyseArguments> {
  const { files, heights, unknown } = sortArguments(given);
  const [file] = files;
  if (unknown[0] !== undefined) return usage(`the option ${unknown[0]} is unknown`);
  if (file === undefined) return usage('no file is named');
  if (files.length > 1) return usage(`${files.length} files are named`);
  if (heights.length > 1) return usage(`${heights.length} heights are given`);
  if (heights[0] === undefined) return ok({ file, height_mm: null });
  const height = parseLength(heights[0]);
  return height.ok ? ok({ file, height_mm: height.value }) : height;
}
