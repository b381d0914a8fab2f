/**
 * What a table does not say of itself: separator, decimal sign, and what the number of a part that stands already means.
 */
import { t, type Text } from '../../language/index';
import type { OnTaken } from '../../commands/operations/placeTable';
import type { Decimal } from '../../import/table/cells';
import type { TableChoices as Choices, TableReading } from '../../import/table/readTable';
import type { Separator } from '../../import/table/split';
import { Choice } from '../../panels/controls/Choice';

interface ChoicesProps {
  readonly reading: TableReading;
  readonly choices: Choices;
  readonly onTaken: OnTaken;
  onChange(choices: Choices): void;
  onOnTaken(onTaken: OnTaken): void;
}

const SEPARATOR_WORDS: Readonly<Record<Separator, Text>> = { '\t': 'tab', ';': 'semicolon', ',': 'comma' };
const DECIMAL_WORDS: Readonly<Record<Decimal, Text>> = { '.': 'point, 1.5', ',': 'comma, 1,5' };

/** As told from the table, and each of the others. */
const options = <Value extends string>(words: Readonly<Record<Value, Text>>, told: Value) => [
  { value: '' as const, label: t('{choice} (as told)', { choice: t(words[told]) }) },
  ...(Object.keys(words) as Value[]).map((value) => ({ value, label: t(words[value]) })),
];

export function TableChoices({ reading, choices, onTaken, onChange, onOnTaken }: ChoicesProps) {
  return (
    <>
      <div className="table-choices">
        <Choice<Separator | ''>
          label={t('between cells')}
          testId="table-separator"
          value={choices.separator ?? ''}
          options={options(SEPARATOR_WORDS, reading.separator)}
          onChoose={(value) => onChange({ ...choices, fields: {}, separator: value === '' ? null : value })}
        />
        <Choice<Decimal | ''>
          label={t('decimal sign')}
          testId="table-decimal"
          value={choices.decimal ?? ''}
          options={options(DECIMAL_WORDS, reading.decimal)}
          onChoose={(value) => onChange({ ...choices, decimal: value === '' ? null : value })}
        />
        <Choice<OnTaken>
          label={t('a number that stands')}
          testId="table-on-taken"
          value={onTaken}
          options={[
            { value: 'change', label: t('changes that part') },
            { value: 'add', label: t('adds a new part') },
          ]}
          onChoose={onOnTaken}
        />
      </div>
      {reading.thousands && !reading.mixed && (
        <p className="hint" data-testid="table-thousands">
          {t(
            'Every “{sign}” has three digits behind it: it is read as the decimal sign. Where it sets thousands apart, choose the other sign, and take it out of the refused numbers.',
            { sign: reading.decimal },
          )}
        </p>
      )}
      {reading.mixed && (
        <p className="hint" data-testid="table-mixed">
          {t(
            'Decimal commas and decimal points stand in one table. Choose which sign holds: numbers with the other one are refused.',
          )}
        </p>
      )}
    </>
  );
}
