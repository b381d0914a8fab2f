/** What a command is called in the language in force. */
import { inEnglish, t } from '../language/index';
import type { Command } from './types';

export const labelOf = ({ label, labelValues }: Pick<Command, 'label' | 'labelValues'>): string =>
  t(label, labelValues);

/** The same in English, whatever is spoken: what a colleague may have called it. */
export const wordsInEnglish = (command: Pick<Command, 'label' | 'labelValues'>): string =>
  inEnglish(() => labelOf(command));
