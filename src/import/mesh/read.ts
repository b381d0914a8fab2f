/**
 * The border where mesh files come in. Which kind a file is, its bytes say, not its name: a binary STL may begin with
 * "solid". Points are handed on in millimetres; an STL's numbers are taken as millimetres.
 */
import { fail, ok, type Result } from '../../layout/result';
import { BYTES_PER_MB, MOST_BYTES } from './limits';
import { FACET_BYTES, HEADER_BYTES, namedTriangles, readBinaryStl, type Watching } from './stl';
import { readTextStl } from './stlText';
import { readThreeMf } from './threeMf/read';
import type { MeshBody, MeshFile } from './types';

/** How many bytes are looked at to tell text from binary. */
const LOOKED_AT = 512;
/** Where the first word behind comments is looked for. */
const COMMENTS_WITHIN = 8192;
const SOLID = 'solid';
const ENDING = /\.(stl|3mf)$/i;

type Kind = 'binary' | 'text' | '3mf';

/**
 * Reads a mesh file.
 * @param bytes the file
 * @param name its name, for messages and for bodies without a name
 * @param watch hears the share that is done, 0 … 1
 * Faults: mesh-file-too-large, mesh-unknown-kind, mesh-empty, and those of stl.ts, stlText.ts and threeMf/.
 */
export function readMesh(bytes: Uint8Array, name: string, watch: Watching = () => {}): Result<MeshFile> {
  if (bytes.length > MOST_BYTES) {
    const found = Math.ceil(bytes.length / BYTES_PER_MB);
    return fail('mesh-file-too-large', { found, limit: MOST_BYTES / BYTES_PER_MB });
  }
  if (bytes.length === 0) return fail('mesh-empty', { name });
  const kind = kindOf(bytes, name);
  if (kind === null) return fail('mesh-unknown-kind', { name });
  const plainName = name.replace(ENDING, '') || name;
  const read = readKind(kind, bytes, plainName, watch);
  if (!read.ok) return read;
  watch(1);
  return ok({ ...read.value, name, bodies: namedApart(read.value.bodies) });
}

function readKind(kind: Kind, bytes: Uint8Array, name: string, watch: Watching): Result<MeshFile> {
  if (kind === '3mf') return readThreeMf(bytes, name, watch);
  const stl =
    kind === 'binary'
      ? readBinaryStl(bytes, name, watch)
      : readTextStl(bytes.subarray(markLength(bytes)), name, watch);
  return stl.ok ? ok({ name, kind: 'stl', unit: null, ...stl.value }) : stl;
}

function kindOf(bytes: Uint8Array, name: string): Kind | null {
  if (bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] <= 7) return '3mf';
  if (bytes.length >= HEADER_BYTES) {
    const count = namedTriangles(bytes);
    if (count > 0 && bytes.length === HEADER_BYTES + count * FACET_BYTES) return 'binary';
  }
  if (isText(bytes)) return beginsWithSolid(bytes) ? 'text' : null;
  return /\.3mf$/i.test(name) ? '3mf' : /\.stl$/i.test(name) || beginsWithSolid(bytes) ? 'binary' : null;
}

/** No control characters but tabs and ends of lines in the first bytes. */
function isText(bytes: Uint8Array): boolean {
  const end = Math.min(bytes.length, LOOKED_AT);
  for (let i = 0; i < end; i++) if (bytes[i] < 9 || (bytes[i] > 13 && bytes[i] < 32)) return false;
  return true;
}

/** Length of a UTF-8 byte order mark at the start; 0 where there is none. */
const markLength = (bytes: Uint8Array): number =>
  bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;

/** Lines of comment that some programs put first. */
const COMMENTS = /^(\s*[#;][^\r\n]*[\r\n])+/;

function beginsWithSolid(bytes: Uint8Array): boolean {
  const start = String.fromCharCode(...bytes.subarray(markLength(bytes), COMMENTS_WITHIN));
  return start.replace(COMMENTS, '').trimStart().toLowerCase().startsWith(SOLID);
}

/** Names that repeat get a number, so that each body has a name of its own. */
function namedApart(bodies: readonly MeshBody[]): MeshBody[] {
  const used = new Set<string>();
  return bodies.map((body) => {
    let name = body.name;
    for (let k = 2; used.has(name); k++) name = `${body.name} ${k}`;
    used.add(name);
    return { ...body, name };
  });
}
