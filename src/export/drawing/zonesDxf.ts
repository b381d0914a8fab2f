/**
 * Zones and seams at one height as DXF (R12, which every program reads; $INSUNITS 4: millimetres). Layers: PLATFORM, ZONE_ and
 * the lasers for each zone, SEAMS, and NOT_FOR_USE with the words where something blocks hand-over. Outlines are closed
 * polylines, seams open ones. Origin at the platform's centre, +x right, +y back. Source: Autodesk's DXF reference [memory].
 */
import type { Ring } from '../../geometry/types';
import { rectangle } from '../../geometry/region';
import type { Mm } from '../../units/types';
import { NOT_FOR_USE } from '../forUse';
import type { PlanPicture } from '../plan/planPicture';
import { seamsOf, zonesOf, type Polyline } from './zones';

/** A group code and its value: two lines of the file. */
type Pair = readonly [code: number, value: string | number];

const DECIMALS = 1e6;
const MILLIMETRES = 4;
const CLOSED = 1;
/** Colour numbers of the layers: white or black, whichever the ground is not; then one hue after the other. */
const INK = 7;
const HUES = [5, 30, 3, 6, 4, 1, 2];
/** Height of the words that bar the plate from use, in share of its width. */
const WORDS_SHARE = 0.08;

const rounded = (value: number): number => Math.round(value * DECIMALS) / DECIMALS + 0;

/** What R12 allows in the name of a layer: letters, digits, $, - and _, at most 31. */
export const layerName = (text: string): string =>
  text
    .toUpperCase()
    .replace(/[^A-Z0-9$_-]/g, '_')
    .slice(0, 31);

const point = (x: Mm, y: Mm): Pair[] => [
  [10, rounded(x)],
  [20, rounded(y)],
  [30, 0],
];

function polyline(layer: string, points: Polyline | Ring, flag: number): Pair[] {
  const pairs: Pair[] = [[0, 'POLYLINE'], [8, layer], [66, 1], ...point(0, 0), [70, flag]];
  for (let i = 0; i < points.length; i += 2)
    pairs.push([0, 'VERTEX'], [8, layer], ...point(points[i]!, points[i + 1]!));
  return [...pairs, [0, 'SEQEND'], [8, layer]];
}

const closed = (layer: string, rings: readonly Ring[]): Pair[] =>
  rings.flatMap((ring) => polyline(layer, ring, CLOSED));

function header(width_mm: Mm, depth_mm: Mm): Pair[] {
  const [x, y] = [width_mm / 2, depth_mm / 2];
  return [
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$INSUNITS'],
    [70, MILLIMETRES],
    [9, '$EXTMIN'],
    ...point(-x, -y),
    [9, '$EXTMAX'],
    ...point(x, y),
    [0, 'ENDSEC'],
  ];
}

function layerTable(layers: ReadonlyMap<string, number>): Pair[] {
  const entries = [...layers].flatMap(([name, colour]): Pair[] => [
    [0, 'LAYER'],
    [2, name],
    [70, 0],
    [62, colour],
    [6, 'CONTINUOUS'],
  ]);
  return [
    [0, 'SECTION'],
    [2, 'TABLES'],
    [0, 'TABLE'],
    [2, 'LAYER'],
    [70, layers.size],
    ...entries,
    [0, 'ENDTAB'],
    [0, 'ENDSEC'],
  ];
}

const words = (layer: string, text: string, x: Mm, y: Mm, height: Mm): Pair[] => [
  [0, 'TEXT'],
  [8, layer],
  ...point(x, y),
  [40, rounded(height)],
  [1, text],
];

export interface ZonesDrawing {
  /** Something blocks hand-over. */
  readonly blocked: boolean;
  /** The platform's outline is drawn, too. */
  readonly platform: boolean;
}

/** The drawing as text, lines ended by CRLF. */
export function zonesDxf(picture: PlanPicture, { blocked, platform }: ZonesDrawing): string {
  const { width_mm, depth_mm } = picture.layout.machine.platform;
  const [x, y] = [width_mm / 2, depth_mm / 2];
  const layers = new Map<string, number>();
  const entities: Pair[] = [];
  const put = (layer: string, colour: number, pairs: Pair[]): void => {
    layers.set(layer, layers.get(layer) ?? colour);
    entities.push(...pairs);
  };
  if (platform) put('PLATFORM', INK, closed('PLATFORM', rectangle(-x, -y, x, y)));
  for (const { ids, lasers, region } of zonesOf(picture)) {
    const layer = layerName(`ZONE_${ids.join('_')}`);
    put(layer, HUES[(lasers[0] ?? 0) % HUES.length]!, closed(layer, region));
  }
  for (const seam of seamsOf(picture)) put('SEAMS', INK, polyline('SEAMS', seam, 0));
  const bar = words('NOT_FOR_USE', NOT_FOR_USE, 0.9 * -x, 0, WORDS_SHARE * width_mm);
  if (blocked) put('NOT_FOR_USE', 1, bar);
  const remark: Pair[] = [[999, `Evenplate, millimetres${blocked ? `, ${NOT_FOR_USE}` : ''}`]];
  const body: Pair[] = [[0, 'SECTION'], [2, 'ENTITIES'], ...entities, [0, 'ENDSEC'], [0, 'EOF']];
  const all = [...remark, ...header(width_mm, depth_mm), ...layerTable(layers), ...body];
  return all.map(([code, value]) => `${code}\r\n${value}\r\n`).join('');
}
