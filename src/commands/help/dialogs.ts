/** The page's own dialogs. */
import type { Text } from '../../language/index';
import { always } from '../make';
import type { Command, Ports } from '../types';

type Dialog = Parameters<Ports['showDialog']>[0];

const show = (id: string, label: Text, keys: readonly string[], dialog: Dialog): Command => ({
  id,
  label,
  group: 'help',
  keys,
  when: always,
  run: ({ ports }) => ports.showDialog(dialog),
});

export const dialogCommands: readonly Command[] = [
  show('palette', 'Find a command', ['Ctrl+K'], 'palette'),
  show('help', 'Keys and help', ['?'], 'help'),
  show('machine', 'Machine …', [], 'machine'),
  show('process', 'Process …', [], 'process'),
  show('calendar', 'Calendar …', [], 'calendar'),
  show('revision', 'Revision …', [], 'revision'),
  show('about', 'About and cautions', [], 'about'),
];
