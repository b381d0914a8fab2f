/**
 * What the division costs in this layer: imbalance and layer time large, the rest in two columns.
 */
import type { LayerFigures } from '../../build/types';
import { formatCount, formatMm, formatMm2, formatPercent, formatSeconds } from '../../units/format';
import type { Lights } from '../lights';
import { Figure } from './Figure';

/** Shown where there is nothing to measure. */
const NOTHING = '–';
/** Differences under a millisecond are rounding. */
const SMALLEST_COST_S = 5e-4;
/** Areas below this read 0.00; rounding of outlines, not a gap between zones. */
const SMALLEST_SHOWN_MM2 = 0.005;

function slowest(figures: LayerFigures | undefined): number {
  const loads = figures?.lasers.map((laser) => (laser.on ? laser.load_s : -1)) ?? [];
  return loads.indexOf(Math.max(...loads));
}
const cost = (figures: LayerFigures): string => {
  const rest = figures.exposure_s - figures.bestPossible_s;
  return formatSeconds(Math.abs(rest) < SMALLEST_COST_S ? 0 : rest);
};

export function LargeFigures({ figures }: { readonly figures: LayerFigures | undefined }) {
  const laser = slowest(figures);
  const lights: Lights = laser < 0 ? 'none' : `laser:${laser}`;
  return (
    <div className="large-figures">
      <Figure
        look="large"
        name="imbalance-time"
        label="Imbalance by time"
        value={figures === undefined ? NOTHING : formatPercent(figures.imbalanceTime_pct)}
        lights={lights}
      />
      <Figure
        look="large"
        name="layer-time"
        label="Layer time, estimate"
        value={figures === undefined ? NOTHING : formatSeconds(figures.time_s)}
      />
      <Figure
        name="imbalance-area"
        label="by area"
        value={figures === undefined ? NOTHING : formatPercent(figures.imbalanceArea_pct)}
      />
      <Figure
        name="exposure"
        label="exposure"
        value={figures === undefined ? NOTHING : formatSeconds(figures.exposure_s)}
        lights={lights}
      />
    </div>
  );
}

export function SmallFigures({ figures }: { readonly figures: LayerFigures | undefined }) {
  const show = (text: (figures: LayerFigures) => string): string =>
    figures === undefined ? NOTHING : text(figures);
  const open = (figures?.unassigned_mm2 ?? 0) >= SMALLEST_SHOWN_MM2;
  return (
    <div className="small-figures">
      <Figure
        name="best-possible"
        label="Best possible"
        value={show((f) => formatSeconds(f.bestPossible_s))}
        note={show((f) => `set by ${f.bestSetBy.join(' ')}`)}
        lights="binding"
      />
      <Figure name="cost-of-cutting" label="Cost of cutting" value={show(cost)} lights="seams" />
      <Figure
        name="seam-count"
        label="Seams"
        value={show((f) => formatCount(f.seams.length))}
        lights="seams"
      />
      <Figure
        name="seam-length"
        label="Seam length"
        value={show((f) => formatMm(f.seamLength_mm))}
        lights="seams"
      />
      <Figure
        name="cut-parts"
        label="Cut parts"
        value={show((f) => formatCount(f.cutParts))}
        lights="seams"
      />
      <Figure
        name="witness-lines"
        label="Witness lines"
        value={show((f) => formatCount(f.witnessLines))}
        lights="seams"
      />
      <Figure
        name="unassigned"
        label="Unassigned"
        value={show((f) => formatMm2(f.unassigned_mm2))}
        lights="unassigned"
        warn={open}
      />
      <Figure
        name="double-exposed"
        label="Double exposure"
        value={show((f) => formatMm2(f.doubleExposed_mm2))}
        lights="seams"
      />
      <Figure name="section-area" label="Section area" value={show((f) => formatMm2(f.sectionArea_mm2))} />
    </div>
  );
}
