/**
 * Whether a text may be an id: the rule of the file, and of fields and tables in which ids are typed.
 */
export const LONGEST_ID = 64;
const HALF_CHARACTER = /\p{Surrogate}/u;
const CONTROL_CHARACTER = /\p{Control}/u;
/** Marks that turn the direction of what is written after them, so that words and numbers read backwards. */
const DIRECTION_MARK = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u;

/** True where a text turns no direction. */
export const keepsDirection = (text: string): boolean => !DIRECTION_MARK.test(text);

/** A name of 1 to 64 characters without control characters, direction marks or blanks at its ends. */
export const isId = (text: string): boolean =>
  text.length >= 1 &&
  text.length <= LONGEST_ID &&
  text.trim() === text &&
  !HALF_CHARACTER.test(text) &&
  !CONTROL_CHARACTER.test(text) &&
  keepsDirection(text);
