/**
 * What reading a table of parts has to say, row by row. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const TABLE_MESSAGES = {
  'table-too-long': {
    text: 'The table has {found} characters; {limit} are read at most.',
    advice: 'Paste it in portions.',
    blocks: false,
  },
  'table-cells': {
    text: '{found} cells in {expected} columns.',
    advice: 'Choose the separator that the table was written with, or put cells that hold it into quotes.',
    blocks: false,
  },
  'table-value': {
    text: '{column}: “{found}” is not read.',
    advice: 'Numbers take a unit; the decimal sign is one for the whole table.',
    blocks: false,
  },
  'table-no-id': {
    text: '“{found}” is no number of a part.',
    advice: 'Take 1 to 64 characters without line breaks.',
    blocks: false,
  },
  'table-no-shape': {
    text: 'No shape.',
    advice: 'A part that is new needs the name of a shape on this plate.',
    blocks: false,
  },
  'table-no-place': {
    text: 'No x or no y.',
    advice: 'A part that is new needs both.',
    blocks: false,
  },
  'table-unknown-shape': {
    text: 'No shape “{found}” on this plate.',
    advice: 'Open its outline or mesh first, or take it from the library.',
    blocks: false,
  },
  'table-unknown-laser': {
    text: 'No laser “{found}” on this machine.',
    advice: 'Take one of {lasers}, or “-” for no pin.',
    blocks: false,
  },
  'table-locked': {
    text: '{part} is locked and keeps its place.',
    advice: 'Unlock it first.',
    blocks: false,
  },
  'table-id-taken': {
    text: '{from} is taken: becomes {to}.',
    advice: 'Choose “change” to give the part that stands there these values.',
    blocks: false,
  },
  'table-id-twice': {
    text: '{from} stands in row {row} with other values: becomes {to}.',
    advice: 'Give every part its own number where the old one matters.',
    blocks: false,
  },
  'table-repeated': {
    text: 'The same as row {row}, counted once.',
    advice: 'Nothing is to be done.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
