/**
 * Choosing a strategy: what zones a plate starts from when a division is chosen. Lasers go to the zones they stand
 * nearest to (their foot), lasers that are off are left out while any is on. Platform millimetres.
 */
import type {
  DrawnZone,
  Laser,
  LaserId,
  LayoutAt,
  Machine,
  Point,
  QuadrantsZoning,
  Strategy,
  StripsZoning,
  Zoning,
} from '../../layout/types';
import { differentPoints, enclosesArea } from '../../layout/outlineChecks';
import type { Degrees, Mm } from '../../units/types';
import { roundDeg, roundMm } from '../../units/round';
import { divide } from '../../zoning/divide';
import { membersOf } from '../../zoning/lasers';
import { stripNormal } from '../../zoning/lines';
import { clamp, halfExtent, withZoning } from './edit';

export const FEWEST_STRIPS = 2;
export const MOST_STRIPS = 12;
/** Keeps lines apart on a platform of a few micrometres, which a layout may describe. */
const NARROWEST_STRIP_MM = 0.002;

/** Lasers that are on; all of them where none is. */
export function usableLasers({ lasers }: Machine): readonly Laser[] {
  const on = lasers.filter((laser) => laser.on);
  return on.length > 0 ? on : lasers;
}

/** Lasers for zones with these centres: the nearest pairs first, every laser as often as the others at most. */
export function nearestLasers(machine: Machine, centres: readonly Point[]): LaserId[] {
  const lasers = usableLasers(machine);
  const most = Math.ceil(centres.length / lasers.length);
  const pairs = centres.flatMap(([x, y], zone) =>
    lasers.map(({ foot_mm }, laser) => ({ zone, laser, far: Math.hypot(foot_mm[0] - x, foot_mm[1] - y) })),
  );
  pairs.sort((a, b) => a.far - b.far || a.zone - b.zone || a.laser - b.laser);
  const uses = lasers.map(() => 0);
  const chosen: number[] = centres.map(() => -1);
  for (const { zone, laser } of pairs)
    if (chosen[zone]! < 0 && uses[laser]! < most) {
      chosen[zone] = laser;
      uses[laser]!++;
    }
  return chosen.map((laser) => lasers[laser]!.id);
}

/** Lasers for strips from one side to the other: in the order of their feet along the normal. */
export function lasersAlong(machine: Machine, run_deg: Degrees, strips: number): LaserId[] {
  const [nx, ny] = stripNormal(run_deg);
  const along = ({ foot_mm: [x, y] }: Laser) => roundMm(nx * x + ny * y);
  const lasers = [...usableLasers(machine)].sort((a, b) => along(a) - along(b));
  return Array.from({ length: strips }, (_, i) => lasers[Math.floor((i * lasers.length) / strips)]!.id);
}

/** Lines that make `strips` strips of equal width. */
export function equalLines(machine: Machine, run_deg: Degrees, strips: number): Mm[] {
  const [nx, ny] = stripNormal(run_deg);
  const half = halfExtent(machine, nx, ny);
  const width = Math.max((2 * half) / strips, NARROWEST_STRIP_MM);
  return Array.from({ length: strips - 1 }, (_, i) => roundMm(-half + width * (i + 1)));
}

/** Degrees brought to 0 ≤ a < 180: strips have no front and back. */
export const runAngle = (deg: Degrees): Degrees => roundDeg(roundDeg(deg) % 180);

const bandOf = (zoning: Zoning): Mm => ('sharedBand_mm' in zoning ? zoning.sharedBand_mm : 0);

function quadrants({ machine, zoning }: LayoutAt): QuadrantsZoning {
  const [x, y] = [machine.platform.width_mm / 4, machine.platform.depth_mm / 4];
  const lasers = nearestLasers(machine, [
    [-x, -y],
    [x, -y],
    [-x, y],
    [x, y],
  ]);
  return { strategy: 'quadrants', at_mm: [0, 0], sharedBand_mm: bandOf(zoning), lasers };
}

/** Strips of equal width, as many as lasers are on (2 to 12). */
export function equalStrips({ machine, zoning }: LayoutAt, run_deg: Degrees, count?: number): StripsZoning {
  const strips = clamp(count ?? usableLasers(machine).length, FEWEST_STRIPS, MOST_STRIPS);
  return {
    strategy: 'strips',
    run_deg,
    lines_mm: equalLines(machine, run_deg, strips),
    sharedBand_mm: bandOf(zoning),
    lasers: lasersAlong(machine, run_deg, strips),
  };
}

/** The zones as they are, each as an outline that can be changed from here on. */
function asDrawn({ machine, zoning }: LayoutAt): DrawnZone[] {
  const pointsOf = (ring: Float64Array): Point[] =>
    Array.from({ length: ring.length / 2 }, (_, i) => [roundMm(ring[2 * i]!), roundMm(ring[2 * i + 1]!)]);
  return divide(machine, zoning)
    .zones.map((zone) => ({
      lasers: membersOf(zone.lasers).map((laser) => machine.lasers[laser]!.id),
      rings: zone.region.map(pointsOf).filter((ring) => differentPoints(ring) >= 3 && enclosesArea(ring)),
    }))
    .filter((zone) => zone.rings.length > 0);
}

/** The whole field as one drawn zone of every laser. */
const wholeDrawn = ({ machine }: LayoutAt): DrawnZone => {
  const [x, y] = [roundMm(machine.platform.width_mm / 2), roundMm(machine.platform.depth_mm / 2)];
  return {
    lasers: machine.lasers.map((laser) => laser.id),
    rings: [
      [
        [-x, -y],
        [x, -y],
        [x, y],
        [-x, y],
      ],
    ],
  };
};

/**
 * The layout divided by a strategy. Strips take `run_deg` (90: side by side in x, the default; 0: front to back).
 * The shared band stays; going to drawn zones keeps the zones as outlines. Nothing changes where the plate is divided
 * so already.
 */
export function setStrategy(layout: LayoutAt, strategy: Strategy, run_deg: Degrees = 90): LayoutAt {
  const { zoning } = layout;
  const run = runAngle(run_deg);
  if (zoning.strategy === strategy && !(zoning.strategy === 'strips' && zoning.run_deg !== run))
    return layout;
  switch (strategy) {
    case 'quadrants':
      return withZoning(layout, quadrants(layout));
    case 'strips':
      return withZoning(layout, equalStrips(layout, run));
    case 'wholeField':
      return withZoning(layout, { strategy: 'wholeField' });
    case 'drawn': {
      const zones = zoning.strategy === 'wholeField' ? [wholeDrawn(layout)] : asDrawn(layout);
      return withZoning(layout, { strategy: 'drawn', zones });
    }
  }
}
