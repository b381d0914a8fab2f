/** Hands the layout over as a file named after it. */
import { writeLayout } from '../../layout/write';
import { always, layoutOf } from '../make';
import type { Command } from '../types';

/** "Ferry spares, plate 1" → "ferry-spares-plate-1.json": letters and digits of any script, joined by hyphens. */
export function fileName(layoutName: string): string {
  const words = layoutName.toLowerCase().match(/[\p{Letter}\p{Mark}\p{Number}]+/gu) ?? ['layout'];
  return `${words.join('-').slice(0, 80)}.json`;
}

export const saveLayout: Command = {
  id: 'save-layout',
  label: 'Save layout file',
  group: 'file',
  keys: ['Ctrl+S'],
  when: always,
  run: (context) => {
    const layout = layoutOf(context);
    context.ports.download(fileName(layout.name), writeLayout(layout), 'application/json');
  },
};
