/**
 * The calendar: when the build starts, its events, who is there when, how full the stores are, what real hours are to
 * planned ones. Local time, litres, laser-hours, hours.
 */
import { labelOf } from '../../commands/labels';
import { t, type Text } from '../../language/index';
import { useMemo } from 'react';
import type { Analysis, Freshness } from '../../build/types';
import { formatAttended } from '../../build/attended';
import { WEEKDAYS } from '../../build/calendar';
import { eventsOf, type ServiceEvent } from '../../build/events';
import { betterStart, shownClock } from '../../build/scheduleFaults';
import { useAnalysisLater, useBench } from '../../canvas/bench';
import { planStart, setAttended, setSchedule } from '../../commands/operations';
import type { Schedule, Weekday } from '../../layout/types';
import { Block } from '../controls/Block';
import { NumberField } from '../controls/fields';
import { TextField } from '../controls/TextField';
import { useCommand } from '../useCommands';
import { useEdit } from '../useEdit';
import { CorrectionBlock } from './CorrectionBlock';
import { EventList } from './EventList';
import { StartField } from './StartField';
import { tooFull } from './tooFull';
import './schedule.css';

const DAYS: Readonly<Record<Weekday, Text>> = {
  mon: 'Monday',
  tue: 'Tuesday',
  wed: 'Wednesday',
  thu: 'Thursday',
  fri: 'Friday',
  sat: 'Saturday',
  sun: 'Sunday',
};
const FRESHNESS: Readonly<Record<Freshness, Text | undefined>> = {
  present: undefined,
  sampled: 'a first look, being computed',
  earlier: 'of the plate before, being computed',
  none: 'being computed',
};

interface WithSchedule {
  readonly schedule: Schedule;
}

/** Where events fall into unattended hours: the next start that avoids it. */
function BetterStart({ schedule, events }: WithSchedule & { readonly events: readonly ServiceEvent[] }) {
  const edit = useEdit();
  const better = useMemo(
    () => (events.some(({ attended }) => !attended) ? betterStart(schedule, events) : undefined),
    [schedule, events],
  );
  if (better === undefined) return null;
  if (better === null)
    return (
      <p className="hint" data-testid="better-start">
        {t(
          'No attended start within 14 days puts every service into attended hours (by the estimated hours; their ± is not respected).',
        )}
      </p>
    );
  const { start, withEnd } = better;
  return (
    <p className="hint better-start" data-testid="better-start">
      {t(
        withEnd
          ? 'Next attended start that puts every service and the end into attended hours (by the estimated hours; their ± is not respected):'
          : 'Next attended start that puts every service into attended hours, though not the end (by the estimated hours; their ± is not respected):',
      )}{' '}
      <button
        type="button"
        className="button"
        data-testid="better-start-use"
        onClick={() => edit.press(t('start of the build'), (layout) => planStart(layout, start))}
      >
        {shownClock(start)}
      </button>
    </p>
  );
}

function EventsBlock({ schedule, analysis }: WithSchedule & { readonly analysis: Analysis }) {
  const { layout, stretches, whole } = analysis;
  const events = useMemo(() => eventsOf(layout, stretches), [layout, stretches]);
  return (
    <Block title={t('EVENTS')} note={FRESHNESS[whole] && t(FRESHNESS[whole])}>
      {layout.machine.powder === null && (
        <p className="hint">
          {t('The machine’s powder stores are not stated (Machine): only the end is listed.')}
        </p>
      )}
      {events.length === 0 ? (
        <p className="hint">
          {layout.parts.length === 0 ? t('No parts, no events.') : t('Being computed …')}
        </p>
      ) : (
        <>
          <BetterStart schedule={schedule} events={events} />
          <EventList events={events} spread_pct={schedule.correction.spread_pct} />
        </>
      )}
    </Block>
  );
}

function AttendedBlock({ schedule }: WithSchedule) {
  return (
    <Block title={t('ATTENDED HOURS')}>
      {WEEKDAYS.map((day) => (
        <div className="attended-day" key={day}>
          <TextField
            label={t(DAYS[day])}
            value={formatAttended(schedule.attended[day])}
            testId={`attended-${day}`}
            recipe={(layout, text) => setAttended(layout, day, text)}
          />
        </div>
      ))}
      <p className="hint">
        {t('Ranges such as 06:00-22:00, 23:00-24:00; over midnight is two. Empty: nobody comes.')}
      </p>
    </Block>
  );
}

const FILLS: readonly {
  readonly key: 'feedFilled_l' | 'overflowFilled_l' | 'residue_laserH';
  readonly label: Text;
  readonly unit: Text;
  readonly store: 'feed_l' | 'overflow_l' | null;
}[] = [
  { key: 'feedFilled_l', label: 'in the feed', unit: 'l', store: 'feed_l' },
  { key: 'overflowFilled_l', label: 'in the overflow', unit: 'l', store: 'overflow_l' },
  { key: 'residue_laserH', label: 'since cleaning', unit: 'laser-h', store: null },
];

function FillBlock({ schedule }: WithSchedule) {
  const powder = useBench((state) => state.layout.machine.powder);
  return (
    <Block title={t('STORES AT THE START')}>
      {FILLS.map(({ key, label, unit, store }) => (
        <NumberField
          key={key}
          caution={tooFull(schedule[key], store === null ? undefined : powder?.[store])}
          label={t(label)}
          unit={t(unit)}
          value={schedule[key]}
          testId={`fill-${key}`}
          recipe={(layout, value) => setSchedule(layout, { [key]: value })}
        />
      ))}
    </Block>
  );
}

function NoSchedule() {
  const plan = useCommand('plan-start');
  return (
    <Block title={t('START')}>
      <p className="hint">
        {t(
          'Nothing is known yet of when this build starts. With a start and attended hours, overflow, feed, residue and end are listed by clock time, and what happens while nobody is there becomes a fault.',
        )}
      </p>
      <button type="button" className="button" data-main data-testid="plan-start" onClick={plan.run}>
        {labelOf(plan.command)}
      </button>
    </Block>
  );
}

function Planned({ schedule }: WithSchedule) {
  const analysis = useAnalysisLater();
  const drop = useCommand('drop-schedule');
  const { build, layout, whole } = analysis;
  const plate = whole === 'present' ? { name: layout.name, planned_h: build.time_h } : null;
  return (
    <>
      <Block title={t('START')} note={shownClock(schedule.start)}>
        <StartField start={schedule.start} />
        <button type="button" className="button" data-testid="drop-schedule" onClick={drop.run}>
          {labelOf(drop.command)}
        </button>
      </Block>
      {analysis.layout.schedule !== null && (
        <EventsBlock schedule={analysis.layout.schedule} analysis={analysis} />
      )}
      <AttendedBlock schedule={schedule} />
      <FillBlock schedule={schedule} />
      <CorrectionBlock correction={schedule.correction} plate={plate} />
    </>
  );
}

export function SchedulePanel() {
  const schedule = useBench((state) => state.layout.schedule);
  return (
    <div className="fields-panel" data-testid="schedule-panel">
      {schedule === null ? <NoSchedule /> : <Planned schedule={schedule} />}
    </div>
  );
}
