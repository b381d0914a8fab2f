/**
 * DXF to rings in millimetres, +y up: blocks are written out, closed objects become rings by themselves, loose lines
 * and arcs are chained layer by layer and then, what is left, all together. The rest is counted.
 */
import { ok, type Result } from '../../layout/result';
import { compose, rotation, scaling, translation, type Affine } from '../affine';
import { append } from '../append';
import { chain } from '../chain';
import { loopPoints, type Edge } from '../graph';
import type { LeftOutList } from '../leftOut';
import { MOST_LEVELS, type Budget } from '../limits';
import { noteChains } from '../openEnds';
import { drawCurves } from '../points';
import { cleanWalks, type Found, type FoundRing, type Walk } from '../rings';
import type { Reading } from '../steps';
import type { ImportSettings, UnitFound } from '../types';
import { MM_PER_UNIT, insUnit } from '../units';
import { draw, planeOf } from './entities';
import { key, numberOf, readDocument, type DxfDocument, type Entity } from './document';

/** Objects, and outlines, between two steps. */
const STRIDE = 200;

/** Reads the text of a DXF file. */
export function* readDxf(
  text: string,
  settings: ImportSettings,
  leftOut: LeftOutList,
  budget: Budget,
): Reading<Result<Found>> {
  const document = yield* readDocument(text);
  if (!document.ok) return document;
  const unit = unitOf(document.value, settings);
  const scale = unit?.scale ?? 1;
  const writer = new Writer(document.value, leftOut, budget);
  yield* writer.all(document.value.entities, {
    map: scaling(scale, scale),
    layer: null,
    group: '',
    level: 0,
  });
  if (!budget.left) return ok({ unit, rings: [], repaired: 0, closed: 0 });
  const walks = [...writer.closed, ...(yield* chained(writer.loose, settings.chainGap_mm, leftOut))];
  const rings: FoundRing[] = [];
  let repaired = 0;
  for (const [i, { name, ...walk }] of walks.entries()) {
    if (i % STRIDE === 0) yield 'outlines';
    const cleaned = cleanWalks([walk], 'evenOdd', name);
    if (cleaned.rings.length === 0) leftOut.add(cleaned.tangled ? 'broken' : 'no-area', name);
    if (cleaned.repaired) repaired += 1;
    append(rings, cleaned.rings);
  }
  return ok({ unit, rings, repaired, closed: 0 });
}

function unitOf(document: DxfDocument, settings: ImportSettings): UnitFound | null {
  if (settings.unit !== undefined)
    return { unit: settings.unit, scale: MM_PER_UNIT[settings.unit], from: 'chosen' };
  const unit = document.insUnits === null ? null : insUnit(document.insUnits);
  return unit === null ? null : { unit, scale: MM_PER_UNIT[unit], from: 'file' };
}

interface NamedWalk extends Walk {
  readonly name: string;
}

/** Chains each layer of each block by itself first; only what stays open may join across layers. */
function* chained(
  loose: ReadonlyMap<string, readonly Edge[]>,
  gap_mm: number,
  leftOut: LeftOutList,
): Reading<NamedWalk[]> {
  const walks: NamedWalk[] = [];
  const left: Edge[] = [];
  const take = (edges: readonly Edge[], last: boolean): void => {
    const chains = chain(edges, gap_mm);
    for (const loop of chains.loops)
      walks.push({
        name: loop[0].edge.name,
        points: loopPoints(loop),
        curves: loop.map(({ edge }) => edge.curve),
      });
    for (const edge of chains.duplicates) leftOut.add('duplicate', edge.name);
    if (last) noteChains(chains, gap_mm, leftOut);
    else {
      for (const group of chains.open) append(left, group);
      append(left, chains.branches);
    }
  };
  yield 'chains';
  if (loose.size === 1) for (const edges of loose.values()) take(edges, true);
  else {
    for (const edges of loose.values()) {
      take(edges, false);
      yield 'chains';
    }
    take(left, true);
  }
  return walks;
}

interface Place {
  readonly map: Affine;
  /** Layer of the block's insertion, which its objects on layer 0 take over; null outside blocks. */
  readonly layer: string | null;
  /** Block insertions on the way here. */
  readonly group: string;
  readonly level: number;
}

class Writer {
  readonly closed: NamedWalk[] = [];
  /** Loose edges by block insertion and layer. */
  readonly loose = new Map<string, Edge[]>();
  private insertions = 0;
  private readonly within = new Set<string>();

  constructor(
    private readonly document: DxfDocument,
    private readonly leftOut: LeftOutList,
    private readonly budget: Budget,
  ) {}

  *all(entities: readonly Entity[], place: Place): Reading<void> {
    for (const entity of entities) {
      if (!this.budget.visit()) return;
      if (this.budget.used.visits % STRIDE === 0) yield 'curves';
      yield* this.one(entity, place);
    }
  }

  private *one(entity: Entity, place: Place): Reading<void> {
    const own = entity.texts.get(8) ?? '0';
    const layer = own === '0' && place.layer !== null ? place.layer : own;
    const state = this.document.layers.get(key(layer));
    if (numberOf(entity, 67, 0) === 1) return this.leftOut.add('paper', entity.type);
    if (numberOf(entity, 60, 0) === 1) return this.leftOut.add('hidden', entity.type);
    if (state?.frozen === true) return this.leftOut.add('layer-frozen', layer);
    if (entity.type === 'INSERT') return yield* this.insert(entity, { ...place, layer });
    if (state?.off === true) return this.leftOut.add('layer-off', layer);
    const drawing = draw(entity);
    if (typeof drawing === 'string') return this.leftOut.add(drawing, entity.type);
    const plane = planeOf(entity);
    if (plane === null) return this.leftOut.add('tilted', entity.type);
    const drawn = drawCurves(compose(place.map, plane), drawing.curves, this.budget);
    if (drawn === 'full') return;
    if (drawn === 'far') return this.leftOut.add('far', layer);
    const edges = drawn.map((own): Edge => ({ ...own, name: layer }));
    if (drawing.closed) this.close(edges, layer);
    else this.keep(edges, `${place.group}|${layer}`);
  }

  private close(edges: readonly Edge[], name: string): void {
    const points = loopPoints(edges.map((edge) => ({ edge, back: false })));
    this.closed.push({ name, points, curves: edges.map((edge) => edge.curve) });
  }

  private keep(edges: readonly Edge[], group: string): void {
    const list = this.loose.get(group);
    if (list === undefined) this.loose.set(group, [...edges]);
    else append(list, edges);
  }

  private *insert(entity: Entity, place: Place): Reading<void> {
    const name = entity.texts.get(2) ?? '';
    const block = this.document.blocks.get(key(name));
    if (block === undefined || this.within.has(key(name)) || place.level > MOST_LEVELS)
      return this.leftOut.add('missing', `block ${name}`);
    const plane = planeOf(entity);
    if (plane === null) return this.leftOut.add('tilted', entity.type);
    this.within.add(key(name));
    for (const own of insertMaps(entity)) {
      if (!this.budget.visit()) break;
      const map = compose(compose(place.map, plane), compose(own, translation(-block.baseX, -block.baseY)));
      this.insertions += 1;
      yield* this.all(block.entities, {
        map,
        layer: place.layer,
        group: `${this.insertions}`,
        level: place.level + 1,
      });
    }
    this.within.delete(key(name));
  }
}

/** One map per row and column of the insertion: scale, then spacing, then rotation, then place. */
function* insertMaps(entity: Entity): Generator<Affine> {
  const number = (code: number, otherwise: number): number => numberOf(entity, code, otherwise);
  const [columns, rows] = [Math.max(1, number(70, 1)), Math.max(1, number(71, 1))];
  const scale = scaling(number(41, 1), number(42, 1));
  const turned = compose(translation(number(10, 0), number(20, 0)), rotation(number(50, 0)));
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      yield compose(turned, compose(translation(column * number(44, 0), row * number(45, 0)), scale));
}
