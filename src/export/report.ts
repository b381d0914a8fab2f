/**
 * The report of one layer and its build, in the form that the command line prints and other programs read.
 * Millimetres, seconds, hours, litres, percent, as the key names say. Figures are not rounded. Events are there where
 * the layout has a schedule.
 */
import { downwindPlumes } from '../build/downwind';
import { eventsOf, type ServiceEvent } from '../build/events';
import type { Analysis, BuildFigures, LayerFigures, Problem } from '../build/types';
import { checksum } from '../layout/checksum';
import { messageText } from '../layout/messages';
import type { LaserId, PartId } from '../layout/types';
import type { Cm3, Hours, Litres, Mm, Mm2, Percent, Seconds } from '../units/types';

export interface ReportLaser {
  readonly id: LaserId;
  readonly on: boolean;
  readonly scanArea_mm2: Mm2;
  readonly outline_mm: Mm;
  readonly pieces: number;
  readonly load_s: Seconds;
  readonly idle_s: Seconds;
  readonly downwind_plumes: number;
}
export interface ReportLayer {
  readonly height_mm: Mm;
  readonly sectionArea_mm2: Mm2;
  readonly unassigned_mm2: Mm2;
  readonly doubleExposed_mm2: Mm2;
  readonly exposure_s: Seconds;
  readonly time_s: Seconds;
  readonly imbalanceTime_pct: Percent;
  readonly imbalanceArea_pct: Percent;
  readonly bestPossible_s: Seconds;
  readonly bestSetBy: readonly LaserId[];
  readonly seams: {
    readonly count: number;
    readonly length_mm: Mm;
    readonly cutParts: number;
    readonly witnessLines: number;
  };
}
export interface ReportBuild {
  readonly layers: number;
  readonly time_h: Hours;
  readonly exposure_h: Hours;
  readonly recoat_h: Hours;
  readonly heldByMinLayer_h: Hours;
  readonly imbalance_pct: Percent;
  readonly idle_laserH: Hours;
  readonly load_laserH: Hours;
  readonly dose_l: Litres;
  readonly overflow_l: Litres;
  readonly scanVolume_cm3: Readonly<Record<LaserId, Cm3>>;
}
export interface ReportProblem {
  readonly code: string;
  /** Absent where the problem concerns the whole plate. */
  readonly part?: PartId;
  readonly text: string;
}
export interface Report {
  readonly format: 'evenplate-report';
  readonly version: 1;
  readonly layout: { readonly name: string; readonly checksum: string };
  readonly lasers: readonly ReportLaser[];
  readonly layer: ReportLayer;
  readonly build: ReportBuild;
  /** Absent without a schedule. */
  readonly events?: readonly ServiceEvent[];
  readonly problems: readonly ReportProblem[];
}

function lasersOf(analysis: Analysis, figures: LayerFigures): ReportLaser[] {
  const plumes = downwindPlumes(analysis, figures);
  return figures.lasers.map(({ id, on, scanArea_mm2, outline_mm, pieces, load_s, idle_s }, index) => ({
    id,
    on,
    scanArea_mm2,
    outline_mm,
    pieces,
    load_s,
    idle_s,
    downwind_plumes: plumes[index] ?? 0,
  }));
}

function layerOf(figures: LayerFigures, height_mm: Mm): ReportLayer {
  const { sectionArea_mm2, unassigned_mm2, doubleExposed_mm2, exposure_s, time_s } = figures;
  const { imbalanceTime_pct, imbalanceArea_pct, bestPossible_s, bestSetBy } = figures;
  return {
    height_mm,
    sectionArea_mm2,
    unassigned_mm2,
    doubleExposed_mm2,
    exposure_s,
    time_s,
    imbalanceTime_pct,
    imbalanceArea_pct,
    bestPossible_s,
    bestSetBy,
    seams: {
      count: figures.seams.length,
      length_mm: figures.seamLength_mm,
      cutParts: figures.cutParts,
      witnessLines: figures.witnessLines,
    },
  };
}

function buildOf(build: BuildFigures): ReportBuild {
  const { layers, time_h, exposure_h, recoat_h, heldByMinLayer_h, imbalance_pct } = build;
  const { idle_laserH, load_laserH, dose_l, overflow_l, scanVolume_cm3 } = build;
  return {
    layers,
    time_h,
    exposure_h,
    recoat_h,
    heldByMinLayer_h,
    imbalance_pct,
    idle_laserH,
    load_laserH,
    dose_l,
    overflow_l,
    scanVolume_cm3,
  };
}

const problemOf = ({ code, params, parts }: Problem): ReportProblem => ({
  code,
  ...(parts[0] === undefined ? {} : { part: parts[0] }),
  text: messageText(code, params),
});

/**
 * The report of a layer. `height_mm` is the middle of the layer asked for; where it is not given, that of the layer
 * the figures were computed at.
 */
export const report = (
  analysis: Analysis,
  figures: LayerFigures,
  height_mm: Mm = figures.height_mm,
): Report => ({
  format: 'evenplate-report',
  version: 1,
  layout: { name: analysis.layout.name, checksum: checksum(analysis.layout) },
  lasers: lasersOf(analysis, figures),
  layer: layerOf(figures, height_mm),
  build: buildOf(analysis.build),
  ...(analysis.layout.schedule === null ? {} : { events: eventsOf(analysis.layout, analysis.stretches) }),
  problems: analysis.problems.map(problemOf),
});
