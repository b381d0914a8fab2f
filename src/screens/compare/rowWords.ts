/** What the rows of a comparison are called, and how their figures are written. */
import { t, type Text } from '../../language/index';
import type { FigureKey } from '../../build/compare';
import {
  formatCm3,
  formatCount,
  formatHours,
  formatMm,
  formatMm2,
  formatNumber,
  formatPercent,
  formatSeconds,
  NARROW_SPACE,
} from '../../units/format';

interface RowWords {
  readonly label: Text;
  readonly format: (value: number) => string;
}

const litres = (value: number): string => `${formatNumber(value, 4, 2)}${NARROW_SPACE}l`;
const laserHours = (value: number): string => formatHours(value);

export const ROW_WORDS: Readonly<Record<FigureKey, RowWords>> = {
  time_h: { label: 'build time, estimate', format: formatHours },
  exposure_h: { label: 'exposure', format: formatHours },
  recoat_h: { label: 'recoating', format: formatHours },
  heldByMinLayer_h: { label: 'held by the minimum layer time', format: formatHours },
  idle_laserH: { label: 'idle laser-hours', format: laserHours },
  imbalance_pct: { label: 'imbalance', format: formatPercent },
  meanSeam_mm: { label: 'seam length, mean of all layers', format: formatMm },
  layers: { label: 'layers', format: formatCount },
  volume_cm3: { label: 'scan volume', format: formatCm3 },
  overflow_l: { label: 'powder into the overflow', format: litres },
  leftOut_cm3: { label: 'left out: no laser exposes it', format: formatCm3 },
  blocking: { label: 'problems that block hand-over', format: formatCount },
  layerTime_s: { label: 'layer time', format: formatSeconds },
  layerExposure_s: { label: 'exposure', format: formatSeconds },
  bestPossible_s: { label: 'best possible', format: formatSeconds },
  imbalanceTime_pct: { label: 'imbalance by time', format: formatPercent },
  imbalanceArea_pct: { label: 'imbalance by area', format: formatPercent },
  seams: { label: 'seams', format: formatCount },
  seamLength_mm: { label: 'seam length', format: formatMm },
  cutParts: { label: 'cut parts', format: formatCount },
  witnessLines: { label: 'witness lines', format: formatCount },
  unassigned_mm2: { label: 'unassigned', format: formatMm2 },
};

/** A difference with its sign: "+3.2 h", "−5 s", "±0"; of percentages in percentage points. */
export function difference(value: number, format: (value: number) => string): string {
  const text = format(Math.abs(value));
  if (!/[1-9]/.test(text)) return '±0';
  return `${value > 0 ? '+' : '\u2212'}${text.replace('%', t('points'))}`;
}
