/** Asks for a file of outlines and shows it on the check page. */
import { always } from '../make';
import type { Command } from '../types';
import { openFile, OUTLINE_FILES } from './openFile';

export const openOutlines: Command = {
  id: 'open-outlines',
  label: 'Open outlines …',
  group: 'file',
  keys: ['i'],
  when: always,
  run: async (context) => {
    const file = await context.ports.pickFile(OUTLINE_FILES);
    if (file) await openFile(context, file);
  },
};
