/**
 * The plate under every division: the present one first, then each strategy without and with a shared band, the two ways
 * of strips and the whole field. What comes to the same as one before it is left out. Only the zones at the height
 * shown change. Millimetres.
 */
import type { Layout, LayoutAt } from '../../layout/types';
import { sameValue } from '../../layout/same';
import { layoutAt } from '../../layout/steps';
import type { Mm } from '../../units/types';
import { changeShown, shownStep } from '../../store/shown';
import { setStrategy } from './strategy';
import { setSharedBand } from './zones';

/** Between neighbours that may take load from each other; usual widths are 20 to 200 mm (common practice, no source). */
export const USUAL_BAND_MM: Mm = 40;

const bands = (plate: LayoutAt): readonly LayoutAt[] =>
  [0, USUAL_BAND_MM].map((width_mm) => setSharedBand(plate, width_mm));

function divisionsOf(plate: LayoutAt): readonly LayoutAt[] {
  const present = 'sharedBand_mm' in plate.zoning ? bands(plate) : [];
  return [
    plate,
    ...present,
    ...bands(setStrategy(plate, 'quadrants')),
    ...bands(setStrategy(plate, 'strips', 90)),
    ...bands(setStrategy(plate, 'strips', 0)),
    setStrategy(plate, 'wholeField'),
  ];
}

/** Layouts that differ in the zones at the height shown only, all different, the layout itself first. */
export function everyDivision(layout: Layout, height_mm: Mm): readonly Layout[] {
  const found: Layout[] = [];
  for (const { zoning } of divisionsOf(layoutAt(layout, shownStep(layout, height_mm)))) {
    const next = changeShown(layout, height_mm, (at) => ({ ...at, zoning }));
    if (!found.some((other) => sameValue(other.zoning, next.zoning))) found.push(next);
  }
  return found;
}
