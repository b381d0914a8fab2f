/**
 * The report of one layer and its build, in the form that the command line prints and other programs read.
 * Millimetres, seconds, hours, litres, percent, as the key names say. Figures are not rounded. Events are there where
 * the layout has a schedule.
 */
import { downwindPlumes } from '../build/downwind';
import { eventsOf, type ServiceEvent } from '../build/events';
import type { Analysis, BuildFigures, LaserFigures, LayerFigures, Problem } from '../build/types';
import { checksum } from '../layout/checksum';
import { inEnglish } from '../language/index';
import { messageText } from '../layout/messages';
import type { Layout, PartId, Revision } from '../layout/types';
import type { Mm } from '../units/types';

const LAYER_KEYS = [
  'sectionArea_mm2',
  'unassigned_mm2',
  'doubleExposed_mm2',
  'exposure_s',
  'time_s',
  'imbalanceTime_pct',
  'imbalanceArea_pct',
  'bestPossible_s',
  'bestSetBy',
] as const satisfies readonly (keyof LayerFigures)[];
const BUILD_KEYS = [
  'layers',
  'time_h',
  'exposure_h',
  'recoat_h',
  'heldByMinLayer_h',
  'imbalance_pct',
  'idle_laserH',
  'load_laserH',
  'dose_l',
  'overflow_l',
  'scanVolume_cm3',
] as const satisfies readonly (keyof BuildFigures)[];

/** One laser in the layer, in the machine's order; plumes are the mean number of others' over its beam. */
export interface ReportLaser extends LaserFigures {
  readonly downwind_plumes: number;
}
/** The layer as a whole; `height_mm` is the middle of the layer asked for. */
export interface ReportLayer extends Pick<LayerFigures, (typeof LAYER_KEYS)[number]> {
  readonly height_mm: Mm;
  readonly seams: {
    readonly count: number;
    readonly length_mm: Mm;
    readonly cutParts: number;
    readonly witnessLines: number;
  };
}
/** The whole build, with the recoater as it is set. */
export type ReportBuild = Pick<BuildFigures, (typeof BUILD_KEYS)[number]>;
/** One entry of the problems list, as a sentence. */
export interface ReportProblem {
  readonly code: string;
  /** Absent where the problem concerns the whole plate. */
  readonly part?: PartId;
  readonly text: string;
}
/** The whole report; its key names carry their units. */
export interface Report {
  readonly format: 'evenplate-report';
  readonly version: 1;
  readonly layout: {
    readonly name: string;
    readonly checksum: string;
    /** Absent where nobody has filed the layout. */
    readonly revision?: Revision;
  };
  readonly lasers: readonly ReportLaser[];
  readonly layer: ReportLayer;
  readonly build: ReportBuild;
  /** Absent without a schedule. */
  readonly events?: readonly ServiceEvent[];
  readonly problems: readonly ReportProblem[];
}

function pick<T, K extends keyof T>(from: T, keys: readonly K[]): Pick<T, K> {
  return Object.fromEntries(keys.map((key) => [key, from[key]])) as Pick<T, K>;
}

function lasersOf(analysis: Analysis, figures: LayerFigures): ReportLaser[] {
  const plumes = downwindPlumes(analysis, figures);
  return figures.lasers.map((laser, index) => ({ ...laser, downwind_plumes: plumes[index] ?? 0 }));
}

const layerOf = (figures: LayerFigures, height_mm: Mm): ReportLayer => ({
  height_mm,
  ...pick(figures, LAYER_KEYS),
  seams: {
    count: figures.seams.length,
    length_mm: figures.seamLength_mm,
    cutParts: figures.cutParts,
    witnessLines: figures.witnessLines,
  },
});

const sourceOf = ({ name, revision }: Layout, sum: string): Report['layout'] => ({
  name,
  checksum: sum,
  ...(revision === null ? {} : { revision }),
});

const problemOf = ({ code, params, parts }: Problem): ReportProblem => ({
  code,
  ...(parts[0] === undefined ? {} : { part: parts[0] }),
  text: inEnglish(() => messageText(code, params)),
});

/**
 * The report of a layer. `height_mm` is the middle of the layer asked for; where it is not given, that of the layer
 * the figures were computed at. `sum` is the layout's checksum, where it is known.
 */
export const report = (
  analysis: Analysis,
  figures: LayerFigures,
  height_mm: Mm = figures.height_mm,
  sum?: string,
): Report => ({
  format: 'evenplate-report',
  version: 1,
  layout: sourceOf(analysis.layout, sum ?? checksum(analysis.layout)),
  lasers: lasersOf(analysis, figures),
  layer: layerOf(figures, height_mm),
  build: pick(analysis.build, BUILD_KEYS),
  ...(analysis.layout.schedule === null ? {} : { events: eventsOf(analysis.layout, analysis.stretches) }),
  problems: analysis.problems.map(problemOf),
});
