/**
 * Problems of a build against its schedule: events while nobody attends the machine, stores that one layer alone
 * exceeds, a feed or an overflow filled beyond what it holds. A service in unattended hours blocks hand-over; an end does not, because
 * a finished build waits. Where another start helps, the problem names the next one that does. Hours, litres.
 */
import { t, type Text } from '../language/index';
import type { Layout, Schedule } from '../layout/types';
import { nextGoodStart, weekdayOf, type WEEKDAYS } from './calendar';
import { EVENT_NAMES } from './cautions';
import { eventInput, events, minutesTo, services, type ServiceEvent, type ServiceKind } from './events';
import type { Services } from './services';
import { MOST_SERVICES } from './services';
import { problem } from './problem';
import type { Problem, Stretch } from './types';

const STORE_WORDS: Readonly<Record<ServiceKind, readonly [store: Text, unit: string]>> = {
  overflowFull: ['overflow ¦ store', 'l'],
  feedEmpty: ['feed ¦ store', 'l'],
  residueDue: ['residue interval ¦ store', 'laser-h'],
};
const DAY_WORDS: Readonly<Record<(typeof WEEKDAYS)[number], Text>> = {
  mon: 'Mon {time}',
  tue: 'Tue {time}',
  wed: 'Wed {time}',
  thu: 'Thu {time}',
  fri: 'Fri {time}',
  sat: 'Sat {time}',
  sun: 'Sun {time}',
};

/** "Mon 2026-11-30 06:56", as a part of a message. */
const clockWords = (at: string) => ({
  text: DAY_WORDS[weekdayOf(at)],
  values: { time: at.replace('T', ' ') },
});
/** "Mon 2026-11-30 06:56", in the language in force. */
export function shownClock(at: string): string {
  const { text, values } = clockWords(at);
  return t(text, values);
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
    event: { text: EVENT_NAMES[kind] },
    layer,
    at: clockWords(at),
    start: better ? clockWords(better.start) : '',
  };
  if (kind === 'end')
    return problem(better?.withEnd ? 'end-unattended' : 'end-unattended-always', params, []);
  if (better === null) return problem('service-unattended-always', params, []);
  return problem(better.withEnd ? 'service-unattended' : 'service-unattended-but-end', params, []);
}

function storeProblems(layout: Layout, kind: ServiceKind, { stuck, cut }: Services): Problem[] {
  const { feed_l, overflow_l, residueInterval_laserH } = layout.machine.powder!;
  const [words, unit] = STORE_WORDS[kind];
  if (cut)
    return [problem('services-too-many', { event: { text: EVENT_NAMES[kind] }, most: MOST_SERVICES }, [])];
  if (stuck === null) return [];
  const capacity = { overflowFull: overflow_l, feedEmpty: feed_l, residueDue: residueInterval_laserH }[kind];
  const store = { text: words };
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
