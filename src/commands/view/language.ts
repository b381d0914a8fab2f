/** The language of the page: English, German, or as the system has it. Each says its own name in its own words too. */
import { type Text } from '../../language/index';
import type { LanguageChoice } from '../../language/load';
import { always } from '../make';
import type { Command } from '../types';

const CHOICES: readonly (readonly [LanguageChoice, Text])[] = [
  ['system', 'Language: as the system'],
  ['en', 'Language: English'],
  ['de', 'Language: German (Deutsch)'],
];

export const languageCommands: readonly Command[] = CHOICES.map(([choice, label]) => ({
  id: `language-${choice}`,
  label,
  group: 'view',
  keys: [],
  when: always,
  run: ({ bench }) => bench.setView({ language: choice }),
}));
