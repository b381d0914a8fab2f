/** Light ground, dark ground, or as the system has it, in turn. */
import type { View } from '../../store/types';
import { always, viewOf } from '../make';
import type { Command } from '../types';

const NEXT: Readonly<Record<View['theme'], View['theme']>> = {
  system: 'light',
  light: 'dark',
  dark: 'system',
};

export const theme: Command = {
  id: 'theme',
  label: 'Ground: light, dark, as the system',
  group: 'view',
  keys: ['g'],
  when: always,
  run: (context) => context.bench.setView({ theme: NEXT[viewOf(context).theme] }),
};
