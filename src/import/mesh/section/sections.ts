/**
 * A mesh to the slabs of a shape: cut at the middle of every layer, layers in a row with the same section joined. Every
 * layer is compared with the first one of its slab, so that small changes do not add up unseen. A slab's top is the top of
 * its last layer; the last slab's is the mesh's own top (to 1 µm), so that ⌈height/t⌉ layers come out for every layer
 * thickness; where the middle of the last layer lies above the mesh, that layer is empty and the slab below reaches the top.
 * Millimetres, mm², mm³.
 */
import type { Text } from '../../../language/index';
import { area } from '../../../geometry/region';
import type { Region, Ring } from '../../../geometry/types';
import { fail, ok, type Fault, type Result, type Param } from '../../../layout/result';
import { MOST_RING_POINTS, MOST_RINGS, MOST_SLABS } from '../../../layout/limits';
import { differentPoints, enclosesArea } from '../../../layout/outlineChecks';
import type { Point, Slab } from '../../../layout/types';
import { roundMm } from '../../../units/round';
import type { Mm, Mm2, Mm3 } from '../../../units/types';
import { sizeFault, sizeOf } from '../check';
import { MOST_LAYERS, MOST_SECTION_POINTS } from '../limits';
import { meshLayers } from '../layers';
import { extent } from '../orient';
import { prepare } from '../prepare';
import type { LayerRun, Mesh, MeshSections, SectionSettings, Watch } from '../types';
import { closeChains } from './close';
import { sectionOf, type Section } from './outline';
import { LayerRuns } from './runs';
import { Reference } from './same';
import { levelOf, SNAP_mm, Sweep, type Levels } from './sweep';
import { Tracer } from './trace';

/** Layers between two reports of progress. */
const STEP = 16;

/** One cut: its rings, and the widest gap that stayed open in it. */
interface Cut {
  readonly rings: readonly Ring[];
  readonly widestGap: Mm | null;
}

/** Slabs as they grow from below. */
class SlabStack {
  readonly slabs: Slab[] = [];
  volume: Mm3 = 0;
  largest: Mm2 = 0;
  openLayers = 0;
  widestGap: Mm | null = null;
  unitedLayers = 0;
  emptyLayers = 0;
  firstEmpty: LayerRun | null = null;
  readonly equal = new LayerRuns();
  points = 0;
  /** Most rings of a slab, most points of a ring. */
  mostRings = 0;
  mostRingPoints = 0;
  private reference: Reference | null = null;
  private kept: Region = [];
  private from: Mm = 0;
  /** Layers without any outline since the last one with a section. */
  private empties = new LayerRuns();
  /** The section before was united; it counts again where it comes again. */
  private united = false;

  /** Adds a layer's cut; `bottom` is where the layer begins. */
  add({ rings, widestGap }: Cut, layer: number, bottom: Mm): void {
    if (widestGap !== null) {
      this.openLayers += 1;
      this.widestGap = Math.max(this.widestGap ?? 0, widestGap);
    }
    const again = this.reference?.isTracedAgain(rings) || !this.differs(sectionOf(rings), rings, bottom);
    if (this.united) this.unitedLayers += 1;
    if (this.kept.length > 0) this.solid(layer, again);
    else if (widestGap === null) this.empties.add(layer);
  }

  private solid(layer: number, again: boolean): void {
    if (again) this.equal.add(layer);
    this.emptyLayers += this.empties.count;
    this.firstEmpty ??= this.empties.first;
    if (this.empties.count > 0) this.empties = new LayerRuns();
  }

  /** Begins a new slab where the section is another one than before. */
  private differs(section: Section, rings: readonly Ring[], bottom: Mm): boolean {
    this.united = section.united;
    if (this.reference?.equals(section.exact)) return false;
    this.finish(bottom);
    this.reference = new Reference(section.exact, rings);
    this.kept = section.kept;
    return true;
  }

  /** Ends the slab that grows; `top` is its top. */
  finish(top: Mm): void {
    if (this.reference === null) return;
    const outlines = this.kept.map(pointsOf);
    const kept = this.kept.filter((_, i) => isOutline(outlines[i]));
    const sum = area(kept);
    const rings = kept.length === outlines.length ? outlines : kept.map(pointsOf);
    this.slabs.push({ to_mm: top, rings });
    this.volume += sum * (top - this.from);
    this.largest = Math.max(this.largest, sum);
    this.mostRings = Math.max(this.mostRings, kept.length);
    for (const { length } of kept) {
      this.points += length / 2;
      this.mostRingPoints = Math.max(this.mostRingPoints, length / 2);
    }
    this.from = top;
  }
}

/** What a layout may hold: on its grid some outlines are points and lines. */
const isOutline = (points: readonly Point[]): boolean => differentPoints(points) >= 3 && enclosesArea(points);

function pointsOf(ring: Ring): Point[] {
  const points: Point[] = [];
  for (let i = 0; i < ring.length; i += 2) points.push([ring[i], ring[i + 1]]);
  return points;
}

function levelsOf(mesh: Mesh, given_mm: Mm): Result<Levels & { readonly height: Mm }> {
  const layer_mm = roundMm(given_mm);
  if (!(layer_mm > 0) || !Number.isFinite(layer_mm))
    throw new Error(`sectionMesh: a layer of ${given_mm} mm; at least 0.001 mm is needed`);
  const size = sizeFault(sizeOf(mesh));
  if (size) return size;
  const [bottom, top] = extent(mesh, 2);
  const height = roundMm(top - bottom);
  const layers = meshLayers(height, layer_mm);
  if (layers > MOST_LAYERS)
    return fail('mesh-too-many-layers', {
      found: layers,
      what: { text: 'layers ¦ counted' },
      limit: MOST_LAYERS,
    });
  return ok({ bottom, layer_mm, layers, height });
}

/**
 * Cuts a mesh step by step: yields the share done, 0 … 1, and returns the sections. Whoever runs it may stop at any step.
 * Heights count from the mesh's lowest point; x and y stay as they are.
 * Faults: mesh-too-large, mesh-flat, mesh-too-many-layers, mesh-no-section, mesh-no-solid-layer, mesh-too-much. Throws where
 * layer_mm is no thickness.
 */
export function* sectionSteps(
  mesh: Mesh,
  { layer_mm: given, chainGap_mm }: SectionSettings,
): Generator<number, Result<MeshSections>> {
  const made = levelsOf(mesh, given);
  if (!made.ok) return made;
  const { layers, layer_mm, bottom, height } = made.value;
  const ready = prepare(mesh);
  const sweep = new Sweep(ready, made.value);
  const tracer = new Tracer(ready);
  const stack = new SlabStack();
  let topCovered = false;
  for (let k = 1; k <= layers; k++) {
    if (k % STEP === 0) yield (k - 1) / layers;
    sweep.advance(k);
    const z = levelOf(made.value, k);
    // Above the mesh there is nothing to cut: the last slab reaches its top.
    topCovered = z + SNAP_mm >= bottom + height && k > 1;
    if (topCovered) break;
    const { rings, chains } = tracer.trace(sweep, k, z);
    const closed = closeChains(chains, chainGap_mm);
    stack.add(
      { rings: [...rings, ...closed.rings], widestGap: closed.widestGap },
      k,
      roundMm((k - 1) * layer_mm),
    );
    const full = fullFault(stack);
    if (full) return full;
  }
  stack.finish(height);
  yield 1;
  const rich = richFault(stack);
  if (rich) return rich;
  if (stack.largest > 0) return ok({ ...resultOf(stack), layers, height_mm: height, topCovered });
  return stack.widestGap === null
    ? fail('mesh-no-solid-layer', { layer: layer_mm })
    : fail('mesh-no-section', { gap: gapText(stack.widestGap) });
}

/** While a slab grows on those that are done: more than a shape may have, or more in them than is held. */
function fullFault(stack: SlabStack): Result<never> | null {
  if (stack.slabs.length < MOST_SLABS) return richFault(stack);
  return fail('mesh-too-many-layers', {
    found: { text: 'over {count}', values: { count: MOST_SLABS } },
    what: { text: 'slabs ¦ counted' },
    limit: MOST_SLABS,
  });
}

/** More in the slabs than a layout may hold, or than a mesh is cut into. */
function richFault({ points, mostRings, mostRingPoints }: SlabStack): Result<never> | null {
  const tooMuch = (limit: number, what: Text): Result<never> =>
    fail('mesh-too-much', { limit, what: { text: what } });
  if (mostRings > MOST_RINGS) return tooMuch(MOST_RINGS, 'outlines in one section');
  if (mostRingPoints > MOST_RING_POINTS) return tooMuch(MOST_RING_POINTS, 'points in one outline');
  return points > MOST_SECTION_POINTS ? tooMuch(MOST_SECTION_POINTS, 'points in its sections') : null;
}

/** To three digits, as a message says it. */
const gapText = (gap: Mm | null): Param =>
  gap !== null && Number.isFinite(gap) ? Number(gap.toPrecision(3)) : { text: 'unknown ¦ gap' };

function resultOf(stack: SlabStack): Omit<MeshSections, 'layers' | 'height_mm' | 'topCovered'> {
  const { slabs, openLayers, unitedLayers, emptyLayers } = stack;
  const problems: Fault[] = [];
  if (openLayers > 0) {
    const params = { count: openLayers, gap: gapText(stack.widestGap) };
    problems.push({ code: 'mesh-open-layers', params });
  }
  if (emptyLayers > 0) problems.push({ code: 'mesh-empty-layers', params: { count: emptyLayers } });
  return {
    slabs,
    volume_mm3: stack.volume,
    largest_mm2: stack.largest,
    openLayers,
    widestGap_mm: stack.widestGap,
    unitedLayers,
    emptyLayers,
    firstEmpty: stack.firstEmpty,
    equalLayers: stack.equal.count,
    firstEqual: stack.equal.firstWithBelow,
    problems,
  };
}

/**
 * The same at one go.
 * @param watch hears the share done and may cancel. Faults: as sectionSteps, and mesh-cancelled.
 */
export function sectionMesh(mesh: Mesh, settings: SectionSettings, watch: Watch = {}): Result<MeshSections> {
  const steps = sectionSteps(mesh, settings);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    watch.progress?.(step.value);
    if (watch.cancelled?.()) return fail('mesh-cancelled', { done: Math.floor(100 * step.value) });
  }
}
