/**
 * Faults of the program itself, found by the checks of a layer that run while nothing else does. None of them is caused
 * by what is on the plate. The rules of the table stand in messages.ts.
 */
import type { Text } from '../../language/index';
import type { Message } from './message';

/** What was found; the advice is the same for all. */
const found = (text: Text): Message => ({
  text,
  advice: 'Do not use the figures of this layer. Keep the layout file: it shows the fault again.',
  blocks: true,
});

export const SOUND_MESSAGES = {
  'books-unbalanced': found(
    'The books do not balance here: scan areas − double exposure + unassigned miss the section by {by} mm².',
  ),
  'cells-not-apart': found(
    'The books do not balance here: regions of the division overlap or leave the platform by {by} mm².',
  ),
  'plan-not-feasible': found(
    'The books do not balance here: the plan of the layer does not hold ({detail}).',
  ),
  'plan-differs': found(
    'The books do not balance here: solved again, the planned exposure differs by {by} s.',
  ),
  'faster-than-possible': found(
    'The books do not balance here: the layer is {by} s faster than the best possible.',
  ),
  'layer-sum-off': found('The books do not balance here: the {figure} of the layer is off by {by}.'),
  'laser-sum-off': found('The books do not balance here: the {figure} of {laser} is off by {by}.'),
  'piece-of-laser-off': found('The books do not balance here: {laser} is off and exposes a piece of {part}.'),
  'piece-out-of-place': found(
    'The books do not balance here: {laser} exposes {by} mm² of {part} outside its zone or its reach.',
  ),
  'piece-area-off': found(
    'The books do not balance here: a piece of {part} and its outline differ by {by} mm².',
  ),
  'pieces-overlap': found('The books do not balance here: pieces of {part} overlap by {by} mm².'),
  'pieces-miss-section': found(
    'The books do not balance here: the pieces of {part} and its section differ by {by} mm².',
  ),
} as const satisfies Record<string, Message>;

export type SoundCode = keyof typeof SOUND_MESSAGES;
