/**
 * What is wrong with a build, over its whole height: how its parts stand, what the division leaves out, whether meshes were
 * cut for its layers, what its schedule meets. Its own module, so that the page can show the plate first and look for
 * problems a moment later; in steps, so that who looks may pause, or drop it for a newer plate.
 */
import type { MessageCode } from '../layout/messages';
import { plateSteps } from './checks';
import { cutProblems } from './cutLayer';
import { divisionFaults } from './faults';
import { finished } from './finished';
import type { Plate } from './plate';
import type { PartSections, Rules } from './rules';
import { powderFaults } from './powderFaults';
import { scheduleFaults } from './scheduleFaults';
import type { Stretch, WholeHeight } from './types';

export type Found = Pick<WholeHeight, 'problems' | 'checks'>;

/** What problems are looked for in. */
export interface Examined {
  readonly plate: Plate;
  /** By part, the divided section of every stretch. */
  readonly sections: readonly PartSections[];
  readonly rules: Rules;
  readonly stretches: readonly Stretch[];
}
export type FindProblems = (examined: Examined) => Found;

/** Places that no laser reaches, as the checks of the plate name them. */
const BEYOND: readonly MessageCode[] = ['part-off-platform', 'part-out-of-reach'];

/** What blocks hand-over first, then the rest; each in the order of the parts. At least one check stands behind it. */
export function* problemSteps(examined: Examined): Generator<undefined, Found, undefined> {
  const { plate, sections, rules, stretches } = examined;
  const { layout, placed, divisions } = plate;
  const standing = yield* plateSteps(layout, placed);
  const beyond = standing.problems.filter(({ code }) => BEYOND.includes(code)).map(({ parts }) => parts[0]);
  const faults = divisionFaults(layout, divisions[0], placed, sections, rules.heldByNoZone, new Set(beyond));
  yield;
  const timed = scheduleFaults(layout, stretches);
  const powder = powderFaults(layout, stretches);
  const cut = cutProblems(layout);
  const found = [faults, standing, cut, powder, timed];
  const all = found.flatMap(({ problems }) => problems);
  return {
    problems: [...all.filter((p) => p.blocks), ...all.filter((p) => !p.blocks)],
    checks: found.reduce((sum, { checks }) => sum + checks, 0),
  };
}

/** The same at once. */
export const findProblems: FindProblems = (examined) => finished(problemSteps(examined));
