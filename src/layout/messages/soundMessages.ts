/**
 * Faults of the program itself, found by the checks of a layer that run while nothing else does. None of them is caused
 * by what is on the plate. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

const HERE = 'The books do not balance here: ';

/** What was found; the advice is the same for all. */
const found = (text: string): Message => ({
  text: HERE + text,
  advice: 'Do not use the figures of this layer. Keep the layout file: it shows the fault again.',
  blocks: true,
});

export const SOUND_MESSAGES = {
  'books-unbalanced': found('scan areas − double exposure + unassigned miss the section by {by} mm².'),
  'cells-not-apart': found('regions of the division overlap or leave the platform by {by} mm².'),
  'plan-not-feasible': found('the plan of the layer does not hold ({detail}).'),
  'plan-differs': found('solved again, the planned exposure differs by {by} s.'),
  'faster-than-possible': found('the layer is {by} s faster than the best possible.'),
  'layer-sum-off': found('the {figure} of the layer is off by {by}.'),
  'laser-sum-off': found('the {figure} of {laser} is off by {by}.'),
  'piece-of-laser-off': found('{laser} is off and exposes a piece of {part}.'),
  'piece-out-of-place': found('{laser} exposes {by} mm² of {part} outside its zone or its reach.'),
  'piece-area-off': found('a piece of {part} and its outline differ by {by} mm².'),
  'pieces-overlap': found('pieces of {part} overlap by {by} mm².'),
  'pieces-miss-section': found('the pieces of {part} and its section differ by {by} mm².'),
} as const satisfies Record<string, Message>;

export type SoundCode = keyof typeof SOUND_MESSAGES;
