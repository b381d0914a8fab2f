/**
 * Revisions: what an edit has begun, and what a change of state waits for. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const REVISION_MESSAGES = {
  'revision-begun': {
    text: 'Revision {former} is {state} and stays as it is: this edit began revision {name}, a draft derived from it.',
    advice: 'Undo goes back to {former}.',
    blocks: false,
  },
  'revision-fixed': {
    text: 'Revision {name} is {state}: what it records is not changed any more.',
    advice: 'Any edit of the plate begins the next revision.',
    blocks: false,
  },
  'revision-order': {
    text: 'Revision {name} is {state} and cannot become {wanted}.',
    advice: 'A draft is reviewed, then released, then superseded, one after the other.',
    blocks: false,
  },
  'revision-no-author': {
    text: 'Revision {name} names no author.',
    advice: 'Type who made this layout, then mark it as reviewed.',
    blocks: false,
  },
  'revision-no-reviewer': {
    text: 'Revision {name} names no reviewer.',
    advice: 'Type who reviewed this layout, best somebody other than its author.',
    blocks: false,
  },
  'revision-not-cleared': {
    text: 'Revision {name} cannot be released: {why}.',
    advice: 'A release waits until nothing blocks hand-over.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
