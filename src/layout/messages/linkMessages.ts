/**
 * What is read from a link. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const LINK_MESSAGES = {
  'link-usage': {
    text: 'The command cannot be run: {detail}.',
    advice: 'Use: npm run --silent link -- FILE',
    blocks: false,
  },
  'layout-usage': {
    text: 'The command cannot be run: {detail}.',
    advice:
      'Use: npm run --silent layout -- LINK (a whole address, the part after “#”, or - for standard input)',
    blocks: false,
  },
  'link-not-read': {
    text: 'The link could not be read: a part of the page could not be loaded.',
    advice: 'The open plate is untouched. Load the page again and open the link once more.',
    blocks: false,
  },
  'link-not-made': {
    text: 'The link would not bring this back to the last digit.',
    advice: 'Hand over a layout file instead.',
    blocks: false,
  },
  'link-no-room': {
    text: 'The link holds {found} layouts, and there is room for {room} more.',
    advice: 'Four stand side by side at most: take some away first.',
    blocks: false,
  },
  'link-none': {
    text: 'The address holds no plate.',
    advice: 'A plate’s link has a part after “#” that starts with “L1.” or “C1.”.',
    blocks: false,
  },
  'link-other-kind': {
    text: 'The link is of the other kind: one plate has “L” after “#”, plates side by side have “C”.',
    advice: 'Open it in the workbench, which tells them apart.',
    blocks: false,
  },
  'link-newer': {
    text: 'The link was made by a newer version (prefix {found}; this one reads up to {newest}).',
    advice: 'Open it with that version, or ask for a layout file.',
    blocks: false,
  },
  'link-cut': {
    text: 'The link was cut: its end is missing.',
    advice: 'Copy it whole, or ask for a layout file: long links break in mail and chat.',
    blocks: false,
  },
  'link-altered': {
    text: 'The link was altered: its content does not fit its check characters.',
    advice: 'Copy it again from where it was made, or ask for a layout file.',
    blocks: false,
  },
  'link-too-large': {
    text: 'The link holds more than a layout can.',
    advice: 'Nothing was opened. Ask for a layout file.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
