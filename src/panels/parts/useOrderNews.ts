/** What is told of the order of the list: where the selected parts are now, and why it stays where keys cannot change it. */
import { useContext, useEffect, useRef, type RefObject } from 'react';
import { useBench } from '../../canvas/bench';
import { t } from '../../language/index';
import type { Layout } from '../../layout/types';
import { command } from '../../commands/index';
import { CommandContext } from '../commandContext';
import { say } from '../spoken/say';
import { placeWords } from './listDrag';

/** True where the parts are the same ones in another order. */
function reordered(before: Layout, after: Layout): boolean {
  if (before.parts === after.parts || before.parts.length !== after.parts.length) return false;
  const had = new Set(before.parts);
  return (
    after.parts.every((part) => had.has(part)) && after.parts.some((part, i) => part !== before.parts[i])
  );
}

/** Says where they are once the list has another order: "P07 is now 3 of 40". */
export function useOrderNews(): void {
  const layout = useBench((state) => state.layout);
  const selection = useBench((state) => state.view.selection);
  const seen = useRef(layout);
  useEffect(() => {
    const before = seen.current;
    seen.current = layout;
    if (selection.length === 0 || !reordered(before, layout)) return;
    const parts = selection.length === 1 ? selection[0]! : t('{count} parts', { count: selection.length });
    const place = placeWords(layout, selection);
    say(t(selection.length === 1 ? '{parts} is now {place}' : '{parts} are now {place}', { parts, place }));
  }, [layout, selection]);
}

const KEYS: Readonly<Record<string, string>> = { ArrowUp: 'list-up', ArrowDown: 'list-down' };

/** A key that would move rows and cannot says why. */
export function useOrderLack(list: RefObject<HTMLElement | null>): void {
  const context = useContext(CommandContext);
  useEffect(() => {
    const tell = ({ key, altKey }: KeyboardEvent): void => {
      const id = KEYS[key];
      if (!altKey || context === null || id === undefined) return;
      const { when } = command(id);
      const why = when(context) ? '' : (when.lack?.(context) ?? '');
      if (why !== '') context.bench.notify({ code: 'list-order-held', params: { why } });
    };
    const node = list.current;
    node?.addEventListener('keydown', tell);
    return () => node?.removeEventListener('keydown', tell);
  }, [list, context]);
}
