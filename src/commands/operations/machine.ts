/**
 * The machine: platform, lasers, names. Fields that are typed come back as a result, so that the field can say what was wrong.
 */
import { ok, type Result } from '../../layout/result';
import type {
  Laser,
  LaserId,
  Layout,
  LayoutRing,
  Machine,
  Platform,
  Recoater,
  Zoning,
} from '../../layout/types';
import { MOST_LASERS } from '../../layout/limits';
import { roundRing, withMachine } from './edit';
import { freshName } from './names';
import { nearestLasers } from './strategy';
import { reviewed } from './review';

export type MachineFields = Partial<Pick<Machine, 'name' | 'buildHeight_mm' | 'powder'>> & {
  readonly recoater?: Partial<Recoater>;
};

/** Typed fields of the machine; a fault where a value is out of its range. */
export function setMachine(layout: Layout, { recoater, ...fields }: MachineFields): Result<Layout> {
  const merged = { ...layout.machine.recoater, ...recoater };
  return reviewed(layout, withMachine(layout, { ...fields, recoater: merged }));
}

/** Platform width and depth, margin, keep-outs, as typed. The zones stay where they are. */
export const setPlatform = (layout: Layout, fields: Partial<Platform>): Result<Layout> =>
  reviewed(layout, withMachine(layout, { platform: { ...layout.machine.platform, ...fields } }));

const withKeepOuts = (layout: Layout, keepOuts: readonly LayoutRing[]): Layout =>
  withMachine(layout, { platform: { ...layout.machine.platform, keepOuts } });

/** Adds an area that parts must stay clear of; a fault where the outline encloses nothing. */
export const addKeepOut = (layout: Layout, ring: LayoutRing): Result<Layout> =>
  reviewed(layout, withKeepOuts(layout, [...layout.machine.platform.keepOuts, roundRing(ring)]));

/** Takes an area to keep clear of away; the layout itself where there is none of that index. */
export function removeKeepOut(layout: Layout, index: number): Layout {
  const { keepOuts } = layout.machine.platform;
  return index in keepOuts ? withKeepOuts(layout, keepOuts.toSpliced(index, 1)) : layout;
}

export type LaserFields = Partial<Omit<Laser, 'id'>>;

/** Typed fields of one laser; the layout itself where there is no such laser. */
export function setLaser(layout: Layout, id: LaserId, fields: LaserFields): Result<Layout> {
  const index = layout.machine.lasers.findIndex((laser) => laser.id === id);
  if (index < 0) return ok(layout);
  const lasers = layout.machine.lasers.with(index, { ...layout.machine.lasers[index]!, ...fields });
  return reviewed(layout, withMachine(layout, { lasers }));
}

/** Switches a laser on or off. */
export function switchLaser(layout: Layout, id: LaserId, on: boolean): Layout {
  const { lasers } = layout.machine;
  if (!lasers.some((laser) => laser.id === id && laser.on !== on)) return layout;
  return withMachine(layout, { lasers: lasers.map((laser) => (laser.id === id ? { ...laser, on } : laser)) });
}

/** One more laser like the last one, its foot at the centre; it has no zone until one is given to it. */
export function addLaser(layout: Layout): Layout {
  const { lasers } = layout.machine;
  if (lasers.length >= MOST_LASERS) return layout;
  const id = freshName('L', (name) => lasers.some((laser) => laser.id === name));
  const laser: Laser = { ...lasers.at(-1)!, id, foot_mm: [0, 0], reach: null, on: true };
  return withMachine(layout, { lasers: [...lasers, laser] });
}

/** The zoning without a laser: others take its zones, drawn zones that were its alone go to all that remain. */
function zoningWithout(zoning: Zoning, gone: Laser, machine: Machine): Zoning {
  if (zoning.strategy === 'wholeField' || !mentions(zoning, gone.id)) return zoning;
  if (zoning.strategy !== 'drawn') {
    const heir = nearestLasers(machine, [gone.foot_mm])[0]!;
    return { ...zoning, lasers: zoning.lasers.map((id) => (id === gone.id ? heir : id)) };
  }
  const all = machine.lasers.map((laser) => laser.id);
  const zones = zoning.zones.map((zone) => {
    const left = zone.lasers.filter((id) => id !== gone.id);
    return { ...zone, lasers: left.length > 0 ? left : all };
  });
  return { ...zoning, zones };
}

const mentions = (zoning: Zoning, id: LaserId): boolean =>
  zoning.strategy === 'drawn'
    ? zoning.zones.some((zone) => zone.lasers.includes(id))
    : zoning.strategy !== 'wholeField' && zoning.lasers.includes(id);

/** Takes a laser out of the machine, never the last: the nearest takes its zones, pins to it are lifted. */
export function removeLaser(layout: Layout, id: LaserId): Layout {
  const gone = layout.machine.lasers.find((laser) => laser.id === id);
  if (!gone || layout.machine.lasers.length === 1) return layout;
  const next = withMachine(layout, { lasers: layout.machine.lasers.filter((laser) => laser !== gone) });
  const parts = layout.parts.map((part) => (part.laser === id ? { ...part, laser: null } : part));
  const zoning = layout.zoning.map(({ from_mm, zoning: before }) => ({
    from_mm,
    zoning: zoningWithout(before, gone, next.machine),
  }));
  return { ...next, zoning, parts };
}
