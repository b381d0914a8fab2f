/** Which language a browser gets, and that changing it leaves nothing between two languages. */
import { afterEach, describe, expect, it } from 'vitest';
import { wordsInEnglish } from '../../src/commands/labels';
import { command } from '../../src/commands/index';
import { language, speakEnglish, t } from '../../src/language/index';
import { languageOf, restOfTexts, speak, speakWhole } from '../../src/language/load';

afterEach(speakEnglish);

describe('the language of the page', () => {
  it.each([
    [['de-AT', 'en'], 'de'],
    [['fr', 'de'], 'de'],
    [['en-US', 'de'], 'en'],
    [['fr', 'it'], 'en'],
    [[], 'en'],
  ] as const)('follows a browser that wants %j: %s', (wanted, found) => {
    expect(languageOf('system', wanted)).toBe(found);
  });
  it('is what was chosen, whatever the browser wants', () => {
    expect(languageOf('en', ['de'])).toBe('en');
  });
  it('has the texts of the first paint first, and all others with what comes after', async () => {
    await speak('de');
    expect([t('Layer time, estimate'), t('Undo')]).toEqual(['Schichtzeit, Schätzung', 'Undo']);
    await restOfTexts();
    expect(t('Undo')).toBe('Rückgängig');
  });
  it('does not change where it is no longer wanted when its texts have come', async () => {
    await speakWhole('de', () => false);
    expect(language()).toBe('en');
    await speakWhole('de', () => true);
    expect([language(), t('Undo')]).toEqual(['de', 'Rückgängig']);
    await speakWhole('en', () => true);
    expect(t('Undo')).toBe('Undo');
  });
  it('leaves a command its English words to be found by', async () => {
    await speakWhole('de', () => true);
    expect(wordsInEnglish(command('pin-laser-3'))).toBe('Pin to laser 3');
    expect(language()).toBe('de');
  });
});
