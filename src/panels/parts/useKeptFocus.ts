/**
 * The row that has the focus keeps it while rows change places: a browser takes it from an element that is moved, and a row
 * under a new name is a new element. Rows are known by the `data-part` of their `tr`.
 */
import type { FocusEvent, RefObject } from 'react';
import { useLayoutEffect, useRef } from 'react';
import { useBench } from '../../canvas/bench';
import { renamed } from '../../store/locked';
import type { PartId } from '../../layout/types';
import { focusRow } from './focusRow';

const idOf = (target: EventTarget): PartId | null =>
  (target as Element).closest('tr[data-part]')?.getAttribute('data-part') ?? null;

/** Handlers for what holds the rows. */
export function useKeptFocus(list: RefObject<HTMLElement | null>, shown: unknown) {
  const layout = useBench((state) => state.layout);
  const seen = useRef(layout);
  const focused = useRef<PartId | null>(null);
  useLayoutEffect(() => {
    const id = focused.current;
    if (id !== null) focused.current = renamed(seen.current, layout).get(id) ?? id;
    seen.current = layout;
  }, [layout]);
  useLayoutEffect(() => {
    if (focused.current === null || document.activeElement !== document.body) return;
    focusRow(list.current, focused.current);
  }, [list, shown]);
  return {
    onFocus: ({ target }: FocusEvent) => {
      focused.current = idOf(target);
    },
    // An element that is moved may lose the focus on its way; only what has not come back by then is gone.
    onBlur: () =>
      setTimeout(() => {
        if (!list.current?.contains(document.activeElement)) focused.current = null;
      }),
  };
}
