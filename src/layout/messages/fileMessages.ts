/**
 * What is typed, asked of the command line, read as a layout or kept by the workbench. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const FILE_MESSAGES = {
  // typed lengths, angles and numbers
  'length-unreadable': {
    text: '“{found}” is not a length.',
    advice: 'Type a number with or without a unit, or a sum: 25.4, 25,4 mm, 1 1/2 in, 3+2 cm.',
    blocks: false,
  },
  'length-too-large': {
    text: '“{found}” is longer than 100 m.',
    advice: 'Lengths go up to 100 000 mm.',
    blocks: false,
  },
  'angle-unreadable': {
    text: '“{found}” is not an angle.',
    advice: 'Type a number of degrees or a sum, such as 22.5° or 30+15.',
    blocks: false,
  },
  'angle-too-large': {
    text: '“{found}” is more than a hundred turns.',
    advice: 'Angles go from −36 000° to 36 000°.',
    blocks: false,
  },
  'number-unreadable': {
    text: '“{found}” is not a number.',
    advice: 'Type a number or a sum, such as 1.25 or 1,25+2.',
    blocks: false,
  },

  'number-exponent': {
    text: '“{found}”: exponents are not read.',
    advice: 'Type all digits, such as 0.001 or 1500.',
    blocks: false,
  },
  'field-range': {
    text: '{what}: “{found}” is out of range.',
    advice: 'Accepted: {accepted}.',
    blocks: false,
  },
  'distance-not-reached': {
    text: '{part} does not come to that distance from {other} on a straight way.',
    advice: 'Move it by hand, or type its x and y.',
    blocks: false,
  },

  // the command line
  'command-usage': {
    text: 'The command cannot be run: {detail}.',
    advice: 'Use: npm run --silent analyse -- FILE [--height MM]',
    blocks: false,
  },
  'file-not-read': {
    text: 'The file cannot be read: {reason}.',
    advice: 'Name a layout file, that is JSON with "format": "evenplate-layout".',
    blocks: false,
  },
  'height-outside-build': {
    text: 'There is no layer at a height of {found} mm.',
    advice: 'Give a height from 0 to {top} mm, the top of the highest part.',
    blocks: false,
  },

  // layout files that are refused
  'file-too-large': {
    text: 'The file holds {found} MB.',
    advice: 'A layout file may hold up to {limit} MB.',
    blocks: false,
  },
  'file-too-large-to-open': {
    text: 'The file saved now holds {found} MB and could not be opened again.',
    advice:
      'A layout file may hold up to {limit} MB; cut meshes into thicker layers or save fewer shapes in one file.',
    blocks: false,
  },
  'layout-not-json': {
    text: 'The file is not JSON: {detail}.',
    advice: 'A layout file is JSON with "format": "evenplate-layout".',
    blocks: false,
  },
  'layout-not-object': {
    text: 'This is not a layout: the file holds {found}, not an object.',
    advice: 'A layout file is one JSON object with "format": "evenplate-layout".',
    blocks: false,
  },
  'layout-wrong-format': {
    text: 'This is not a layout: its "format" is {found}.',
    advice: 'A layout has "format": "evenplate-layout".',
    blocks: false,
  },
  'layout-wrong-version': {
    text: "The layout's version is {found}.",
    advice: 'Versions are whole numbers from 1; this program reads up to {newest}.',
    blocks: false,
  },
  'layout-newer-version': {
    text: 'The layout has version {found}, made by a newer program.',
    advice: 'This program reads versions up to {newest}; open it with a newer one.',
    blocks: false,
  },
  'layout-unknown-key': {
    text: 'The layout has an unknown key {key} at {path}.',
    advice: 'Remove it or correct its spelling; the keys are listed in layout.schema.json.',
    blocks: false,
  },
  'layout-repeated-key': {
    text: 'The key {key} stands twice in {path}, the second time at line {line}.',
    advice: 'A key may stand once; remove one of the two or give it another name.',
    blocks: false,
  },
  'layout-missing-key': {
    text: 'The layout lacks the key {key} at {path}.',
    advice: 'Add it; the keys are listed in layout.schema.json.',
    blocks: false,
  },
  'layout-wrong-value': {
    text: '{path} is {found}.',
    advice: 'It has to be {accepted}.',
    blocks: false,
  },
  'layout-duplicate-id': {
    text: '{path} repeats the id "{id}".',
    advice: 'Every {kind} needs an id of its own.',
    blocks: false,
  },
  'layout-unknown-shape': {
    text: '{path} names the shape "{id}", which is not in "shapes".',
    advice: "Name one of the layout's shapes or add this one.",
    blocks: false,
  },
  'layout-unknown-laser': {
    text: '{path} names the laser "{id}", which the machine does not have.',
    advice: 'The machine has {known}.',
    blocks: false,
  },
  'layout-laser-count': {
    text: '{path} lists {found} lasers for {zones} zones.',
    advice: 'List one laser for every zone; a laser may repeat.',
    blocks: false,
  },
  'layout-not-ascending': {
    text: '{path} is {found}, not above the value before it, {before}.',
    advice: 'Values here have to ascend.',
    blocks: false,
  },
  'layout-few-points': {
    text: '{path} has {found} different points.',
    advice: 'An outline needs at least three.',
    blocks: false,
  },
  'layout-zero-area': {
    text: '{path} encloses no area.',
    advice: 'An outline has to enclose an area; its points may not all lie on one line.',
    blocks: false,
  },
  'layout-empty-shape': {
    text: '{path} has no outline in any slab.',
    advice: 'A shape needs at least one outline.',
    blocks: false,
  },
  // the workbench: what is drawn in it, what it keeps, what it may hold
  'drawing-crosses-itself': {
    text: 'The outline of the drawn {what} crosses itself and is filled by the even-odd rule.',
    advice: 'Undo and draw it again where something else was meant.',
    blocks: false,
  },
  'drawing-without-area': {
    text: 'The outline drawn for a {what} encloses no area on the plate.',
    advice: 'Click at least three corners that do not lie on one line.',
    blocks: false,
  },
  'too-many-parts': {
    text: 'The plate would hold {found} parts.',
    advice: 'A layout may hold up to {limit} parts.',
    blocks: false,
  },
  'saved-work-unreadable': {
    text: 'The work saved in this browser cannot be opened: {detail}',
    advice: 'It is kept aside, where the library (File, Library) lists it; the demo plate is open instead.',
    blocks: false,
  },
  'saved-shapes-missing': {
    text: 'the sections of its shapes are not in this browser any more.',
    advice: 'Open the layout file instead.',
    blocks: false,
  },
  'work-not-saved-doubtful': {
    text: 'Something failed, and the plate as it is now could not be opened again: it is not written over what is saved.',
    advice: 'Undo the last change; what was saved before is still there.',
    blocks: false,
  },
  'work-not-saved-full': {
    text: 'This browser’s storage is full: changes are not kept over a reload.',
    advice: 'Save the layout as a file.',
    blocks: false,
  },
  'work-not-saved-no-storage': {
    text: 'This browser gives the page no storage: changes are not kept over a reload.',
    advice: 'Save the layout as a file, or allow site data for this page.',
    blocks: false,
  },
  'work-saved-elsewhere': {
    text: 'Another window of this browser has saved its plate in this one’s place.',
    advice:
      'Save this plate in the library to keep it. The next change here takes the place back; the library (File, Library) then lists the other plate.',
    blocks: false,
  },
  'work-not-saved-unloaded': {
    text: 'The part of the page that saves the work could not be loaded: changes are not kept over a reload.',
    advice: 'Save the layout as a file, then load the page again.',
    blocks: false,
  },
  'dialog-failed': {
    text: 'The window that was open failed and was closed: {detail}.',
    advice: 'The plate is as it was before; open it again, or load the page again if it fails once more.',
    blocks: false,
  },
  'file-unreadable': {
    text: '{name} cannot be read.',
    advice: 'Check that it still exists and may be read, then open it again.',
    blocks: false,
  },
  'file-unknown-kind': {
    text: '{name} is not a kind of file that can be opened here.',
    advice: 'Layout files (.json), outlines (.svg, .dxf) and meshes (.stl, .3mf) can.',
    blocks: false,
  },
  'language-not-loaded': {
    text: 'The texts of the other language could not be loaded; the page stays as it is.',
    advice: 'Choose the language again; where that does not help, load the page again.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
