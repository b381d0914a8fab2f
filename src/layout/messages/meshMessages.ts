/**
 * Mesh files: what is refused, what was left out, what is wrong with a mesh and what can be used all the same. The rules
 * of the table stand in messages.ts.
 */
import type { Message } from './message';

export const MESH_MESSAGES = {
  // files that are refused
  'mesh-file-too-large': {
    text: 'The file holds {found} MB.',
    advice: 'A mesh file may hold up to {limit} MB; save it in binary form or with fewer triangles.',
    blocks: false,
  },
  'mesh-unknown-kind': {
    text: '“{name}” is neither STL nor 3MF.',
    advice: 'Meshes are read from STL, binary or text, and from 3MF.',
    blocks: false,
  },
  'mesh-empty': {
    text: '“{name}” holds no triangles.',
    advice: 'A mesh needs triangles that bound a part.',
    blocks: false,
  },
  'mesh-truncated': {
    text: 'The file is cut off: {detail}.',
    advice: 'Save it again or copy it again as a whole.',
    blocks: false,
  },
  'mesh-too-much': {
    text: 'The file holds too much: more than {limit} {what}.',
    advice: 'Save the part with fewer of them.',
    blocks: false,
  },
  'mesh-bad-number': {
    text: 'A coordinate is {found} at {where}.',
    advice: 'Coordinates are finite numbers such as 12.5.',
    blocks: false,
  },
  'mesh-too-far': {
    text: 'A coordinate is {found} at {where}.',
    advice: 'Coordinates may reach up to {limit}; check the unit.',
    blocks: false,
  },
  'mesh-stl-word': {
    text: 'The STL is broken: line {line} holds “{found}” where “{accepted}” is expected.',
    advice: 'Save it again, best in binary form.',
    blocks: false,
  },
  'mesh-stl-points': {
    text: 'The STL is broken: the facet at line {line} has {found} points.',
    advice: 'Every facet is a triangle of three points.',
    blocks: false,
  },
  'mesh-zip-broken': {
    text: 'The 3MF cannot be unpacked: {detail}.',
    advice: 'A 3MF is a ZIP package; save it again without encryption.',
    blocks: false,
  },
  'mesh-3mf-no-model': {
    text: 'The package names no 3D model: {detail}.',
    advice: 'A 3MF names its model part in _rels/.rels.',
    blocks: false,
  },
  'mesh-3mf-broken': {
    text: 'The 3MF is broken in {part}: {detail}.',
    advice: 'Save it again in the program it came from.',
    blocks: false,
  },
  'mesh-3mf-extension': {
    text: 'The 3MF requires the extension {found}.',
    advice: 'Save it without; accepted: core, materials and production.',
    blocks: false,
  },
  'mesh-3mf-cycle': {
    text: 'The object {id} of the 3MF contains itself.',
    advice: 'Components may not lead back to their own object.',
    blocks: false,
  },

  // the command line
  'section-usage': {
    text: 'The command cannot be run: {detail}.',
    advice: 'Use: npm run --silent section -- MESH-OR-OUTLINE [--layer MM] [--height MM]',
    blocks: false,
  },
  'section-not-read': {
    text: 'The file cannot be read: {reason}.',
    advice: 'Name a mesh (STL, 3MF) or outlines (SVG, DXF).',
    blocks: false,
  },
  'section-unknown-kind': {
    text: '“{name}” is neither a mesh nor a drawing.',
    advice: 'Meshes are read from STL and 3MF, outlines from SVG and DXF.',
    blocks: false,
  },
  'section-no-shape': {
    text: '“{name}” holds no shape: {detail}',
    advice: 'A mesh has to be closed enough to be cut, an outline has to be closed.',
    blocks: false,
  },

  // cutting
  'mesh-too-large': {
    text: 'The mesh measures {found} mm.',
    advice: 'A part may measure up to {limit} mm; check the unit.',
    blocks: false,
  },
  'mesh-flat': {
    text: 'The mesh measures {found} mm; it is flat.',
    advice: 'A part needs a length, a width and a height of at least 0.001 mm; check the unit.',
    blocks: false,
  },
  'mesh-too-many-layers': {
    text: 'The mesh would make {found} {what}.',
    advice: 'A part may have up to {limit}; choose thicker layers.',
    blocks: false,
  },
  'mesh-no-solid-layer': {
    text: 'Nothing of the mesh is solid at the middle of any layer of {layer} mm.',
    advice: 'Take thinner layers, or a mesh with a solid body.',
    blocks: false,
  },
  'mesh-no-section': {
    text: 'No layer of the mesh has a closed section; the widest gap is {gap} mm.',
    advice: 'Mend the mesh, or close wider gaps.',
    blocks: false,
  },
  'mesh-cancelled': {
    text: 'Cutting was cancelled at {done} %.',
    advice: 'Nothing was changed.',
    blocks: false,
  },

  'mesh-job-failed': {
    text: 'The mesh could not be worked on: {detail}.',
    advice: 'Open it again; a mesh of fewer triangles takes less memory.',
    blocks: false,
  },

  // left out
  'mesh-left-out-support': {
    text: '{count} × “{what}”: supports.',
    advice: 'Supports are made later.',
    blocks: false,
  },
  'mesh-left-out-surface': {
    text: '{count} × “{what}”: a surface without an inside.',
    advice: 'Save it as a solid if it is a part.',
    blocks: false,
  },
  'mesh-left-out-other': {
    text: '{count} × “{what}”: an object of type “other”.',
    advice: 'Save it as a model if it is a part.',
    blocks: false,
  },
  'mesh-left-out-unused': {
    text: '{count} × “{what}”: not among the items to build.',
    advice: 'Add it to the build if it is needed.',
    blocks: false,
  },
  'mesh-left-out-empty': {
    text: '{count} × “{what}”: without triangles.',
    advice: 'Nothing needs to be done.',
    blocks: false,
  },
  'mesh-left-out-unread': {
    text: '“{what}” in the package could not be read; nothing to build leads to it.',
    advice: 'Check that nothing of the part is missing.',
    blocks: false,
  },
  'mesh-left-out-count': {
    text: 'The header names no triangles; {count} [stands|stand] behind it.',
    advice: 'Check that the part is whole.',
    blocks: false,
  },
  'mesh-left-out-bytes': {
    text: '{count} [byte|bytes] after the last triangle [was|were] not read.',
    advice: 'Check that the part is whole.',
    blocks: false,
  },
  'mesh-unit-unknown': {
    text: 'The file does not say its unit; one unit was taken as 1 mm.',
    advice: 'Choose the unit.',
    blocks: false,
  },

  // what is wrong with a mesh that opens
  'mesh-open-edges': {
    text: '{count} [edge is|edges are] open.',
    advice: 'Sections close over gaps up to {gap} mm; wider ones are left out of their layers.',
    blocks: false,
  },
  'mesh-points-joined': {
    text: '{count} [point|points] within {found} mm of another [was|were] joined to it.',
    advice: 'Edges that were open only by rounding are closed; nothing needs to be done.',
    blocks: false,
  },
  'mesh-cracks': {
    text: 'Points along open edges lie {found} mm apart.',
    advice: 'Joining points that are so near closes the mesh.',
    blocks: false,
  },
  'mesh-crowded-edges': {
    text: '{count} [edge has|edges have] three or more triangles.',
    advice: '[It is|They are] followed in pairs; compare a section there with the part.',
    blocks: false,
  },
  'mesh-twisted-edges': {
    text: 'Along {count} [edge|edges] two triangles cannot face the same way.',
    advice: 'The surface has no inside there; mend the mesh.',
    blocks: false,
  },
  'mesh-turned-triangles': {
    text: '{count} [triangle faces|triangles face] the other way than [its|their] neighbours.',
    advice: '[It is|They are] turned to fit.',
    blocks: false,
  },
  'mesh-inside-out': {
    text: '{count} [shell is|shells are] inside out.',
    advice: '[It is|They are] turned; a shell inside another one counts as a hollow.',
    blocks: false,
  },
  'mesh-degenerate': {
    text: '{count} [triangle has|triangles have] no area.',
    advice: '[It is|They are] left out.',
    blocks: false,
  },
  'mesh-repeated': {
    text: '{count} [triangle is|triangles are] there more than once.',
    advice: 'Each counts once; compare the volume with the part.',
    blocks: false,
  },
  'mesh-overlapping': {
    text: '{count} [pair of shells overlaps|pairs of shells overlap].',
    advice: 'Their sections are united; the volume counts the overlap twice.',
    blocks: false,
  },
  'mesh-hollows': {
    text: '{count} [shell bounds a hollow|shells bound hollows].',
    advice: 'An inner shell that faces inwards counts as a hole; powder stays inside.',
    blocks: false,
  },
  'mesh-open-layers': {
    text: 'In {count} [layer|layers] outlines do not close; the widest gap is {gap} mm.',
    advice: 'What does not close is left out of [it|them]; close wider gaps or mend the mesh.',
    blocks: false,
  },
  'mesh-empty-layers': {
    text: 'In {count} [layer|layers] below the top nothing is solid.',
    advice: 'Parts that stand apart over height cannot be built as one.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
