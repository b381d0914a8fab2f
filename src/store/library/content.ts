/**
 * What an entry holds, as text and back. A machine, a process or a shape is read as the part of a layout that it is, by the
 * layout's own schema: the same values are accepted, the same words refuse. Machines, processes and shapes are in the form
 * that layout files of version 1 give them.
 */
import canonicalize from 'canonicalize';
import { checksum, digest } from '../../layout/checksum';
import { emptyLayout } from '../../layout/defaults';
import { readLayoutValue } from '../../layout/read';
import { ok, type Result } from '../../layout/result';
import type { Layout, Shape } from '../../layout/types';
import { fileForm } from '../../layout/write';
import type { Content, Contents, EntryHead, EntryKind } from './types';

const SHAPE = 'shape';

/** A layout around a part of one. */
const around = (part: Readonly<Record<string, unknown>>): Result<Layout> =>
  readLayoutValue({
    ...fileForm(emptyLayout()),
    version: 1,
    zoning: { strategy: 'wholeField' },
    ...part,
  });

const READERS: { readonly [K in EntryKind]: (value: unknown) => Result<Contents[K]> } = {
  layout: readLayoutValue,
  machine: (value) => {
    const read = around({ machine: value });
    return read.ok ? ok(read.value.machine) : read;
  },
  process: (value) => {
    const read = around({ process: value });
    return read.ok ? ok(read.value.process) : read;
  },
  shape: (value) => {
    const read = around({ shapes: { [SHAPE]: value } });
    return read.ok ? ok(read.value.shapes[SHAPE] as Shape) : read;
  },
};

/** Reads a content of a kind from a JSON value. Faults: those of readLayoutValue. */
export function readContent(kind: EntryKind, value: unknown): Result<Content> {
  const read = READERS[kind](value);
  return read.ok ? ok({ kind, content: read.value } as Content) : read;
}

/** The content as JSON: a layout in its file's form, the others as they stand in it. */
export const contentText = ({ kind, content }: Content): string =>
  JSON.stringify(kind === 'layout' ? fileForm(content) : content);

/** The content under another name; a shape has none of its own. */
export function named(held: Content, name: string): Content {
  return held.kind === 'shape' ? held : ({ ...held, content: { ...held.content, name } } as Content);
}

/** What the content calls itself; '' for a shape. */
export const ownName = (held: Content): string => (held.kind === 'shape' ? '' : held.content.name);

function workedOut(held: Content): string {
  if (held.kind === 'layout') return checksum(held.content);
  const { name: _name, ...rest } = { name: '', ...held.content };
  return digest(canonicalize(rest) ?? '');
}

/** Of contents that were asked for: working one out reads all of a layout. */
const knownChecksums = new WeakMap<object, string>();

/** Twelve digits; equal for contents that give the same figures, whatever they are called. */
export function contentChecksum(held: Content): string {
  const known = knownChecksums.get(held.content) ?? workedOut(held);
  knownChecksums.set(held.content, known);
  return known;
}

/** Digits of what the checksum leaves out beside the name; '' where there is nothing of it. */
export function asideChecksum(held: Content): string {
  if (held.kind !== 'layout') return '';
  const { note, revision } = held.content;
  return note === '' && revision === null ? '' : digest(canonicalize({ note, revision }) ?? '');
}

function shapeFacts({ slabs }: Shape): (EntryHead & { readonly kind: 'shape' })['facts'] {
  const [low, high] = [
    [Infinity, Infinity],
    [-Infinity, -Infinity],
  ] as [[number, number], [number, number]];
  const reach = (x: number, y: number, r: number): void => {
    [low[0], low[1]] = [Math.min(low[0], x - r), Math.min(low[1], y - r)];
    [high[0], high[1]] = [Math.max(high[0], x + r), Math.max(high[1], y + r)];
  };
  for (const { rings } of slabs)
    for (const ring of rings) {
      if ('circle_mm' in ring) reach(...ring.circle_mm);
      else for (const [x, y] of ring) reach(x, y, 0);
    }
  const height_mm = slabs.at(-1)?.to_mm ?? 0;
  return { width_mm: high[0] - low[0], depth_mm: high[1] - low[1], height_mm, slabs: slabs.length };
}

/** What a list says of the content. */
export function factsOf(held: Content): EntryHead['facts'] {
  switch (held.kind) {
    case 'layout': {
      const { parts, machine, process, revision } = held.content;
      return {
        parts: parts.length,
        lasers: machine.lasers.length,
        machine: machine.name,
        process: process.name,
        revision: revision && { name: revision.name, state: revision.state },
      };
    }
    case 'machine': {
      const { platform, buildHeight_mm, lasers } = held.content;
      const { width_mm, depth_mm } = platform;
      return { lasers: lasers.length, width_mm, depth_mm, height_mm: buildHeight_mm };
    }
    case 'process': {
      const { layer_mm, hatch_mm, speed_mm_s } = held.content;
      return { layer_mm, hatch_mm, speed_mm_s };
    }
    case 'shape':
      return shapeFacts(held.content);
  }
}
