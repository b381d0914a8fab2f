/**
 * A 3MF file (ISO/IEC 25422): the package names its model part in _rels/.rels, or by its content type; that part and those
 * it refers to are parsed while they are unpacked.
 */
import { fail, ok, type Result } from '../../../layout/result';
import type { Watching } from '../stl';
import type { MeshFile, MeshLeftOut } from '../types';
import { assemble } from './assemble';
import { MM_PER_MESH_UNIT } from '../units';
import { ModelBuilder } from './model';
import { partName, unpack, type TextSink } from './unpack';
import { xmlSink, type Attributes } from './xml';

const CONTENT_TYPES = '[content_types].xml';
const RELATIONS = '_rels/.rels';
const MODEL_RELATION = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
const MODEL_TYPE = 'application/vnd.ms-package.3dmanufacturing-3dmodel+xml';

/** What the package says about its parts. */
interface Package {
  hasTypes: boolean;
  /** Model parts by relation; by content type. */
  readonly related: string[];
  readonly typed: string[];
}

function packageSink(part: string, found: Package): TextSink | null {
  const collect = (name: string, attributes: Attributes): null => {
    if (name === 'Relationship' && attributes.Type === MODEL_RELATION && attributes.Target !== undefined)
      found.related.push(partName(attributes.Target));
    if (name === 'Override' && attributes.ContentType === MODEL_TYPE && attributes.PartName !== undefined)
      found.typed.push(partName(attributes.PartName));
    return null;
  };
  if (part === CONTENT_TYPES) found.hasTypes = true;
  return part === CONTENT_TYPES || part === RELATIONS ? xmlSink(part, { open: collect }) : null;
}

/** The name of the model part. Faults: mesh-3mf-no-model and those of unpacking. */
function modelPart(bytes: Uint8Array): Result<string> {
  const found: Package = { hasTypes: false, related: [], typed: [] };
  const unpacked = unpack(
    bytes,
    (part) => packageSink(part, found),
    () => {},
  );
  if (!unpacked.ok) return unpacked;
  if (!found.hasTypes)
    return fail('mesh-3mf-no-model', {
      detail: { text: 'it has no {name}', values: { name: '[Content_Types].xml' } },
    });
  const name = found.related[0] ?? found.typed[0];
  return name === undefined
    ? fail('mesh-3mf-no-model', { detail: { text: 'no relation leads to one' } })
    : ok(name);
}

/** Names of what is no solid, at most so many. */
const MOST_NAMED = 3;

function nothingSolid(part: string, leftOut: readonly MeshLeftOut[]): Result<never> {
  const what = leftOut
    .slice(0, MOST_NAMED)
    .map((each) => each.what)
    .join(', ');
  return fail('mesh-3mf-broken', {
    part,
    detail: { text: 'nothing that it builds is a solid ({what})', values: { what } },
  });
}

/** Faults: those of unpack.ts, xml.ts, model.ts and assemble.ts. */
export function readThreeMf(bytes: Uint8Array, name: string, watch: Watching): Result<MeshFile> {
  const part = modelPart(bytes);
  if (!part.ok) return part;
  const models = new Map<string, ModelBuilder>();
  const sink = (found: string): TextSink | null => {
    if (found !== part.value && !found.endsWith('.model')) return null;
    const builder = new ModelBuilder(found);
    models.set(found, builder);
    const read = xmlSink(found, builder);
    if (found === part.value) return read;
    // What nothing leads to may be broken.
    return (text, last) => {
      builder.fault ??= read(text, last);
      return null;
    };
  };
  const unpacked = unpack(bytes, sink, watch);
  if (!unpacked.ok) return unpacked;
  const root = models.get(part.value);
  if (root === undefined)
    return fail('mesh-3mf-no-model', {
      detail: { text: 'the part {name} is missing', values: { name: part.value } },
    });
  if (root.items.length === 0)
    return fail('mesh-3mf-broken', { part: part.value, detail: { text: 'its build holds no items' } });
  const made = assemble(root, models, MM_PER_MESH_UNIT[root.unit]);
  if (!made.ok) return made;
  if (made.value.bodies.length === 0) return nothingSolid(part.value, made.value.leftOut);
  return ok({ name, kind: '3mf', unit: root.unit, ...made.value });
}
