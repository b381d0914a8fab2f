/**
 * Opens a file by its kind: a layout file replaces the layout, outlines and meshes go to their check page. What cannot be opened is
 * reported in one sentence and the open layout stays as it is.
 */
import { t } from '../../language/index';
import { fail, ok, type Fault, type Result } from '../../layout/result';
import type { Layout } from '../../layout/types';
import type { Context } from '../types';
import { kindOf } from './fileKind';
import { openLayout } from './openLayout';

/** Larger files are refused before they are read. */
const OUTLINES_LIMIT_MB = 100;
/** As the mesh reader has it. */
const MESH_LIMIT_MB = 100;
const BYTES_PER_MB = 1_000_000;

export const LAYOUT_FILES = '.json,application/json';
export const OUTLINE_FILES = '.svg,.dxf,image/svg+xml,image/vnd.dxf';
export const MESH_FILES = '.stl,.3mf,model/stl,model/3mf';

function tooLarge(file: File, limit: number): Fault | null {
  const found = Math.ceil(file.size / BYTES_PER_MB);
  return found > limit ? { code: 'file-too-large', params: { found, limit } } : null;
}

async function textOf(file: File): Promise<Result<string>> {
  try {
    return ok(await file.text());
  } catch {
    return fail('file-unreadable', { name: file.name });
  }
}

/** In a worker, where the file is so large that reading it would hold up the page; null where there is none. */
async function readBeside(file: File): Promise<Result<Layout> | null> {
  const { LARGE_CHARACTERS, readLayoutBeside } = await import('../../worker/layoutFiles');
  return file.size > LARGE_CHARACTERS ? readLayoutBeside(file) : null;
}

async function readHere(file: File, readLayout: (text: string) => Result<Layout>): Promise<Result<Layout>> {
  const text = await textOf(file);
  return text.ok ? readLayout(text.value) : text;
}

/** True where a layout was refused because the file is one that the library exports. */
const isLibraryFile = ({ code, params }: Fault): boolean =>
  code === 'layout-wrong-format' && params['found'] === '"evenplate-library"';

/** Reads a chosen layout file. Never throws. */
export async function readLayoutFile(file: File): Promise<Result<Layout>> {
  const { LAYOUT_LIMIT_MB, readLayout } = await import('../../layout/read');
  const large = tooLarge(file, LAYOUT_LIMIT_MB);
  if (large) return { ok: false, fault: large };
  const read = (await readBeside(file)) ?? (await readHere(file, readLayout));
  return !read.ok && isLibraryFile(read.fault) ? fail('library-file-as-layout') : read;
}

async function openLayoutFile({ bench }: Context, file: File): Promise<Fault | null> {
  const read = await readLayoutFile(file);
  if (!read.ok) return read.fault;
  openLayout(bench, t('Open {name}', { name: file.name }), read.value);
  return null;
}

function openOutlines({ ports }: Context, file: File): Fault | null {
  const large = tooLarge(file, OUTLINES_LIMIT_MB);
  if (!large) ports.showImport(file);
  return large;
}

function openMesh({ ports }: Context, file: File): Fault | null {
  const found = Math.ceil(file.size / BYTES_PER_MB);
  if (found > MESH_LIMIT_MB) return { code: 'mesh-file-too-large', params: { found, limit: MESH_LIMIT_MB } };
  ports.showImport(file);
  return null;
}

/** Opens a chosen or dropped file. Never throws. */
export async function openFile(context: Context, file: File): Promise<void> {
  const fault = await opened(context, file);
  if (fault) context.bench.notify(fault);
}

async function opened(context: Context, file: File): Promise<Fault | null> {
  switch (kindOf(file.name)) {
    case 'layout':
      return openLayoutFile(context, file);
    case 'outlines':
      return openOutlines(context, file);
    case 'mesh':
      return openMesh(context, file);
    case null:
      return { code: 'file-unknown-kind', params: { name: file.name } };
  }
}
