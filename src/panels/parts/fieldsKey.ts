/** When the fields of the selected parts begin anew: with other parts, not with the same ones under new names. */
import { useState } from 'react';
import { useBench } from '../../canvas/bench';
import type { PartId } from '../../layout/types';
import { renamed } from '../../store/locked';

/** A key for fields: the same as long as they are about the same parts. */
export function useFieldsKey(ids: readonly PartId[]): number {
  const layout = useBench((state) => state.layout);
  const [kept, setKept] = useState({ layout, ids, key: 0 });
  if (kept.layout === layout && kept.ids === ids) return kept.key;
  const names = renamed(kept.layout, layout);
  const same =
    ids.length === kept.ids.length && ids.every((id, i) => (names.get(kept.ids[i]!) ?? kept.ids[i]) === id);
  const next = { layout, ids, key: same ? kept.key : kept.key + 1 };
  setKept(next);
  return next.key;
}
