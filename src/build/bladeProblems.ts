/**
 * Parts that meet the blade with a long straight side nearly parallel to it: they may catch it along that whole side at
 * once. One problem per shape and turn, since its copies are turned together. Never blocks: the machine maker's
 * instructions decide. Millimetres, degrees. Angle and length: common practice, no source.
 */
import { placedPart, type PlacedPart } from '../exposure/prepared';
import type { Param } from '../layout/result';
import type { Layout } from '../layout/types';
import type { Mm } from '../units/types';
import { longestSide, turnWithoutSides, type LongSide } from './bladeTurn';
import { problem } from './problem';
import type { Problem } from './types';

/** Sides up to this length are nothing to list. */
const LONG_SIDE_MM: Mm = 20;

const shown = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** Problems in the order of the parts; the first part of each shows the side that is named. */
export function bladeProblems(layout: Layout): Problem[] {
  const groups = new Map<string, PlacedPart[]>();
  for (const part of layout.parts) {
    const key = `${part.turn_deg} ${part.shape}`;
    groups.set(key, [...(groups.get(key) ?? []), placedPart(layout, part)]);
  }
  return [...groups.values()].flatMap((alike) => groupProblem(alike, layout));
}

function groupProblem(alike: readonly PlacedPart[], layout: Layout): Problem[] {
  const blade = { recoater: layout.machine.recoater, layer_mm: layout.process.layer_mm };
  const found = longestSide(alike[0], blade, LONG_SIDE_MM);
  if (!found) return [];
  const turn = turnWithoutSides(alike[0], blade, LONG_SIDE_MM);
  const ids = alike.map(({ id }) => id);
  const params = { ...words(found), parts: listed(ids), limit: LONG_SIDE_MM };
  if (turn === null) return [problem('side-along-blade-always', params, ids)];
  return [problem('side-along-blade', { ...params, turn: shown(turn, 1) }, ids)];
}

const words = ({ side, from_mm, to_mm }: LongSide) => ({
  length: shown(side.length_mm, 1),
  angle: shown(side.angle_deg, 1),
  from: shown(from_mm, 2),
  to: shown(to_mm, 2),
});

/** "P03", "P03 and P04", "P03 and 5 like it". */
function listed([first, second, ...more]: readonly string[]): Param {
  if (second === undefined) return first;
  if (more.length === 0) return { text: '{first} and {last}', values: { first, last: second } };
  return { text: '{first} and {count} like it', values: { first, count: more.length + 1 } };
}
