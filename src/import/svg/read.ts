/**
 * SVG to rings in millimetres, +y up: walks the elements with their transforms and paints; every filled element
 * is cleaned by its own fill rule. What is no area is counted under its own word.
 */
import { ok, type Result } from '../../layout/result';
import { compose, isFiniteMap, scaling, translation, type Affine } from '../affine';
import type { LeftOutList } from '../leftOut';
import { MOST_LEVELS, type Budget } from '../limits';
import { append } from '../append';
import { drawCurves } from '../points';
import { cleanWalks, isOpen, type Found, type FoundRing, type Walk } from '../rings';
import type { Reading } from '../steps';
import type { ImportSettings, UnitFound } from '../types';
import { MM_PER_UNIT, cssLength } from '../units';
import { SHAPES, subpathsOf } from './elements';
import { readTransform } from './path';
import { INITIAL_PAINT, declarationsOf, isHidden, paintOf, readSheet, type Paint, type Sheet } from './style';
import { readTree, type SvgNode, type SvgTree } from './tree';
import { innerFrame, rootFrame, type Extent } from './viewport';

/** Elements whose children are drawn like their own. */
const GROUPS: ReadonlySet<string> = new Set(['g', 'a', 'switch']);
/** Elements that are only used by others, or that are no drawing. */
const SILENT: ReadonlySet<string> = new Set(
  (
    'defs symbol clipPath mask pattern marker linearGradient radialGradient filter metadata title desc style ' +
    'script view cursor font animate animateTransform set'
  ).split(' '),
);
/** Elements that may end where they did not begin. */
const MAY_BE_OPEN: ReadonlySet<string> = new Set(['path', 'polyline']);
const TEXTS: ReadonlySet<string> = new Set(['text', 'tspan', 'textPath', 'flowRoot']);
const IMAGES: ReadonlySet<string> = new Set(['image', 'foreignObject', 'video', 'canvas']);

interface Said {
  readonly own: ReturnType<typeof declarationsOf>;
  readonly transform: Affine | null;
}
interface Place {
  readonly map: Affine;
  readonly paint: Paint;
  readonly extent: Extent;
  readonly name: string;
  readonly level: number;
}

/** Elements between two steps. */
const STRIDE = 200;

/** Reads the text of an SVG file. */
export function* readSvg(
  text: string,
  settings: ImportSettings,
  leftOut: LeftOutList,
  budget: Budget,
): Reading<Result<Found>> {
  const tree = yield* readTree(text);
  if (!tree.ok) return tree;
  const { root } = tree.value;
  const frame = rootFrame(root);
  const chosen = settings.unit;
  const mmPerPx = MM_PER_UNIT.px;
  const map: Affine =
    chosen === undefined
      ? compose(scaling(mmPerPx, -mmPerPx), frame.map)
      : scaling(MM_PER_UNIT[chosen], -MM_PER_UNIT[chosen]);
  const walker = new Walker(tree.value, leftOut, budget);
  const paint = paintOf(INITIAL_PAINT, declarationsOf(root, walker.sheet));
  yield* walker.children(root, { map, paint, extent: frame.extent, name: '', level: 0 });
  const unit: UnitFound =
    chosen === undefined
      ? {
          unit: frame.unit,
          scale: Number(Math.hypot(map[0], map[1]).toPrecision(12)),
          from: frame.said ? 'file' : 'css',
        }
      : { unit: chosen, scale: MM_PER_UNIT[chosen], from: 'chosen' };
  const { rings, repaired, closed } = walker;
  return ok({ unit, rings, repaired, closed });
}

class Walker {
  readonly rings: FoundRing[] = [];
  readonly sheet: Sheet;
  repaired = 0;
  closed = 0;
  /** Elements being written out by use, to catch one that uses itself. */
  private readonly within = new Set<SvgNode>();
  private readonly read = new Map<SvgNode, Said>();

  constructor(
    private readonly tree: SvgTree,
    private readonly leftOut: LeftOutList,
    private readonly budget: Budget,
  ) {
    this.sheet = readSheet(tree.sheet);
  }

  *children(node: SvgNode, place: Place): Reading<void> {
    for (const child of node.children) {
      if (!this.budget.left) return;
      if (this.budget.used.visits % STRIDE === 0) yield 'curves';
      yield* this.element(child, place);
    }
  }

  private *element(node: SvgNode, outer: Place): Reading<void> {
    if (!this.budget.visit() || SILENT.has(node.tag) || node.tag.includes(':')) return;
    const { own, transform } = this.said(node);
    const word = nameOf(node) ?? node.tag;
    if (isHidden(own)) return this.leftOut.add('hidden', word);
    if (transform === null || !isFiniteMap(transform)) return this.leftOut.add('broken', word);
    const place: Place = {
      map: compose(outer.map, transform),
      paint: paintOf(outer.paint, own),
      extent: outer.extent,
      name: nameOf(node) ?? outer.name,
      level: outer.level + 1,
    };
    this.noteClip(node, word);
    if (GROUPS.has(node.tag)) yield* this.children(node, place);
    else if (node.tag === 'svg') yield* this.frame(node, place, {});
    else if (node.tag === 'use') yield* this.use(node, place);
    else if (SHAPES.has(node.tag)) this.shape(node, place);
    else if (TEXTS.has(node.tag)) this.leftOut.add('text', node.tag);
    else this.leftOut.add(IMAGES.has(node.tag) ? 'image' : 'other', node.tag);
  }

  /** What the element says about itself, read once however often it is used. */
  private said(node: SvgNode): Said {
    let said = this.read.get(node);
    if (said === undefined) {
      said = { own: declarationsOf(node, this.sheet), transform: readTransform(node.attributes.transform) };
      this.read.set(node, said);
    }
    return said;
  }

  private noteClip({ attributes }: SvgNode, word: string): void {
    const style = attributes.style ?? '';
    const clipped = [attributes['clip-path'], attributes.mask].some((value) => /url\(/.test(value ?? ''));
    if (clipped || /(^|;)\s*(clip-path|mask)\s*:\s*url\(/.test(style)) this.leftOut.add('clip', word);
  }

  private *frame(node: SvgNode, place: Place, size: Partial<Extent>): Reading<void> {
    const { map, extent } = innerFrame(node, place.extent, size);
    yield* this.children(node, { ...place, map: compose(place.map, map), extent });
  }

  private *use(node: SvgNode, place: Place): Reading<void> {
    const { attributes } = node;
    const href = attributes.href ?? attributes['xlink:href'] ?? '';
    const target = href.startsWith('#') ? this.tree.byId.get(href.slice(1)) : undefined;
    if (target === undefined || this.within.has(target) || place.level > MOST_LEVELS)
      return this.leftOut.add('missing', `use ${href}`);
    const px = (name: string, whole: number): number | undefined => cssLength(attributes[name], whole)?.px;
    const x = px('x', place.extent.width) ?? 0;
    const y = px('y', place.extent.height) ?? 0;
    const moved = { ...place, map: compose(place.map, translation(x, y)) };
    this.within.add(target);
    if (target.tag === 'symbol' || target.tag === 'svg') {
      const size = { width: px('width', place.extent.width), height: px('height', place.extent.height) };
      const paint = paintOf(place.paint, declarationsOf(target, this.sheet));
      yield* this.frame(target, { ...moved, paint }, size);
    } else {
      yield* this.element(target, moved);
    }
    this.within.delete(target);
  }

  private shape(node: SvgNode, { map, paint, extent, name }: Place): void {
    if (!paint.visible || (!paint.filled && !paint.stroked))
      return this.leftOut.add('hidden', name || node.tag);
    if (!paint.filled || node.tag === 'line') return this.leftOut.add('stroke', name || node.tag);
    const subpaths = subpathsOf(node, extent);
    if (subpaths === null) return this.leftOut.add('broken', name || node.tag);
    const walks: Walk[] = [];
    for (const subpath of subpaths) {
      const drawn = drawCurves(map, subpath, this.budget);
      if (drawn === 'full') return;
      if (drawn === 'far') return this.leftOut.add('far', name || node.tag);
      walks.push({
        curves: drawn.map(({ curve }) => curve),
        points: drawn.flatMap(({ points }) => points),
      });
    }
    const { rings, repaired, tangled } = cleanWalks(walks, paint.rule, name || node.tag);
    if (tangled) this.leftOut.add('broken', name || node.tag);
    else if (rings.length === 0 && subpaths.length > 0)
      this.leftOut.add(paint.stroked ? 'stroke' : 'no-area', name || node.tag);
    if (repaired) this.repaired += 1;
    // A polygon is closed by its kind; lines and paths are where they return to their start or end in "Z".
    if (rings.length > 0 && MAY_BE_OPEN.has(node.tag)) this.closed += walks.filter(isOpen).length;
    append(this.rings, rings);
  }
}

/** The name a user gave the element: its label, or its id. */
function nameOf({ attributes }: SvgNode): string | null {
  const label = attributes['inkscape:label'] ?? attributes['aria-label'] ?? attributes.id;
  return label === undefined || label.trim() === '' ? null : label;
}
