/**
 * The table of layers: one row for each layer with what each laser exposes of it, for comparison with what slicing
 * reports. Areas are those before any hatch inset, with half the seam overlap along seams; `z_mm` is the layer's upper side.
 * mm, mm², s.
 */
import type { Analysis, LayerTotals } from '../../build/types';
import { roundMm } from '../../units/round';
import { stateWords } from '../forUse';
import type { Cell, Table } from './csv';

const headerOf = (ids: readonly string[]): string[] => [
  'layer',
  'z_mm',
  ...ids.map((id) => `${id} area_mm2`),
  'unassigned_mm2',
  'double_mm2',
  'section_mm2',
  ...ids.map((id) => `${id} load_s`),
  'exposure_s',
  'time_s',
  'state',
];

const figuresOf = (figures: LayerTotals): Cell[] => [
  ...figures.lasers.map(({ scanArea_mm2 }) => scanArea_mm2),
  figures.unassigned_mm2,
  figures.doubleExposed_mm2,
  figures.sectionArea_mm2,
  ...figures.lasers.map(({ load_s }) => load_s),
  figures.exposure_s,
  figures.time_s,
];

/** The table of an analysis whose whole height is the present one. */
export function layersTable(analysis: Analysis): Table {
  const { layout, stretches } = analysis;
  const state = stateWords(analysis);
  const rows = stretches.flatMap(({ firstLayer, lastLayer, figures }) => {
    const cells = [...figuresOf(figures), state];
    return Array.from({ length: lastLayer - firstLayer + 1 }, (_, i): Cell[] => {
      const layer = firstLayer + i;
      return [layer, roundMm(layer * layout.process.layer_mm), ...cells];
    });
  });
  return { header: headerOf(layout.machine.lasers.map(({ id }) => id)), rows };
}
