/** Steps of the zoning in words: from where to where, divided how. Millimetres above the platform. */
import { t } from '../../language/index';
import { buildTop } from '../../layout/height';
import type { Layout, Zoning } from '../../layout/types';
import { formatField } from '../../units/format';
import type { Mm } from '../../units/types';

const band = (width_mm: Mm): string =>
  width_mm > 0 ? t(', band {width} mm', { width: formatField(width_mm) }) : '';

function run(run_deg: number): string {
  if (run_deg === 90) return t('side by side in x');
  return run_deg === 0 ? t('front to back in y') : t('along {run}°', { run: formatField(run_deg) });
}

/** "quadrants, band 20 mm", "4 strips side by side in x", "whole field", "3 drawn zones" */
export function zoningWords(zoning: Zoning): string {
  switch (zoning.strategy) {
    case 'quadrants':
      return t('quadrants{band}', { band: band(zoning.sharedBand_mm) });
    case 'strips':
      return t('{count} [strip|strips] {run}{band}', {
        count: zoning.lasers.length,
        run: run(zoning.run_deg),
        band: band(zoning.sharedBand_mm),
      });
    case 'wholeField':
      return t('whole field');
    case 'drawn':
      return t('{count} drawn [zone|zones]', { count: zoning.zones.length });
  }
}

/** "0 – 60 mm", "60 mm to the top"; a step above the top says so. */
export function stepRange(layout: Layout, index: number): string {
  const from_mm = layout.zoning[index]!.from_mm;
  const to_mm = layout.zoning[index + 1]?.from_mm ?? Infinity;
  const top = buildTop(layout);
  if (index > 0 && from_mm >= top) return t('{from} mm, above the top', { from: formatField(from_mm) });
  if (to_mm >= top)
    return index === 0 ? t('0 mm to the top') : t('{from} mm to the top', { from: formatField(from_mm) });
  return `${formatField(from_mm)} – ${formatField(to_mm)} mm`;
}

/** "zones 2 of 3, from 60 mm"; null where the zones are the same at every height. */
export const stepShown = ({ zoning }: Pick<Layout, 'zoning'>, index: number): string | null =>
  zoning.length === 1
    ? null
    : t('zones {number} of {count}, from {from} mm', {
        number: index + 1,
        count: zoning.length,
        from: formatField(zoning[index]!.from_mm),
      });
