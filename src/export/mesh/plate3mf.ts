/**
 * The arranged plate as a 3MF file: each part where it stands, its body made of prisms of its sections. It is for checking
 * places in other programs; where a shape came from a mesh, the mesh itself is finer. Millimetres.
 */
import { strToU8, Zip, ZipDeflate } from 'fflate';
import { checksum } from '../../layout/checksum';
import { fail, ok, type Result } from '../../layout/result';
import type { Layout, Shape } from '../../layout/types';
import { NOT_FOR_USE } from '../forUse';
import { modelFoot, modelHead, ObjectText, type ModelWords } from './modelText';
import { prismsOf } from './prisms';

/** Our own reader takes no more, either. */
export const MOST_TRIANGLES = 2_000_000;

const CONTENT_TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
`;
const RELATIONSHIPS = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="model" Target="/3D/3dmodel.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>
`;
/** The earliest a zip can say: equal plates make equal files. */
const NO_DATE = new Date(1980, 0, 1);

/** A zip that grows file by file, piece by piece. */
class Package {
  private readonly chunks: Uint8Array[] = [];
  private readonly zip = new Zip((error, chunk) => {
    if (error) throw error;
    this.chunks.push(chunk);
  });

  /** Begins a file; the function it gives adds to it. */
  file(name: string): (text: string, last?: boolean) => void {
    const file = new ZipDeflate(name, { level: 6 });
    file.mtime = NO_DATE;
    this.zip.add(file);
    return (text, last = false) => file.push(strToU8(text), last);
  }

  bytes(): Uint8Array<ArrayBuffer> {
    this.zip.end();
    const all = new Uint8Array(this.chunks.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const chunk of this.chunks) {
      all.set(chunk, at);
      at += chunk.length;
    }
    return all;
  }
}

function words(layout: Layout, blocked: boolean): ModelWords {
  const bar = blocked ? `${NOT_FOR_USE}: ` : '';
  return {
    title: `${bar}${layout.name}`,
    description: `${bar}layout ${checksum(layout)}; bodies are prisms of the sections, not the parts' own meshes`,
  };
}

/** A shape's object. Yields after each slab; null where it holds nothing. */
function* objectOf(shape: Shape, most: number): Generator<void, Result<ObjectText | null>> {
  const object = new ObjectText();
  for (const prisms of prismsOf(shape)) {
    for (const prism of prisms) object.add(prism);
    if (object.count > most) return fail('export-mesh-too-large', { limit: MOST_TRIANGLES });
    yield;
  }
  return ok(object.count > 0 ? object : null);
}

/** The file's bytes. Yields how far it is, 0 to 1. Fault: export-mesh-too-large. */
export function* plate3mf(
  layout: Layout,
  blocked: boolean,
): Generator<number, Result<Uint8Array<ArrayBuffer>>> {
  const used = new Set(layout.parts.map(({ shape }) => shape));
  const slabs = [...used].reduce((sum, id) => sum + layout.shapes[id]!.slabs.length, 0);
  const parcel = new Package();
  parcel.file('[Content_Types].xml')(CONTENT_TYPES, true);
  parcel.file('_rels/.rels')(RELATIONSHIPS, true);
  const write = parcel.file('3D/3dmodel.model');
  write(modelHead(words(layout, blocked)));
  const ids = new Map<string, number>();
  let [done, triangles] = [0, 0];
  for (const id of used) {
    const steps = objectOf(layout.shapes[id]!, MOST_TRIANGLES - triangles);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield ++done / slabs;
    if (!step.value.ok) return step.value;
    const object = step.value.value;
    if (object === null) continue;
    ids.set(id, ids.size + 1);
    triangles += object.count;
    for (const piece of object.pieces(ids.size, id)) write(piece);
  }
  write(modelFoot(layout, ids), true);
  return ok(parcel.bytes());
}
