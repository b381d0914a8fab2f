/**
 * Why a laser's figures are what they are: meaning, formula and the layout's own numbers in it. Scan area is taken before
 * any hatch inset; idle time is that of exposure, never of recoating or waiting; angles are largest ones.
 */
import { plumesOver } from '../../build/downwind';
import { incidences } from '../../build/incidence';
import type { Analysis, LayerFigures } from '../../build/types';
import type { Region } from '../../geometry/types';
import { formatDegrees, formatMm, formatNumber, NARROW_SPACE } from '../../units/format';
import type { Seconds } from '../../units/types';
import { barePlumes, bareSeconds, cellArea, cellSeconds } from './cellNumbers';
import type { Explanation } from './explanation';
import { sumTable } from './sumTable';

/** Parts named in the table of angles. */
const MOST_PARTS = 6;

/** The laser itself: where it strikes from, and how slantwise. */
export function explainOptics({ layout }: Analysis, figures: LayerFigures, laser: number): Explanation {
  const { id, foot_mm, workingHeight_mm } = layout.machine.lasers[laser];
  const found = incidences(
    layout,
    figures.pieces.filter((piece) => piece.laser === laser),
  );
  const [most] = found;
  const distance = workingHeight_mm * Math.tan(((most?.angle_deg ?? 0) * Math.PI) / 180);
  const angle = most && `θ = atan(${formatMm(distance)} / ${formatMm(workingHeight_mm)})`;
  return {
    title: `Incidence of ${id}`,
    meaning:
      'How slantwise the beam strikes what this laser exposes in the layer; the spot grows longer by it.',
    formula: 'θ = atan(distance from foot / working height); spot longer by 1/cos θ',
    numbers: [
      `foot at ${foot_mm[0]}, ${foot_mm[1]} mm`,
      angle === undefined
        ? 'exposes nothing in this layer'
        : `largest in ${layout.parts[most.part].id}: ${angle} = ${formatDegrees(most.angle_deg)}, spot ${formatNumber(most.spot, 4)} × as long`,
    ],
    table: {
      rows: found.slice(0, MOST_PARTS).map(({ part, angle_deg, spot }) => ({
        label: layout.parts[part].id,
        value: `${formatDegrees(angle_deg)}  × ${formatNumber(spot, 4)}`,
      })),
      total:
        found.length > MOST_PARTS
          ? { label: `${found.length - MOST_PARTS} more parts, all below`, value: '' }
          : null,
    },
  };
}

export function explainArea(analysis: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  const pieces = figures.pieces.filter((piece) => piece.laser === laser);
  const section = pieces.reduce((sum, piece) => sum + piece.area_mm2, 0);
  const seam = pieces.reduce((sum, piece) => sum + piece.seam_mm, 0);
  const overlap = analysis.layout.process.seamOverlap_mm;
  return {
    title: `Scan area of ${own.id}`,
    meaning:
      'Section area this laser exposes, before the hatch inset, with half the seam overlap at its seams.',
    formula: 'section of its pieces + seam length · seam overlap / 2',
    numbers: [],
    table: sumTable(
      [
        { label: `section of ${pieces.length} pieces`, value: section },
        { label: `${formatMm(seam)} · ${overlap} mm / 2`, value: (seam * overlap) / 2 },
      ],
      { label: 'scan area, mm²', value: own.scanArea_mm2, format: cellArea, more: 'terms' },
    ),
  };
}

/** Exposure − load = idle with as many decimals as the idle time has in the table, so that it adds up by eye. */
function idleLine(load_s: Seconds, idle_s: Seconds): string {
  const decimals = bareSeconds(idle_s).split('.')[1]?.length ?? 0;
  const [load, idle] = [load_s, idle_s].map((value) => Number(value.toFixed(decimals)));
  const [a, b, c] = [load + idle, load, idle].map((value) => `${value.toFixed(decimals)}${NARROW_SPACE}s`);
  return `${a} − ${b} = ${c}`;
}

export function explainIdle(_: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  return {
    title: `Idle of ${own.id}`,
    meaning: 'Time this laser waits for the slowest one. Recoating and the minimum layer time are not in it.',
    formula: 'exposure of the layer − own load',
    numbers: [own.on ? idleLine(own.load_s, own.idle_s) : 'switched off: no figures'],
  };
}

export function explainPieces({ layout }: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  const counts = new Map<number, number>();
  for (const piece of figures.pieces)
    if (piece.laser === laser) counts.set(piece.part, (counts.get(piece.part) ?? 0) + 1);
  return {
    title: `Pieces of ${own.id}`,
    meaning: 'Connected regions of one part that this laser exposes, adjacent cells merged.',
    formula: 'count over the layer',
    numbers: [],
    table: sumTable(
      [...counts].map(([part, value]) => ({ label: layout.parts[part].id, value })),
      { label: `pieces of ${counts.size} parts`, value: own.pieces, format: String, more: 'parts' },
    ),
  };
}

/** Of each upwind laser: the chance behind it and the share of the time, and what they come to. */
function plumeTerms({ layout }: Analysis, figures: LayerFigures, laser: number) {
  const areas: Region[][] = figures.lasers.map(() => []);
  for (const piece of figures.pieces) if (piece.laser >= 0) areas[piece.laser]?.push(piece.region);
  const own = figures.lasers[laser];
  return figures.lasers.flatMap(({ id, load_s }, i) => {
    if (i === laser || load_s === 0 || own.load_s === 0) return [];
    const loads = figures.lasers.map((other, k) => (k === i || k === laser ? other.load_s : 0));
    const { gasFlow } = layout.machine;
    const value = plumesOver(areas, loads, gasFlow.towards_deg, layout.limits.plumeHalfWidth_mm)[laser];
    const share = Math.min(1, load_s / own.load_s);
    const label = `${id}: chance ${formatNumber(value / share, 3, 3)} · min(1, ${cellSeconds(load_s)} / ${cellSeconds(own.load_s)})`;
    return [{ label, value }];
  });
}

export function explainPlumes(analysis: Analysis, figures: LayerFigures, laser: number): Explanation {
  const { plumeHalfWidth_mm } = analysis.layout.limits;
  const terms = plumeTerms(analysis, figures, laser);
  return {
    title: `Plumes over ${figures.lasers[laser].id}`,
    meaning:
      'Geometry only, not a flow simulation: mean number of other lasers’ plumes over this beam. No published plume width was found; the half-width is a setting.',
    formula:
      'Σ over upwind lasers of the chance that the beam stands in the strip behind their spot · min(1, E_i/E_j)',
    numbers: [
      `half-width of the strip ${plumeHalfWidth_mm} mm, flow towards ${analysis.layout.machine.gasFlow.towards_deg}°`,
    ],
    table: sumTable(terms, {
      label: 'plumes',
      value: terms.reduce((sum, term) => sum + term.value, 0),
      format: barePlumes,
      more: 'lasers',
    }),
  };
}
