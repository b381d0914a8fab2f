/** What the figures of the build leave out, in words: a volume, and the heights it lies at. cm³, mm above the platform. */
import type { LeftOut } from '../../build/leftOut';
import { t } from '../../language/index';
import { formatCm3, formatField } from '../../units/format';

export { leftOutOfBuild, type LeftOut } from '../../build/leftOut';

/** "without 123.4 cm³". */
export const leftOutVolume = ({ volume_cm3 }: LeftOut): string =>
  t('without {volume}', { volume: formatCm3(volume_cm3) });

/** "z 0–48 mm", "z 0–48 mm in 3 ranges". */
export function leftOutHeights({ ranges }: LeftOut): string {
  const [first, last] = [ranges[0], ranges.at(-1)];
  const span = `z ${formatField(first?.from_mm ?? 0)}–${formatField(last?.to_mm ?? 0)} mm`;
  return ranges.length > 1 ? t('{span} in {ranges} ranges', { span, ranges: ranges.length }) : span;
}
