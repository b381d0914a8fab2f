/**
 * Which language the page speaks, and when its texts come: those of the first paint before it, all others with the first
 * code that comes after it. English needs neither.
 */
import { language, speakEnglish, speakGerman, type Language } from './index';

/** What a user may choose. */
export type LanguageChoice = 'system' | Language;

/** The language for a choice; `wanted` are the tags of the browser, the best first ("de-AT", "en"). */
export function languageOf(choice: LanguageChoice, wanted: readonly string[]): Language {
  if (choice !== 'system') return choice;
  const known = wanted
    .map((tag) => tag.slice(0, 2).toLowerCase())
    .find((tag) => tag === 'de' || tag === 'en');
  return known === 'de' ? 'de' : 'en';
}

let asked: Promise<void> | null = null;

/** Speaks it from then on with all its texts, where it is still `wanted` when they have come. */
export async function speakWhole(next: Language, wanted: () => boolean): Promise<void> {
  const [{ FIRST }, { REST }] =
    next === 'en'
      ? [{ FIRST: null }, { REST: null }]
      : await Promise.all([import('./de/first'), import('./de/rest')]);
  if (!wanted()) return;
  asked = null;
  if (FIRST === null) speakEnglish();
  else speakGerman({ ...FIRST, ...REST });
}

/** Speaks it from then on, with the texts of the first paint; the others follow by `restOfTexts`. */
export async function speak(next: Language): Promise<void> {
  asked = null;
  if (next === 'en') return speakEnglish();
  const { FIRST } = await import('./de/first');
  speakGerman(FIRST);
}

/** Resolves once every text of the language in force is there. */
export function restOfTexts(): Promise<void> {
  if (language() === 'en') return Promise.resolve();
  asked ??= Promise.all([import('./de/first'), import('./de/rest')]).then(([{ FIRST }, { REST }]) => {
    if (language() === 'de') speakGerman({ ...FIRST, ...REST });
  });
  // what could not be loaded once is asked for again
  asked.catch(() => (asked = null));
  return asked;
}
