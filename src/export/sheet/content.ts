/**
 * All that the sheet says, in words: identity, revision, figures with their spread, service events, who exposes what, seams,
 * failing lasers, cautions. Hours carry the correction factor; stops are not in them.
 */
import { t, type Text } from '../../language/index';
import { CAUTIONS, EVENT_NAMES, STANDARDS, WHO_DECIDES } from '../../build/cautions';
import { eventsOf, type EventKind, type ServiceEvent } from '../../build/events';
import { shownClock } from '../../build/scheduleFaults';
import type { Analysis } from '../../build/types';
import { messageText } from '../../layout/messages';
import type { Layout, Revision } from '../../layout/types';
import { formatCm3, formatField, formatHours } from '../../units/format';
import { isBlocked, isChecked, NOT_FOR_USE } from '../forUse';
import type { SheetContent, SheetFacts, SheetRow, SheetTable } from './types';
import { outageRows, partRows, seamRows, seamSummary } from './words';

const MM3_PER_CM3 = 1000;
const SMALLEST_CM3 = 0.005;

/** Corrected hours of the build, with what they leave out. */
function hoursWords({ layout, build, stretches }: Analysis): string {
  const { factor, spread_pct } = layout.schedule?.correction ?? { factor: 1, spread_pct: null };
  const hours = build.time_h * factor;
  const spread =
    spread_pct === null ? t(', spread unknown') : ` ± ${formatHours((hours * spread_pct) / 100)}`;
  const left = stretches.reduce(
    (sum, { from_mm, to_mm, figures }) => sum + (to_mm - from_mm) * figures.unassigned_mm2,
    0,
  );
  const without =
    left / MM3_PER_CM3 < SMALLEST_CM3
      ? ''
      : t(', without {value} that no laser exposes', { value: formatCm3(left / MM3_PER_CM3) });
  return `${formatHours(hours)}${spread}${without}`;
}

/** Why the plate is not for use: what blocks hand-over, in sentences. */
function reasonsOf(analysis: Analysis): string[] {
  const { problems, layout } = analysis;
  const faults = problems.filter(({ blocks }) => blocks);
  const reasons = faults.map(({ code, params }) => messageText(code, params));
  if (layout.revision?.state === 'superseded')
    reasons.push(t('Revision {name} is superseded.', { name: layout.revision.name }));
  if (!isChecked(analysis)) reasons.push(t('The plate has not been checked.'));
  if (reasons.length === 0) reasons.push(t('Some section area is exposed by no laser.'));
  return reasons;
}

const STATES: Readonly<Record<Exclude<Revision['state'], 'superseded'>, Text>> = {
  draft: 'DRAFT, NOT RELEASED',
  reviewed: 'REVIEWED, NOT RELEASED',
  released: 'RELEASED',
};

function stateOf({ revision }: Layout, blocked: boolean): string {
  const state = revision?.state ?? 'draft';
  return blocked || state === 'superseded' ? t(NOT_FOR_USE) : t(STATES[state]);
}

function revisionWords({ revision }: Layout): string {
  if (revision === null) return t('no revision: nobody has filed this layout yet');
  const { name, state, date, reason } = revision;
  const filed = t('revision {name}, {state} {date}', { name, state: t(state), date });
  return reason === '' ? filed : `${filed}: ${reason}`;
}

function factsOf(analysis: Analysis, events: readonly ServiceEvent[], printed: string): [string, string][] {
  const { layout, build } = analysis;
  const { schedule, machine, process } = layout;
  const end = events.at(-1);
  const off = machine.lasers.filter(({ on }) => !on).map(({ id }) => id);
  const on = machine.lasers.filter((laser) => laser.on).map(({ id }) => id);
  return [
    [t('machine'), machine.name],
    [t('process'), process.name],
    [t('layers'), `${build.layers} × ${formatField(process.layer_mm)} mm`],
    [t('build, estimate'), hoursWords(analysis)],
    [t('start'), schedule ? shownClock(schedule.start) : t('not planned')],
    [t('end, estimate'), end ? shownClock(end.at) : t('unknown without a start')],
    [
      t('lasers on'),
      `${on.join(', ') || t('none')}${off.length > 0 ? t(' (off: {list})', { list: off.join(', ') }) : ''}`,
    ],
    [t('printed'), printed],
  ];
}

function eventRow({ kind, layer, hour, at, attended }: ServiceEvent, spread_pct: number): SheetRow {
  const after = layer === 0 ? t('before layer 1') : t('after layer {layer}', { layer });
  const hours = `${formatHours(hour)} ± ${formatHours((hour * spread_pct) / 100)}`;
  const there = attended ? '' : t('. NOBODY THERE');
  return { head: t(EVENT_NAMES[kind]), body: `${shownClock(at)}, ${after}, ${hours}${there}`, tick: true };
}

function eventTable({ schedule, machine }: Layout, events: readonly ServiceEvent[]): SheetTable {
  const rest: Text = 'and {count} more events: next page';
  const table = { title: t('SERVICE EVENTS'), rest };
  if (schedule === null)
    return { ...table, hint: t('No start is planned: events and their times are unknown.'), rows: [] };
  const hint = t(
    machine.powder === null
      ? 'The machine’s stores are not stated: only the end is known. Estimates, stops not in them; each store served in full at its event.'
      : 'Estimates, stops not in them; each store served in full at its event.',
  );
  return { ...table, hint, rows: events.map((event) => eventRow(event, schedule.correction.spread_pct)) };
}

/** Events that share a caution share a row; without a calendar all cautions stand. */
function cautionTable(events: readonly ServiceEvent[]): SheetTable {
  const all = Object.keys(CAUTIONS) as EventKind[];
  const kinds = events.length === 0 ? all : all.filter((kind) => events.some((event) => event.kind === kind));
  const heads = new Map<string, string[]>();
  for (const kind of kinds)
    heads.set(t(CAUTIONS[kind]), [...(heads.get(t(CAUTIONS[kind])) ?? []), t(EVENT_NAMES[kind])]);
  const rows = [...heads].map(([body, names]) => ({ head: names.join(', '), body }));
  return { title: t('CAUTIONS'), hint: '', rows, rest: 'and {count} more cautions: next page' };
}

const OUTAGE_HINT: Text =
  'As if it were off from the first layer on; hours are those of the whole build, estimates. Stop and call the engineer: zones divided anew are a new layout with a checksum of its own.';

export const NOTES: readonly Text[] = [
  WHO_DECIDES,
  STANDARDS,
  'Figures for several lasers are unvalidated by measurement. Hatching shows who exposes, not the scan direction.',
];

function tablesOf(layout: Layout, facts: SheetFacts): Pick<SheetContent, 'parts' | 'seams' | 'outages'> {
  return {
    parts: {
      title: t('PART, LASER, HEIGHTS z IN mm'),
      hint: '',
      rows: partRows(layout, facts.holdings),
      rest: 'and {count} more parts: next page',
    },
    seams: {
      title: t('SEAMS'),
      hint: seamSummary(facts),
      rows: seamRows(layout, facts.seams),
      rest: 'and {count} more parts with seams: next page',
    },
    outages: {
      title: t('IF A LASER FAILS'),
      hint: t(OUTAGE_HINT),
      rows: outageRows(layout, facts.outages),
      rest: 'and {count} more lasers: next page',
    },
  };
}

/** @param printed day and time of printing, as it is to be read */
export function sheetContent(analysis: Analysis, facts: SheetFacts, printed: string): SheetContent {
  const { layout, stretches } = analysis;
  const events = eventsOf(layout, stretches);
  const blocked = isBlocked(analysis) || !isChecked(analysis);
  return {
    name: layout.name,
    state: stateOf(layout, blocked),
    blocked,
    reasons: blocked ? reasonsOf(analysis) : [],
    revision: revisionWords(layout),
    checksum: facts.checksum,
    facts: factsOf(analysis, events, printed),
    events: eventTable(layout, events),
    cautions: cautionTable(events),
    ...tablesOf(layout, facts),
    signatures: [
      [t('planned'), layout.revision?.author ?? ''],
      [t('reviewed'), layout.revision?.reviewer ?? ''],
      [t('set up by'), ''],
      [t('taken out by'), ''],
    ],
    blanks: [
      t('job no.'),
      t('machine no.'),
      t('platform no.'),
      t('powder, batch'),
      t('blade'),
      t('actual start'),
      t('actual end'),
      t('actual stops, h'),
      t('actual last layer'),
      t('remarks'),
    ],
    notes: NOTES.map((note) => t(note)),
  };
}
