/**
 * Problems of a well-formed layout: it opens and lists them. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const PLATE_MESSAGES = {
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
  'cut-for-other-layers': {
    text: 'The sections of {shape} were cut for layers of {cut} mm; the process lays {layer} mm.',
    advice: 'Open its mesh again, so that every layer is cut at its middle.',
    blocks: false,
  },
  'part-out-of-reach': {
    text: 'No laser that is on reaches {area} mm² of {part}.',
    advice: 'Move it into the reach of a laser, or switch on the laser that reaches it.',
    blocks: true,
  },
  'parts-overlap': {
    text: '{part} and {other} overlap by {area} mm² seen from above, their sections between z {from} and {to} mm.',
    advice: 'Move one of them; parts may not share a place at any height.',
    blocks: true,
  },
  'footprints-overlap': {
    text: '{part} and {other} overlap by {area} mm² seen from above, though at no height their sections do.',
    advice: 'Move one of them; no part may stand under or over another.',
    blocks: true,
  },
  'parts-too-close': {
    text: '{part} and {other} stand {gap} mm apart.',
    advice: 'Keep parts {spacing} mm apart (a setting of the layout).',
    blocks: false,
  },
  'pairs-not-compared': {
    text: '{listed} pairs of parts that overlap or stand too close are listed; {left} more come near and were not compared.',
    advice: 'Spread the parts, or lower the spacing of the layout, until every pair can be compared.',
    blocks: true,
  },
  'side-along-blade': {
    text: 'A {length} mm side of {parts} meets the blade {angle}° from parallel to it, between z {from} and {to} mm.',
    advice:
      'Turned by {turn}°, no side over {limit} mm does. Geometry alone; the maker’s instructions decide.',
    blocks: false,
  },
  'side-along-blade-always': {
    text: 'A {length} mm side of {parts} meets the blade {angle}° from parallel to it, between z {from} and {to} mm.',
    advice:
      'No turn in steps of 5° avoids sides over {limit} mm. Geometry alone; the maker’s instructions decide.',
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
    text: '{part} should stay with one laser, but no zone holds it whole over its height: it is cut along the zones, or changes its laser where they change.',
    advice:
      'Move it into one zone, widen a zone or the shared band, divide all its heights alike, or allow seams.',
    blocks: true,
  },
  'dose-too-small': {
    text: '{layers} layers, from layer {from} on, need up to {short} cm³ more powder than their dose.',
    advice:
      'Raise the dose factor of the process to {factor} or more, or spread the sections over the height.',
    blocks: true,
  },
  'outline-repaired': {
    text: 'An outline of the shape {shape} crosses itself and was repaired by the even-odd rule.',
    advice: 'Compare its area with the drawing and correct the outline there.',
    blocks: false,
  },
  'service-unattended': {
    text: '{event}: layer {layer} is the last that can finish, {at}, when nobody attends the machine.',
    advice:
      'Start at {start}: every service and the end then fall into attended hours. Never skip a service.',
    blocks: true,
  },
  'service-unattended-but-end': {
    text: '{event}: layer {layer} is the last that can finish, {at}, when nobody attends the machine.',
    advice:
      'Start at {start}: every service then falls into attended hours, the end does not. Never skip a service.',
    blocks: true,
  },
  'service-unattended-always': {
    text: '{event}: layer {layer} is the last that can finish, {at}, when nobody attends the machine.',
    advice:
      'No attended start within 14 days avoids it: attend that hour, or change fill levels or plate. Never skip a service.',
    blocks: true,
  },
  'end-unattended': {
    text: 'The build ends with layer {layer}, {at}, when nobody attends the machine.',
    advice:
      'Start at {start}: every service and the end then fall into attended hours. Else it waits, hot and under gas.',
    blocks: false,
  },
  'end-unattended-always': {
    text: 'The build ends with layer {layer}, {at}, when nobody attends the machine.',
    advice:
      'No attended start within 14 days brings all into attended hours. The build waits, hot and under gas.',
    blocks: false,
  },
  'store-too-small': {
    text: 'Layer {layer} alone takes {each} {unit}, more than the {store} of {capacity} {unit}.',
    advice: 'The build cannot pass this layer: correct the figure of the machine, or lower the dose.',
    blocks: true,
  },
  'services-too-many': {
    text: '{event}: more than {most} times in this build.',
    advice: 'Only the first are listed; correct the figures of the powder stores.',
    blocks: true,
  },
  'feed-overfilled': {
    text: 'The schedule fills the feed with {found} l, more than it holds ({capacity} l).',
    advice: 'It is counted as full: correct the fill level, or the feed of the machine.',
    blocks: false,
  },
  'overflow-overfilled': {
    text: 'The schedule starts with {found} l in the overflow, more than it holds ({capacity} l).',
    advice: 'It is counted as full before layer 1: correct the fill level, or the overflow of the machine.',
    blocks: false,
  },
  'height-not-computed': {
    text: 'The figures of the whole height could not be computed: {detail}',
    advice: 'The layer that is shown is right. Change the plate or load the page again; the work is saved.',
    blocks: false,
  },
  'problems-not-looked-for': {
    text: 'The part of Evenplate that finds problems could not be loaded, so nobody has looked for any.',
    advice: 'Load the page again; the work is saved.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;

export type PlateCode = keyof typeof PLATE_MESSAGES;
