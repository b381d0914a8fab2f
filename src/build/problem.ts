/**
 * How a problem of the plate is made: its code from the table of messages, the words that go into it, the parts
 * concerned. Millimetres, square millimetres.
 */
import { PLATE_MESSAGES, type PlateCode } from '../layout/messages/plateMessages';
import { figure, type Figure, type Params } from '../layout/result';
import type { Mm, Mm2 } from '../units/types';
import type { Problem } from './types';

/** The first part is the one to act on. */
export const problem = (code: PlateCode, params: Params, parts: readonly string[]): Problem => ({
  code,
  params,
  parts,
  blocks: PLATE_MESSAGES[code].blocks,
});

/** An area as a sentence says it. */
export const shownArea = (area: Mm2): Figure => figure(area >= 100 ? area.toFixed(0) : area.toPrecision(3));

/** A length as a sentence says it. */
export const shownLength = (value: Mm): number => Number(value.toFixed(2));
