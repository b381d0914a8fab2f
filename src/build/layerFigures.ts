/**
 * The figures of one layer: scan areas, loads, idle, imbalance, seams, double exposure. Millimetres,
 * seconds, percent.
 *   layer time = max(minLayer, recoating + exposure); exposure = the slowest laser's load; idle = exposure − own load
 *   scan area  = section area exposed + half the seam overlap along the laser's seams
 *   Σ scan areas − double exposure + unassigned = section area
 */
import type { Allocation } from '../allocation/allocate';
import { imbalance } from '../allocation/solver/imbalance';
import type { AssembledPart, PartPiece } from '../exposure/pieces';
import { timeModel, type TimeModel } from '../exposure/timeModel';
import type { DividedSection } from '../exposure/types';
import { subtract, unite } from '../geometry/clipper';
import type { Region } from '../geometry/types';
import type { Machine, Process } from '../layout/types';
import type { Mm, Seconds } from '../units/types';
import { membersOf } from '../zoning/lasers';
import type { LaserSet } from '../zoning/types';
import { middleOfLayer } from './layers';
import type { LaserFigures, LayerFigures, Piece, Seam } from './types';

const PERCENT = 100;

export interface LayerInput {
  readonly machine: Machine;
  readonly process: Process;
  readonly on: LaserSet;
  readonly layer: number;
  /** Parts with a section here: index in the layout and the section. */
  readonly parts: readonly { readonly index: number; readonly section: DividedSection }[];
  readonly allocation: Allocation;
}

const models = new WeakMap<Process, TimeModel>();
/** The time model of a process; the same object gives the same model. */
export function modelOf(process: Process): TimeModel {
  let model = models.get(process);
  if (!model) models.set(process, (model = timeModel(process)));
  return model;
}

/** Time of one recoating by the machine's way of laying powder. */
const recoatTime = ({ recoater }: Machine): Seconds =>
  recoater.mode === 'oneWay' ? recoater.oneWay_s : recoater.bothWays_s;

const regions = new WeakMap<PartPiece, Region>();
/**
 * A piece as one region; joined on first use, since only drawing needs it. A part that one laser exposes alone is its
 * section.
 */
function regionOf(section: DividedSection, part: AssembledPart, piece: PartPiece): Region {
  if (part.pieces.length === 1 && section.unassigned_mm2 === 0) return section.section;
  let region = regions.get(piece);
  if (!region) {
    const own = part.regionsOf(piece);
    regions.set(piece, (region = own.length === 1 ? own[0] : unite(own)));
  }
  return region;
}

function pieceView(
  index: number,
  section: DividedSection,
  part: AssembledPart,
  piece: PartPiece,
  overlap_mm: Mm,
): Piece {
  return {
    part: index,
    laser: piece.laser,
    get region() {
      return regionOf(section, part, piece);
    },
    area_mm2: piece.area_mm2,
    hatchArea_mm2: piece.hatch_mm2 + piece.seam_mm * overlap_mm,
    outline_mm: piece.outline_mm,
    seam_mm: piece.seam_mm,
    load_s: piece.load_s,
  };
}

const missing = new WeakMap<DividedSection, Region>();
function unassignedRegion(section: DividedSection): Region {
  let region = missing.get(section);
  if (!region) {
    const taken = section.fragments.map((fragment) => fragment.region.rings);
    region = taken.length === 0 ? section.section : subtract(section.section, unite(taken));
    missing.set(section, region);
  }
  return region;
}

function unassignedView(part: number, section: DividedSection): Piece {
  return {
    part,
    laser: -1,
    get region() {
      return unassignedRegion(section);
    },
    area_mm2: section.unassigned_mm2,
    hatchArea_mm2: 0,
    outline_mm: 0,
    seam_mm: 0,
    load_s: 0,
  };
}

function piecesOf(input: LayerInput, overlap_mm: Mm): Piece[] {
  return input.parts.flatMap(({ index, section }, i) => {
    const part = input.allocation.parts[i];
    const pieces = part.pieces.map((piece) => pieceView(index, section, part, piece, overlap_mm));
    return section.unassigned_mm2 > 0 ? [...pieces, unassignedView(index, section)] : pieces;
  });
}

const seamsOf = (index: number, part: AssembledPart): Seam[] =>
  part.seams().seams.map((seam) => ({ part: index, ...seam }));

function laserFigures(input: LayerInput, overlap_mm: Mm): LaserFigures[] {
  const { machine, allocation } = input;
  const sums = machine.lasers.map(() => ({ scanArea_mm2: 0, outline_mm: 0, pieces: 0 }));
  for (const part of allocation.parts) {
    for (const piece of part.pieces) {
      const sum = sums[piece.laser];
      sum.scanArea_mm2 += piece.area_mm2 + piece.seam_mm * overlap_mm;
      sum.outline_mm += piece.outline_mm;
      sum.pieces++;
    }
  }
  return machine.lasers.map((laser, i) => ({
    id: laser.id,
    on: laser.on,
    ...sums[i],
    load_s: allocation.loads_s[i],
    idle_s: laser.on ? allocation.exposure_s - allocation.loads_s[i] : 0,
  }));
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function timesOf({ machine, process, allocation }: LayerInput) {
  const recoat_s = recoatTime(machine);
  const wait_s = Math.max(0, process.minLayer_s - recoat_s - allocation.exposure_s);
  return {
    exposure_s: allocation.exposure_s,
    recoat_s,
    time_s: recoat_s + allocation.exposure_s + wait_s,
    wait_s,
    bestPossible_s: allocation.best_s,
    bestSetBy: membersOf(allocation.setBy).map((laser) => machine.lasers[laser].id),
    costOfCutting_s: Math.max(0, allocation.exposure_s - allocation.planned_s),
    fewestCutsProven: allocation.cutsProven,
  };
}

function seamFigures({ allocation }: LayerInput, overlap_mm: Mm) {
  const seamLength_mm = sum(allocation.parts.map((part) => part.seamLength_mm));
  return {
    seamLength_mm,
    cutParts: allocation.parts.filter((part) => part.seamLength_mm > 0).length,
    doubleExposed_mm2: seamLength_mm * 2 * overlap_mm,
  };
}

/** The figures of a layer from who exposes what in it. */
export function layerFigures(input: LayerInput): LayerFigures {
  const overlap_mm = modelOf(input.process).overlapPerSeam;
  const lasers = laserFigures(input, overlap_mm);
  const working = membersOf(input.on).map((laser) => lasers[laser]);
  const { parts } = input.allocation;
  let pieces: readonly Piece[] | null = null;
  let seams: readonly Seam[] | null = null;
  return {
    layer: input.layer,
    height_mm: middleOfLayer(input.layer, input.process.layer_mm),
    lasers,
    get pieces() {
      return (pieces ??= piecesOf(input, overlap_mm));
    },
    get seams() {
      return (seams ??= input.parts.flatMap(({ index }, i) => seamsOf(index, parts[i])));
    },
    get witnessLines() {
      return sum(parts.map((part) => part.seams().witnessLines));
    },
    ...seamFigures(input, overlap_mm),
    sectionArea_mm2: sum(input.parts.map(({ section }) => section.area_mm2)),
    unassigned_mm2: sum(input.parts.map(({ section }) => section.unassigned_mm2)),
    ...timesOf(input),
    imbalanceTime_pct: PERCENT * imbalance(working.map((laser) => laser.load_s)),
    imbalanceArea_pct: PERCENT * imbalance(working.map((laser) => laser.scanArea_mm2)),
  };
}
