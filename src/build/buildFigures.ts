/**
 * The build: layer by layer over the whole height, never from one layer and never from totals.
 *   imbalance of the build = Σ exposure / Σ mean load − 1, over lasers that are on
 * Hours, litres, cm³.
 */
import type { Layout } from '../layout/types';
import type { Hours, Mm, Seconds } from '../units/types';
import { powderOfLayer, type LayerPowder } from './powder';
import type { BuildFigures, LayerTotals, Stretch } from './types';

const S_PER_H = 3600;
const MM3_PER_CM3 = 1e3;
const PERCENT = 100;

const layersOf = (stretch: Stretch): number => stretch.lastLayer - stretch.firstLayer + 1;

/** Σ over all layers of a figure of the layer. */
function total(stretches: readonly Stretch[], figure: (layer: LayerTotals) => number): number {
  return stretches.reduce((sum, stretch) => sum + layersOf(stretch) * figure(stretch.figures), 0);
}

function imbalanceOf(stretches: readonly Stretch[]): number {
  const mean = (layer: LayerTotals): number => {
    const on = layer.lasers.filter((laser) => laser.on);
    return on.reduce((sum, laser) => sum + laser.load_s, 0) / (on.length || 1);
  };
  const work = total(stretches, mean);
  return work > 0 ? PERCENT * (total(stretches, (layer) => layer.exposure_s) / work - 1) : 0;
}

function powderOf({ machine, process }: Layout, stretches: readonly Stretch[]) {
  const platform_mm2 = machine.platform.width_mm * machine.platform.depth_mm;
  const powder = (layer: LayerTotals): LayerPowder =>
    powderOfLayer(platform_mm2, layer.sectionArea_mm2, process);
  return {
    dose_l: total(stretches, (layer) => powder(layer).dose_l),
    overflow_l: total(stretches, (layer) => powder(layer).overflow_l),
  };
}

/** Hours with another time for recoating: every layer still takes at least the minimum. */
function hoursWith({ process }: Layout, stretches: readonly Stretch[], recoat_s: Seconds): Hours {
  return total(stretches, (layer) => Math.max(process.minLayer_s, recoat_s + layer.exposure_s)) / S_PER_H;
}

function volumesOf(layout: Layout, stretches: readonly Stretch[]): Record<string, number> {
  const { layer_mm } = layout.process;
  return Object.fromEntries(
    layout.machine.lasers.map((laser, i) => [
      laser.id,
      (total(stretches, (layer) => layer.lasers[i].scanArea_mm2) * layer_mm) / MM3_PER_CM3,
    ]),
  );
}

/** Figures of the whole build. */
export function buildFigures(
  layout: Layout,
  stretches: readonly Stretch[],
  height_mm: Mm,
  choiceProven: boolean,
): BuildFigures {
  const hours = (figure: (layer: LayerTotals) => number): number => total(stretches, figure) / S_PER_H;
  return {
    layers: total(stretches, () => 1),
    height_mm,
    time_h: hours((layer) => layer.time_s),
    timeOneWay_h: hoursWith(layout, stretches, layout.machine.recoater.oneWay_s),
    timeBothWays_h: hoursWith(layout, stretches, layout.machine.recoater.bothWays_s),
    exposure_h: hours((layer) => layer.exposure_s),
    recoat_h: hours((layer) => layer.recoat_s),
    heldByMinLayer_h: hours((layer) => layer.wait_s),
    imbalance_pct: imbalanceOf(stretches),
    idle_laserH: hours((layer) => layer.lasers.reduce((sum, laser) => sum + laser.idle_s, 0)),
    load_laserH: hours((layer) => layer.lasers.reduce((sum, laser) => sum + laser.load_s, 0)),
    ...powderOf(layout, stretches),
    scanVolume_cm3: volumesOf(layout, stretches),
    choiceProven,
  };
}
