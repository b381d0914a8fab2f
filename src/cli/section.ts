/**
 * `section -- MESH-OR-OUTLINE [--layer MM] [--height MM]`: a mesh cut at the middle of every layer, or the outlines of a
 * drawing at one height, as shapes of a layout. Prints `{ "shapes", "volume_mm3", "problems" }`. A mesh is set down with its
 * lowest point on z = 0 and the middle of its footprint on the origin; an outline's origin is the middle of its box.
 */
import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { checkMesh, fileFindings, orient, readMesh, sectionMesh, type Mesh } from '../import/mesh';
import { BYTES_PER_MB, MOST_BYTES } from '../import/mesh/limits';
import { importProblems, placeImport, readOutlines } from '../import/outlines';
import { DEFAULT_LIMITS } from '../layout/defaults';
import { plainName } from '../layout/ids';
import { messageAdvice, messageText } from '../layout/messages';
import { fail, ok, type Fault, type Result } from '../layout/result';
import type { Shape, ShapeId } from '../layout/types';
import type { Mm3 } from '../units/types';
import { EXIT_OK, refusal, type Outcome } from './output';
import { sectionArguments, type SectionArguments } from './sectionArguments';

export interface SectionProblem {
  readonly code: string;
  /** Absent where the problem concerns the whole file. */
  readonly shape?: ShapeId;
  readonly text: string;
}
export interface SectionReport {
  readonly shapes: Readonly<Record<ShapeId, Shape>>;
  readonly volume_mm3: Readonly<Record<ShapeId, Mm3>>;
  readonly problems: readonly SectionProblem[];
}

const LONGEST_ID = 64;
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
};

function readBytes(file: string): Result<Uint8Array> {
  try {
    const bytes = statSync(file).size;
    if (bytes <= MOST_BYTES) return ok(readFileSync(file));
    const [found, limit] = [Math.ceil(bytes / BYTES_PER_MB), MOST_BYTES / BYTES_PER_MB];
    return fail('mesh-file-too-large', { found, limit });
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    return fail('section-not-read', { reason: REASONS[code] ?? 'reading failed' });
  }
}

/** Collects shapes under ids that a layout accepts, each one its own. */
class Collected {
  readonly shapes: Record<ShapeId, Shape> = Object.create(null) as Record<ShapeId, Shape>;
  readonly volume_mm3: Record<ShapeId, Mm3> = Object.create(null) as Record<ShapeId, Mm3>;
  readonly problems: SectionProblem[] = [];
  /** Why there is no shape: the last thing that was told. */
  private last: Fault | null = null;

  idFor(name: string): ShapeId {
    const plain = plainName(name, ' ').trim() || 'shape';
    for (let k = 1; ; k++) {
      const ending = k === 1 ? '' : ` ${k}`;
      const id =
        [...plain]
          .slice(0, LONGEST_ID / 2)
          .join('')
          .trim() + ending;
      if (!(id in this.shapes)) return id;
    }
  }
  add(id: ShapeId, shape: Shape, volume: Mm3): void {
    this.shapes[id] = shape;
    this.volume_mm3[id] = volume;
  }
  tell({ code, params }: Fault, shape?: ShapeId): void {
    this.last = { code, params };
    const text = `${messageText(code, params)} ${messageAdvice(code, params)}`;
    this.problems.push(shape === undefined ? { code, text } : { code, shape, text });
  }
  /** The report; a fault where there is no shape at all. */
  report(name: string): Result<SectionReport> {
    const { shapes, volume_mm3, problems, last } = this;
    if (Object.keys(shapes).length > 0) return ok({ shapes, volume_mm3, problems });
    const detail = last === null ? 'nothing is left of it.' : messageText(last.code, last.params);
    return fail('section-no-shape', { name, detail });
  }
}

/** One body's slabs; its volume is the mesh's own where that is sound, else that of the slabs. */
function addBody(into: Collected, id: ShapeId, mesh: Mesh, { layer_mm }: SectionArguments): void {
  const { chainGap_mm } = DEFAULT_LIMITS;
  const check = checkMesh(mesh, chainGap_mm);
  for (const finding of check.findings) into.tell(finding, id);
  const cut = sectionMesh(mesh, { layer_mm, chainGap_mm });
  if (!cut.ok) {
    if (!check.findings.some(({ code }) => code === cut.fault.code)) into.tell(cut.fault, id);
    return;
  }
  for (const problem of cut.value.problems) into.tell(problem, id);
  const sound = check.volume_mm3 !== null && check.overlappingShells === 0 && cut.value.unitedLayers === 0;
  into.add(id, { slabs: cut.value.slabs }, sound ? check.volume_mm3! : cut.value.volume_mm3);
}

/** A mesh file's shapes. Faults: those of readMesh, section-no-shape. */
function meshReport(bytes: Uint8Array, name: string, given: SectionArguments): Result<SectionReport> {
  const file = readMesh(bytes, name);
  if (!file.ok) return file;
  const into = new Collected();
  for (const finding of fileFindings(file.value)) into.tell(finding);
  for (const body of file.value.bodies) addBody(into, into.idFor(body.name), orient(body.mesh), given);
  return into.report(name);
}

/** A drawing's shapes, one slab each. Faults: those of readOutlines, section-no-shape. */
function outlineReport(text: string, name: string, given: SectionArguments): Result<SectionReport> {
  const read = readOutlines(name, text, { chainGap_mm: DEFAULT_LIMITS.chainGap_mm });
  if (!read.ok) return read;
  const into = new Collected();
  for (const problem of importProblems(read.value)) into.tell(problem);
  for (const placed of placeImport(read.value)) {
    const id = into.idFor(placed.name);
    const shape: Shape = { slabs: [{ to_mm: given.height_mm, rings: placed.rings }] };
    into.add(id, shape, placed.area_mm2 * given.height_mm);
  }
  return into.report(name);
}

/** Meshes are told by their first bytes, drawings by their name or their text. */
function reportOf(bytes: Uint8Array, name: string, given: SectionArguments): Result<SectionReport> {
  if (/\.(svg|dxf)$/i.test(name)) return outlineReport(textOf(bytes), name, given);
  const mesh = meshReport(bytes, name, given);
  if (mesh.ok || mesh.fault.code !== 'mesh-unknown-kind' || /\.(stl|3mf)$/i.test(name)) return mesh;
  const outlines = outlineReport(textOf(bytes), name, given);
  const unknown = !outlines.ok && outlines.fault.code === 'outlines-unknown-kind';
  return unknown ? fail('section-unknown-kind', { name }) : outlines;
}
const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** The whole command, from its arguments to its exit code and text. The JSON is one line: sections are long. */
export function sectionCommand(given: readonly string[]): Outcome {
  const parsed = sectionArguments(given);
  if (!parsed.ok) return refusal(parsed.fault);
  const { file } = parsed.value;
  const bytes = readBytes(file);
  if (!bytes.ok) return refusal(bytes.fault, file);
  const report = reportOf(bytes.value, basename(file), parsed.value);
  return report.ok
    ? { exitCode: EXIT_OK, text: `${JSON.stringify(report.value)}\n` }
    : refusal(report.fault, file);
}
