/** Asks for a file of outlines or a mesh and shows it on its check page. */
import { always } from '../make';
import type { Command } from '../types';
import { MESH_FILES, openFile, OUTLINE_FILES } from './openFile';

export const openOutlines: Command = {
  id: 'open-outlines',
  label: 'Open outlines or a mesh …',
  group: 'file',
  keys: ['i'],
  when: always,
  run: async (context) => {
    const file = await context.ports.pickFile(`${OUTLINE_FILES},${MESH_FILES}`);
    if (file) await openFile(context, file);
  },
};
