/**
 * Tables are offered as a spreadsheet of the page's language reads them: decimal comma and semicolons in German, decimal
 * point and commas in English (common practice, no source).
 */
import { afterEach, expect, it } from 'vitest';
import { speakEnglish, speakGerman } from '../../src/language/index';
import { askedOf, firstChoices } from '../../src/screens/handOver/choices';

afterEach(speakEnglish);

it('offers numbers in the way of the language', () => {
  const offered = () => askedOf('parts', firstChoices(), 0);
  expect(offered()).toEqual({ kind: 'parts', csv: { separator: ',', decimal: '.' } });
  speakGerman({});
  expect(offered()).toEqual({ kind: 'parts', csv: { separator: ';', decimal: ',' } });
});
