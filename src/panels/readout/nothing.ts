/**
 * Figures that mean nothing because nothing is exposed: on an empty plate, or with every laser off. A dash stands for
 * them, with the reason beside it; a time made of recoating alone would look like a build.
 */
import { t, type Text } from '../../language/index';
import type { LayerTotals } from '../../build/types';
import type { Layout } from '../../layout/types';

/** In place of a figure. */
export const NOTHING = '–';
const ALL_OFF: Text = 'all lasers are off';

/** Why a plate's build has no figures; null where it has. */
export function nothingBuilt({ parts, machine }: Pick<Layout, 'parts' | 'machine'>): string | null {
  if (parts.length === 0) return t('no parts');
  return machine.lasers.some(({ on }) => on) ? null : t(ALL_OFF);
}

/** Why a layer has no times; null where it has, or where there is no layer to say it of. */
export const nothingExposed = (figures: LayerTotals | undefined): string | null =>
  figures === undefined || figures.lasers.some(({ on }) => on) ? null : t(ALL_OFF);
