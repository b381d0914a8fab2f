/**
 * What a part is called, and how the view treats it: its id, which no other part has, its padlock, and whether it is drawn
 * whole. Locks and outlines belong to the view; they are not in the layout file.
 */
import { t } from '../../language/index';
import { useBench, useWorkbench } from '../../canvas/bench';
import { renamePart } from '../../commands/operations';
import { isId } from '../../layout/ids';
import { fail, ok } from '../../layout/result';
import type { PartId } from '../../layout/types';
import type { Workbench } from '../../store/types';
import { TextField } from '../controls/TextField';
import { CommandButton } from '../header/CommandButton';

/** Selection, padlock and outline go on meaning the part under its new name. */
function follow(bench: Workbench, id: PartId, name: PartId): void {
  const { selection, locked, hidden } = bench.store.getState().view;
  const renamed = (ids: readonly PartId[]) => ids.map((other) => (other === id ? name : other));
  queueMicrotask(() =>
    bench.setView({ selection: renamed(selection), locked: renamed(locked), hidden: renamed(hidden) }),
  );
}

export function IdField({ id }: { readonly id: PartId }) {
  const bench = useWorkbench();
  return (
    <TextField
      label={t('id')}
      value={id}
      testId="part-id"
      recipe={(layout, typed) => {
        const name = typed.trim();
        if (!isId(name)) return fail('part-id-unreadable', { found: typed });
        if (name !== id && layout.parts.some((part) => part.id === name))
          return fail('part-id-taken', { found: name });
        if (name !== id) follow(bench, id, name);
        return ok(renamePart(layout, id, name));
      }}
    />
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
