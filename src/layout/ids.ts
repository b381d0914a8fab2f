/**
 * Whether a text may be an id: the rule of the file, and of fields and tables in which ids are typed.
 */
export const LONGEST_ID = 64;
const HALF_CHARACTER = /\p{Surrogate}/u;
const CONTROL_CHARACTER = /\p{Control}/u;

/** A name of 1 to 64 characters without control characters or blanks at its ends. */
export const isId = (text: string): boolean =>
  text.length >= 1 &&
  text.length <= LONGEST_ID &&
  text.trim() === text &&
  !HALF_CHARACTER.test(text) &&
  !CONTROL_CHARACTER.test(text);
