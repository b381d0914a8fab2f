/**
 * What the plate has beside each entry of a kind: the same, or where its copy differs. A layout is compared by its
 * checksum, machines and processes value by value, a shape with the plate's shape of that name.
 */
import { t, type Text } from '../../language/index';
import { useEffect, useState } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import { fitsAFrame } from '../../build/analysis';
import { sameValue } from '../../layout/same';
import type { Layout } from '../../layout/types';
import { readEntry, type EntryHead, type EntryId, type EntryKind } from '../../store/library';
import { contentChecksum, factsOf } from '../../store/library/content';
import { differences } from '../../store/library/differences';
import { charactersOf } from '../../store/apartForm';
import type { Workbench } from '../../store/types';
import { differencesText } from './words';

export interface Compared {
  /** In a word or two. */
  readonly word: string;
  /** Where they differ; '' where there is no more to say. */
  readonly more: string;
}
type Compare = (head: EntryHead) => Promise<Compared | null>;
const only = (word: Text): Compared => ({ word: t(word), more: '' });
const same = (): Compared => only('the same');
/** Sections of a mesh larger than this, in characters, are not read point by point. */
const MOST_COMPARED = 4_000_000;

/** The open layout's checksum; what was worked out beside the page where the plate is large, null while that is on its way. */
function openChecksum({ store }: Workbench): string | null {
  const { layout, height } = store.getState();
  if (fitsAFrame(layout)) return contentChecksum({ kind: 'layout', content: layout });
  return height.checksum?.layout === layout ? height.checksum.checksum : null;
}

function compareLayouts(bench: Workbench): Compare {
  const open = openChecksum(bench);
  return async (head) => (open === null ? null : open === head.checksum ? same() : only('another one'));
}

const compareValues =
  (plate: object): Compare =>
  async ({ id }) => {
    const entry = await readEntry(id);
    if (!entry.ok) return only('cannot be read');
    const found = differences(entry.value.content, plate);
    if (found.length === 0) return same();
    const word = t('{count} [value differs|values differ]', { count: found.length });
    return { word, more: differencesText(found) };
  };

function compareShapes({ shapes }: Layout): Compare {
  const known = new Map<string, string>();
  return async ({ name, facts, checksum: digits }) => {
    const shape = Object.hasOwn(shapes, name) ? shapes[name] : undefined;
    if (!shape) return only('no shape of that name');
    const held = { kind: 'shape', content: shape } as const;
    if (!sameValue(factsOf(held), facts)) return only('another shape of that name');
    if (charactersOf(shape) > MOST_COMPARED) return only('same size and slabs');
    if (!known.has(name)) known.set(name, contentChecksum(held));
    return known.get(name) === digits ? same() : only('another shape of that name');
  };
}

function comparer(bench: Workbench, kind: EntryKind): Compare {
  const { layout } = bench.store.getState();
  if (kind === 'layout') return compareLayouts(bench);
  return kind === 'shape' ? compareShapes(layout) : compareValues(layout[kind]);
}

/** Words by entry; nothing for those not compared yet. */
export function useCompared(
  kind: EntryKind,
  heads: readonly EntryHead[],
): ReadonlyMap<EntryId, Compared | null> {
  const bench = useWorkbench();
  const layout = useBench((state) => state.layout);
  const beside = useBench((state) => state.height.checksum);
  const [found, setFound] = useState<ReadonlyMap<EntryId, Compared | null>>(new Map());
  useEffect(() => {
    if (heads.length === 0) return undefined;
    let current = true;
    const compare = comparer(bench, kind);
    void Promise.all(heads.map(async (head) => [head.id, await compare(head)] as const)).then((all) => {
      if (current) setFound(new Map(all));
    });
    return () => {
      current = false;
    };
  }, [bench, kind, heads, layout, beside]);
  return found;
}
