/**
 * What the list of parts has to say: locks, ids, tables of parts. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const PART_MESSAGES = {
  'parts-locked': {
    text: 'Locked, so left where it stands: {parts}.',
    advice: 'Shift+P unlocks what is selected; so does the padlock in the list of parts.',
    blocks: false,
  },
  'list-order-held': {
    text: 'The order of the list stays: {why}.',
    advice:
      'With no search and no sorted column Alt with an arrow moves the selected parts; “Keep this order” takes over what a column sorts.',
    blocks: false,
  },
  'part-id-taken': {
    text: 'Another part is called “{found}”.',
    advice: 'Type an id that no part has.',
    blocks: false,
  },
  'part-id-unreadable': {
    text: '“{found}” cannot be the id of a part.',
    advice: 'An id has 1 to 64 characters.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
