/**
 * Build items of a 3MF to bodies: components written out with their transforms, millimetres, triangles that a mirroring
 * transform turned inside out turned back. Items that differ only by their place and a turn about z are copies of one body. Objects that are no
 * solid (supports, surfaces, others) are left out and named. How much there will be is counted before room is made.
 */
import { fail, ok, type Result, figure } from '../../../layout/result';
import { IndexTriples } from '../growing';
import { FURTHEST_mm, MOST_COMPONENTS, MOST_LEVELS, MOST_TRIANGLES } from '../limits';
import type { Mesh, MeshBody, MeshItem, MeshLeftOut, MeshLeftOutKind } from '../types';
import { PointIndex } from '../weld';
import { tooManyBodies, type ModelBuilder, type ModelObject, type ObjectType, type Reference } from './model';
import { compose, determinant, exceptTurn, moved, turnBetween, UNMOVED, type Transform } from './transform';

export type Models = ReadonlyMap<string, ModelBuilder>;

const LEFT_OUT: Readonly<Record<Exclude<ObjectType, 'model'>, MeshLeftOutKind>> = {
  support: 'support',
  solidsupport: 'support',
  surface: 'surface',
  other: 'other',
};

interface Weight {
  readonly triangles: number;
  readonly visits: number;
}
const keyOf = ({ part, id }: { part: string; id: string }): string => `${part}#${id}`;

/** Finds objects, weighs them and refuses those that contain themselves. */
class Catalogue {
  readonly used = new Set<string>();
  private readonly weights = new Map<string, Weight | 'open'>();
  constructor(private readonly models: Models) {}

  object({ part, id }: Reference): ModelObject | null {
    return this.models.get(part)?.objects.get(id) ?? null;
  }

  /** Triangles and components of an object written out. Faults: mesh-3mf-cycle, mesh-3mf-broken, mesh-too-much. */
  weigh(reference: Reference, level = 1): Result<Weight> {
    if (level > MOST_LEVELS)
      return fail('mesh-too-much', { limit: MOST_LEVELS, what: { text: 'levels of components' } });
    const key = keyOf(reference);
    const known = this.weights.get(key);
    if (known === 'open') return fail('mesh-3mf-cycle', { id: reference.id });
    if (known !== undefined) return ok(known);
    const unread = this.models.get(reference.part)?.fault;
    if (unread) return unread;
    const object = this.object(reference);
    if (object === null)
      return fail('mesh-3mf-broken', {
        part: reference.part,
        detail: { text: 'there is no object “{id}”', values: { id: reference.id } },
      });
    this.used.add(key);
    this.weights.set(key, 'open');
    let triangles = object.triangles.length / 3;
    let visits = 1;
    for (const component of object.components) {
      const weight = this.weigh(component, level + 1);
      if (!weight.ok) return weight;
      triangles += weight.value.triangles;
      visits += weight.value.visits;
    }
    if (triangles > MOST_TRIANGLES)
      return fail('mesh-too-much', { limit: MOST_TRIANGLES, what: { text: 'triangles ¦ counted' } });
    if (visits > MOST_COMPONENTS)
      return fail('mesh-too-much', { limit: MOST_COMPONENTS, what: { text: 'components ¦ counted' } });
    this.weights.set(key, { triangles, visits });
    return ok({ triangles, visits });
  }
}

class LeftOutCount {
  private readonly found = new Map<string, MeshLeftOut>();
  add(kind: MeshLeftOutKind, object: ModelObject): void {
    this.note(kind, labelOf(object));
  }
  note(kind: MeshLeftOutKind, what: string): void {
    const key = `${kind} ${what}`;
    this.found.set(key, { kind, what, count: (this.found.get(key)?.count ?? 0) + 1 });
  }
  list(): MeshLeftOut[] {
    return [...this.found.values()];
  }
}
const labelOf = ({ name, id }: ModelObject): string => (name === '' ? `object ${id}` : name.slice(0, 60));

/** Writes objects out into one mesh. */
class Writer {
  readonly points = new PointIndex();
  readonly triangles = new IndexTriples();
  /** Largest coordinate, in millimetres. */
  reach = 0;

  constructor(
    private readonly catalogue: Catalogue,
    private readonly leftOut: LeftOutCount,
    private readonly scale: number,
  ) {}

  write(reference: Reference, outer: Transform): void {
    const object = this.catalogue.object(reference);
    if (object === null) return;
    if (object.type !== 'model') {
      this.leftOut.add(LEFT_OUT[object.type], object);
      return;
    }
    const transform = compose(reference.transform, outer);
    this.writeMesh(object, transform);
    for (const component of object.components) this.write(component, transform);
  }

  private writeMesh(object: ModelObject, transform: Transform): void {
    const points = object.points.all();
    const index = new Uint32Array(points.length / 3);
    for (let i = 0; i < index.length; i++) {
      const [x, y, z] = [0, 1, 2].map(
        (axis) => this.scale * moved(transform, axis, points[3 * i], points[3 * i + 1], points[3 * i + 2]),
      );
      this.reach = Math.max(this.reach, Math.abs(x), Math.abs(y), Math.abs(z));
      index[i] = this.points.add(x, y, z);
    }
    const mirrored = determinant(transform) < 0;
    const triangles = object.triangles.all();
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [index[triangles[t]], index[triangles[t + 1]], index[triangles[t + 2]]];
      if (mirrored) this.triangles.push(a, c, b);
      else this.triangles.push(a, b, c);
    }
  }

  mesh(): Mesh {
    return { points: this.points.all(), triangles: this.triangles.all() };
  }
}

/** The same object laid, scaled and mirrored alike. */
const bodyKey = (item: Reference): string => `${keyOf(item)} ${exceptTurn(item.transform)}`;

/** Items that make the same body, in the order of the file. */
function groups(items: readonly Reference[]): Reference[][] {
  const found = new Map<string, Reference[]>();
  for (const item of items) {
    const group = found.get(bodyKey(item));
    if (group) group.push(item);
    else found.set(bodyKey(item), [item]);
  }
  return [...found.values()];
}

export interface Assembled {
  readonly bodies: readonly MeshBody[];
  readonly leftOut: readonly MeshLeftOut[];
}

/**
 * @param scale millimetres per unit of the file
 * Faults: mesh-3mf-broken, mesh-3mf-cycle, mesh-too-much, mesh-too-far.
 */
export function assemble(root: ModelBuilder, models: Models, scale: number): Result<Assembled> {
  const catalogue = new Catalogue(models);
  const leftOut = new LeftOutCount();
  const bodies: MeshBody[] = [];
  const different = groups(root.items);
  const tooMany = tooManyBodies(different.length);
  if (tooMany) return tooMany;
  let triangles = 0;
  for (const items of different) {
    const weight = catalogue.weigh(items[0]);
    if (!weight.ok) return weight;
    triangles += weight.value.triangles;
    if (triangles > MOST_TRIANGLES)
      return fail('mesh-too-much', { limit: MOST_TRIANGLES, what: { text: 'triangles ¦ counted' } });
    const body = bodyOf(items, catalogue, leftOut, scale);
    if (!body.ok) return body;
    if (body.value) bodies.push(body.value);
  }
  addUnused(models, catalogue, leftOut);
  return ok({ bodies, leftOut: leftOut.list() });
}

/** Where the items stand. @param scale millimetres per unit */
const placesOf = (items: readonly Reference[], scale: number): MeshItem[] =>
  items.map(({ transform }) => ({
    x_mm: scale * transform[9],
    y_mm: scale * transform[10],
    turn_deg: turnBetween(items[0].transform, transform),
  }));

/** The body of items that differ only by place and turn; null where nothing of it is solid. */
function bodyOf(
  items: readonly Reference[],
  catalogue: Catalogue,
  leftOut: LeftOutCount,
  scale: number,
): Result<MeshBody | null> {
  const writer = new Writer(catalogue, leftOut, scale);
  writer.write(items[0], UNMOVED);
  const object = catalogue.object(items[0]);
  if (object === null || object.type !== 'model') return ok(null);
  if (writer.triangles.length === 0) {
    leftOut.add('empty', object);
    return ok(null);
  }
  if (!(writer.reach <= FURTHEST_mm)) {
    const where = labelOf(object);
    return fail('mesh-too-far', {
      found: { text: '{value} {unit}', values: { value: figure(writer.reach.toPrecision(3)), unit: 'mm' } },
      where,
      limit: `${FURTHEST_mm} mm`,
    });
  }
  return ok({
    name: labelOf(object),
    mesh: writer.mesh(),
    copies: items.length,
    items: placesOf(items, scale),
  });
}

function addUnused(models: Models, catalogue: Catalogue, leftOut: LeftOutCount): void {
  for (const [part, model] of models) {
    if (model.fault) leftOut.note('unread', part);
    for (const object of model.objects.values())
      if (!catalogue.used.has(keyOf({ part, id: object.id }))) leftOut.add('unused', object);
  }
}
