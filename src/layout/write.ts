/**
 * Writes a layout as a file: all keys, one short thing per line, in the lowest version that can hold it. Reading what
 * was written gives an equal layout.
 */
import type { Layout1, Layout2 } from './schema';
import type { Layout } from './types';

const LINE_LENGTH = 110;
const STEP = '  ';
/** From so many points in its slabs on (sections of a mesh) each slab is one line: half as long, and written at once. */
const DENSE_FROM = 10_000;

/** Entries side by side where they fit on the line and none of them is broken, else one below the other. */
function bracketed(
  open: string,
  close: string,
  gap: string,
  entries: readonly string[],
  indent: string,
): string {
  if (entries.length === 0) return open + close;
  const length = entries.reduce((sum, entry) => sum + entry.length + 2, indent.length + 2 * gap.length);
  const fits = length <= LINE_LENGTH && !entries.some((entry) => entry.includes('\n'));
  if (fits) return open + gap + entries.join(', ') + gap + close;
  const deeper = indent + STEP;
  return `${open}\n${deeper}${entries.join(`,\n${deeper}`)}\n${indent}${close}`;
}

/** Points in a list of slabs; 0 for any other list. */
const pointsIn = (entries: readonly unknown[]): number =>
  entries.reduce<number>((sum, entry) => {
    const rings: unknown = typeof entry === 'object' && entry !== null && 'rings' in entry ? entry.rings : [];
    return Array.isArray(rings)
      ? sum + rings.reduce<number>((count, ring) => count + (Array.isArray(ring) ? ring.length : 1), 0)
      : sum;
  }, 0);

function pretty(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const deeper = indent + STEP;
  if (Array.isArray(value)) {
    const dense = pointsIn(value) >= DENSE_FROM;
    const entries = value.map((entry: unknown) => (dense ? JSON.stringify(entry) : pretty(entry, deeper)));
    return bracketed('[', ']', '', entries, indent);
  }
  const entries = Object.entries(value).map(
    ([key, entry]) => `${JSON.stringify(key)}: ${pretty(entry, deeper)}`,
  );
  return bracketed('{', '}', ' ', entries, indent);
}

/**
 * The layout as its file holds it: in the lowest version that holds all it says, so that older programs read it and its
 * checksum stays what it was. Version 3 where it is a revision, 2 for changes of zones or a schedule, else 1.
 */
export function fileForm(layout: Layout): Layout1 | Layout2 | Layout {
  if (layout.revision !== null) return layout;
  const { schedule, revision: _none, ...rest } = layout;
  if (schedule !== null || rest.zoning.length > 1) return { ...rest, schedule, version: 2 };
  return { ...rest, version: 1, zoning: rest.zoning[0]!.zoning };
}

/** The layout as JSON text that ends in a newline. */
export const writeLayout = (layout: Layout): string => `${pretty(fileForm(layout), '')}\n`;
