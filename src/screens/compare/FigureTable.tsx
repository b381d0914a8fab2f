/**
 * Rows of figures, columns of layouts: the value, its difference to the reference, the best of the row marked. No row
 * counts more than another, and no total is made of them.
 */
import { t, withDecimalSign } from '../../language/index';
import {
  BUILD_FIGURES,
  isWhole,
  LAYER_FIGURES,
  rowOf,
  sameWork,
  seamPrice,
  type Compared,
  type Row,
} from '../../build/compare';
import { formatField, NARROW_SPACE } from '../../units/format';
import { difference, ROW_WORDS } from './rowWords';

/** A column's figures; null while they are being computed. */
export type Shown = Compared | null;

const COMPUTING = '…';

interface CellProps {
  readonly row: Row;
  readonly index: number;
  readonly reference: boolean;
}

function Cell({ row, index, reference }: CellProps) {
  const { format } = ROW_WORDS[row.key];
  const value = row.values[index] ?? null;
  const apart = row.differences[index] ?? null;
  const best = row.best.includes(index);
  return (
    <td data-best={best || undefined} data-testid={`${row.key}-${index}`}>
      {value === null ? '–' : format(value)}
      {best && <span className="compare-best"> {t('best')}</span>}
      {!reference && apart !== null && <span className="compare-apart">{difference(apart, format)}</span>}
    </td>
  );
}

interface TableProps {
  readonly columns: readonly Shown[];
  readonly reference: number;
  readonly height_mm: number;
}

function Rows({ figures, columns, reference }: TableProps & { figures: typeof BUILD_FIGURES }) {
  const known = columns.flatMap((column, i) => (column ? [{ column, i }] : []));
  const from = Math.max(
    0,
    known.findIndex(({ i }) => i === reference),
  );
  const all = known.map(({ column }) => column);
  return figures.map((figure) => {
    const row = rowOf(figure, all, from);
    return (
      <tr key={figure.key}>
        <th scope="row">{t(ROW_WORDS[figure.key].label)}</th>
        {columns.map((column, i) => {
          const index = known.findIndex((one) => one.i === i);
          return column ? (
            <Cell key={i} row={row} index={index} reference={i === reference} />
          ) : (
            <td key={i}>{COMPUTING}</td>
          );
        })}
      </tr>
    );
  });
}

/** Hours of a millimetre of seam are small: four digits, however many places they take. */
const priceText = (hours: number): string =>
  `${withDecimalSign(String(Number(hours.toPrecision(4)))).replace('-', '−')}${NARROW_SPACE}h`;

/** "3.2 h", or why a seam has no price here. */
function priceWords(from: Compared, to: Compared, of: 'perSeam_h' | 'perMm_h'): string {
  if (!sameWork(from.layout, to.layout)) return t('another job');
  if (!isWhole(from) || !isWhole(to)) return t('not exposed whole');
  const price = seamPrice(from, to)[of];
  if (price !== null) return priceText(price);
  return of === 'perSeam_h' ? t('as many seams') : t('as long seams');
}

/** One line of the price of seams. */
function Price({ columns, reference, of }: TableProps & { of: 'perSeam_h' | 'perMm_h' }) {
  const from = columns[reference];
  return columns.map((column, i) => {
    if (i === reference) return <td key={i}>{t('reference')}</td>;
    if (!from || !column) return <td key={i}>{COMPUTING}</td>;
    return (
      <td key={i} data-testid={`${of}-${i}`}>
        {priceWords(from, column, of)}
      </td>
    );
  });
}

const Heading = ({ words, columns }: { words: string; columns: number }) => (
  <tr className="compare-heading">
    <th colSpan={columns + 1} scope="colgroup">
      {words}
    </th>
  </tr>
);

export function FigureTable(props: TableProps) {
  const { columns, height_mm } = props;
  return (
    <table className="compare-table" data-testid="compare-table">
      <colgroup>
        <col className="compare-labels" />
      </colgroup>
      <tbody>
        <Heading words={t('BUILD, all figures estimates')} columns={columns.length} />
        <Rows {...props} figures={BUILD_FIGURES} />
        <Heading
          words={t('LAYER AT z {height} mm', { height: formatField(height_mm) })}
          columns={columns.length}
        />
        <Rows {...props} figures={LAYER_FIGURES} />
        <Heading words={t('WHAT A SEAM BUYS, against the reference')} columns={columns.length} />
        <tr>
          <th scope="row">{t('hours gained per seam at this height')}</th>
          <Price {...props} of="perSeam_h" />
        </tr>
        <tr>
          <th scope="row">{t('hours gained per mm of mean seam length')}</th>
          <Price {...props} of="perMm_h" />
        </tr>
      </tbody>
    </table>
  );
}
