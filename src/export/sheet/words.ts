/**
 * Rows of the sheet: part → laser → heights, seams, and what to do where a laser fails. Heights in mm above the platform.
 */
import { t } from '../../language/index';
import type { Layout } from '../../layout/types';
import { formatCm3, formatField, formatHours, formatMm } from '../../units/format';
import type { Hours } from '../../units/types';
import type { HeightRange, Holding, Outage, Rest, SeamRun, SheetFacts, SheetRow } from './types';

/** More ranges than this are told by their number. */
const MOST_RANGES = 3;
/** More parts than this are told by their number. */
const MOST_PARTS = 6;

/** Keeps a laser and its heights on one line. */
const NARROW = '\u202f';

/** "0–60", "0–60 and 90–120", "0–120 in 5 ranges". */
export function rangeWords(ranges: readonly HeightRange[]): string {
  const span = ({ from_mm, to_mm }: HeightRange): string => `${formatField(from_mm)}–${formatField(to_mm)}`;
  const [first, last] = [ranges[0], ranges.at(-1)];
  if (!first || !last) return '';
  if (ranges.length <= MOST_RANGES) return ranges.map(span).join(t(' and '));
  return t('{span} in {ranges} ranges', {
    span: span({ from_mm: first.from_mm, to_mm: last.to_mm }),
    ranges: ranges.length,
  });
}

const laserName = ({ machine }: Layout, laser: number): string => machine.lasers[laser]?.id ?? t('NO LASER');
const partName = ({ parts }: Layout, part: number): string => parts[part]?.id ?? '?';

/** "P01, P02 and 9 more parts". */
export function partNames(layout: Layout, parts: readonly number[]): string {
  const names = parts.map((part) => partName(layout, part));
  if (names.length <= MOST_PARTS) return names.join(', ');
  return t('{list} and {number} more parts', {
    list: names.slice(0, MOST_PARTS - 1).join(', '),
    number: names.length - MOST_PARTS + 1,
  });
}

/** Rows of one part are one row: the words of each, joined. */
function byPart<T extends { readonly part: number }>(
  layout: Layout,
  items: readonly T[],
  words: (item: T) => string,
): SheetRow[] {
  const found = new Map<number, string[]>();
  for (const item of items) found.set(item.part, [...(found.get(item.part) ?? []), words(item)]);
  return [...found].map(([part, body]) => ({ head: partName(layout, part), body: body.join('; ') }));
}

export const partRows = (layout: Layout, holdings: readonly Holding[]): SheetRow[] =>
  byPart(
    layout,
    holdings,
    ({ laser, ranges }) => `${laserName(layout, laser)}${NARROW}${rangeWords(ranges)}`,
  );

export const seamRows = (layout: Layout, seams: readonly SeamRun[]): SheetRow[] =>
  byPart(
    layout,
    seams,
    ({ lasers: [one, other], ranges, longest_mm }) =>
      `${laserName(layout, one)}/${laserName(layout, other)} ${formatMm(longest_mm)}, z${NARROW}${rangeWords(ranges)}`,
  );

export function seamSummary({ seams, mostSeams, longestSeams_mm }: SheetFacts): string {
  if (seams.length === 0) return t('No part is cut.');
  const parts = new Set(seams.map(({ part }) => part)).size;
  return t(
    '{parts} [parts: part is|parts are] cut; at most {seams} [seams: seam|seams] and {length} in one layer. Lengths are of the layer where they are longest.',
    { parts, seams: mostSeams, length: formatMm(longestSeams_mm) },
  );
}

const correctedHours = ({ schedule }: Layout, time_h: Hours): string =>
  t('about {value}', { value: formatHours(time_h * (schedule?.correction.factor ?? 1)) });

const leaves = (layout: Layout, { parts, volume_cm3 }: Rest): string =>
  `${partNames(layout, parts)} (${formatCm3(volume_cm3)})`;

/** What the failing of one laser comes to. */
function outageWords(layout: Layout, { asZoned, anew, pinned }: Outage): string {
  if (asZoned === null) return t('No other laser is on: the plate must stop.');
  if (asZoned.parts.length === 0)
    return t('The others expose all within the present zones: {hours}.', {
      hours: correctedHours(layout, asZoned.time_h),
    });
  const unexposed = t('Unexposed as zoned: {rest}.', { rest: leaves(layout, asZoned) });
  if (anew === null) return unexposed;
  if (anew.parts.length > 0)
    return t('{unexposed} Even with zones anew: {rest}. The plate must stop.', {
      unexposed,
      rest: leaves(layout, anew),
    });
  return t(
    pinned.length > 0
      ? '{unexposed} Zones divided anew among the others, {freed} set free, all exposed: {hours}.'
      : '{unexposed} Zones divided anew among the others, all exposed: {hours}.',
    { unexposed, freed: partNames(layout, pinned), hours: correctedHours(layout, anew.time_h) },
  );
}

export const outageRows = (layout: Layout, outages: readonly Outage[]): SheetRow[] =>
  outages.map((outage) => ({ head: laserName(layout, outage.laser), body: outageWords(layout, outage) }));
