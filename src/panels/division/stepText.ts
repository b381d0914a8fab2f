/** Steps of the zoning in words: from where to where, divided how. Millimetres above the platform. */
import { buildTop } from '../../layout/height';
import type { Layout, Zoning } from '../../layout/types';
import { formatField } from '../../units/format';
import type { Mm } from '../../units/types';

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

const band = (width_mm: Mm): string => (width_mm > 0 ? `, band ${formatField(width_mm)} mm` : '');

function run(run_deg: number): string {
  if (run_deg === 90) return 'side by side in x';
  return run_deg === 0 ? 'front to back in y' : `along ${formatField(run_deg)}°`;
}

/** "quadrants, band 20 mm", "4 strips side by side in x", "whole field", "3 drawn zones" */
export function zoningWords(zoning: Zoning): string {
  switch (zoning.strategy) {
    case 'quadrants':
      return `quadrants${band(zoning.sharedBand_mm)}`;
    case 'strips':
      return `${counted(zoning.lasers.length, 'strip')} ${run(zoning.run_deg)}${band(zoning.sharedBand_mm)}`;
    case 'wholeField':
      return 'whole field';
    case 'drawn':
      return counted(zoning.zones.length, 'drawn zone');
  }
}

/** "0 – 60 mm", "60 mm to the top"; a step above the top says so. */
export function stepRange(layout: Layout, index: number): string {
  const from_mm = layout.zoning[index]!.from_mm;
  const to_mm = layout.zoning[index + 1]?.from_mm ?? Infinity;
  const top = buildTop(layout);
  if (index > 0 && from_mm >= top) return `${formatField(from_mm)} mm, above the top`;
  if (to_mm >= top) return index === 0 ? '0 mm to the top' : `${formatField(from_mm)} mm to the top`;
  return `${formatField(from_mm)} – ${formatField(to_mm)} mm`;
}

/** "zones 2 of 3, from 60 mm"; null where the zones are the same at every height. */
export const stepShown = ({ zoning }: Pick<Layout, 'zoning'>, index: number): string | null =>
  zoning.length === 1
    ? null
    : `zones ${index + 1} of ${zoning.length}, from ${formatField(zoning[index]!.from_mm)} mm`;
