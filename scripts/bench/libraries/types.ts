/** What the bench asks of a general-purpose polygon library. Millimetres; areas in mm². */
import type { Point } from '../../../src/layout/types';

export type Rectangle = readonly [number, number, number, number];
export interface Plate {
  /** [part][ring][point]: outer ring first, then its holes. */
  readonly parts: readonly (readonly (readonly Point[])[])[];
  readonly zones: readonly Rectangle[];
  readonly inset_mm: number;
}
/** [part][zone] → area; 0 where the boxes do not meet. */
export type ZoneAreas = Float64Array[];
export interface Library {
  readonly name: string;
  /** Inset of every part, then its intersection with every zone its box meets; null where it has no inset. */
  readonly insetAndZones: (() => ZoneAreas) | null;
  /** Intersection of the outlines as they are. */
  readonly zonesOnly: () => ZoneAreas;
}

export const emptyAreas = (plate: Plate): ZoneAreas =>
  plate.parts.map(() => new Float64Array(plate.zones.length));

/** For every part the zones whose rectangle meets its box: the test every library is spared. */
export const meetings = (plate: Plate): number[][] =>
  plate.parts.map(([outer]) => {
    const xs = outer!.map(([x]) => x);
    const ys = outer!.map(([, y]) => y);
    const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
    return plate.zones.flatMap((zone, k) =>
      zone[0] < box[2] && box[0] < zone[2] && zone[1] < box[3] && box[1] < zone[3] ? [k] : [],
    );
  });
