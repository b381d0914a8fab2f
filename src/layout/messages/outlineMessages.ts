/**
 * Outline files: what is refused, and what was left out of one that opens. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const OUTLINE_MESSAGES = {
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
    text: 'The drawing holds no outlines.',
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
    advice: 'Close them in the drawing, or let ends meet over a wider gap.',
    blocks: false,
  },
  'left-out-branch': {
    text: '{count} × “{what}”: [a line|lines] left over where three or more meet.',
    advice: 'Remove lines that belong to no outline.',
    blocks: false,
  },
  'left-out-duplicate': {
    text: '{count} × “{what}”: drawn twice; one was kept.',
    advice: 'Nothing needs to be done.',
    blocks: false,
  },
  'left-out-no-area': {
    text: '{count} × “{what}”: [encloses|enclose] no area.',
    advice: 'Only closed shapes become parts.',
    blocks: false,
  },
  'left-out-stroke': {
    text: '{count} × “{what}”: [a line|lines] without a fill.',
    advice: 'To have [it|them] taken, fill [it|them] in the drawing program.',
    blocks: false,
  },
  'left-out-text': {
    text: '{count} × {what}: text.',
    advice: 'Convert lettering to outlines if it belongs to the part.',
    blocks: false,
  },
  'left-out-dimension': {
    text: '{count} × {what}: [a dimension|dimensions].',
    advice: 'Nothing needs to be done.',
    blocks: false,
  },
  'left-out-hatch': {
    text: '{count} × {what}: hatching.',
    advice: 'Its outline is read if it is drawn as lines as well.',
    blocks: false,
  },
  'left-out-image': {
    text: '{count} × {what}: [an image|images].',
    advice: 'Only drawn outlines are read.',
    blocks: false,
  },
  'left-out-point': {
    text: '{count} × {what}: [a point|points].',
    advice: 'Nothing needs to be done.',
    blocks: false,
  },
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
  'left-out-far': {
    text: '{count} × “{what}”: [reaches|reach] further than 100 m from the origin.',
    advice: 'Check the unit, or move it to the origin of the drawing.',
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
    text: '{count} × {what}: [holds|hold] no outline.',
    advice: 'Only lines, arcs, curves and filled shapes are read.',
    blocks: false,
  },
  'import-repaired': {
    text: '{count} [outline crossed itself and was|outlines crossed themselves and were] put right.',
    advice: 'Compare [its area|their areas] with the drawing.',
    blocks: false,
  },
  'import-closed': {
    text: '{count} open [outline was|outlines were] closed as [its fill shows|their fills show].',
    advice: 'Compare [it|them] with the drawing; give [it|them] no fill to leave [it|them] out.',
    blocks: false,
  },
  'import-small': {
    text: '{count} [shape measures|shapes measure] less than {limit} mm in width or depth, first “{first}”.',
    advice: 'Check the unit, or leave [it|them] out.',
    blocks: false,
  },
  'import-overlap': {
    text: '{count} [pair of shapes overlaps|pairs of shapes overlap], first “{first}” and “{second}”.',
    advice: 'Each becomes a part of its own; unite them in the drawing if they are one.',
    blocks: false,
  },
  'import-unit-px': {
    text: 'No unit in the file: taken as px, 1/96 in.',
    advice: 'Compare the size with the part and choose the unit.',
    blocks: false,
  },
  'import-unit-unknown': {
    text: 'The file does not say its unit; one unit was taken as 1 mm.',
    advice: 'Choose the unit.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
