/**
 * Why a laser's figures are what they are: meaning, formula and the layout's own numbers in it. Scan area is taken before
 * any hatch inset; idle time is that of exposure, never of recoating or waiting; angles are largest ones.
 */
import { t, withDecimalSign } from '../../language/index';
import { plumesOver } from '../../build/downwind';
import { incidences } from '../../build/incidence';
import type { Analysis, LayerFigures } from '../../build/types';
import type { Region } from '../../geometry/types';
import { formatDegrees, formatField, formatMm, formatNumber, NARROW_SPACE } from '../../units/format';
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
  const angle =
    most &&
    t('θ = atan({distance} / {workingHeight})', {
      distance: formatMm(distance),
      workingHeight: formatMm(workingHeight_mm),
    });
  return {
    title: t('Incidence of {id}', { id }),
    meaning: t(
      'How slantwise the beam strikes what this laser exposes in the layer; the spot grows longer by it.',
    ),
    formula: t('θ = atan(distance from foot / working height); spot longer by 1/cos θ'),
    numbers: [
      t('foot at {x}, {y} mm', { x: foot_mm[0], y: foot_mm[1] }),
      angle === undefined
        ? t('exposes nothing in this layer')
        : t('largest in {id}: {angle} = {angle2}, spot {spot} × as long', {
            id: layout.parts[most.part].id,
            angle,
            angle2: formatDegrees(most.angle_deg),
            spot: formatNumber(most.spot, 4),
          }),
    ],
    table: {
      rows: found.slice(0, MOST_PARTS).map(({ part, angle_deg, spot }) => ({
        label: layout.parts[part].id,
        value: `${formatDegrees(angle_deg)}  × ${formatNumber(spot, 4)}`,
      })),
      total:
        found.length > MOST_PARTS
          ? { label: t('{number} more parts, all below', { number: found.length - MOST_PARTS }), value: '' }
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
    title: t('Scan area of {id}', { id: own.id }),
    meaning: t(
      'Section area this laser exposes, before the hatch inset, with half the seam overlap at its seams.',
    ),
    formula: t('section of its pieces + seam length · seam overlap / 2'),
    numbers: [],
    table: sumTable(
      [
        { label: t('section of {pieces} pieces', { pieces: pieces.length }), value: section },
        { label: `${formatMm(seam)} · ${formatField(overlap)} mm / 2`, value: (seam * overlap) / 2 },
      ],
      { label: t('scan area, mm²'), value: own.scanArea_mm2, format: cellArea, more: '{count} more terms' },
    ),
  };
}

/** Exposure − load = idle with as many decimals as the idle time has in the table, so that it adds up by eye. */
function idleLine(load_s: Seconds, idle_s: Seconds): string {
  const decimals = bareSeconds(idle_s).split(/[.,]/)[1]?.length ?? 0;
  const [load, idle] = [load_s, idle_s].map((value) => Number(value.toFixed(decimals)));
  const [a, b, c] = [load + idle, load, idle].map(
    (value) => `${withDecimalSign(value.toFixed(decimals))}${NARROW_SPACE}s`,
  );
  return `${a} − ${b} = ${c}`;
}

export function explainIdle(_: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  return {
    title: t('Idle of {id}', { id: own.id }),
    meaning: t(
      'Time this laser waits for the slowest one. Recoating and the minimum layer time are not in it.',
    ),
    formula: t('exposure of the layer − own load'),
    numbers: [own.on ? idleLine(own.load_s, own.idle_s) : t('switched off: no figures')],
  };
}

export function explainPieces({ layout }: Analysis, figures: LayerFigures, laser: number): Explanation {
  const own = figures.lasers[laser];
  const counts = new Map<number, number>();
  for (const piece of figures.pieces)
    if (piece.laser === laser) counts.set(piece.part, (counts.get(piece.part) ?? 0) + 1);
  return {
    title: t('Pieces of {id}', { id: own.id }),
    meaning: t('Connected regions of one part that this laser exposes, adjacent cells merged.'),
    formula: t('count over the layer'),
    numbers: [],
    table: sumTable(
      [...counts].map(([part, value]) => ({ label: layout.parts[part].id, value })),
      {
        label: t('pieces of {count} parts', { count: counts.size }),
        value: own.pieces,
        format: String,
        more: '{count} more parts',
      },
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
    const label = t('{id}: chance {chance} · min(1, {load} / {load2})', {
      id,
      chance: formatNumber(value / share, 3, 3),
      load: cellSeconds(load_s),
      load2: cellSeconds(own.load_s),
    });
    return [{ label, value }];
  });
}

export function explainPlumes(analysis: Analysis, figures: LayerFigures, laser: number): Explanation {
  const { plumeHalfWidth_mm } = analysis.layout.limits;
  const terms = plumeTerms(analysis, figures, laser);
  return {
    title: t('Plumes over {id}', { id: figures.lasers[laser].id }),
    meaning: t(
      'Geometry only, not a flow simulation: mean number of other lasers’ plumes over this beam. No published plume width was found; the half-width is a setting.',
    ),
    formula: t(
      'Σ over upwind lasers of the chance that the beam stands in the strip behind their spot · min(1, E_i/E_j)',
    ),
    numbers: [
      t('half-width of the strip {plumeHalfWidth} mm, flow towards {towards}°', {
        plumeHalfWidth: plumeHalfWidth_mm,
        towards: analysis.layout.machine.gasFlow.towards_deg,
      }),
    ],
    table: sumTable(terms, {
      label: t('plumes'),
      value: terms.reduce((sum, term) => sum + term.value, 0),
      format: barePlumes,
      more: '{count} more lasers',
    }),
  };
}
