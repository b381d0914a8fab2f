/**
 * Whether a text may be an id, or any text of a layout: the rules of the file, and of fields and tables in which they are
 * typed; and what is left of a wanted name that breaks them.
 */
export const LONGEST_ID = 64;
/** Half characters, and marks that turn the direction of what is written after them, so that words and numbers read backwards. */
const UNFIT = /[\p{Surrogate}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u;
const CONTROL_CHARACTER = /\p{Control}/u;
const UNFIT_IN_ID = new RegExp(`${UNFIT.source}|${CONTROL_CHARACTER.source}`, 'gu');

/** True for a text of whole characters that turns no direction. */
export const isText = (text: string): boolean => !UNFIT.test(text);

/** A name of 1 to 64 characters without control characters, direction marks or blanks at its ends. */
export const isId = (text: string): boolean =>
  text.length >= 1 &&
  text.length <= LONGEST_ID &&
  text.trim() === text &&
  isText(text) &&
  !CONTROL_CHARACTER.test(text);

/** A wanted name with `by` in place of every character that no id may hold. */
export const plainName = (wanted: string, by: '' | ' '): string => wanted.replace(UNFIT_IN_ID, by);
