/**
 * What the library in the browser keeps, reads and refuses. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const LIBRARY_MESSAGES = {
  'library-unavailable': {
    text: 'This browser gives the page no database, as in some private windows: the library is not there.',
    advice: 'Save the layout as a file, or allow site data for this page.',
    blocks: false,
  },
  'library-full': {
    text: 'This browser’s storage is full: the library is as it was before.',
    advice: 'Delete entries, or save the layout as a file.',
    blocks: false,
  },
  'library-entry-gone': {
    text: '“{name}” is not in the library any more: another window has deleted it.',
    advice: 'Nothing was changed.',
    blocks: false,
  },
  'library-entry-changed': {
    text: 'Another window has changed “{name}” meanwhile.',
    advice: 'Nothing was changed; look at the list and try again.',
    blocks: false,
  },
  'library-entry-unreadable': {
    text: '“{name}” cannot be opened: {detail}',
    advice: 'It stays in the library; the plate is as it was.',
    blocks: false,
  },
  'library-name': {
    text: '“{found}” cannot be the name of an entry.',
    advice: 'A name has 1 to {longest} characters.',
    blocks: false,
  },
  'library-too-large': {
    text: 'The library file holds {found} MB.',
    advice: 'A library file may hold up to {limit} MB; nothing was taken from this one.',
    blocks: false,
  },
  'library-not-json': {
    text: 'The library file is not JSON.',
    advice: 'A library file is what “Export all” saved; nothing was taken from this one.',
    blocks: false,
  },
  'library-wrong-format': {
    text: 'The file is no library file: its format is {found}.',
    advice: 'A library file has "format": "{format}"; nothing was taken from this one.',
    blocks: false,
  },
  'library-newer-version': {
    text: 'The library file has version {found}.',
    advice: 'This program reads version {newest}; nothing was taken from the file.',
    blocks: false,
  },
  'library-wrong-value': {
    text: 'In the library file {path} is {found}.',
    advice: 'It has to be {accepted}; nothing was taken from the file.',
    blocks: false,
  },
  'library-entry-bad': {
    text: 'Entry {number} of the library file, the {kind} “{name}”, is refused: {detail}',
    advice: 'Nothing was taken from the file.',
    blocks: false,
  },
  'library-file-as-layout': {
    text: 'This is a library file, not one layout.',
    advice: 'Import it in the library (File, Library).',
    blocks: false,
  },
  'library-machine-lasers': {
    text: 'The machine has other lasers than the one before: {moves}.',
    advice: 'Look at the zones and the pinned parts; undo brings the machine before back.',
    blocks: false,
  },
  'kept-plate-changed': {
    text: 'The plate kept aside is another one now, or is there no more.',
    advice: 'Nothing was changed; look at the list and try again.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
