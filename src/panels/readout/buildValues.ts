/** Figures of the build that follow from others. Hours, cm³. */
import type { BuildFigures } from '../../build/types';
import type { Correction, Layout } from '../../layout/types';
import type { Cm3, Hours } from '../../units/types';

/** What holds while no schedule says otherwise. */
export const UNCORRECTED: Correction = { factor: 1, spread_pct: 0 };

export const correctedTime = (
  { schedule }: Pick<Layout, 'schedule'>,
  { time_h }: Pick<BuildFigures, 'time_h'>,
): Hours => time_h * (schedule?.correction ?? UNCORRECTED).factor;

/** What all lasers expose, double exposure counted twice. */
export const totalVolume = ({ scanVolume_cm3 }: Pick<BuildFigures, 'scanVolume_cm3'>): Cm3 =>
  Object.values(scanVolume_cm3).reduce((sum, volume) => sum + volume, 0);
