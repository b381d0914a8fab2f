/**
 * Copying, cutting and pasting as steps on a workbench, whichever way the text goes: by the browser's own events or from
 * a menu.
 */
import { t } from '../../language/index';
import type { Fault } from '../../layout/result';
import type { PartId } from '../../layout/types';
import type { Workbench } from '../../store/types';
import type { Context } from '../types';
import { someParts } from '../arrange/words';
import { clipText, readClip } from '../operations/clip';
import { removeParts } from '../operations/copies';
import { addedParts } from '../operations/names';
import { pasteClip, type PastePlace } from '../operations/paste';
import { pointerPlace } from '../pointerPlace';

/** The selected parts as text; null where none is selected. */
export function copied(bench: Workbench): string | null {
  const { layout, view } = bench.store.getState();
  return view.selection.length === 0 ? null : clipText(layout, view.selection);
}

/** Takes away what was cut: one entry of history. */
export const takeAway = (bench: Workbench, ids: readonly PartId[]): void =>
  bench.change(t('Cut'), (layout) => removeParts(layout, ids));

function pasted(bench: Workbench, text: string, place: PastePlace): Fault | null {
  const before = bench.store.getState().layout;
  const clip = readClip(before, text);
  if (!clip.ok) return clip.fault;
  const next = pasteClip(before, clip.value, place);
  if (!next.ok) return next.fault;
  bench.change(t('Paste'), () => next.value);
  bench.setView({ selection: addedParts(before, next.value), tool: 'select' });
  const { unpinned } = clip.value;
  return unpinned.length > 0 ? { code: 'clip-unpinned', params: { parts: someParts(unpinned) } } : null;
}

/**
 * Puts the parts of a text on the plate and selects them, or says why not: one entry of history. A table of parts goes to
 * its check page.
 */
export function paste({ bench, ports }: Context, text: string, inPlace: boolean): void {
  const at = pointerPlace(bench);
  const fault = pasted(bench, text, inPlace ? 'inPlace' : at ? [at.x, at.y] : 'beside');
  if (fault?.code === 'clip-table') ports.showTable(text);
  else if (fault) bench.notify(fault);
}
