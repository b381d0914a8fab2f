/**
 * What a part is called, and how the view treats it: its id, which no other part has, its padlock, and whether it is drawn
 * whole. Locks and outlines belong to the view; they are not in the layout file.
 */
import { t } from '../../language/index';
import type { KeyboardEvent } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import { renamePart } from '../../commands/operations';
import { isId } from '../../layout/ids';
import { fail, ok } from '../../layout/result';
import type { PartId } from '../../layout/types';
import { TextField } from '../controls/TextField';
import { CommandButton } from '../header/CommandButton';
import { backToRow, leftIdField } from './renaming';

/** The field's own keys come first; what is left of Enter and Escape leads back to the row. */
function useWayBack(id: PartId) {
  const bench = useWorkbench();
  const named = (name: string): boolean => bench.store.getState().view.selection.at(-1) === name;
  return {
    onBlur: leftIdField,
    // Once the key is done with: the field has then taken or given up its text, and leaving it changes nothing.
    onKeyDown: ({ key, target }: KeyboardEvent) => {
      const name = (target as HTMLInputElement).value.trim();
      if (key === 'Enter' && named(name)) setTimeout(() => backToRow(name));
    },
    onKeyDownCapture: ({ key }: KeyboardEvent) => {
      if (key === 'Escape') setTimeout(() => backToRow(id));
    },
  };
}

export function IdField({ id }: { readonly id: PartId }) {
  return (
    <div data-renames="" style={{ display: 'contents' }} {...useWayBack(id)}>
      <TextField
        label={t('id')}
        value={id}
        testId="part-id"
        recipe={(layout, typed) => {
          const name = typed.trim();
          if (!isId(name)) return fail('part-id-unreadable', { found: typed });
          if (name !== id && layout.parts.some((part) => part.id === name))
            return fail('part-id-taken', { found: name });
          return ok(renamePart(layout, id, name));
        }}
      />
    </div>
  );
}

const every = (ids: readonly PartId[], marked: readonly PartId[]): boolean =>
  ids.every((id) => marked.includes(id));

export function MarkButtons({ ids }: { readonly ids: readonly PartId[] }) {
  const locked = useBench((state) => every(ids, state.view.locked));
  const hidden = useBench((state) => every(ids, state.view.hidden));
  const anyHidden = useBench((state) => ids.some((id) => state.view.hidden.includes(id)));
  return (
    <>
      <CommandButton id="lock">{t(locked ? 'Unlock' : 'Lock')}</CommandButton>
      <CommandButton id="hide">{t(hidden ? 'Whole ¦ drawn' : 'Hide')}</CommandButton>
      {anyHidden && (
        <p className="hint">{t('Hidden parts are outlines on the plan; all figures count them.')}</p>
      )}
    </>
  );
}
