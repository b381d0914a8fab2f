/** Asks for a layout file and opens it. */
import { always } from '../make';
import type { Command } from '../types';
import { LAYOUT_FILES, openFile } from './openFile';

export const openLayoutFile: Command = {
  id: 'open-layout',
  label: 'Open layout file …',
  group: 'file',
  keys: ['Ctrl+O'],
  when: always,
  run: async (context) => {
    const file = await context.ports.pickFile(LAYOUT_FILES);
    if (file) await openFile(context, file);
  },
};
