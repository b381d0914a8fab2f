/**
 * SVG's basic shapes to curves in user units (SVG 2, 10). y down as in the file.
 */
import { arc, line, polyline, type Curve } from '../curve';
import { cssLength } from '../units';
import { readPath, type Subpath } from './path';
import type { SvgNode } from './tree';
import type { Extent } from './viewport';

/** Elements that can enclose an area. */
export const SHAPES: ReadonlySet<string> = new Set(
  'path rect circle ellipse polygon polyline line'.split(' '),
);

/** The element's subpaths; empty where it draws nothing, null where its data is broken. */
export function subpathsOf(node: SvgNode, extent: Extent): Subpath[] | null {
  const { attributes } = node;
  switch (node.tag) {
    case 'path':
      return attributes.d === undefined ? [] : readPath(attributes.d);
    case 'rect':
      return rectangle(attributes, extent);
    case 'circle':
    case 'ellipse':
      return ellipse(node, extent);
    case 'polygon':
    case 'polyline':
      return points(attributes.points ?? '', node.tag === 'polygon');
    case 'line':
      return [[line(...corner(attributes, 'x1', 'y1', extent), ...corner(attributes, 'x2', 'y2', extent))]];
    default:
      return [];
  }
}

type Attributes = SvgNode['attributes'];

/** A length attribute in user units; 0 where it is missing, NaN where it cannot be read. */
function value(attributes: Attributes, name: string, whole: number): number {
  const text = attributes[name];
  return text === undefined ? 0 : (cssLength(text, whole)?.px ?? Number.NaN);
}

const corner = (attributes: Attributes, x: string, y: string, extent: Extent): [number, number] => [
  value(attributes, x, extent.width),
  value(attributes, y, extent.height),
];

const allFinite = (...numbers: number[]): boolean => numbers.every(Number.isFinite);

function rectangle(attributes: Attributes, extent: Extent): Subpath[] | null {
  const [x, y] = corner(attributes, 'x', 'y', extent);
  const [width, height] = corner(attributes, 'width', 'height', extent);
  const [rx, ry] = radii(attributes, extent, width, height);
  if (!allFinite(x, y, width, height, rx, ry)) return null;
  if (width <= 0 || height <= 0) return [];
  const [right, bottom] = [x + width, y + height];
  if (rx === 0 || ry === 0) return [polyline([x, y, right, y, right, bottom, x, bottom], true)];
  const turn = Math.PI / 2;
  const rounded = (cx: number, cy: number, quarter: number): Curve =>
    arc(cx, cy, rx, ry, quarter * turn, (quarter + 1) * turn);
  return [
    [
      ...(width > 2 * rx ? [line(x + rx, y, right - rx, y)] : []),
      rounded(right - rx, y + ry, -1),
      ...(height > 2 * ry ? [line(right, y + ry, right, bottom - ry)] : []),
      rounded(right - rx, bottom - ry, 0),
      ...(width > 2 * rx ? [line(right - rx, bottom, x + rx, bottom)] : []),
      rounded(x + rx, bottom - ry, 1),
      ...(height > 2 * ry ? [line(x, bottom - ry, x, y + ry)] : []),
      rounded(x + rx, y + ry, 2),
    ],
  ];
}

/** Corner radii: a missing one follows the other, none is larger than half the side. */
function radii(attributes: Attributes, extent: Extent, width: number, height: number): [number, number] {
  const given = (name: 'rx' | 'ry', whole: number): number | null => {
    const text = attributes[name];
    return text === undefined || text.trim() === 'auto' ? null : value(attributes, name, whole);
  };
  const [rx, ry] = [given('rx', extent.width), given('ry', extent.height)];
  const clamp = (r: number, side: number): number => Math.min(Math.max(r, 0), side / 2);
  return [clamp(rx ?? ry ?? 0, width), clamp(ry ?? rx ?? 0, height)];
}

function ellipse(node: SvgNode, extent: Extent): Subpath[] | null {
  const { attributes } = node;
  const [cx, cy] = corner(attributes, 'cx', 'cy', extent);
  const diagonal = Math.hypot(extent.width, extent.height) / Math.SQRT2;
  const r = value(attributes, 'r', diagonal);
  const [rx, ry] = node.tag === 'circle' ? [r, r] : radii(attributes, extent, Infinity, Infinity);
  if (!allFinite(cx, cy, rx, ry)) return null;
  return rx > 0 && ry > 0 ? [[arc(cx, cy, rx, ry)]] : [];
}

function points(text: string, closed: boolean): Subpath[] | null {
  const flat = text.match(/[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?/gi)?.map(Number) ?? [];
  if (!flat.every(Number.isFinite) || /[^-+.,\deE\s]/.test(text)) return null;
  if (flat.length % 2 === 1) flat.pop();
  return flat.length < 4 ? [] : [polyline(flat, closed)];
}
