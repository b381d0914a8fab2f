/** What changed between two layouts, in short lines: the most telling parts by name, the rest by number. */
import { keyWord } from '../../panels/keyWords';
import { t, type Text } from '../../language/index';
import type { Changes } from '../../build/whatChanged';
import { formatDegrees, formatMm } from '../../units/format';

/** Parts named in a line; more are counted. */
const MOST_NAMED = 4;

const list = (words: readonly string[]): string => {
  const shown = words.slice(0, MOST_NAMED).join(', ');
  return words.length > MOST_NAMED
    ? t('{shown} and {number} more', { shown, number: words.length - MOST_NAMED })
    : shown;
};

const named = (what: Text, ids: readonly string[]): string[] =>
  ids.length === 0 ? [] : [`${t(what)}: ${list(ids)}`];

const moved = ({ moved: all }: Changes): string[] => {
  const farthest = all.toSorted((a, b) => b.by_mm - a.by_mm);
  return named(
    'moved',
    farthest.map(({ id, by_mm }) => t('{part} by {value}', { part: id, value: formatMm(by_mm) })),
  );
};

const turned = ({ turned: all }: Changes): string[] =>
  named(
    'turned',
    all.map(({ id, by_deg }) => t('{part} by {value}', { part: id, value: formatDegrees(by_deg) })),
  );

/** Keys of a file without their unit, as words: "contourSpeed_mm_s" → "contour speed". */
const keyWords = (keys: readonly string[]): readonly string[] =>
  keys.map((key) => keyWord(key.replace(/_.*$/, '')));

/** Lines, none where nothing changed. */
export function changeLines(changes: Changes): readonly string[] {
  return [
    ...(changes.zoning ? [t('zones')] : []),
    ...(changes.allocation ? [t('rule for shared load')] : []),
    ...moved(changes),
    ...turned(changes),
    ...named('added', changes.added),
    ...named('not there', changes.removed),
    ...named('other seams, laser or time factor', changes.ruled),
    ...named('other shape', changes.reshaped),
    ...named('process', keyWords(changes.process)),
    ...named('machine', keyWords(changes.machine)),
    ...named('limits', keyWords(changes.limits)),
    ...(changes.schedule ? [t('calendar')] : []),
  ];
}
