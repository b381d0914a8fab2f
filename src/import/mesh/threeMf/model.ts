/**
 * One model part of a 3MF: its objects (meshes or components) and its build items, as they stand in the file, in its own
 * unit. Source: ISO/IEC 25422 (3MF Core Specification 1.3: unit, resources, object, mesh, components, build [memory]); the
 * production extension's path attribute is followed.
 */
import { fail, type Result, type Words } from '../../../layout/result';
import { IndexTriples, PointTriples } from '../growing';
import { MOST_BODIES, MOST_COMPONENTS, MOST_TRIANGLES } from '../limits';
import { coordinateFault } from '../numbers';
import type { MeshUnit } from '../types';
import { MM_PER_MESH_UNIT } from '../units';
import { readNumber, readTransform, type Transform } from './transform';
import { partName } from './unpack';
import type { Attributes, XmlHandler } from './xml';

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const PRODUCTION = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
const MATERIALS = 'http://schemas.microsoft.com/3dmanufacturing/material/2015/02';
const UNDERSTOOD: readonly string[] = [CORE, PRODUCTION, MATERIALS];
const TYPES = ['model', 'support', 'solidsupport', 'surface', 'other'] as const;
export type ObjectType = (typeof TYPES)[number];

/** An object within a package: its part and its id. */
export interface Reference {
  readonly part: string;
  readonly id: string;
  readonly transform: Transform;
}
export interface ModelObject {
  readonly id: string;
  readonly name: string;
  readonly type: ObjectType;
  readonly points: PointTriples;
  readonly triangles: IndexTriples;
  readonly components: Reference[];
}
type Fault = Result<never> | Words | null;

/** Builds a model from the elements of its part. */
export class ModelBuilder implements XmlHandler {
  unit: MeshUnit = 'millimeter';
  readonly objects = new Map<string, ModelObject>();
  readonly items: Reference[] = [];
  /** Why its part could not be read to the end; null where it was. */
  fault: Result<never> | null = null;
  private object: ModelObject | null = null;
  private started = false;
  private pathKey = 'p:path';
  private count = 0;

  constructor(private readonly part: string) {}

  open(name: string, attributes: Attributes): Fault {
    if (!this.started) return this.start(name, attributes);
    if (name === 'vertex') return this.vertex(attributes);
    if (name === 'triangle') return this.triangle(attributes);
    if (name === 'object') return this.begin(attributes);
    if (name === 'component') return this.component(attributes);
    return name === 'item' ? this.item(attributes) : null;
  }

  close(name: string): void {
    if (name === 'object') this.object = null;
  }

  private start(name: string, attributes: Attributes): Fault {
    this.started = true;
    if (name !== 'model') return { text: 'the outermost element is “{name}”, not “model”', values: { name } };
    const unit = attributes.unit ?? 'millimeter';
    if (!Object.hasOwn(MM_PER_MESH_UNIT, unit))
      return {
        text: 'the unit is “{unit}”; accepted: {accepted}',
        values: { unit, accepted: Object.keys(MM_PER_MESH_UNIT).join(', ') },
      };
    this.unit = unit as MeshUnit;
    const production = Object.keys(attributes).find((key) => attributes[key] === PRODUCTION);
    if (production !== undefined) this.pathKey = `${production.replace(/^xmlns:/, '')}:path`;
    return requiredFault(attributes);
  }

  private begin(attributes: Attributes): Fault {
    const { id, name = '', type = 'model' } = attributes;
    if (id === undefined) return { text: 'an object has no id' };
    if (this.objects.has(id)) return { text: 'two objects have the id {id}', values: { id } };
    if (!(TYPES as readonly string[]).includes(type))
      return {
        text: 'the object {id} has the type “{type}”; accepted: {accepted}',
        values: { id, type, accepted: TYPES.join(', ') },
      };
    if (this.objects.size >= MOST_COMPONENTS)
      return fail('mesh-too-much', { limit: MOST_COMPONENTS, what: { text: 'objects ¦ counted' } });
    const points = new PointTriples();
    const triangles = new IndexTriples();
    this.object = { id, name, type: type as ObjectType, points, triangles, components: [] };
    this.objects.set(id, this.object);
    return null;
  }

  private vertex({ x, y, z }: Attributes): Fault {
    const { object } = this;
    if (object === null) return null;
    const [px, py, pz] = [readNumber(x), readNumber(y), readNumber(z)];
    const fault = coordinateFault(px, py, pz);
    const place = object.points.length / 3;
    if (fault) {
      const where: Words = {
        text: 'vertex {number} of object {id}',
        values: { number: place, id: object.id },
      };
      return fail(fault.code, { ...fault.params, where });
    }
    if (place >= 3 * MOST_TRIANGLES)
      return fail('mesh-too-much', { limit: 3 * MOST_TRIANGLES, what: { text: 'points ¦ counted' } });
    object.points.push(px, py, pz);
    return null;
  }

  private triangle({ v1, v2, v3 }: Attributes): Fault {
    const { object } = this;
    if (object === null) return null;
    const [a, b, c] = [readNumber(v1), readNumber(v2), readNumber(v3)];
    const held = object.points.length / 3;
    const sound = (i: number): boolean => Number.isInteger(i) && i >= 0 && i < held;
    if (!sound(a) || !sound(b) || !sound(c))
      return {
        text: 'triangle {number} of object {id} names the points {v1}, {v2}, {v3} of {held}',
        values: {
          number: object.triangles.length / 3,
          id: object.id,
          v1: `${v1}`,
          v2: `${v2}`,
          v3: `${v3}`,
          held,
        },
      };
    this.count += 1;
    if (this.count > MOST_TRIANGLES)
      return fail('mesh-too-much', { limit: MOST_TRIANGLES, what: { text: 'triangles ¦ counted' } });
    object.triangles.push(a, b, c);
    return null;
  }

  private component(attributes: Attributes): Fault {
    if (this.object === null) return null;
    const reference = this.reference(attributes);
    if (reference === null)
      return { text: 'a component of object {id} has no sound transform', values: { id: this.object.id } };
    if (this.object.components.length >= MOST_COMPONENTS)
      return fail('mesh-too-much', { limit: MOST_COMPONENTS, what: { text: 'components ¦ counted' } });
    this.object.components.push(reference);
    return null;
  }

  private item(attributes: Attributes): Fault {
    const reference = this.reference(attributes);
    if (reference === null)
      return {
        text: 'the item of object {id} has no sound transform',
        values: { id: attributes.objectid ?? '?' },
      };
    if (this.items.length >= MOST_COMPONENTS)
      return fail('mesh-too-much', { limit: MOST_COMPONENTS, what: { text: 'build items' } });
    this.items.push(reference);
    return null;
  }

  private reference(attributes: Attributes): Reference | null {
    const transform = readTransform(attributes.transform);
    if (transform === null) return null;
    const path = attributes[this.pathKey];
    const part = path === undefined ? this.part : partName(path);
    return { part, id: attributes.objectid ?? '', transform };
  }
}

/** Extensions that have to be understood and are not, by the name of their namespace. */
function requiredFault(attributes: Attributes): Fault {
  for (const prefix of (attributes.requiredextensions ?? '').split(/\s+/)) {
    if (prefix === '') continue;
    const space = attributes[`xmlns:${prefix}`] ?? prefix;
    if (!UNDERSTOOD.includes(space)) return fail('mesh-3mf-extension', { found: `“${space}”` });
  }
  return null;
}

/** Bodies that a file may make. */
export const tooManyBodies = (count: number): Result<never> | null =>
  count > MOST_BODIES
    ? fail('mesh-too-much', { limit: MOST_BODIES, what: { text: 'different bodies' } })
    : null;
