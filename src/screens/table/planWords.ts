/** What a planned table does, in words: for a row, for its count, for the button that does it. */
import { t, type Text } from '../../language/index';
import type { Effect, PlannedRow } from '../../commands/operations/placeTable';
import { messageAdvice, messageText } from '../../layout/messages';

const EFFECTS: Readonly<Record<Effect, Text>> = {
  add: 'new',
  change: 'changed',
  same: 'as it stands',
  repeat: 'counted once',
  refuse: 'refused',
};

export type Counts = Readonly<Record<Effect, number>>;

export function countEffects(plan: readonly PlannedRow[]): Counts {
  const counts = { add: 0, change: 0, same: 0, repeat: 0, refuse: 0 };
  for (const { effect } of plan) counts[effect]++;
  return counts;
}

/** "3 rows: 2 new, 1 refused". */
export function countWords(counts: Counts): string {
  const told = (Object.keys(EFFECTS) as Effect[]).filter((effect) => counts[effect] > 0);
  const total = told.reduce((sum, effect) => sum + counts[effect], 0);
  if (total === 0) return t('No row of values yet.');
  const list = told.map((effect) => `${counts[effect]} ${t(EFFECTS[effect])}`).join(', ');
  return t('{count} [row|rows]: {list}', { count: total, list });
}

/** "Place 3 parts", "Change 2 parts", "Place 3, change 2 parts". */
export function buttonWords({ add, change }: Counts): string {
  if (change === 0) return t('Place {count} [part|parts]', { count: add });
  return add === 0
    ? t('Change {count} [part|parts]', { count: change })
    : t('Place {add}, change {count} [part|parts]', { add, count: change });
}

/** "new, as P07", "refused: No shape. A part that is new needs …". */
export function rowWords({ row, effect, part, remark }: PlannedRow): string {
  const written = row.entry.ok ? row.entry.value.id : undefined;
  const named = effect === 'add' && part && part.id !== written && !remark ? part.id : null;
  if (!remark) return named === null ? t(EFFECTS[effect]) : t('new, as {part}', { part: named });
  const text = messageText(remark.code, remark.params);
  const advice = effect === 'refuse' ? ` ${messageAdvice(remark.code, remark.params)}` : '';
  return `${t(EFFECTS[effect])}: ${text}${advice}`;
}
