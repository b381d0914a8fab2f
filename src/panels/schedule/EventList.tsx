/**
 * The events of the build: what, the last layer that can finish, hour and clock time, attended or not, and the caution
 * that goes with it. A click cuts the plan at that layer. Hours are estimates.
 */
import { t } from '../../language/index';
import { CAUTIONS, EVENT_NAMES, STANDARDS, WHO_DECIDES } from '../../build/cautions';
import type { ServiceEvent } from '../../build/events';
import { middleOfLayer } from '../../build/layers';
import { shownClock } from '../../build/scheduleFaults';
import { useWorkbench } from '../../canvas/bench';
import { formatHours } from '../../units/format';

/** Events written out; what comes after them is counted. */
const SHOWN = 40;

interface EventRowProps {
  readonly event: ServiceEvent;
  readonly spread_pct: number;
}

function EventRow({ event: { kind, layer, hour, at, attended }, spread_pct }: EventRowProps) {
  const bench = useWorkbench();
  const show = (): void => {
    const { layer_mm } = bench.store.getState().layout.process;
    bench.setView({ height_mm: middleOfLayer(Math.max(1, layer), layer_mm) });
  };
  return (
    <li className="event" data-kind={kind} data-unattended={!attended || undefined}>
      <button type="button" className="event-line" title={t('Cut the plan at this layer')} onClick={show}>
        <b>{t(EVENT_NAMES[kind])}</b>
        <span>{layer === 0 ? t('before layer 1') : t('after layer {layer}', { layer })}</span>
        <span>{shownClock(at)}</span>
        <span>
          {formatHours(hour)} ± {formatHours((hour * spread_pct) / 100)}
        </span>
        <em>{t(attended ? 'attended' : 'nobody there')}</em>
      </button>
      <p className="event-caution">{t(CAUTIONS[kind])}</p>
    </li>
  );
}

interface EventListProps {
  readonly events: readonly ServiceEvent[];
  readonly spread_pct: number;
}

export function EventList({ events, spread_pct }: EventListProps) {
  const more = events.length - SHOWN;
  // The end is always written out.
  const shown = more > 0 ? [...events.slice(0, SHOWN - 1), ...events.slice(-1)] : events;
  return (
    <>
      <ol className="events" data-testid="events">
        {shown.map((event) => (
          <EventRow key={`${event.kind} ${event.layer}`} event={event} spread_pct={spread_pct} />
        ))}
      </ol>
      {more > 0 && (
        <p className="hint">
          {t('{count} more events before the end are not written out.', { count: more })}
        </p>
      )}
      <p className="hint">
        {t(
          'Estimates from planned hours and the correction; stops for service, heating and cooling are not in them. Each store is taken to be served in full at its event. A range of attended hours is over at its last minute; a change of summer time is not counted.',
        )}
      </p>
      <p className="hint">{t(WHO_DECIDES)}</p>
      <p className="hint">{t(STANDARDS)}</p>
    </>
  );
}
