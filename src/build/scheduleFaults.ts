/**
 * Problems of a build against its schedule: events while nobody attends the machine, stores that one layer alone
 * exceeds, a feed or an overflow filled beyond what it holds. A service in unattended hours blocks hand-over; an end does not, because
 * a finished build waits. Where another start helps, the problem names the next one that does. Hours, litres.
 */
import type { Layout, Schedule } from '../layout/types';
import { nextGoodStart, weekdayOf } from './calendar';
import {
  eventInput,
  events,
  minutesTo,
  services,
  type EventKind,
  type ServiceEvent,
  type ServiceKind,
} from './events';
import type { Services } from './services';
import { MOST_SERVICES } from './services';
import { problem } from './problem';
import type { Problem, Stretch } from './types';

/** The events' names as sentences say them. */
export const EVENT_WORDS: Readonly<Record<EventKind, string>> = {
  overflowFull: 'Overflow full',
  feedEmpty: 'Feed empty',
  residueDue: 'Residue due',
  end: 'End',
};
const STORE_WORDS: Readonly<Record<ServiceKind, readonly [store: string, unit: string]>> = {
  overflowFull: ['overflow', 'l'],
  feedEmpty: ['feed', 'l'],
  residueDue: ['residue interval', 'laser-h'],
};

/** "Mon 2026-11-30 06:56" */
export function shownClock(at: string): string {
  const day = weekdayOf(at);
  return `${day[0]!.toUpperCase()}${day.slice(1)} ${at.replace('T', ' ')}`;
}

export interface BetterStart {
  readonly start: string;
  /** The end, too, falls into attended hours. */
  readonly withEnd: boolean;
}

/**
 * The next attended start that puts every event into attended hours, else every service; null where there is none. Hours
 * are taken as estimated: their spread is not respected.
 */
export function betterStart({ attended, start }: Schedule, all: readonly ServiceEvent[]): BetterStart | null {
  const find = (wanted: readonly ServiceEvent[]): string | null =>
    nextGoodStart(
      attended,
      wanted.map(({ hour }) => minutesTo(hour)),
      start,
    );
  const best = find(all);
  if (best !== null) return { start: best, withEnd: true };
  const second = find(all.filter(({ kind }) => kind !== 'end'));
  return second === null ? null : { start: second, withEnd: false };
}

function unattended({ kind, layer, at }: ServiceEvent, better: BetterStart | null): Problem {
  const params = {
    event: EVENT_WORDS[kind],
    layer,
    at: shownClock(at),
    start: better ? shownClock(better.start) : '',
  };
  if (kind === 'end')
    return problem(better?.withEnd ? 'end-unattended' : 'end-unattended-always', params, []);
  if (better === null) return problem('service-unattended-always', params, []);
  return problem(better.withEnd ? 'service-unattended' : 'service-unattended-but-end', params, []);
}

function storeProblems(layout: Layout, kind: ServiceKind, { stuck, cut }: Services): Problem[] {
  const { feed_l, overflow_l, residueInterval_laserH } = layout.machine.powder!;
  const [store, unit] = STORE_WORDS[kind];
  if (cut) return [problem('services-too-many', { event: EVENT_WORDS[kind], most: MOST_SERVICES }, [])];
  if (stuck === null) return [];
  const capacity = { overflowFull: overflow_l, feedEmpty: feed_l, residueDue: residueInterval_laserH }[kind];
  const params = { store, unit, layer: stuck.layer, each: Number(stuck.each.toPrecision(3)), capacity };
  return [problem('store-too-small', params, [])];
}

function overfilled({ machine, schedule }: Layout): Problem[] {
  const { powder } = machine;
  if (powder === null || schedule === null) return [];
  const fills = [
    { code: 'feed-overfilled', found: schedule.feedFilled_l, capacity: powder.feed_l },
    { code: 'overflow-overfilled', found: schedule.overflowFilled_l, capacity: powder.overflow_l },
  ] as const;
  return fills.flatMap(({ code, found, capacity }) =>
    found > capacity ? [problem(code, { found, capacity }, [])] : [],
  );
}

/** Checks that stand behind a schedule: three stores, the end, two fills. */
const CHECKS = 6;

/** Problems of a layout's schedule and how many checks they stand for; nothing without a schedule. */
export function scheduleFaults(
  layout: Layout,
  stretches: readonly Stretch[],
): { readonly problems: readonly Problem[]; readonly checks: number } {
  const input = eventInput(layout, stretches);
  if (input === null) return { problems: [], checks: 0 };
  const known = services(input);
  const all = events(input, known);
  const alone = all.filter(({ attended }) => !attended);
  const better = alone.length > 0 ? betterStart(input.schedule, all) : null;
  const kinds = known === null ? [] : (Object.keys(known) as ServiceKind[]);
  const problems = [
    ...alone.map((event) => unattended(event, better)),
    ...kinds.flatMap((kind) => storeProblems(layout, kind, known![kind])),
    ...overfilled(layout),
  ];
  return { problems, checks: CHECKS };
}
