/**
 * The book-keeping of the layer, always on screen: Σ scan areas − double exposure + unassigned = section area, with one
 * decimal so that the sum can be checked by eye. Square millimetres.
 */
import { formatNumber } from '../../units/format';
import type { LayerFigures } from '../../build/types';
import type { Mm2 } from '../../units/types';
import { Figure } from './Figure';

/** Largest relative difference between the two sides that counts as equal. */
const TOLERANCE = 1e-6;
const exact = (value: Mm2): string => formatNumber(value, 8, 1);

/** True where the sum holds to 1e-6 of the section area. */
export function booksBalance(figures: LayerFigures): boolean {
  const scanned = figures.lasers.reduce((sum, laser) => sum + laser.scanArea_mm2, 0);
  const rest = scanned - figures.doubleExposed_mm2 + figures.unassigned_mm2 - figures.sectionArea_mm2;
  return Math.abs(rest) <= TOLERANCE * Math.max(1, figures.sectionArea_mm2);
}

export function BookKeeping({ figures }: { readonly figures: LayerFigures | undefined }) {
  const scanned = figures?.lasers.reduce((sum, laser) => sum + laser.scanArea_mm2, 0) ?? 0;
  const balanced = figures === undefined || booksBalance(figures);
  const sum = `${exact(scanned)} − ${exact(figures?.doubleExposed_mm2 ?? 0)} + ${exact(figures?.unassigned_mm2 ?? 0)} ${balanced ? '=' : '≠'} ${exact(figures?.sectionArea_mm2 ?? 0)} mm²`;
  return (
    <footer className="books">
      <Figure
        name="book-keeping"
        label="Σ scan areas − double exposure + unassigned = section area"
        value={sum}
        warn={!balanced}
      />
    </footer>
  );
}
