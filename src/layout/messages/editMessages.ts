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
  'clip-nothing': {
    text: 'The clipboard holds no text, so there is nothing to paste.',
    advice: 'Select parts and copy them first.',
    blocks: false,
  },
  'clip-no-parts': {
    text: 'The clipboard holds no parts: “{found}”.',
    advice: 'Parts are pasted that were copied on a plate, in this window or another one.',
    blocks: false,
  },
  'clip-layout': {
    text: 'The clipboard holds a whole layout, not parts.',
    advice: 'Save it as a file and open that, or copy parts on its plate.',
    blocks: false,
  },
  'clip-table': {
    text: 'The clipboard holds a table, not parts copied on a plate.',
    advice: 'Open it by “Paste a table of parts”.',
    blocks: false,
  },
  'clip-wrong-value': {
    text: 'The parts in the clipboard cannot be read: {detail}',
    advice: 'Copy them again; nothing was pasted.',
    blocks: false,
  },
  'clip-newer-version': {
    text: 'The parts in the clipboard have version {found}.',
    advice: 'This program reads version {newest}; load the page again in both windows.',
    blocks: false,
  },
  'clip-unpinned': {
    text: 'Pins of {parts} name a laser that this machine does not have: they were lifted.',
    advice: 'Pin them to a laser of this machine where that matters.',
    blocks: false,
  },
  'clip-not-read': {
    text: 'This browser does not let a menu read the clipboard.',
    advice: 'Press Ctrl+V instead.',
    blocks: false,
  },
  'clip-not-written': {
    text: 'This browser did not take the parts into the clipboard.',
    advice: 'Press Ctrl+C instead.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
