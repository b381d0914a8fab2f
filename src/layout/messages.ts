/**
 * Every message a user reads, under a stable code. `text` says what was found and where, `advice` what is accepted or
 * what to do; words in braces come from the fault's params. `blocks`: hand-over waits until it is resolved.
 */
export interface Message {
  readonly text: string;
  readonly advice: string;
  readonly blocks: boolean;
}

export const MESSAGES = {
  // problems of a well-formed layout (it opens and lists them)
  'part-off-platform': {
    text: '{part} stands off the platform by {area} mm².',
    advice: 'Move it inside the platform outline.',
    blocks: true,
  },
  'part-in-margin': {
    text: '{part} reaches {by} mm into the margin of the platform.',
    advice: 'Keep parts {margin} mm away from the edges of the platform.',
    blocks: false,
  },
  'part-in-keep-out': {
    text: '{part} covers {area} mm² of a keep-out.',
    advice: 'Move it off the keep-out.',
    blocks: true,
  },
  'part-too-high': {
    text: '{part} is {height} mm high.',
    advice: 'The machine builds up to {limit} mm; lay the part down or divide it.',
    blocks: true,
  },
  'part-out-of-reach': {
    text: 'No laser that is on reaches {area} mm² of {part}.',
    advice: 'Move it into the reach of a laser, or switch on the laser that reaches it.',
    blocks: true,
  },
  'parts-overlap': {
    text: '{part} and {other} overlap by {area} mm² seen from above.',
    advice: 'Move one of them; parts may not share a place at any height.',
    blocks: true,
  },
  'parts-too-close': {
    text: '{part} and {other} stand {gap} mm apart.',
    advice: 'Keep parts {spacing} mm apart (a setting of the layout).',
    blocks: false,
  },

  'part-unassigned': {
    text: 'Up to {area} mm² of a section of {part} is exposed by no laser.',
    advice: 'Move the part into a zone, widen the zone or its reach, or switch its laser on.',
    blocks: true,
  },
  'all-lasers-off': {
    text: 'All lasers are off.',
    advice: 'Switch at least one laser on.',
    blocks: true,
  },
  'pinned-laser-off': {
    text: '{part} is pinned to {laser}, which is off.',
    advice: 'Switch {laser} on or free the part.',
    blocks: true,
  },
  'pinned-out-of-reach': {
    text: '{laser}, to which {part} is pinned, does not reach {area} mm² of it.',
    advice: 'Move the part into the reach of {laser}, or free it.',
    blocks: true,
  },
  'part-held-by-no-zone': {
    text: '{part} should stay with one laser, but no zone holds it whole: it is cut along the zones.',
    advice: 'Move it into one zone, widen a zone or the shared band, or allow seams.',
    blocks: true,
  },
  'outline-repaired': {
    text: 'An outline of the shape {shape} crosses itself and was repaired by the even-odd rule.',
    advice: 'Compare its area with the drawing and correct the outline there.',
    blocks: false,
  },

  // typed lengths, angles and numbers
  'length-unreadable': {
    text: '“{found}” is not a length.',
    advice: 'Type one number with or without a unit: 25.4, 25,4 mm, 2 cm, 1 in, 1 1/2 in.',
    blocks: false,
  },
  'length-too-large': {
    text: '“{found}” is longer than 100 m.',
    advice: 'Lengths go up to 100 000 mm.',
    blocks: false,
  },
  'angle-unreadable': {
    text: '“{found}” is not an angle.',
    advice: 'Type one number of degrees, such as 30 or 22.5°.',
    blocks: false,
  },
  'angle-too-large': {
    text: '“{found}” is more than a hundred turns.',
    advice: 'Angles go from −36 000° to 36 000°.',
    blocks: false,
  },
  'number-unreadable': {
    text: '“{found}” is not a number.',
    advice: 'Type one number without a unit, such as 1.25 or 1,25.',
    blocks: false,
  },

  'field-range': {
    text: '{what}: “{found}” is out of range.',
    advice: 'Accepted: {accepted}.',
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
  'layout-not-json': {
    text: 'The file is not JSON: {detail}.',
    advice: 'A layout file is JSON with "format": "evenplate-layout".',
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
  // the workbench: what it keeps, what it may hold
  'too-many-parts': {
    text: 'The plate would hold {found} parts.',
    advice: 'A layout may hold up to {limit} parts.',
    blocks: false,
  },
  'saved-work-unreadable': {
    text: 'The work saved in this browser cannot be opened: {detail}',
    advice: 'It is kept aside under “{key}” in this browser’s storage; the demo plate is open instead.',
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
  'file-unreadable': {
    text: '{name} cannot be read.',
    advice: 'Check that it still exists and may be read, then open it again.',
    blocks: false,
  },
  'file-unknown-kind': {
    text: '{name} is not a kind of file that can be opened here.',
    advice: 'Layout files (.json) and outlines (.svg, .dxf) can.',
    blocks: false,
  },

  // outline files that are refused
  'outlines-too-large': {
    text: 'The file holds {found} MB.',
    advice: 'An outline file may hold up to {limit} MB; save only the outlines that are needed.',
    blocks: false,
  },
  'outlines-unknown-kind': {
    text: '“{name}” is neither SVG nor DXF.',
    advice: 'Outlines are read from SVG and from DXF in text form.',
    blocks: false,
  },
  'outlines-empty': {
    text: '“{name}” holds no outlines.',
    advice: 'An outline file needs closed shapes: filled ones in an SVG, lines and arcs that meet in a DXF.',
    blocks: false,
  },
  'outlines-too-much': {
    text: 'The drawing holds too much: more than {found} lines, curves or points.',
    advice: 'Save only the outlines that are needed, without hatching and repeated blocks.',
    blocks: false,
  },
  'outlines-too-deep': {
    text: 'The drawing nests its groups more than {limit} deep.',
    advice: 'Ungroup it and save it again.',
    blocks: false,
  },
  'outlines-too-far': {
    text: 'An outline reaches {found} mm from the origin.',
    advice: 'Outlines may reach up to {limit} mm; check the unit or move the drawing to its origin.',
    blocks: false,
  },
  'svg-broken': {
    text: 'The SVG is broken at line {line}, column {column}: {detail}.',
    advice: 'An SVG has to be well-formed XML; open it in the program it came from and save it again.',
    blocks: false,
  },
  'svg-entities': {
    text: 'The SVG defines entities of its own at line {line}.',
    advice: 'Save it as plain SVG without a document type definition.',
    blocks: false,
  },
  'svg-no-root': {
    text: 'The file is XML, but its outermost element is “{found}”.',
    advice: 'The outermost element of an SVG is “svg”.',
    blocks: false,
  },
  'dxf-binary': {
    text: 'The DXF is in binary form.',
    advice: 'Save it as an ASCII DXF.',
    blocks: false,
  },
  'dxf-broken': {
    text: 'The DXF is broken: line {line} holds “{found}” where a group code is expected.',
    advice: 'Lines of a DXF come in pairs, a whole number and a value; save the drawing again.',
    blocks: false,
  },
  'dxf-bad-number': {
    text: 'The DXF is broken: line {line} holds “{found}” where group {code} needs a number.',
    advice: 'Numbers are written as 12.5; save the drawing again.',
    blocks: false,
  },
  'dxf-cut-off': {
    text: 'The DXF is cut off: it ends in the middle of a section at line {line}.',
    advice: 'Fetch or save the file again.',
    blocks: false,
  },

  // what was left out of an outline file
  'left-out-open': {
    text: '{count} × “{what}”: lines that do not close; the narrowest gap is {gap}.',
    advice: 'Close them in the drawing, or allow a wider gap between ends.',
    blocks: false,
  },
  'left-out-branch': {
    text: '{count} × “{what}”: lines left over where three or more meet.',
    advice: 'Remove lines that belong to no outline.',
    blocks: false,
  },
  'left-out-duplicate': {
    text: '{count} × “{what}”: drawn twice; one was kept.',
    advice: 'Nothing needs to be done.',
    blocks: false,
  },
  'left-out-no-area': {
    text: '{count} × “{what}”: encloses no area.',
    advice: 'Only closed shapes become parts.',
    blocks: false,
  },
  'left-out-stroke': {
    text: '{count} × “{what}”: a line without a fill.',
    advice: 'Fill it in the drawing if it is an outline.',
    blocks: false,
  },
  'left-out-text': {
    text: '{count} × {what}: text.',
    advice: 'Convert lettering to outlines if it belongs to the part.',
    blocks: false,
  },
  'left-out-dimension': {
    text: '{count} × {what}: dimensions.',
    advice: 'Nothing needs to be done.',
    blocks: false,
  },
  'left-out-hatch': {
    text: '{count} × {what}: hatching.',
    advice: 'Its outline is read if it is drawn as lines as well.',
    blocks: false,
  },
  'left-out-image': {
    text: '{count} × {what}: images.',
    advice: 'Only drawn outlines are read.',
    blocks: false,
  },
  'left-out-point': { text: '{count} × {what}: points.', advice: 'Nothing needs to be done.', blocks: false },
  'left-out-mesh': {
    text: '{count} × {what}: faces or solids.',
    advice: 'Save a section or a view of lines and arcs.',
    blocks: false,
  },
  'left-out-hidden': {
    text: '{count} × “{what}”: invisible.',
    advice: 'Show it in the drawing if it is an outline.',
    blocks: false,
  },
  'left-out-layer-off': {
    text: '{count} × on the layer “{what}”, which is off.',
    advice: 'Switch the layer on if it is needed.',
    blocks: false,
  },
  'left-out-layer-frozen': {
    text: '{count} × on the layer “{what}”, which is frozen.',
    advice: 'Thaw the layer if it is needed.',
    blocks: false,
  },
  'left-out-paper': {
    text: '{count} × {what}: on a sheet for printing.',
    advice: 'Outlines are read from the model.',
    blocks: false,
  },
  'left-out-tilted': {
    text: '{count} × {what}: tilted against the plane of the drawing.',
    advice: 'Draw outlines in the xy plane.',
    blocks: false,
  },
  'left-out-missing': {
    text: '{count} × “{what}”: not in the file, or inside itself.',
    advice: 'Save the drawing with everything it refers to.',
    blocks: false,
  },
  'left-out-clip': {
    text: '{count} × “{what}”: its clip path or mask was not applied.',
    advice: 'Cut the shape itself in the drawing.',
    blocks: false,
  },
  'left-out-broken': {
    text: '{count} × “{what}”: its data cannot be read.',
    advice: 'Draw it anew or save the drawing again.',
    blocks: false,
  },
  'left-out-other': {
    text: '{count} × {what}: holds no outline.',
    advice: 'Only lines, arcs, curves and filled shapes are read.',
    blocks: false,
  },
  'import-repaired': {
    text: '{count} outlines crossed themselves and were put right.',
    advice: 'Compare their areas with the drawing.',
    blocks: false,
  },
  'import-unit-unknown': {
    text: 'The file does not say its unit; one unit was taken as 1 mm.',
    advice: 'Choose the unit.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;

export type MessageCode = keyof typeof MESSAGES;

const fill = (template: string, params: Readonly<Record<string, string | number>>): string =>
  template.replace(/\{(\w+)\}/g, (_, key: string) => String(params[key] ?? '?'));

/** One sentence for a fault or problem. */
export const messageText = (code: MessageCode, params: Readonly<Record<string, string | number>>): string =>
  fill(MESSAGES[code].text, params);
/** What the reader can do about it. */
export const messageAdvice = (code: MessageCode, params: Readonly<Record<string, string | number>>): string =>
  fill(MESSAGES[code].advice, params);
