/**
 * Each outline found, as a card: picture, size, area, holes; whether it lands, how high and how often.
 */
import { t } from '../../language/index';
import { shapePicture } from '../../panels/parts/shapePath';
import { TypedField } from '../../panels/controls/TypedField';
import type { ImportShape, PlacedShape } from '../../import/types';
import { formatField, formatMm, formatMm2 } from '../../units/format';
import { parseLength, parseNumber } from '../../units/parse';
import type { Choices } from './choices';
import { choiceFor, withShapeChoice } from './choices';
import { ringsPath } from './ImportPicture';

/** Cards shown; a drawing of thousands of outlines keeps the common height and copies for the rest. */
const MOST_CARDS = 60;
const MOST_COPIES = 100;

interface CardsProps {
  readonly found: readonly ImportShape[];
  readonly placed: readonly PlacedShape[];
  readonly choices: Choices;
  onChange(choices: Choices): void;
}

function CardPicture({ shape }: { readonly shape: PlacedShape }) {
  const { viewBox } = shapePicture({ slabs: [{ to_mm: 1, rings: shape.rings }] });
  return (
    <figure>
      <svg width="116" height="116" viewBox={viewBox} aria-hidden="true">
        <path className="check-outline" d={ringsPath(shape.rings)} fillRule="evenodd" />
      </svg>
    </figure>
  );
}

function Card({ index, holes, shape, choices, onChange }: CardProps) {
  const choice = choiceFor(choices, index);
  return (
    <li className="check-shape" data-skipped={!choice.use || undefined} data-testid="import-shape">
      <CardPicture shape={shape} />
      <figcaption>
        <b>{shape.name}</b>
        <br />
        {formatMm(shape.width_mm)} × {formatMm(shape.height_mm)},{' '}
        {t('{count} [hole|holes]', { count: holes })}
        <br />
        <span data-testid="import-area">{formatMm2(shape.area_mm2)}</span>
      </figcaption>
      <label className="switch">
        <input
          type="checkbox"
          checked={choice.use}
          onChange={(event) => onChange(withShapeChoice(choices, index, { use: event.target.checked }))}
        />
        {t('place it')}
      </label>
      <TypedField
        label={t('height')}
        what={t('height')}
        unit="mm"
        step={1}
        min={0.001}
        max={10_000}
        disabled={!choice.use}
        value={choice.height_mm ?? choices.height_mm}
        parse={parseLength}
        format={formatField}
        onCommit={(height_mm) => onChange(withShapeChoice(choices, index, { height_mm }))}
      />
      <TypedField
        label={t('copies')}
        what={t('copies')}
        unit=""
        step={1}
        min={0}
        max={MOST_COPIES}
        whole
        disabled={!choice.use}
        value={choice.copies ?? choices.copies}
        parse={parseNumber}
        format={formatField}
        onCommit={(copies) => onChange(withShapeChoice(choices, index, { copies }))}
      />
    </li>
  );
}
interface CardProps {
  readonly index: number;
  readonly holes: number;
  readonly shape: PlacedShape;
  readonly choices: Choices;
  onChange(choices: Choices): void;
}

export function ShapeCards({ found, placed, choices, onChange }: CardsProps) {
  const more = placed.length - MOST_CARDS;
  return (
    <>
      <ul className="check-shapes">
        {placed.slice(0, MOST_CARDS).map((shape, index) => (
          <Card
            key={shape.name}
            index={index}
            holes={found[index]?.holes ?? 0}
            shape={shape}
            choices={choices}
            onChange={onChange}
          />
        ))}
      </ul>
      {more > 0 && (
        <p className="hint">
          {t('{count} more outlines land with the height and copies of all.', { count: more })}
        </p>
      )}
    </>
  );
}
