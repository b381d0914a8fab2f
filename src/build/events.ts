/**
 * Service events of a build against the clock: overflow full, feed empty, residue due, end. An event names the last layer
 * that can finish and the hour, after the start, at which it does. Hours carry the correction factor; stops for service,
 * heating and cooling are not in them. After an event its store is served in full, and the next one of its kind counts
 * from there; a store of one kind does not wait for another's service. Hours, litres, laser-hours.
 */
import type { Layout, Machine, Process, Schedule } from '../layout/types';
import type { Hours, Mm2, Seconds } from '../units/types';
import { attendedAt, clockAfter } from './calendar';
import { powderOfLayer } from './powder';
import { servicesOf, type Services, type Store, type Taking } from './services';
import type { Stretch } from './types';

export type ServiceKind = 'overflowFull' | 'feedEmpty' | 'residueDue';
export type EventKind = ServiceKind | 'end';
export interface ServiceEvent {
  readonly kind: EventKind;
  /** The last layer that can finish; 0 where not even the first one can. */
  readonly layer: number;
  /** Hours from the start to the end of that layer, corrected. */
  readonly hour: Hours;
  /** Local clock time, truncated to the minute. */
  readonly at: string;
  readonly attended: boolean;
}
/** Layers in a row that are all alike. */
export interface AlikeLayers {
  readonly layers: number;
  readonly sectionArea_mm2: Mm2;
  readonly time_s: Seconds;
  /** Sum of all lasers' loads in one layer. */
  readonly load_s: Seconds;
}
export interface EventInput {
  /** From the platform up. */
  readonly stretches: readonly AlikeLayers[];
  readonly machine: Pick<Machine, 'platform' | 'powder'>;
  readonly process: Pick<Process, 'layer_mm' | 'doseFactor' | 'packing'>;
  readonly schedule: Schedule;
}

const S_PER_H = 3600;
const MIN_PER_H = 60;
/** Of a minute: an hour that misses a full minute by rounding has reached it. */
const ROUNDING_MIN = 1e-6;

/** Whole minutes from the start to an event. */
export const minutesTo = (hour: Hours): number => Math.floor(hour * MIN_PER_H + ROUNDING_MIN);

/** Hours, uncorrected, from the start to the end of each of the ascending layers. */
function hoursAt(stretches: readonly AlikeLayers[], layers: readonly number[]): Hours[] {
  let [s, done, seconds] = [0, 0, 0];
  return layers.map((layer) => {
    for (let stretch = stretches[s]; stretch && done + stretch.layers < layer; stretch = stretches[++s]) {
      done += stretch.layers;
      seconds += stretch.layers * stretch.time_s;
    }
    return (seconds + (layer - done) * (stretches[s]?.time_s ?? 0)) / S_PER_H;
  });
}

/** What a store holds and has left at the start, and what each layer takes of it. */
interface Watched extends Store {
  readonly takings: readonly Taking[];
}

function watchedStores({
  stretches,
  machine,
  process,
  schedule,
}: EventInput): Record<ServiceKind, Watched> | null {
  const { platform, powder } = machine;
  if (powder === null) return null;
  const area = platform.width_mm * platform.depth_mm;
  const takings = (each: (layer: AlikeLayers) => number): Taking[] =>
    stretches.map((stretch) => ({ layers: stretch.layers, each: each(stretch) }));
  const powderIn = ({ sectionArea_mm2 }: AlikeLayers) => powderOfLayer(area, sectionArea_mm2, process);
  const { overflow_l, feed_l, residueInterval_laserH } = powder;
  return {
    overflowFull: {
      capacity: overflow_l,
      room: overflow_l - schedule.overflowFilled_l,
      takings: takings((layer) => powderIn(layer).overflow_l),
    },
    feedEmpty: {
      capacity: feed_l,
      room: schedule.feedFilled_l,
      takings: takings((layer) => powderIn(layer).dose_l),
    },
    residueDue: {
      capacity: residueInterval_laserH,
      room: residueInterval_laserH - schedule.residue_laserH,
      takings: takings((layer) => layer.load_s / S_PER_H),
    },
  };
}

const KINDS = ['overflowFull', 'feedEmpty', 'residueDue'] as const satisfies readonly ServiceKind[];

/** When each store has to be served; null where the machine's stores are not stated. */
export function services(input: EventInput): Record<ServiceKind, Services> | null {
  const stores = watchedStores(input);
  if (stores === null) return null;
  const of = (kind: ServiceKind): Services => servicesOf(stores[kind].takings, stores[kind]);
  return { overflowFull: of('overflowFull'), feedEmpty: of('feedEmpty'), residueDue: of('residueDue') };
}

/**
 * All events of a build, in the order of their layers; none where there are no layers. At most 1000 of a kind are listed.
 * @param known the services of this input, where they were asked for before
 */
export function events(input: EventInput, known = services(input)): readonly ServiceEvent[] {
  const { stretches, schedule } = input;
  const last = stretches.reduce((sum, { layers }) => sum + layers, 0);
  if (last === 0) return [];
  const found: { kind: EventKind; layer: number }[] = KINDS.flatMap((kind) =>
    (known?.[kind].after ?? []).map((layer) => ({ kind, layer })),
  );
  found.sort((a, b) => a.layer - b.layer);
  found.push({ kind: 'end', layer: last });
  const hours = hoursAt(
    stretches,
    found.map(({ layer }) => layer),
  );
  return found.map(({ kind, layer }, i) => {
    const hour = hours[i]! * schedule.correction.factor;
    const at = clockAfter(schedule.start, minutesTo(hour));
    return { kind, layer, hour, at, attended: attendedAt(schedule.attended, at) };
  });
}

/** The stretches of a build as events read them. */
export function alikeLayers(stretches: readonly Stretch[]): AlikeLayers[] {
  return stretches.map(({ firstLayer, lastLayer, figures }) => ({
    layers: lastLayer - firstLayer + 1,
    sectionArea_mm2: figures.sectionArea_mm2,
    time_s: figures.time_s,
    load_s: figures.lasers.reduce((sum, laser) => sum + laser.load_s, 0),
  }));
}

/** What the events of a layout are made from; null without a schedule. */
export function eventInput(
  { machine, process, schedule }: Layout,
  stretches: readonly Stretch[],
): EventInput | null {
  return schedule && { stretches: alikeLayers(stretches), machine, process, schedule };
}

/** The events of a layout's build; none without a schedule. */
export function eventsOf(layout: Layout, stretches: readonly Stretch[]): readonly ServiceEvent[] {
  const input = eventInput(layout, stretches);
  return input === null ? [] : events(input);
}
