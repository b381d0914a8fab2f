/**
 * The typed fields of the panels: lengths ("25,4 mm", "1 in"), angles, plain numbers and counts. Each commit is one
 * change under the field's label.
 */
import { formatField } from '../../units/format';
import { parseAngle, parseLength, parseNumber } from '../../units/parse';
import type { Layout } from '../../layout/types';
import type { Result } from '../../layout/result';
import { useEdit } from '../useEdit';
import type { FieldLimits } from './readField';
import { TypedField } from './TypedField';

export interface FieldProps extends FieldLimits {
  readonly label: string;
  /** The field's name in messages and history, where the label alone is too short. */
  readonly what?: string;
  readonly value: number;
  readonly testId?: string;
  readonly disabled?: boolean;
  readonly hint?: string;
  readonly step?: number;
  readonly unit?: string;
  /** What is unwise about the value that is kept; stands under the field. */
  readonly caution?: string | undefined;
  /** The document after the new value, or why it is refused. */
  recipe(layout: Layout, value: number): Layout | Result<Layout>;
  /** Several values behind one field, and the document after each was changed for itself. */
  readonly values?: readonly number[] | undefined;
  readonly recipeEach?:
    ((layout: Layout, to: (now: number) => number) => Layout | Result<Layout>) | undefined;
}

function DocumentField(
  props: FieldProps & {
    parse: (text: string) => Result<number>;
    readonly unit: string;
    readonly step: number;
  },
) {
  const edit = useEdit();
  const { recipe, recipeEach, ...shown } = props;
  const name = props.what ?? props.label;
  return (
    <TypedField
      {...shown}
      what={name}
      format={formatField}
      onCommit={(value) => edit.change(name, (layout) => recipe(layout, value))}
      onEach={recipeEach && ((to) => edit.change(name, (layout) => recipeEach(layout, to)))}
      onHold={edit.hold(name)}
    />
  );
}

/** A length in millimetres; the arrows step by 1 mm unless told otherwise. */
export const LengthField = (props: FieldProps) => (
  <DocumentField unit="mm" step={1} {...props} parse={parseLength} />
);
/** An angle in degrees, 0 ≤ a < 360. */
export const AngleField = (props: FieldProps) => (
  <DocumentField unit="°" step={1} {...props} parse={parseAngle} />
);
/** A number in the unit shown beside it, which may be typed too. */
export const NumberField = (props: FieldProps) => (
  <DocumentField unit="" step={1} {...props} parse={(text) => parseNumber(text, props.unit)} />
);
