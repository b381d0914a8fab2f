/**
 * What is worth saying after a change, and that it is said once: the part that was moved or chosen, the zone line that
 * was moved or chosen with the imbalance it leads to, a new message. Nothing during a gesture: its end is what counts.
 */
import { measuredWords } from '../../canvas/measuredWords';
import { t } from '../../language/index';
import { messageAdvice, messageText } from '../../layout/messages';
import { layerFiguresAt } from '../../canvas/layerAt';
import { plateOf } from '../../store/shown';
import type { Workbench, WorkbenchState } from '../../store/types';
import { formatPercent } from '../../units/format';
import { lineText, partTexts } from './spokenText';

type Seen = Pick<WorkbenchState, 'layout' | 'view'>;

const figuresOf = (bench: Workbench) =>
  layerFiguresAt(bench.analysis(), bench.store.getState().view.height_mm);

/** Words about the selection: one part in full, several by their number and the last chosen. */
function selectionText(bench: Workbench): string {
  const { layout, view } = bench.store.getState();
  const id = view.selection.at(-1);
  if (id === undefined) return t('Nothing is selected');
  const index = layout.parts.findIndex((part) => part.id === id);
  const words = partTexts(layout, figuresOf(bench))[index] ?? id;
  return view.selection.length === 1
    ? words
    : t('{count} parts selected; {words}', { count: view.selection.length, words });
}

function lineNews(bench: Workbench): string {
  const { view } = bench.store.getState();
  const words = lineText(plateOf(bench).zoning, view.activeLine) || t('Division without lines');
  const imbalance = figuresOf(bench)?.imbalanceTime_pct;
  if (imbalance === undefined) return words;
  return t('{words}, imbalance {imbalance}', { words, imbalance: formatPercent(imbalance) });
}

const partsDiffer = (a: Seen, b: Seen): boolean =>
  a.layout.parts !== b.layout.parts &&
  b.view.selection.some((id) => {
    const [was, is] = [a, b].map(({ layout }) => layout.parts.find((part) => part.id === id));
    return was !== is;
  });

function noticeText(before: Seen, now: Seen): string | null {
  const fresh = now.view.notices.filter((notice) => !before.view.notices.includes(notice));
  const words = fresh.map(
    ({ fault }) => `${messageText(fault.code, fault.params)} ${messageAdvice(fault.code, fault.params)}`,
  );
  return words.length > 0 ? words.join(' ') : null;
}

/** What is to be said of the step from one state to the next; null where nothing is. */
export function newsOf(bench: Workbench, before: Seen): string | null {
  const now = bench.store.getState();
  const parts = before.view.selection !== now.view.selection || partsDiffer(before, now);
  const lines = before.layout.zoning !== now.layout.zoning || before.view.activeLine !== now.view.activeLine;
  const words = [
    noticeText(before, now),
    now.view.measured && now.view.measured !== before.view.measured ? measuredWords(now.view.measured) : null,
    parts ? selectionText(bench) : null,
    lines ? lineNews(bench) : null,
  ].filter((text) => text !== null);
  return words.length > 0 ? words.join('. ') : null;
}
