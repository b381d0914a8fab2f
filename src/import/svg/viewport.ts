/**
 * How an svg or symbol element maps its contents: viewBox, width, height, preserveAspectRatio (SVG 2, 8.2 to 8.6).
 * Lengths in CSS pixels, y down as in the file.
 */
import { IDENTITY, compose, scaling, translation, type Affine } from '../affine';
import type { ImportUnit } from '../types';
import { cssLength } from '../units';
import type { SvgNode } from './tree';

export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
/** Size of the user space that percentages refer to. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

export function readViewBox(text: string | undefined): ViewBox | null {
  const numbers = (text ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  if (numbers.length !== 4 || !numbers.every(Number.isFinite)) return null;
  const [x, y, width, height] = numbers;
  return width > 0 && height > 0 ? { x, y, width, height } : null;
}

/** Share of the free space that goes before the drawing, by "Min", "Mid" or "Max". */
const SHARES: Readonly<Record<string, number>> = { min: 0, mid: 0.5, max: 1 };

/** The map from the viewBox to a window of the given size at (0, 0). */
export function fitMap(box: ViewBox, window: Extent, aspect: string | undefined): Affine {
  const [sx, sy] = [window.width / box.width, window.height / box.height];
  const words = (aspect ?? '').trim().split(/\s+/);
  const align = /^x(Min|Mid|Max)Y(Min|Mid|Max)$/.exec(words[0]);
  if (words[0] === 'none') return compose(scaling(sx, sy), translation(-box.x, -box.y));
  const scale = words[1] === 'slice' ? Math.max(sx, sy) : Math.min(sx, sy);
  const [alongX, alongY] = [align?.[1] ?? 'Mid', align?.[2] ?? 'Mid'].map(
    (word) => SHARES[word.toLowerCase()],
  );
  const dx = (window.width - box.width * scale) * alongX;
  const dy = (window.height - box.height * scale) * alongY;
  return compose(translation(dx, dy), compose(scaling(scale, scale), translation(-box.x, -box.y)));
}

export interface Frame {
  readonly map: Affine;
  readonly extent: Extent;
}
export interface RootFrame extends Frame {
  /** The unit the file gives its size in; px where it gives none. */
  readonly unit: ImportUnit;
  /** The file writes a unit, px included; a bare number is none. */
  readonly said: boolean;
}

/** The default size of a document without any (CSS 2.2, 10.3.2). */
const DEFAULT_EXTENT: Extent = { width: 300, height: 150 };

/** The outermost element: its contents in CSS pixels. Without a size the viewBox counts as pixels. */
export function rootFrame(root: SvgNode): RootFrame {
  const frame = sizedFrame(root);
  const { width, height } = root.attributes;
  const written = [width, height].some((text) => cssLength(text) !== null && /[a-z]\s*$/i.test(text ?? ''));
  return { ...frame, said: written && frame.sized };
}

function sizedFrame({ attributes }: SvgNode): Omit<RootFrame, 'said'> & { readonly sized: boolean } {
  const box = readViewBox(attributes.viewBox);
  const width = cssLength(attributes.width);
  const height = cssLength(attributes.height);
  if (box === null) {
    const extent = { width: width?.px ?? DEFAULT_EXTENT.width, height: height?.px ?? DEFAULT_EXTENT.height };
    return { map: IDENTITY, extent, unit: width?.unit ?? height?.unit ?? 'px', sized: true };
  }
  const sized = (width?.px ?? 1) > 0 && (height?.px ?? 1) > 0;
  if (!sized || (width === null && height === null))
    return { map: IDENTITY, extent: box, unit: 'px', sized: false };
  const window = {
    width: width?.px ?? ((height?.px ?? 0) * box.width) / box.height,
    height: height?.px ?? ((width?.px ?? 0) * box.height) / box.width,
  };
  const map = fitMap(box, window, attributes.preserveAspectRatio);
  return { map, extent: box, unit: width?.unit ?? height?.unit ?? 'px', sized: true };
}

/** An svg or symbol within the drawing; `size` overrides its own width and height (from a use element). */
export function innerFrame({ attributes }: SvgNode, outer: Extent, size: Partial<Extent>): Frame {
  const width = size.width ?? cssLength(attributes.width, outer.width)?.px ?? outer.width;
  const height = size.height ?? cssLength(attributes.height, outer.height)?.px ?? outer.height;
  const x = cssLength(attributes.x, outer.width)?.px ?? 0;
  const y = cssLength(attributes.y, outer.height)?.px ?? 0;
  const box = readViewBox(attributes.viewBox);
  const inside = box === null ? IDENTITY : fitMap(box, { width, height }, attributes.preserveAspectRatio);
  return { map: compose(translation(x, y), inside), extent: box ?? { width, height } };
}
