/**
 * What arranging, copying and pasting parts has to say. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const EDIT_MESSAGES = {
  'mirror-unlike': {
    text: 'Places and turns are mirrored; the shape of {parts} is unlike its mirror image and stays as it is.',
    advice: 'A mirrored casting is another part: draw it, or open its own outline or mesh.',
    blocks: false,
  },
  'spread-no-room': {
    text: 'No room for {parts}: no free place, as turned, in the zone of the laser that was to take it.',
    advice: 'It stays where it was. Turn it, widen the zone, or take another part away.',
    blocks: false,
  },
  'spread-no-laser': {
    text: 'No laser is on that has a zone here: nothing was spread.',
    advice: 'Switch a laser on, or give it a zone.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
