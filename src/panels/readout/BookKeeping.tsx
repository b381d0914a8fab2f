/**
 * The book-keeping of the layer, always on screen: Σ scan areas − double exposure + unassigned = section area, with one
 * decimal so that the sum can be checked by eye. Square millimetres.
 */
import { t } from '../../language/index';
import { formatNumber } from '../../units/format';
import { books, BOOKS_TOLERANCE } from '../../build/books';
import type { LayerFigures } from '../../build/types';
import type { Mm2 } from '../../units/types';
import { Figure } from './Figure';

const exact = (value: Mm2): string => formatNumber(value, 8, 1);

const NOTHING = { scanned_mm2: 0, doubleExposed_mm2: 0, unassigned_mm2: 0, section_mm2: 0, error: 0 };

export function BookKeeping({ figures }: { readonly figures: LayerFigures | undefined }) {
  const now = figures === undefined ? NOTHING : books(figures);
  const balanced = now.error <= BOOKS_TOLERANCE;
  const left = `${exact(now.scanned_mm2)} − ${exact(now.doubleExposed_mm2)} + ${exact(now.unassigned_mm2)}`;
  const sum = `${left} ${balanced ? '=' : '≠'} ${exact(now.section_mm2)} mm²`;
  return (
    <footer className="books">
      <Figure
        name="book-keeping"
        label={t('Σ scan − double + unassigned = section')}
        value={sum}
        warn={!balanced}
        lights="sections"
      />
    </footer>
  );
}
