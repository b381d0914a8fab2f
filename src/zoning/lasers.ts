/**
 * Sets of lasers as bit masks: bit i stands for the machine's i-th laser.
 */
import type { LaserId, Machine } from '../layout/types';
import type { LaserSet } from './types';

/** The set of one laser. */
export const only = (laser: number): LaserSet => (1 << laser) >>> 0;
/** True where a laser, by machine index, is in the set. */
export const has = (set: LaserSet, laser: number): boolean => ((set >>> laser) & 1) === 1;

/** Laser indices in the set, ascending. */
export function membersOf(set: LaserSet): number[] {
  const members: number[] = [];
  for (let laser = 0; set >>> laser !== 0 && laser < 31; laser++) if (has(set, laser)) members.push(laser);
  return members;
}

/** The only member, −1 where the set has none or several. */
export function singleOf(set: LaserSet): number {
  return set !== 0 && (set & (set - 1)) === 0 ? 31 - Math.clz32(set) : -1;
}

/** The set of the named lasers; unknown names do not occur in a layout that was read. */
export function setOf(machine: Machine, ids: readonly LaserId[]): LaserSet {
  let set = 0;
  machine.lasers.forEach((laser, index) => {
    if (ids.includes(laser.id)) set |= only(index);
  });
  return set;
}

/** Lasers that are switched on. */
export function lasersOn(machine: Machine): LaserSet {
  let set = 0;
  machine.lasers.forEach((laser, index) => {
    if (laser.on) set |= only(index);
  });
  return set;
}
