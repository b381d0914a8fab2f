/**
 * What stands in the way of files that are handed over. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const EXPORT_MESSAGES = {
  'export-mesh-too-large': {
    text: 'The bodies of this plate have more than {limit} triangles.',
    advice: 'No file was made. Hand the places over as the table of parts, or as DXF.',
    blocks: false,
  },
  'export-failed': {
    text: 'The file could not be made: {detail}',
    advice: 'The plate is as it was. Try again, or save the layout and reload the page.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
