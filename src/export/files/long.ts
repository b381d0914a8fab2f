/**
 * Files that need every section of every part: the table of parts and the bodies. They are made from the layout alone, so
 * that another thread can do it, and go step by step.
 */
import { ok, type Result } from '../../layout/result';
import { scaled } from '../../build/stack';
import { exportName, type FileSource } from '../forUse';
import { plate3mf } from '../mesh/plate3mf';
import { csvSteps, type CsvForm } from '../table/csv';
import { partsTable } from '../table/partsTable';
import { csvFile } from './csvFile';
import type { FileMade, LongFile } from './types';

/** A plate and what is known of it that its sections do not tell. */
export interface LongSource extends FileSource {
  /** What the plate is, in words. */
  readonly state: string;
}

/** Share of the work that dividing takes; the rest is writing. */
const DIVIDING = 0.98;

function* partsFile(source: LongSource, csv: CsvForm): Generator<number, Result<FileMade>> {
  const table = yield* scaled(partsTable(source.layout, source.state), 0, DIVIDING);
  const text = yield* scaled(csvSteps(table, csv), DIVIDING, 1);
  return ok(csvFile(exportName(source, 'parts.csv'), text));
}

function* meshFile(source: LongSource): Generator<number, Result<FileMade>> {
  const made = yield* plate3mf(source.layout, source.blocked);
  if (!made.ok) return made;
  return ok({ name: exportName(source, 'plate.3mf'), mime: 'model/3mf', content: made.value });
}

/** The file. Yields how far it is, 0 to 1. Fault: export-mesh-too-large. */
export const longFileSteps = (source: LongSource, file: LongFile): Generator<number, Result<FileMade>> =>
  file.kind === 'parts' ? partsFile(source, file.csv) : meshFile(source);
