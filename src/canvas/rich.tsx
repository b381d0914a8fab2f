/** A text with elements of the page among its words, in the order that the language in force gives them. */
import { Fragment, type ReactNode } from 'react';
import { withDecimalSign, wordsOf, type Text } from '../language/index';

const shown = (value: ReactNode): ReactNode =>
  typeof value === 'number' ? withDecimalSign(String(value)) : value;

/** The words of `text` with an element, or a text, for each name in braces; choices go by the numbers in `values`. */
export const rich = (text: Text, values: Readonly<Record<string, ReactNode>>): ReactNode =>
  wordsOf(text, values)
    .split(/(\{\w+\})/)
    .map((piece, i) => (
      <Fragment key={i}>{piece.startsWith('{') ? shown(values[piece.slice(1, -1)]) : piece}</Fragment>
    ));
