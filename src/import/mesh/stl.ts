/**
 * Binary STL: 80 bytes of header, the number of triangles, then 50 bytes each (a normal, three points as little-endian
 * 32-bit floats, two bytes of attributes). Normals are not read: the order of the points says which side is outside, as it
 * has to agree with them. Source: 3D Systems, StereoLithography Interface Specification, 1989 [memory].
 */
import { fail, ok, type Result } from '../../layout/result';
import { MOST_TRIANGLES } from './limits';
import { coordinateFault } from './numbers';
import type { MeshBody, MeshLeftOut } from './types';
import { PointIndex } from './weld';

export const HEADER_BYTES = 84;
export const FACET_BYTES = 50;
const POINTS_AT = 12;
/** Triangles between two reports of progress. */
const STEP = 16_384;

export interface StlBodies {
  readonly bodies: readonly MeshBody[];
  readonly leftOut: readonly MeshLeftOut[];
}
export type Watching = (share: number) => void;

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** The number of triangles that the header names. */
export const namedTriangles = (bytes: Uint8Array): number => viewOf(bytes).getUint32(80, true);

/** Faults: mesh-truncated, mesh-too-much, mesh-empty, mesh-bad-number, mesh-too-far. */
export function readBinaryStl(bytes: Uint8Array, name: string, watch: Watching): Result<StlBodies> {
  if (bytes.length < HEADER_BYTES)
    return fail('mesh-truncated', {
      detail: {
        text: '{found} bytes are fewer than the {least} of a header',
        values: { found: bytes.length, least: HEADER_BYTES },
      },
    });
  const named = namedTriangles(bytes);
  const held = Math.floor((bytes.length - HEADER_BYTES) / FACET_BYTES);
  // Who writes without knowing how many there will be leaves the number at nothing; whole facets to the end tell them.
  const unnamed = named === 0 && bytes.length === HEADER_BYTES + held * FACET_BYTES;
  const count = unnamed ? held : named;
  if (count === 0) return fail('mesh-empty', { name });
  if (held < count)
    return fail('mesh-truncated', {
      detail: { text: 'its header names {named} triangles, it holds {held}', values: { named: count, held } },
    });
  if (count > MOST_TRIANGLES)
    return fail('mesh-too-much', { limit: MOST_TRIANGLES, what: { text: 'triangles ¦ counted' } });
  const body = readFacets(bytes, count, name, watch);
  if (!body.ok) return body;
  const rest = bytes.length - HEADER_BYTES - count * FACET_BYTES;
  const leftOut: MeshLeftOut[] = [];
  if (unnamed) leftOut.push({ kind: 'count', what: '', count });
  if (rest > 0) leftOut.push({ kind: 'bytes', what: '', count: rest });
  return ok({ bodies: [body.value], leftOut });
}

function readFacets(bytes: Uint8Array, count: number, name: string, watch: Watching): Result<MeshBody> {
  const view = viewOf(bytes);
  const index = new PointIndex();
  const triangles = new Uint32Array(3 * count);
  for (let t = 0; t < count; t++) {
    for (let corner = 0; corner < 3; corner++) {
      const at = HEADER_BYTES + t * FACET_BYTES + POINTS_AT + 12 * corner;
      const x = view.getFloat32(at, true);
      const y = view.getFloat32(at + 4, true);
      const z = view.getFloat32(at + 8, true);
      const fault = coordinateFault(x, y, z);
      if (fault)
        return fail(fault.code, {
          ...fault.params,
          where: { text: 'triangle {number}', values: { number: t + 1 } },
        });
      triangles[3 * t + corner] = index.add(x, y, z);
    }
    if (t % STEP === 0) watch(t / count);
  }
  return ok({ name, mesh: { points: index.all(), triangles }, copies: 1 });
}
