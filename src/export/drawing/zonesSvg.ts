/**
 * Zones and seams at one height as SVG in true size: its width is in mm and its user unit is 1 mm. Zones are filled areas,
 * platform and seams are lines without a fill. The platform's rear left corner is the origin, +y runs to the front.
 */
import type { Region } from '../../geometry/types';
import type { Mm } from '../../units/types';
import { NOT_FOR_USE } from '../forUse';
import { planInk } from '../plan/ink';
import { escapeXml } from '../plan/marks';
import type { PlanPicture } from '../plan/planPicture';
import { seamsOf, zonesOf, type DrawnZone, type Polyline } from './zones';

const DECIMALS = 1e6;
const THIN_MM: Mm = 0.25;
const THICK_MM: Mm = 0.5;
const FILL = 0.2;

const number = (value: number): string => String(Math.round(value * DECIMALS) / DECIMALS + 0);

/** From the platform's centre to the picture's corner. */
interface Corner {
  readonly x: Mm;
  readonly y: Mm;
}

function pathData({ x, y }: Corner, points: Polyline | Float64Array, end: string): string {
  let data = '';
  for (let i = 0; i < points.length; i += 2)
    data += `${i === 0 ? 'M' : 'L'}${number(x + points[i]!)} ${number(y - points[i + 1]!)}`;
  return data + end;
}
const areaData = (corner: Corner, region: Region): string =>
  region.map((ring) => pathData(corner, ring, 'Z')).join('');

function zone(corner: Corner, { ids, lasers, region }: DrawnZone): string {
  const { stroke, zone: tint } = planInk('light').laser(lasers[0] ?? 0);
  const paint = `fill="${tint.colour}" fill-opacity="${FILL}" fill-rule="evenodd" stroke="${stroke}" stroke-width="${THIN_MM}"`;
  const name = escapeXml(`Zone ${ids.join(' ')}`);
  return `<path d="${areaData(corner, region)}" ${paint}><title>${name}</title></path>`;
}

const seam = (corner: Corner, points: Polyline): string =>
  `<path d="${pathData(corner, points, '')}" fill="none" stroke="#000000" stroke-width="${THICK_MM}"/>`;

function bar(width_mm: Mm, depth_mm: Mm): string {
  const size = number(0.08 * width_mm);
  return `<text x="${number(width_mm / 2)}" y="${number(depth_mm / 2)}" font-size="${size}" font-family="sans-serif" text-anchor="middle" fill="none" stroke="#b00030" stroke-width="${THICK_MM}">${NOT_FOR_USE}</text>`;
}

/** The drawing as text. @param blocked something blocks hand-over */
export function zonesSvg(picture: PlanPicture, blocked: boolean): string {
  const { width_mm, depth_mm } = picture.layout.machine.platform;
  const [width, depth] = [number(width_mm), number(depth_mm)];
  const corner = { x: width_mm / 2, y: depth_mm / 2 };
  const title = `${blocked ? `${NOT_FOR_USE}: ` : ''}zones and seams of ${picture.layout.name}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${depth}mm" viewBox="0 0 ${width} ${depth}">`,
    `<title>${escapeXml(title)}</title>`,
    ...zonesOf(picture).map((each) => zone(corner, each)),
    `<rect width="${width}" height="${depth}" fill="none" stroke="#000000" stroke-width="${THIN_MM}"/>`,
    ...seamsOf(picture).map((each) => seam(corner, each)),
    ...(blocked ? [bar(width_mm, depth_mm)] : []),
    '</svg>\n',
  ].join('\n');
}
