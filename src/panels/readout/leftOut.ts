/**
 * What the figures of the layer shown leave out, in words; a figure that leaves something out says so beside its number. mm².
 */
import { t } from '../../language/index';
import { leavesOut } from '../../build/leftOut';
import type { LayerTotals } from '../../build/types';
import { formatMm2 } from '../../units/format';

/** "without 5494 mm²"; undefined where the layer is exposed whole. */
export const leftOutOfLayer = (figures: LayerTotals | undefined): string | undefined =>
  figures !== undefined && leavesOut(figures)
    ? t('without {unassigned}', { unassigned: formatMm2(figures.unassigned_mm2) })
    : undefined;
