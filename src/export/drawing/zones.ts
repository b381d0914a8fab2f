/**
 * What a drawing of the zones holds: the platform, each zone with the lasers it is given to, and the seams, at one height.
 * Millimetres, origin at the platform's centre, +x right, +y back.
 */
import type { Region } from '../../geometry/types';
import type { LaserId } from '../../layout/types';
import { membersOf } from '../../zoning/lasers';
import type { PlanPicture } from '../plan/planPicture';

export interface DrawnZone {
  readonly lasers: readonly number[];
  readonly ids: readonly LaserId[];
  readonly region: Region;
}
/** Points x, y one after the other. */
export type Polyline = readonly number[];

/** Zones in the layout's order, without those that hold nothing. */
export const zonesOf = ({ division, layout }: PlanPicture): DrawnZone[] =>
  division.zones
    .filter(({ region }) => region.length > 0)
    .map(({ lasers, region }) => {
      const members = membersOf(lasers);
      return { lasers: members, ids: members.map((i) => layout.machine.lasers[i]!.id), region };
    });

/** A seam's segments as lines, joined where one begins at the other's end. */
function linesOf(path: Float64Array): Polyline[] {
  const lines: number[][] = [];
  for (let i = 0; i < path.length; i += 4) {
    const [x0, y0, x1, y1] = path.subarray(i, i + 4);
    const last = lines.at(-1);
    if (last && last.at(-2) === x0 && last.at(-1) === y0) last.push(x1!, y1!);
    else lines.push([x0!, y0!, x1!, y1!]);
  }
  return lines;
}

/** All seams of the layer. */
export const seamsOf = ({ layer }: PlanPicture): Polyline[] =>
  (layer?.seams ?? []).flatMap(({ path }) => linesOf(path));
