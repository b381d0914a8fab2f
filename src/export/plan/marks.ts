/**
 * Marks of a picture as SVG text: outlines, hatching as line segments, lines, words. Everything that a user typed is
 * escaped here. No patterns, no references, no style sheet: plain vectors that print and convert anywhere. Picture px.
 */
import type { Region } from '../../geometry/types';
import type { Px, ScreenPoint } from '../../units/types';
import { toPicture, type Frame } from './frame';
import { hatchSegments, hatchSpacing } from './hatching';
import type { Hatching } from './palette';

export const FONT = "'Liberation Sans', Arial, Helvetica, sans-serif";
export const TEXT_PX: Px = 12;

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
/** What XML 1.0 does not allow, escaped or not: control characters, halves of surrogate pairs, U+FFFE and U+FFFF. */
// oxlint-disable-next-line no-control-regex
const NOT_XML = /[\0-\x08\x0B\x0C\x0E-\x1F\p{Cs}\uFFFE\uFFFF]/gu;

/** Any text as XML content or attribute value. */
export const escapeXml = (text: string): string =>
  text.replace(NOT_XML, '\uFFFD').replace(/[&<>"']/g, (c) => ESCAPES[c]!);

/** A number without needless digits: 0.01 px. */
export const px = (value: Px): string => String(Math.round(value * 100) / 100 + 0);

export interface Pen {
  readonly colour: string;
  readonly width_px: Px;
  readonly dash_px?: readonly Px[];
}
const strokeOf = ({ colour, width_px, dash_px = [] }: Pen): string =>
  `stroke="${colour}" stroke-width="${px(width_px)}"${dash_px.length > 0 ? ` stroke-dasharray="${dash_px.join(' ')}"` : ''}`;

const at = (frame: Frame, x: number, y: number): string => {
  const { left, top } = toPicture(frame, x, y);
  return `${px(left)} ${px(top)}`;
};

function outlineData(frame: Frame, region: Region): string {
  let data = '';
  for (const ring of region) {
    for (let i = 0; i < ring.length; i += 2)
      data += `${i === 0 ? 'M' : 'L'}${at(frame, ring[i], ring[i + 1])}`;
    data += 'Z';
  }
  return data;
}

/** A region's outline, even-odd; '' for an empty one. */
export function outline(
  frame: Frame,
  region: Region,
  pen: Pen | null,
  fill: { readonly colour: string; readonly opacity?: number } | null = null,
): string {
  if (region.length === 0) return '';
  const opacity = fill?.opacity === undefined ? '' : ` fill-opacity="${fill.opacity}"`;
  const filled = fill ? `fill="${fill.colour}"${opacity} fill-rule="evenodd"` : 'fill="none"';
  return `<path d="${outlineData(frame, region)}" ${filled}${pen ? ` ${strokeOf(pen)}` : ''}/>`;
}

function segmentsData(frame: Frame, segments: Float64Array): string {
  let data = '';
  for (let i = 0; i < segments.length; i += 4)
    data += `M${at(frame, segments[i], segments[i + 1])}L${at(frame, segments[i + 2], segments[i + 3])}`;
  return data;
}

/** The hatching of a region as line segments cut at its outline; '' where no line meets it. */
export function hatch(frame: Frame, region: Region, hatching: Hatching, pen: Pen): string {
  const spacing = hatchSpacing(hatching.spacing_px, frame.pxPerMm);
  const data = segmentsData(frame, hatchSegments(region, hatching.angle_deg, spacing));
  return data === ''
    ? ''
    : `<path d="${data}" fill="none" ${strokeOf({ ...pen, dash_px: hatching.dash_px })}/>`;
}

/** Segments x0, y0, x1, y1 on the plate, in mm, joined where one begins at the other's end. */
export function segments(frame: Frame, path: Float64Array, pen: Pen): string {
  let data = '';
  for (let i = 0; i < path.length; i += 4) {
    const joined = i > 0 && path[i] === path[i - 2] && path[i + 1] === path[i - 1];
    if (!joined) data += `M${at(frame, path[i], path[i + 1])}`;
    data += `L${at(frame, path[i + 2], path[i + 3])}`;
  }
  return data === '' ? '' : `<path d="${data}" fill="none" ${strokeOf(pen)}/>`;
}

/** A straight line in the picture. */
export const line = (from: ScreenPoint, to: ScreenPoint, pen: Pen): string =>
  `<path d="M${px(from.left)} ${px(from.top)}L${px(to.left)} ${px(to.top)}" fill="none" ${strokeOf(pen)}/>`;

export interface Words {
  readonly colour: string;
  readonly bold?: boolean;
  readonly align?: 'start' | 'middle' | 'end';
  readonly size_px?: Px;
  /** Colour of a halo; none where left out. */
  readonly halo?: string;
}

/** One line of words, centred on `at` vertically. The halo is a text of its own: not every converter knows paint-order. */
export function write(text: string, { left, top }: ScreenPoint, words: Words): string {
  const size = words.size_px ?? TEXT_PX;
  const place = `x="${px(left)}" y="${px(top + 0.35 * size)}" font-size="${px(size)}"`;
  const weight = words.bold === true ? ' font-weight="600"' : '';
  const begin = `<text ${place}${weight} text-anchor="${words.align ?? 'middle'}"`;
  const content = escapeXml(text);
  const halo =
    words.halo === undefined
      ? ''
      : `${begin} fill="${words.halo}" stroke="${words.halo}" stroke-width="4" stroke-linejoin="round" aria-hidden="true">${content}</text>`;
  return `${halo}${begin} fill="${words.colour}">${content}</text>`;
}

/** A filled rectangle, framed where there is a pen. */
export const box = (
  left: Px,
  top: Px,
  width: Px,
  height: Px,
  fill: string,
  pen: Pen | null = null,
  radius: Px = 0,
): string =>
  `<rect x="${px(left)}" y="${px(top)}" width="${px(width)}" height="${px(height)}"${radius > 0 ? ` rx="${px(radius)}"` : ''} fill="${fill}"${pen ? ` ${strokeOf(pen)}` : ''}/>`;
