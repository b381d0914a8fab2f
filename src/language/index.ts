/**
 * The language of the page. English texts stand in the code and are their own keys; a second language is a table from
 * English to its own words (`de/`). `Text` holds the English texts that have German ones, so that the compiler refuses a
 * text without its translation. Free of the DOM: threads and the command line speak English until they are told otherwise.
 *
 * In a text: "{name}" takes the value of that name; "[one|several]" goes by the value `count`, "[parts: one|several]"
 * by the value `parts`; what stands behind " ¦ " tells two meanings of one English word apart and is not shown.
 */
import type { FIRST } from './de/first';
import type { REST } from './de/rest';

/** An English text that every language file holds. */
export type Text = keyof typeof FIRST | keyof typeof REST;
export type Values = Readonly<Record<string, string | number>>;
export type Language = 'en' | 'de';
export type Texts = Readonly<Record<string, string>>;

interface Spoken {
  readonly language: Language;
  /** Null where the texts themselves are shown. */
  readonly texts: Texts | null;
  /** Between the whole and the decimals of a number. */
  readonly sign: '.' | ',';
}
const ENGLISH: Spoken = { language: 'en', texts: null, sign: '.' };
let spoken = ENGLISH;

/** The language in force. */
export const language = (): Language => spoken.language;
/** A number's text as written with a point, with the sign of the language in force. */
export const withDecimalSign = (number: string): string =>
  spoken.sign === '.' ? number : number.replace('.', spoken.sign);

/** English from now on. */
export function speakEnglish(): void {
  spoken = ENGLISH;
}
/** German from now on, with these texts; what they lack is shown in English. */
export function speakGerman(texts: Texts): void {
  spoken = { language: 'de', texts, sign: ',' };
}

/** What `say` says in English, whatever the language in force: for files that machines read. */
export function inEnglish<T>(say: () => T): T {
  const before = spoken;
  speakEnglish();
  try {
    return say();
  } finally {
    spoken = before;
  }
}

const CHOICE = /\[(?:(\w+): ?)?([^|\]]*)\|([^\]]*)\]/g;
const written = (value: string | number | undefined): string =>
  typeof value === 'number' ? withDecimalSign(String(value)) : (value ?? '?');

/** A text of the language in force, its choices made and its names still open. */
export function wordsOf(text: Text, values: Readonly<Record<string, unknown>> = {}): string {
  const words = spoken.texts?.[text] ?? text.split(' ¦ ', 1)[0] ?? text;
  return words.replace(CHOICE, (_, by: string | undefined, one: string, several: string) =>
    Number(values[by ?? 'count']) === 1 ? one : several,
  );
}

/** A text in the language in force, with its values. */
export const t = (text: Text, values: Values = {}): string =>
  wordsOf(text, values).replace(/\{(\w+)\}/g, (_, name: string) => written(values[name]));
